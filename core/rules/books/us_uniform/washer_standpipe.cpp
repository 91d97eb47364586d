#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule washerStandpipe() {
  return {
      .id = "washer-standpipe",
      .book = "us-uniform",
      .title = "standpipe above its trap",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 18_in,
      .limit_high = 30_in,
      .measure = checks::standpipes,
      .source = {.document = "UPC",
                 .edition = "2024",
                 .section = "804.1",
                 .read_at = "eofficial.org ?p=12166 (publisher)"},
      .grade = Grade::verified,
      .why = "Too low, and the washer pumps the drain over; too high, and it cannot pump up.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
