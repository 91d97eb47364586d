#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule bathPumpReceptacle() {
  return {
      .id = "bath-pump-receptacle",
      .book = "us-electrical",
      .title = "receptacle from its service opening",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 12_in,
      .measure = checks::pumpReceptacles,
      .source = {.document = "NEC",
                 .edition = "2011 and later",
                 .section = "680.73",
                 .read_at = "ecmweb.com on the changes of 2011; forums.mikeholt.com 132138 (text of 2017)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Whoever repairs the pump has to reach its plug through the opening.",
      .variants = {{.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_electrical
