#include "core/rules/checks/mirrors.h"

namespace elbowroom::craft {

Rule mirrorShowsChild() {
  return {
      .id = "mirror-shows-child",
      .book = "craft",
      .title = "lower edge for a child",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::mirrorsForChildren,
      .source = {.document = "Optics of a mirror and body sizes",
                 .edition = "",
                 .section = "",
                 .read_at = "halfway from eye to chin; growth charts of 2000, eyes 4.3 in "
                            "below the crown"},
      .grade = Grade::derived,
      .why = "A child who sees only its hair climbs on something.",
      .limit_words = "halfway from the eyes to the chin of the smallest child",
  };
}

}  // namespace elbowroom::craft
