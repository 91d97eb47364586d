#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

Rule recessOffPipes() {
  return {
      .id = "recess-off-pipes",
      .book = "craft",
      .title = "pipes in its wall",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::recessesOffPipes,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "A pipe that rises where the niche comes has to go round it, or the niche elsewhere.",
      .met = "no pipes run in its wall",
      .missed = "is in a wall with pipes",
  };
}

}  // namespace elbowroom::craft
