#include "core/rules/checks/manoeuvring.h"

namespace elbowroom::uk_access {

using namespace literals;

// On the side to which the leaf opens, so for leaves that swing in.
Rule doorNib() {
  return {
      .id = "door-nib",
      .book = "uk-access",
      .title = "wall beside the latch",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 300_mm,
      .measure = checks::doorNibs,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "",
                 .read_at = "building wiki that quotes it"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody in a wheelchair reaches the handle from beside the leaf.",
  };
}

}  // namespace elbowroom::uk_access
