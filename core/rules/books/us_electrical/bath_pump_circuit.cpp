#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule bathPumpCircuit() {
  return {
      .id = "bath-pump-circuit",
      .book = "us-electrical",
      .title = "circuit of its pump",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pumpCircuits,
      .source = {.document = "NEC",
                 .edition = "2011 and later",
                 .section = "680.71",
                 .read_at = "ecmweb.com on the changes of 2011; forums.mikeholt.com 132138 (text of 2017)"},
      .grade = Grade::verifiedSecondHand,
      .why = "A pump that shares its circuit trips it while one sits in the bath.",
      .variants = {{.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::state},
      .met = "its pump has a circuit of its own",
      .missed = "its pump shares its circuit",
  };
}

}  // namespace elbowroom::us_electrical
