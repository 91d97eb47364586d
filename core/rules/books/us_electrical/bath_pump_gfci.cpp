#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule bathPumpGfci() {
  return {
      .id = "bath-pump-gfci",
      .book = "us-electrical",
      .title = "GFCI of its pump",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pumpsGfci,
      .source = {.document = "NEC",
                 .edition = "2011 and later",
                 .section = "680.71",
                 .read_at = "ecmweb.com on the changes of 2011; forums.mikeholt.com 132138 (text of 2017)"},
      .grade = Grade::verifiedSecondHand,
      .why = "A faulty pump puts its current into the water one sits in.",
      .variants = {{.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::state},
      .met = "its pump is protected by a GFCI within reach",
      .missed = "its pump is not protected by a GFCI within reach",
  };
}

}  // namespace elbowroom::us_electrical
