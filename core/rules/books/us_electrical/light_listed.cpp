#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule lightListed() {
  return {
      .id = "light-listed",
      .book = "us-electrical",
      .title = "listing for damp places",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::lightsDamp,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "410.10(D)",
                 .read_at = "rapidrepairs247.com; a trade article that follows the change since 2005"},
      .grade = Grade::verifiedSecondHand,
      .why = "Steam gets into a lamp that is not made for it.",
      .sizes = {96_in},
      .variants = {{.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::state},
      .met = "is listed for damp or wet places",
      .missed = "is not listed for damp places",
  };
}

}  // namespace elbowroom::us_electrical
