#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule toiletKnees() {
  return {
      .id = "toilet-knees",
      .book = "comfort",
      .title = "room for the knees in front",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::kneesAtToilets,
      .source = {.document = "Body sizes of the US Army survey ANSUR II",
                 .edition = "2012",
                 .section = "",
                 .read_at = "buttock to knee, 0.352 of the stature, from memory; the seat taken as 8 in "
                            "shorter than the toilet where the tank is not stated"},
      .grade = Grade::memory,
      .why = "Whoever sits back on the seat needs room for the knees before there is any to stand up.",
      .limit_words = "the knees of whoever sits there",
      .mends = {Mend::slide, Mend::turn},
  };
}

}  // namespace elbowroom::comfort
