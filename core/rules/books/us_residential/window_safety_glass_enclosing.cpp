#include "core/rules/checks/windows.h"

namespace elbowroom::us_residential {

using namespace literals;

// These editions name walls that enclose a bath or shower, and no distance.
Rule windowSafetyGlassEnclosing() {
  return {
      .id = "window-safety-glass-enclosing",
      .book = "us-residential",
      .title = "window",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::glassNearWater,
      .source = {.document = "IRC",
                 .edition = "2003 and 2006",
                 .section = "R308.4.5",
                 .read_at = "inspectorsjournal.com 10587; thebuildingcodeforum.com 37105"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wet floor makes people slip, and plain glass cuts.",
      .sizes = {60_in, 1_in},
      .variants = {{.setting = "edition", .value = "2021", .off = true},
                   {.setting = "edition", .value = "2018", .off = true},
                   {.setting = "edition", .value = "2009", .off = true}},
      .met = "safety glass in a wall around water",
      .missed = "plain glass in a wall around water",
  };
}

}  // namespace elbowroom::us_residential
