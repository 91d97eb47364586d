#include "core/rules/checks/spacing.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinBowlsApart() {
  return {
      .id = "basin-bowls-apart",
      .book = "comfort",
      .title = "room between the basins",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 12_in,
      .measure = checks::basinGaps,
      .source = {.document = "Trade article on basin sizes",
                 .edition = "",
                 .section = "",
                 .read_at = "looacademy.com, standard bathroom sink sizes: at least 12 in between basins; "
                            "taken from edge to edge"},
      .grade = Grade::verifiedSecondHand,
      .why = "Between two basins there is room for elbows and for what is put down.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::comfort
