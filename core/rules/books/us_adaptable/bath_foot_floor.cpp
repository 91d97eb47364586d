#include "core/rules/checks/bath_space.h"

namespace elbowroom::us_adaptable {

using namespace literals;

// The foot is the end with the control.
Rule bathFootFloor() {
  return {
      .id = "bath-foot-floor",
      .book = "us-adaptable",
      .title = "clear floor from its foot",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::bathStretches,
      .source = {.document = "Fair Housing Accessibility Guidelines",
                 .edition = "1991",
                 .section = "7(2)(b)(vi)",
                 .read_at = "corada.com, guidelines 7(2)(b)(vi)"},
      .grade = Grade::verified,
      .why = "Sitting in the chair one turns the water on, and moves over onto the edge.",
      .limit_words = "30 in wide and 48 in long from the foot of the bath",
      .sizes = {48_in},
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
