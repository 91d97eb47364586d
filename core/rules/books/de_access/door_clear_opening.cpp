#include "core/rules/checks/doors.h"

namespace elbowroom::de_access {

using namespace literals;

Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "de-access",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 800_mm,
      .measure = checks::doorClearOpenings,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "kurzeantworten.com and aktion-barrierefreies-bad.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair or a walker passes, with hands on the wheels.",
      .variants = {{.setting = "use", .value = "wheelchair", .limit = 900_mm}},
  };
}

}  // namespace elbowroom::de_access
