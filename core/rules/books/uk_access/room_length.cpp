#include "core/rules/checks/access_room.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule roomLength() {
  return {
      .id = "room-length",
      .book = "uk-access",
      .title = "longer way from wall to wall",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 2200_mm,
      .measure = checks::roomLengths,
      .source = {.document = "Approved Document M",
                 .edition = "volume 2",
                 .section = "",
                 .read_at = "cae.org.uk, corner WC"},
      .grade = Grade::verifiedSecondHand,
      .why = "A room of 2200 by 1500 mm holds toilet, basin and a wheelchair.",
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
