#include "core/rules/checks/rooms.h"

namespace elbowroom::comfort {

Rule toiletCompartmentDoor() {
  return {
      .id = "toilet-compartment-door",
      .book = "comfort",
      .title = "door of the compartment",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::compartmentDoors,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 21",
                 .read_at = "design-standards booklet page 64: swing-out or pocket door"},
      .grade = Grade::verifiedSecondHand,
      .why = "A leaf that swings in takes the little floor there is, and nobody can open it against one "
             "who fell.",
      .mends = {Mend::otherSwing, Mend::otherAction},
      .met = "takes no floor of the compartment",
      .missed = "swings into the compartment",
  };
}

}  // namespace elbowroom::comfort
