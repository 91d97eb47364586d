#include "core/rules/checks/windows.h"

namespace elbowroom::us_residential {

using namespace literals;

// These editions name walls that face the opening; the later one all that are adjacent (window-safety-
// glass).
Rule windowSafetyGlassFacing() {
  return {
      .id = "window-safety-glass-facing",
      .book = "us-residential",
      .title = "window",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::glassFacingWater,
      .source = {.document = "IRC",
                 .edition = "2009 to 2018",
                 .section = "R308.4.5",
                 .read_at = "thebuildingcodeforum.com 14427 (2009 text) and 37105"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wet floor makes people slip, and plain glass cuts.",
      .sizes = {60_in, 60_in},
      .variants = {{.setting = "edition", .value = "2021", .off = true},
                   {.setting = "edition", .value = "2006", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
