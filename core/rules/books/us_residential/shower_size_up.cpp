#include "core/rules/checks/shower_up.h"

namespace elbowroom::us_residential {

using namespace literals;

// The size is kept up to 70 in above the drain; what is fixed to the walls is excepted, so in a plan only a
// sloped ceiling takes of it. Exception 2 as for the whole inside (shower-size).
Rule showerSizeUp() {
  return {
      .id = "shower-size-up",
      .book = "us-residential",
      .title = "room for a disc, kept up to 70 in",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::showerDiscsUp,
      .source =
          {.document = "IRC",
           .edition = "edition not named",
           .section = "P2708.1",
           .read_at =
               "homeownersnetwork, page on plumbing fixtures; exception 2 at howtolookatahouse.com 2018/6"},
      .grade = Grade::verifiedSecondHand,
      .why = "A shower that is narrow at the shoulders is a narrow shower.",
      .sizes = {70_in, 25_in},
      .mends = {Mend::slide, Mend::wider},
  };
}

}  // namespace elbowroom::us_residential
