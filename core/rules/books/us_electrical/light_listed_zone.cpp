#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

// The older text asked it of the whole zone of 3 ft, the newer ones of what is over the bath or shower
// itself.
Rule lightListedZone() {
  return {
      .id = "light-listed-zone",
      .book = "us-electrical",
      .title = "listing for damp places",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::lightsDamp,
      .source = {.document = "NEC",
                 .edition = "2005",
                 .section = "410.4(D)",
                 .read_at = "ecmag.com, article of 2005; forum.nachi.org 10658 (quoted)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Steam gets into a lamp that is not made for it.",
      .sizes = {96_in, 36_in},
      .variants = {{.setting = "edition", .value = "2023", .off = true},
                   {.setting = "edition", .value = "2020", .off = true},
                   {.setting = "edition", .value = "2017", .off = true},
                   {.setting = "edition", .value = "2011", .off = true}},
      .mends = {Mend::state},
      .met = "is listed for damp or wet places",
      .missed = "is not listed for damp places",
  };
}

}  // namespace elbowroom::us_electrical
