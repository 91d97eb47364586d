#include "core/rules/checks/bath_space.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule bathControlFloor() {
  return {
      .id = "bath-control-floor",
      .book = "us-adaptable",
      .title = "clear floor at its control end",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::bathStretches,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.2.3.1",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "Sitting in the chair one turns the water on, and moves over onto the edge.",
      .limit_words = "30 in deep over 48 in from the control end",
      .sizes = {48_in},
      .variants = {{.setting = "option", .value = "a", .off = true},
                   {.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
