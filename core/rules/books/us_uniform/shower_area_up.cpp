#include "core/rules/checks/shower_up.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule showerAreaUp() {
  return {
      .id = "shower-area-up",
      .book = "us-uniform",
      .title = "inside area, kept up to 70 in",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(1024),
      .measure = checks::showerAreasUp,
      .source = {.document = "UPC",
                 .edition = "2024",
                 .section = "408.7",
                 .read_at = "eofficial.org, uniform codes spotlight of 13 March 2025 (publisher)"},
      .grade = Grade::verified,
      .why = "One washes standing up, so the room is needed at the height of the head.",
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
