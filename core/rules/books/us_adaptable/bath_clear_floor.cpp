#include "core/rules/checks/bath_space.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule bathClearFloor() {
  return {
      .id = "bath-clear-floor",
      .book = "us-adaptable",
      .title = "clear floor along it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::bathEitherWay,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.1.3.1 and 1004.11.3.1.3.2",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes alongside the bath, or head on where the floor is deeper.",
      .limit_words = "30 in deep as long as the bath; a basin may stand at one end when 48 in of length "
                     "stay free",
      .sizes = {48_in, 48_in},
      .variants = {{.setting = "option", .value = "b", .off = true},
                   {.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
