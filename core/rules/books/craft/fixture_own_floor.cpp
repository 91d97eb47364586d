#include "core/rules/checks/floor.h"

namespace elbowroom::craft {

Rule fixtureOwnFloor() {
  return {
      .id = "fixture-own-floor",
      .book = "craft",
      .title = "floor of its own",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::ownFloor,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "Two things cannot stand in the same place, and nothing can stand in a wall.",
  };
}

}  // namespace elbowroom::craft
