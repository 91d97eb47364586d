#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toiletHelper() {
  return {
      .id = "toilet-helper",
      .book = "comfort",
      .title = "place for a helper beside it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 18_in,
      .measure = checks::helperBesideToilets,
      .source = {.document = "Trade article on the placement of bath fixtures",
                 .edition = "",
                 .section = "",
                 .read_at = "supplyht.com article 92491: 18 in for one who stands, taken beside the toilet"},
      .grade = Grade::derived,
      .why = "Whoever helps somebody from a wheelchair has to stand beside the seat.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::comfort
