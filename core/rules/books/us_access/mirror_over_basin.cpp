#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule mirrorOverBasin() {
  return {
      .id = "mirror-over-basin",
      .book = "us-access",
      .title = "lower edge",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 40_in,
      .measure = checks::mirrorBottomsOverBasins,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "603.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who sits sees their face over the basin.",
  };
}

}  // namespace elbowroom::us_access
