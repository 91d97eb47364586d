#include "core/rules/checks/access_room.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule roomSpan() {
  return {
      .id = "room-span",
      .book = "uk-access",
      .title = "wall to wall",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1500_mm,
      .measure = checks::roomSpans,
      .source = {.document = "Approved Document M",
                 .edition = "volume 2",
                 .section = "",
                 .read_at = "cae.org.uk, corner WC"},
      .grade = Grade::verifiedSecondHand,
      .why = "A room of 2200 by 1500 mm holds toilet, basin and a wheelchair.",
      .variants = {{.setting = "room",
                    .value = "enlarged",
                    .limit = 2000_mm,
                    .source =
                        Source{.document = "Approved Document M",
                               .edition = "volume 2",
                               .section = "",
                               .read_at = "dolphinsolutions.co.uk, enlarged unisex WC of 2200 by 2000 mm"}},
                   {.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
