#include "core/rules/checks/toilet_space.h"

namespace elbowroom::ca_access {

using namespace literals;

Rule toiletTransferSide() {
  return {
      .id = "toilet-transfer-side",
      .book = "ca-access",
      .title = "floor beside it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 900_mm,
      .measure = checks::toiletFarEdges,
      .source = {.document = "CSA B651",
                 .edition = "",
                 .section = "",
                 .read_at = "from memory, not checked"},
      .grade = Grade::memory,
      .why = "A wheelchair stands beside the seat and one moves over.",
      .sizes = {3000_mm},
      .variants = {{.setting = "text", .value = "ontario", .off = true},
                   {.setting = "text", .value = "national", .off = true}},
  };
}

}  // namespace elbowroom::ca_access
