#include "core/rules/checks/mirrors.h"

namespace elbowroom::craft {

Rule mirrorHoleToEdge() {
  return {
      .id = "mirror-hole-to-edge",
      .book = "craft",
      .title = "glass between a hole and the edge of the mirror",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::mirrorHolesToEdge,
      .source = {.document = "Fabricator's table for toughened glass",
                 .edition = "",
                 .section = "",
                 .read_at = "wagnercompanies.com, drilling tempered glass; "
                            "germansystemwindows.com says the same"},
      .grade = Grade::verifiedSecondHand,
      .why = "A narrow strip of glass breaks while it is drilled or when it is hung.",
      .limit_words = "twice the thickness of the glass, at least 1/4 in",
  };
}

}  // namespace elbowroom::craft
