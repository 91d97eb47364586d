#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule controlReachOver() {
  return {
      .id = "control-reach-over",
      .book = "us-access",
      .title = "height that one reaches over",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 34_in,
      .measure = checks::reachesOver,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "308.3.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who sits reaches over what is no higher than this.",
  };
}

}  // namespace elbowroom::us_access
