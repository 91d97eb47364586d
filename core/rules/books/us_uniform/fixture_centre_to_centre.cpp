#include "core/rules/checks/spacing.h"

namespace elbowroom::us_uniform {

using namespace literals;

// "Any similar fixture": a basin beside a toilet is not one.
Rule fixtureCentreToCentre() {
  return {
      .id = "fixture-centre-to-centre",
      .book = "us-uniform",
      .title = "centre to centre with its neighbour",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::toiletCentres,
      .source = {.document = "UPC",
                 .edition = "2021",
                 .section = "402.5",
                 .read_at = "eofficial.org, uniform codes spotlight of 25 May 2023 (publisher)"},
      .grade = Grade::verified,
      .why = "Elbows and knees need this between fixtures side by side.",
  };
}

}  // namespace elbowroom::us_uniform
