#include "core/rules/checks/showers.h"

namespace elbowroom::us_residential {

using namespace literals;

// A city amendment for single-family houses. The plan draws the finished inside; the receptor's outside is
// stated.
Rule showerOutsideSide() {
  return {
      .id = "shower-outside-side",
      .book = "us-residential",
      .title = "shorter side, outside",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 32_in,
      .measure = checks::showerOutsideSides,
      .source = {.document = "Chicago Municipal Code",
                 .edition = "plumbing chapter",
                 .section = "",
                 .read_at = "codelibrary.amlegal.com, 0-0-0-2691153 (the city's code library)"},
      .grade = Grade::verified,
      .why = "The city asks for a larger shower than the model text, and measures its outside.",
      .variants = {{.setting = "state", .value = "none", .off = true},
                   {.setting = "state", .value = "massachusetts", .off = true},
                   {.setting = "state", .value = "california", .off = true},
                   {.setting = "state", .value = "minnesota", .off = true}},
      .mends = {Mend::wider, Mend::state},
  };
}

}  // namespace elbowroom::us_residential
