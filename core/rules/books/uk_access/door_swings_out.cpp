#include "core/rules/checks/stated.h"

namespace elbowroom::uk_access {

// Older guidance on dwellings that one can visit.
Rule doorSwingsOut() {
  return {
      .id = "door-swings-out",
      .book = "uk-access",
      .title = "door opens outward",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsSwingOut,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "",
                 .read_at = "accesscode.info, toilets at the entrance level"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody who falls against the door can still be reached.",
      .variants = {{.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
