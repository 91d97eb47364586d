#include "core/rules/checks/sides.h"

namespace elbowroom::us_uniform {

using namespace literals;

// Toilets and bidets only: this code has no side distance for basins.
Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "us-uniform",
      .title = "centreline to the nearest side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 15_in,
      .measure = checks::toiletSides,
      .source = {.document = "UPC",
                 .edition = "2021",
                 .section = "402.5",
                 .read_at = "eofficial.org, uniform codes spotlight of 25 May 2023 (publisher)"},
      .grade = Grade::verified,
      .why = "Less than this and elbows and knees meet the wall or the cabinet.",
  };
}

}  // namespace elbowroom::us_uniform
