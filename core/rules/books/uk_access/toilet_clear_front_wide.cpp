#include "core/rules/checks/fronts.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule toiletClearFrontWide() {
  return {
      .id = "toilet-clear-front-wide",
      .book = "uk-access",
      .title = "floor before it, better",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 1100_mm,
      .measure = checks::toiletFronts,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "",
                 .read_at = "accesscode.info, toilets at the entrance level"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes before the seat with the door closed.",
      .variants = {{.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
