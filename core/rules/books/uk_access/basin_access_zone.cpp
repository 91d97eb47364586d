#include "core/rules/checks/clear_floor.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule basinAccessZone() {
  return {
      .id = "basin-access-zone",
      .book = "uk-access",
      .title = "access zone before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1100_mm,
      .measure = checks::basinAlongside,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "diagram 2.5",
                 .read_at = "two public files that cite diagram 2.5"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes to the basin.",
      .limit_words = "700 mm wide and 1100 mm deep",
      .sizes = {700_mm},
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
