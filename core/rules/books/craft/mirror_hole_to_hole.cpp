#include "core/rules/checks/mirrors.h"

namespace elbowroom::craft {

Rule mirrorHoleToHole() {
  return {
      .id = "mirror-hole-to-hole",
      .book = "craft",
      .title = "glass between two holes of the mirror",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::mirrorHolesApart,
      .source = {.document = "Fabricator's table for toughened glass",
                 .edition = "",
                 .section = "",
                 .read_at = "wagnercompanies.com, drilling tempered glass; "
                            "germansystemwindows.com says the same"},
      .grade = Grade::verifiedSecondHand,
      .why = "The bridge between two holes breaks first.",
      .limit_words = "twice the thickness of the glass, at least 3/8 in",
  };
}

}  // namespace elbowroom::craft
