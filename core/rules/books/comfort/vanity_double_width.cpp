#include "core/rules/checks/vanities.h"

namespace elbowroom::comfort {

using namespace literals;

Rule vanityDoubleWidth() {
  return {
      .id = "vanity-double-width",
      .book = "comfort",
      .title = "width for two basins",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::doubleVanityWidths,
      .source = {.document = "Trade article on double vanities",
                 .edition = "",
                 .section = "",
                 .read_at = "jlconline.com, when a double vanity just won't fit: 60 in by the code's 15 "
                            "+ 30 + 15, 72 in for comfort"},
      .grade = Grade::verifiedSecondHand,
      .why = "Two people at a narrower one stand elbow in elbow.",
      .variants = {{.setting = "figures", .value = "ample", .limit = 72_in}},
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::comfort
