#include "core/rules/checks/showers.h"

namespace elbowroom::us_uniform {

using namespace literals;

// Exception 2, a receptor of 30 by 60 in overall instead of a bath, is in the measure.
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
      .sizes = {30_in, 60_in},
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
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::us_uniform
