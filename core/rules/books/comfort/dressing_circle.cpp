#include "core/rules/checks/room.h"

namespace elbowroom::comfort {

using namespace literals;

Rule dressingCircle() {
  return {
      .id = "dressing-circle",
      .book = "comfort",
      .title = "circle to dress and dry in",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 42_in,
      .measure = checks::dressingSpace,
      .source = {.document = "Trade article on the placement of bath fixtures",
                 .edition = "",
                 .section = "",
                 .read_at = "supplyht.com article 92491 (42 to 48 in)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Arms and towels swing wide; below this one dresses in the hall.",
      .variants = {{.setting = "figures", .value = "ample", .limit = 48_in}},
  };
}

}  // namespace elbowroom::comfort
