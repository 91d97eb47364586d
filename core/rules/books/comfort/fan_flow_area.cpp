#include "core/rules/checks/fans.h"

namespace elbowroom::comfort {

Rule fanFlowArea() {
  return {
      .id = "fan-flow-area",
      .book = "comfort",
      .title = "air for the size of the room",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Amount{},
      .measure = checks::roomAirByFloor,
      .source = {.document = "Home Ventilating Institute",
                 .edition = "",
                 .section = "",
                 .read_at = "checkthishouse.com and a copy of its bathroom text: 1 cfm per sq ft up to "
                            "100 sq ft; 50 cfm is the least by code"},
      .grade = Grade::verifiedSecondHand,
      .why = "Eight changes of air an hour carry the moisture out before it settles.",
      .limit_words = "1 cfm per square foot, at least 50",
      .unit = "cfm",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
