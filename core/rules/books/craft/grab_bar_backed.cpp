#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule grabBarBacked() {
  return {
      .id = "grab-bar-backed",
      .book = "craft",
      .title = "backing behind it",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::grabBarsBacked,
      .source = {.document = "Trade article on backing for grab bars",
                 .edition = "",
                 .section = "",
                 .read_at = "profixdirectory.com, grab bar blocking; jlconline.com on plywood over "
                            "the whole wall"},
      .grade = Grade::verifiedSecondHand,
      .why = "A bar holds only what it is screwed into; no source found lets 1/2 in plywood alone "
             "carry 250 pounds.",
      .met = "there is backing behind it",
      .missed = "no backing is behind it",
  };
}

}  // namespace elbowroom::craft
