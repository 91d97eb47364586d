#include "core/rules/checks/doors.h"

namespace elbowroom::us_residential {

using namespace literals;

// The text speaks of the doorway; read as the opening with the door open, as the standards for wheelchairs
// read it.
Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "us-residential",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 32_in,
      .measure = checks::doorClearOpenings,
      .source = {.document = "CRC (California)",
                 .edition = "from 2024-07-01",
                 .section = "R327.1.1 and R327.1.3",
                 .read_at =
                     "ene-smarthome.com, a builder's page; bill SB 280 at app.legiplex.com for its intent"},
      .grade = Grade::verifiedSecondHand,
      .why = "At least one bathroom on the entry level of a new dwelling lets a walker or wheelchair in.",
      .variants = {{.setting = "state", .value = "none", .off = true},
                   {.setting = "state", .value = "massachusetts", .off = true},
                   {.setting = "state", .value = "minnesota", .off = true},
                   {.setting = "state", .value = "chicago", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
