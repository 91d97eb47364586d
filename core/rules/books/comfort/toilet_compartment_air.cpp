#include "core/rules/checks/fans.h"

namespace elbowroom::comfort {

Rule toiletCompartmentAir() {
  return {
      .id = "toilet-compartment-air",
      .book = "comfort",
      .title = "air for the compartment",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::compartmentAir,
      .source = {.document = "Home Ventilating Institute",
                 .edition = "",
                 .section = "",
                 .read_at = "a copy of its bathroom text: an enclosed toilet wants its own fan or a "
                            "window that opens"},
      .grade = Grade::verifiedSecondHand,
      .why = "The fan of the next room draws nothing through a shut door.",
      .mends = {Mend::state},
      .met = "has a fan or a window that opens",
      .missed = "has no fan and no window that opens",
  };
}

}  // namespace elbowroom::comfort
