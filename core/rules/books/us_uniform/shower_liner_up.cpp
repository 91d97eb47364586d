#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule showerLinerUp() {
  return {
      .id = "shower-liner-up",
      .book = "us-uniform",
      .title = "liner above the threshold",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 3_in,
      .measure = checks::linersUp,
      .source = {.document = "UPC",
                 .edition = "California edition",
                 .section = "",
                 .read_at = "legalclarity page on the California plumbing code; section not read"},
      .grade = Grade::partial,
      .why = "The liner is what keeps water out of the wall when the floor floods.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
