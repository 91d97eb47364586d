#include "core/rules/checks/showers.h"

namespace elbowroom::us_uniform {

using namespace literals;

// Exception 2 frees a receptor of 30 x 60 in overall. The plan draws the finished inside, and an inside of
// 30 x 60 meets the rule anyway, so the exception has nothing to change here.
Rule showerSize() {
  return {
      .id = "shower-size",
      .book = "us-uniform",
      .title = "room for a disc within",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::showerDiscs,
      .source = {.document = "UPC",
                 .edition = "2024",
                 .section = "408.7",
                 .read_at = "eofficial.org, uniform codes spotlight of 13 March 2025 (publisher)"},
      .grade = Grade::verified,
      .why = "Narrower than this, elbows meet the walls and one cannot turn or bend.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::us_uniform
