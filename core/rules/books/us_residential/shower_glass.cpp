#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

Rule showerGlass() {
  return {
      .id = "shower-glass",
      .book = "us-residential",
      .title = "glass of the enclosure",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::enclosureGlass,
      .source = {.document = "IRC",
                 .edition = "2009 and later",
                 .section = "R308.4.5",
                 .read_at = "thebuildingcodeforum.com 14427 (2009 text)"},
      .grade = Grade::verifiedSecondHand,
      .why = "People fall against it, and plain glass cuts.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
