#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule storageTopReach() {
  return {
      .id = "storage-top-reach",
      .book = "comfort",
      .title = "top shelf",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::topShelves,
      .source = {.document = "Body sizes of the US Army survey ANSUR II",
                 .edition = "2012",
                 .section = "",
                 .read_at = "overhead fingertip reach, 1.286 of the stature, computed from the public data; "
                            "48 in from a wheelchair, design-standards booklet page 65"},
      .grade = Grade::computed,
      .why = "What nobody in the house can reach is filled with what nobody needs.",
      .limit_words = "the reach of the tallest",
      .mends = {Mend::lower},
  };
}

}  // namespace elbowroom::comfort
