#include "core/rules/checks/wet.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerSurroundHeight() {
  return {
      .id = "shower-surround-height",
      .book = "comfort",
      .title = "waterproof finish above the head",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 3_in,
      .measure = checks::wallFinishesAboveHead,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 13",
                 .read_at = "from memory; the wording of this guideline was not seen"},
      .grade = Grade::memory,
      .why = "Spray hits the wall higher than one thinks.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
