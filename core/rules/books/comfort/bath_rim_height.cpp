#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule bathRimHeight() {
  return {
      .id = "bath-rim-height",
      .book = "comfort",
      .title = "rim to lean over",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::rimsOfBaths,
      .source = {.document = "Body sizes of the US Army survey ANSUR II",
                 .edition = "2012",
                 .section = "",
                 .read_at = "hip of an adult who kneels, 0.238 of the stature (5 % 14.3, 95 % 17.8 in), "
                            "derived from the public data"},
      .grade = Grade::derived,
      .why = "Over a rim higher than the hip one cannot reach a child in the water.",
      .limit_words = "the hip of an adult who kneels",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
