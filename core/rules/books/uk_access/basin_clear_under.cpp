#include "core/rules/checks/stated.h"

namespace elbowroom::uk_access {

using namespace literals;

// A zone of 400 to 600 mm from the floor to the pipes.
Rule basinClearUnder() {
  return {
      .id = "basin-clear-under",
      .book = "uk-access",
      .title = "clear height under it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 400_mm,
      .measure = checks::kneeHeights,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "3.36h",
                 .read_at = "building control questions and answers"},
      .grade = Grade::verifiedSecondHand,
      .why = "Footrests and knees go in under the basin.",
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
