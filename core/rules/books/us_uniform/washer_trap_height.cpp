#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule washerTrapHeight() {
  return {
      .id = "washer-trap-height",
      .book = "us-uniform",
      .title = "trap of the standpipe above the floor",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 6_in,
      .limit_high = 18_in,
      .measure = checks::washerTraps,
      .source = {.document = "UPC",
                 .edition = "2024",
                 .section = "804.1",
                 .read_at = "eofficial.org ?p=12166 (publisher)"},
      .grade = Grade::verified,
      .why = "The trap must be reached and still let the pipe rise high enough.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
