#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule basinHeightChildren() {
  return {
      .id = "basin-height-children",
      .book = "comfort",
      .title = "height of the rim for a child",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::basinHeightsForChildren,
      .source = {.document = "Ergonomics course on work heights",
                 .edition = "",
                 .section = "",
                 .read_at = "studyres.com document 8656229: 2 in below the elbow; elbow 0.617 of the "
                            "stature, of children an estimate"},
      .grade = Grade::derived,
      .why = "A child washes its hands alone when the water is below its elbows.",
      .limit_words = "2 in below the elbow",
      .mends = {Mend::lower, Mend::state},
  };
}

}  // namespace elbowroom::comfort
