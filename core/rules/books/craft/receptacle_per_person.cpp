#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

Rule receptaclePerPerson() {
  return {
      .id = "receptacle-per-person",
      .book = "craft",
      .title = "receptacles at a basin for two",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Count{2},
      .measure = checks::receptaclesPerPerson,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "common practice: one on each side of a double basin; within 36 "
                            "in of the basin by planning guideline 24"},
      .grade = Grade::commonPractice,
      .why = "Two people dry their hair at the same time; two dryers also need two circuits, which is for "
             "a licensed electrician.",
      .limit_words = "one for each basin",
  };
}

}  // namespace elbowroom::craft
