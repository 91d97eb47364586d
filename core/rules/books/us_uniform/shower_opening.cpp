#include "core/rules/checks/wet.h"

namespace elbowroom::us_uniform {

using namespace literals;

// The door is taken as wide as the plan says; its hinges and stiles take some of that.
Rule showerOpening() {
  return {
      .id = "shower-opening",
      .book = "us-uniform",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 22_in,
      .measure = checks::showerOpenings,
      .source = {.document = "UPC",
                 .edition = "California edition",
                 .section = "408.5",
                 .read_at = "Corte Madera handout on the California plumbing code, cut off mid-sentence"},
      .grade = Grade::partial,
      .why = "One must get in and out, and be helped out, without squeezing.",
  };
}

}  // namespace elbowroom::us_uniform
