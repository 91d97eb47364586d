#include "core/rules/checks/shower_up.h"

namespace elbowroom::us_uniform {

using namespace literals;

// Up to 70 in above the drain; what is fixed to the walls is excepted, so in a plan only a sloped ceiling
// takes of it.
Rule showerSizeUp() {
  return {
      .id = "shower-size-up",
      .book = "us-uniform",
      .title = "room for a circle, kept up to 70 in",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::showerDiscsUp,
      .source = {.document = "UPC",
                 .edition = "2024",
                 .section = "408.7",
                 .read_at = "eofficial.org, uniform codes spotlight of 13 March 2025 (publisher)"},
      .grade = Grade::verified,
      .why = "A shower that is narrow at the shoulders is a narrow shower.",
      .sizes = {70_in},
      .variants =
          {{.setting = "edition",
            .value = "2021",
            .source =
                Source{.document = "UPC",
                       .edition = "2012 to 2021",
                       .section = "408.6",
                       .read_at = "eofficial.org, uniform codes spotlight of 13 March 2025 (publisher)"}},
           {.setting = "edition",
            .value = "earlier",
            .source =
                Source{.document = "UPC",
                       .edition = "2012 to 2021",
                       .section = "408.6",
                       .read_at = "eofficial.org, uniform codes spotlight of 13 March 2025 (publisher)"}}},
      .mends = {Mend::slide, Mend::wider},
  };
}

}  // namespace elbowroom::us_uniform
