#include "core/rules/checks/seated_reach.h"

namespace elbowroom::ca_access {

using namespace literals;

Rule mirrorBottom() {
  return {
      .id = "mirror-bottom",
      .book = "ca-access",
      .title = "lower edge",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 1000_mm,
      .measure = checks::mirrorLowerEdges,
      .source = {.document = "Ontario Building Code",
                 .edition = "2012 as amended to 2017",
                 .section = "3.8.3.12(1)(j)",
                 .read_at = "company page that quotes 3.8.3.12"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody who sits sees their face.",
      .variants = {{.setting = "text", .value = "national", .off = true}, {.setting = "text", .value = "csa", .off = true}},
  };
}

}  // namespace elbowroom::ca_access
