#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

Rule showerFallForChair() {
  return {
      .id = "shower-fall-for-chair",
      .book = "comfort",
      .title = "fall under a wheelchair",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Amount{2083},
      .measure = checks::fallsForChair,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "",
                 .read_at = "a page on floor drains: at most 1:48, about 1/4 in per foot; the text "
                            "itself was only seen in fragments"},
      .grade = Grade::partial,
      .why = "On a steeper floor a chair rolls off by itself.",
      .unit = "%",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
