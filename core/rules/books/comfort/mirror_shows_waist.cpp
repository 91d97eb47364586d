#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

Rule mirrorShowsWaist() {
  return {
      .id = "mirror-shows-waist",
      .book = "comfort",
      .title = "lower edge",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::mirrorBottoms,
      .source = {.document = "Optics of a mirror and body sizes",
                 .edition = "",
                 .section = "",
                 .read_at = "halfway from eye to elbow (taken as the waist), ANSUR II ratios"},
      .grade = Grade::derived,
      .why = "The shortest sees clothes and hands, not only a face.",
      .limit_words = "halfway from the eyes to the elbow of the shortest",
  };
}

}  // namespace elbowroom::comfort
