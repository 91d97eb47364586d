#include "core/rules/checks/windows.h"

namespace elbowroom::us_residential {

Rule windowNotBlocked() {
  return {
      .id = "window-not-blocked",
      .book = "us-residential",
      .title = "window",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::windowsFree,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2705.1 item 6",
                 .read_at = "wording fragment quoted at shopdownhouse.com; item number from memory"},
      .grade = Grade::partial,
      .why = "A window that cannot be reached is never opened.",
  };
}

}  // namespace elbowroom::us_residential
