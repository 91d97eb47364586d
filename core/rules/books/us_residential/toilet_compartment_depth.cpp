#include "core/rules/checks/rooms.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule toiletCompartmentDepth() {
  return {
      .id = "toilet-compartment-depth",
      .book = "us-residential",
      .title = "inside depth of the compartment",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::toiletRoomDepths,
      .source = {.document = "IPC",
                 .edition = "edition not named",
                 .section = "405.3.1",
                 .read_at = "trade association planning standards page 64"},
      .grade = Grade::verifiedSecondHand,
      .why = "In a closed compartment there must be floor to step aside for the door.",
      .variants = {{.setting = "plumbing", .value = "residential", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
