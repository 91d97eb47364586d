#include "core/rules/checks/windows.h"

namespace elbowroom::us_residential {

using namespace literals;

// A bottom edge of exactly 60 in is exempt, a distance of exactly 60 in is not.
Rule windowSafetyGlass() {
  return {
      .id = "window-safety-glass",
      .book = "us-residential",
      .title = "window",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::glassNearWater,
      .source = {.document = "IRC",
                 .edition = "2021",
                 .section = "R308.4.5",
                 .read_at = "thebuildingcodeforum.com 37105 on the change to \"adjacent to\"; 14427 (2009 "
                            "text) and 37245 for the figures"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wet floor makes people slip, and plain glass cuts.",
      .sizes = {60_in, 60_in},
      .variants = {{.setting = "edition", .value = "2018", .off = true},
                   {.setting = "edition", .value = "2009", .off = true},
                   {.setting = "edition", .value = "2006", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
