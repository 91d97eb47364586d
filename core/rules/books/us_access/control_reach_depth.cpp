#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule controlReachDepth() {
  return {
      .id = "control-reach-depth",
      .book = "us-access",
      .title = "depth that one reaches across",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 25_in,
      .measure = checks::reachesAcross,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "308.2.2 and 308.3.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "An arm is not longer than that for somebody who sits.",
      .limit_words = "25 in with knees under it, else 24 in",
      .sizes = {24_in},
  };
}

}  // namespace elbowroom::us_access
