#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule mirrorBottom() {
  return {
      .id = "mirror-bottom",
      .book = "us-access",
      .title = "lower edge",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 35_in,
      .measure = checks::mirrorBottomsElsewhere,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "603.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who sits sees themselves.",
      .limit_words = "35 in, where no basin or counter is under it",
  };
}

}  // namespace elbowroom::us_access
