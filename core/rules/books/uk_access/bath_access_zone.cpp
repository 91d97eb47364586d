#include "core/rules/checks/bath_space.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule bathAccessZone() {
  return {
      .id = "bath-access-zone",
      .book = "uk-access",
      .title = "access zone along it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 700_mm,
      .measure = checks::bathAnyStretches,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "diagram 2.5",
                 .read_at = "two public files that cite diagram 2.5"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair or a helper comes beside the bath.",
      .limit_words = "700 mm wide over 1100 mm of its length",
      .sizes = {1100_mm},
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
