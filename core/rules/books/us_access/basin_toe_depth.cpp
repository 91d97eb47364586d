#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule basinToeDepth() {
  return {
      .id = "basin-toe-depth",
      .book = "us-access",
      .title = "toe space, depth",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 17_in,
      .measure = checks::toeDepths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "306.2.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Feet and footrests go in under the basin.",
  };
}

}  // namespace elbowroom::us_access
