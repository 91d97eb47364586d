#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule showerClearFloor() {
  return {
      .id = "shower-clear-floor",
      .book = "us-adaptable",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::showerFloorsBefore,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.1.3.3",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes to the shower's open side.",
      .limit_words = "30 in deep over 48 in from the control wall",
      .sizes = {48_in},
      .variants = {{.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
