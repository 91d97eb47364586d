#include "core/rules/checks/doors.h"

namespace elbowroom::au_access {

using namespace literals;

Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "au-access",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 850_mm,
      .measure = checks::doorClearOpenings,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "consultant's audit checklist"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair or a walker passes, with hands on the wheels.",
      .variants = {{.setting = "text", .value = "livable", .limit = 820_mm, .source = Source{.document = "Livable Housing Design Standard",
                            .edition = "",
                            .section = "",
                            .read_at = "hia.com.au and kbdi.org.au"}}},
  };
}

}  // namespace elbowroom::au_access
