#include "core/rules/checks/toilet_space.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule toiletNearSide() {
  return {
      .id = "toilet-near-side",
      .book = "uk-access",
      .title = "centreline to the nearer side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 450_mm,
      .measure = checks::toiletNearSides,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "",
                 .read_at = "accesscode.info, toilets at the entrance level"},
      .grade = Grade::verifiedSecondHand,
      .why = "There is room for the arm, and for a rail.",
      .variants = {{.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
