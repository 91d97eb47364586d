#include "core/rules/checks/fronts.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule toiletClearFront() {
  return {
      .id = "toilet-clear-front",
      .book = "uk-access",
      .title = "floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 750_mm,
      .measure = checks::toiletFronts,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "",
                 .read_at = "accesscode.info, toilets at the entrance level"},
      .grade = Grade::verifiedSecondHand,
      .why = "One turns and sits down without stepping back against a wall.",
      .variants = {{.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
