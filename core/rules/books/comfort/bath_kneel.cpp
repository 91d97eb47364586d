#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule bathKneel() {
  return {
      .id = "bath-kneel",
      .book = "comfort",
      .title = "floor to kneel beside it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::kneelingAtBaths,
      .source = {.document = "Body sizes of the US Army survey ANSUR II",
                 .edition = "2012",
                 .section = "",
                 .read_at = "knee to toes with the feet flat, 0.352 of the stature, computed from the "
                            "public data by a model"},
      .grade = Grade::computed,
      .why = "Bathing a child and cleaning the bath are done on the knees.",
      .limit_words = "an adult on the knees, feet flat",
      .mends = {Mend::slide, Mend::turn},
  };
}

}  // namespace elbowroom::comfort
