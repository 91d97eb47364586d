#include "core/rules/checks/showers.h"

namespace elbowroom::us_uniform {

Rule showerArea() {
  return {
      .id = "shower-area",
      .book = "us-uniform",
      .title = "inside area",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(1024),
      .measure = checks::showerAreas,
      .source = {.document = "UPC",
                 .edition = "2024",
                 .section = "408.7",
                 .read_at = "eofficial.org, uniform codes spotlight of 13 March 2025 (publisher)"},
      .grade = Grade::verified,
      .why = "The least floor on which a person can wash standing up.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::us_uniform
