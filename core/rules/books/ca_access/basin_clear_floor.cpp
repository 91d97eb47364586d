#include "core/rules/checks/clear_floor.h"

namespace elbowroom::ca_access {

using namespace literals;

Rule basinClearFloor() {
  return {
      .id = "basin-clear-floor",
      .book = "ca-access",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1200_mm,
      .measure = checks::basinClearFloors,
      .source = {.document = "Canadian clear floor area",
                 .edition = "2005 state",
                 .section = "",
                 .read_at = "study of standards and anthropometry, table 3"},
      .grade = Grade::verified,
      .why = "A wheelchair rolls up to the basin.",
      .limit_words = "750 mm wide and 1200 mm deep",
      .sizes = {750_mm},
  };
}

}  // namespace elbowroom::ca_access
