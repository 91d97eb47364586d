#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

Rule mirrorShowsHead() {
  return {
      .id = "mirror-shows-head",
      .book = "comfort",
      .title = "top edge",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::mirrorTops,
      .source = {.document = "Optics of a mirror and body sizes",
                 .edition = "",
                 .section = "",
                 .read_at = "halfway from eye to crown, ANSUR II ratios"},
      .grade = Grade::derived,
      .why = "The tallest sees the top of the head without stooping.",
      .limit_words = "halfway from the eyes to the crown of the tallest",
  };
}

}  // namespace elbowroom::comfort
