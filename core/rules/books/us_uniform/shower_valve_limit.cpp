#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

Rule showerValveLimit() {
  return {
      .id = "shower-valve-limit",
      .book = "us-uniform",
      .title = "hot water limit of the valve",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = Amount::of(120),
      .measure = checks::showerValves,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "",
                 .read_at = "jurisdiction guide in trade threads on both plumbing codes; section not read"},
      .grade = Grade::partial,
      .why = "Water of 120 degrees scalds in minutes and hotter water in seconds.",
      .unit = "\u00b0F",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
