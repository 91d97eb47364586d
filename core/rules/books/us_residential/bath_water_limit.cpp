#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

Rule bathWaterLimit() {
  return {
      .id = "bath-water-limit",
      .book = "us-residential",
      .title = "hot water limit",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = Amount::of(120),
      .measure = checks::bathValves,
      .source = {.document = "IRC",
                 .edition = "2006",
                 .section = "P2713.3",
                 .read_at = "forum.nachi.org/t/63633"},
      .grade = Grade::verifiedSecondHand,
      .why = "A bath is filled hotter than one notices by hand, and children burn sooner.",
      .unit = "\u00b0F",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
