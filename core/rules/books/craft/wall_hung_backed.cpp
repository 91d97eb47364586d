#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

Rule wallHungBacked() {
  return {
      .id = "wall-hung-backed",
      .book = "craft",
      .title = "backing behind it",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::wallHungBacked,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "trade articles: engineerfix.com on a floating bench, eatsip365.com on a wall-mount "
                            "sink (2 by 6 or 2 by 8 between the studs)"},
      .grade = Grade::commonPractice,
      .why = "It pulls at its screws with its own weight and that of whoever leans or sits on it.",
      .mends = {Mend::state},
      .met = "there is backing behind it",
      .missed = "no backing is behind it",
  };
}

}  // namespace elbowroom::craft
