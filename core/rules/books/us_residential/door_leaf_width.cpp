#include "core/rules/checks/rooms.h"

namespace elbowroom::us_residential {

using namespace literals;

// The model code asks nothing of a bathroom door; one state does, and lets an existing one be 24 in.
Rule doorLeafWidth() {
  return {
      .id = "door-leaf-width",
      .book = "us-residential",
      .title = "leaf",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 28_in,
      .measure = checks::doorLeaves,
      .source = {.document = "780 CMR (Massachusetts)",
                 .edition = "edition not named",
                 .section = "",
                 .read_at = "thebuildingcodeforum.com thread on doors less than 32 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "Narrower doors stop a walker, a child seat and most furniture.",
      .variants = {{.setting = "state", .value = "none", .off = true},
                   {.setting = "state", .value = "california", .off = true},
                   {.setting = "state", .value = "minnesota", .off = true},
                   {.setting = "state", .value = "chicago", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
