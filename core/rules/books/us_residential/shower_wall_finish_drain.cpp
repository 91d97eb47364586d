#include "core/rules/checks/wet.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule showerWallFinishDrain() {
  return {
      .id = "shower-wall-finish-drain",
      .book = "us-residential",
      .title = "waterproof wall finish above the drain",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 70_in,
      .measure = checks::wallFinishesAboveDrain,
      .source = {.document = "IPC",
                 .edition = "edition not named",
                 .section = "417.4.1",
                 .read_at = "thebuildingcodeforum.com post 208553, the section quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Where the shower floor lies higher than the room, the finish must rise with it.",
      .variants = {{.setting = "plumbing", .value = "residential", .off = true}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
