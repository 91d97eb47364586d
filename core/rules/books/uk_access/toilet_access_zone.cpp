#include "core/rules/checks/clear_floor.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule toiletAccessZone() {
  return {
      .id = "toilet-access-zone",
      .book = "uk-access",
      .title = "access zone before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1100_mm,
      .measure = checks::toiletFrontStrips,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "diagram 2.5",
                 .read_at = "two public files that cite diagram 2.5"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes before the seat and a little beside it.",
      .limit_words = "1100 mm deep, from 350 mm on one side of the centreline to 1000 mm on the other",
      .sizes = {350_mm, 1000_mm, Length{}, 200_mm, 300_mm},
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
