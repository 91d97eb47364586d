#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

Rule basinPipesCovered() {
  return {
      .id = "basin-pipes-covered",
      .book = "us-access",
      .title = "pipes covered",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pipesCovered,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "606.5",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Legs that cannot feel heat do not burn on the drain.",
  };
}

}  // namespace elbowroom::us_access
