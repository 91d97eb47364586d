#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule toiletElbows() {
  return {
      .id = "toilet-elbows",
      .book = "comfort",
      .title = "width for the elbows",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::elbowsAtToilets,
      .source = {.document = "Body sizes of the US Army survey ANSUR II",
                 .edition = "2012",
                 .section = "",
                 .read_at = "elbow to elbow of the 95 % man, 26.3 in, computed from the public data; a "
                            "wheelchair by its width"},
      .grade = Grade::computed,
      .why = "Elbows go out when one sits down and stands up again.",
      .limit_words = "the elbows of whoever sits there",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::comfort
