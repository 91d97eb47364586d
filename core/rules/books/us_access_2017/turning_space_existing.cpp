#include "core/rules/checks/room.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule turningSpaceExisting() {
  return {
      .id = "turning-space-existing",
      .book = "us-access-2017",
      .title = "turning circle",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::turningSpace,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "304.3.1.2",
                 .read_at = "ICC page of significant changes and two consultants' articles"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair can turn round instead of backing out.",
      .variants = {{.setting = "building", .value = "new", .off = true}},
  };
}

}  // namespace elbowroom::us_access_2017
