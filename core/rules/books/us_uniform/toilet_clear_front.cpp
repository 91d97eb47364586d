#include "core/rules/checks/fronts.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule toiletClearFront() {
  return {
      .id = "toilet-clear-front",
      .book = "us-uniform",
      .title = "clear floor in front",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 24_in,
      .measure = checks::toiletFronts,
      .source = {.document = "UPC",
                 .edition = "2021",
                 .section = "402.5",
                 .read_at = "eofficial.org, uniform codes spotlight of 25 May 2023 (publisher)"},
      .grade = Grade::verified,
      .why = "Knees and feet need this floor to sit down and stand up.",
      .variants = {{.setting = "toilet-front",
                    .value = "21",
                    .limit = 21_in,
                    .source = Source{.document = "Oregon Plumbing Specialty Code",
                                     .edition = "2011",
                                     .section = "407.5",
                                     .read_at = "thebuildingcodeforum.com, thread on what \"in front of\" means"},
                    .grade = Grade::verifiedSecondHand}},
  };
}

}  // namespace elbowroom::us_uniform
