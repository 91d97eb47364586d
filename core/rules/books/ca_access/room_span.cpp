#include "core/rules/checks/access_room.h"

namespace elbowroom::ca_access {

using namespace literals;

Rule roomSpan() {
  return {
      .id = "room-span",
      .book = "ca-access",
      .title = "wall to wall",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1700_mm,
      .measure = checks::roomSpans,
      .source = {.document = "Ontario Building Code",
                 .edition = "2012 as amended to 2017",
                 .section = "3.8.3.12(1)(f)",
                 .read_at = "company page that quotes 3.8.3.12"},
      .grade = Grade::verifiedSecondHand,
      .why = "The room is wide enough both ways for a wheelchair and a helper.",
      .variants = {{.setting = "text", .value = "csa", .off = true}},
  };
}

}  // namespace elbowroom::ca_access
