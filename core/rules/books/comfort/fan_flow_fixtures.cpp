#include "core/rules/checks/fans.h"

namespace elbowroom::comfort {

Rule fanFlowFixtures() {
  return {
      .id = "fan-flow-fixtures",
      .book = "comfort",
      .title = "air for the fixtures of a large room",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Amount{},
      .measure = checks::roomAirByFixtures,
      .source = {.document = "Home Ventilating Institute",
                 .edition = "",
                 .section = "",
                 .read_at = "checkthishouse.com and a copy of its bathroom text: above 100 sq ft by "
                            "fixtures"},
      .grade = Grade::verifiedSecondHand,
      .why = "In a large room the fixtures make the moisture, not the floor.",
      .limit_words = "50 cfm each for toilet, shower and bath, 100 for a bath with a pump",
      .unit = "cfm",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
