#include "core/rules/checks/access_room.h"

namespace elbowroom::uk_access {

using namespace literals;

// A basin may reach into the circle by 200 mm when nothing stands under it.
Rule turningSpace() {
  return {
      .id = "turning-space",
      .book = "uk-access",
      .title = "turning circle",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1500_mm,
      .measure = checks::circleUnderBasins,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "3.43e",
                 .read_at = "building control questions and answers"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair can turn round with the door closed.",
      .sizes = {200_mm},
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
