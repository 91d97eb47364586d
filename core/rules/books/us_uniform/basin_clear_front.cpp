#include "core/rules/checks/fronts.h"

namespace elbowroom::us_uniform {

using namespace literals;

// The 2021 text names the lavatory; older wording names water closet and bidet only.
Rule basinClearFront() {
  return {
      .id = "basin-clear-front",
      .book = "us-uniform",
      .title = "clear floor in front",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 24_in,
      .measure = checks::basinFronts,
      .source = {.document = "UPC",
                 .edition = "2021",
                 .section = "402.5",
                 .read_at = "eofficial.org, uniform codes spotlight of 25 May 2023 (publisher)"},
      .grade = Grade::verified,
      .why = "A person bends over a basin and needs floor to stand on.",
      .variants = {{.setting = "edition", .value = "earlier", .off = true}},
  };
}

}  // namespace elbowroom::us_uniform
