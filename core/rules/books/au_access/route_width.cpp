#include "core/rules/checks/routes.h"

namespace elbowroom::au_access {

using namespace literals;

Rule routeWidth() {
  return {
      .id = "route-width",
      .book = "au-access",
      .title = "way to it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1000_mm,
      .measure = checks::routeWidths,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "consultant's audit checklist"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair gets from the door to it.",
      .variants = {{.setting = "text", .value = "livable", .off = true}},
  };
}

}  // namespace elbowroom::au_access
