#include "core/rules/checks/showers.h"

namespace elbowroom::us_residential {

Rule showerOutsideArea() {
  return {
      .id = "shower-outside-area",
      .book = "us-residential",
      .title = "area, outside",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(1024),
      .measure = checks::showerOutsideAreas,
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
