#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule basinHeightAdults() {
  return {
      .id = "basin-height-adults",
      .book = "comfort",
      .title = "height of the rim for those who use it",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = Length{},
      .limit_high = Length{},
      .measure = checks::basinHeightsForAdults,
      .source = {.document = "Ergonomics course on work heights",
                 .edition = "",
                 .section = "",
                 .read_at = "studyres.com document 8656229: 2 to 4 in below the elbow; elbow 0.617 of the "
                            "stature, ANSUR II"},
      .grade = Grade::derived,
      .why = "Too low a basin bends the back, too high a one wets the sleeves.",
      .limit_words = "2 to 4 in below the elbow",
      .mends = {Mend::raise, Mend::lower},
  };
}

}  // namespace elbowroom::comfort
