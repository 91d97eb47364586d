#include "core/rules/checks/room.h"

namespace elbowroom::comfort {

using namespace literals;

Rule heatThere() {
  return {
      .id = "heat-there",
      .book = "comfort",
      .title = "a source of heat",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::heatSources,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 27",
                 .read_at = "design-standards booklet page 71: a supplementary source of heat is to be considered"},
      .grade = Grade::verifiedSecondHand,
      .why = "One is wet and undressed here; the heat of the house alone may not do.",
      .met = "has a source of heat",
      .missed = "has no source of heat",
  };
}

}  // namespace elbowroom::comfort
