#include "core/rules/checks/shower_doors.h"

namespace elbowroom::us_uniform {

// Later editions have no such words; in which one they went was not found.
Rule showerDoorOutward() {
  return {
      .id = "shower-door-outward",
      .book = "us-uniform",
      .title = "shower door",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::showerDoorsOutward,
      .source = {.document = "CPC (California, after the UPC)",
                 .edition = "earlier editions",
                 .section = "",
                 .read_at = "thebuildingcodeforum.com 34175, on a text that later editions dropped"},
      .grade = Grade::verifiedSecondHand,
      .why = "A person who has fallen inside must not block the door.",
      .variants = {{.setting = "edition", .value = "2024", .off = true},
                   {.setting = "edition", .value = "2021", .off = true}},
      .met = "its door opens outward",
      .missed = "its door opens inward",
  };
}

}  // namespace elbowroom::us_uniform
