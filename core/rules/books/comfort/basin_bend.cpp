#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

Rule basinBend() {
  return {
      .id = "basin-bend",
      .book = "comfort",
      .title = "floor to bend over it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::bendingAtBasins,
      .source = {.document = "Trade article on the placement of bath fixtures",
                 .edition = "",
                 .section = "",
                 .read_at = "supplyht.com article 92491 (20 in to wash the face); a wheelchair 42 in long "
                            "and 6 in of toes, 1991 ADA Standards A4.2.4"},
      .grade = Grade::verifiedSecondHand,
      .why = "Washing the face takes more floor than washing the hands, and a wheelchair more still.",
      .limit_words = "20 in standing, the length of a wheelchair sitting",
      .mends = {Mend::slide, Mend::turn},
  };
}

}  // namespace elbowroom::comfort
