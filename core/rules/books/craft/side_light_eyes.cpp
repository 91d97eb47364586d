#include "core/rules/checks/mirrors.h"

namespace elbowroom::craft {

Rule sideLightEyes() {
  return {
      .id = "side-light-eyes",
      .book = "craft",
      .title = "centre at the eyes it is set to",
      .level = Level::craft,
      .compare = Compare::between,
      .limit = Length{},
      .limit_high = Length{},
      .measure = checks::sideLightEyes,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade "
                            "association",
                 .edition = "2012 revision",
                 .section = "Guideline 25",
                 .read_at = "design standards booklet page 69: beside the mirror at eye "
                            "level; eye height by ANSUR II"},
      .grade = Grade::derived,
      .why = "Light from above or below leaves shadows on the face.",
      .limit_words = "the eyes within its height",
  };
}

}  // namespace elbowroom::craft
