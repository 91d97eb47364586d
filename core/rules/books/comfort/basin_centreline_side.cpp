#include "core/rules/checks/sides.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinCentrelineSide() {
  return {
      .id = "basin-centreline-side",
      .book = "comfort",
      .title = "centreline to the nearest side",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 20_in,
      .measure = checks::basinSides,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 5",
                 .read_at = "saniterra.pt rule 5; forresidentialpros.com article 10418576"},
      .grade = Grade::verifiedSecondHand,
      .why = "Both elbows stay free of the wall when washing.",
  };
}

}  // namespace elbowroom::comfort
