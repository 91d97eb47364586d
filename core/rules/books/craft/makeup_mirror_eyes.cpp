#include "core/rules/checks/mirrors.h"

namespace elbowroom::craft {

Rule makeupMirrorEyes() {
  return {
      .id = "makeup-mirror-eyes",
      .book = "craft",
      .title = "centre at the eyes it is set to",
      .level = Level::craft,
      .compare = Compare::between,
      .limit = Length{},
      .limit_high = Length{},
      .measure = checks::makeupMirrorEyes,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "common practice: centred on the eyes; eye height by ANSUR II, "
                            "of children by growth charts"},
      .grade = Grade::commonPractice,
      .why = "A small mirror shows a face only from straight before it.",
      .limit_words = "the eyes within its height",
  };
}

}  // namespace elbowroom::craft
