#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule receptacleGfci() {
  return {
      .id = "receptacle-gfci",
      .book = "us-electrical",
      .title = "earth fault protection (GFCI)",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::receptaclesGfci,
      .source = {.document = "NEC",
                 .edition = "2020 and later",
                 .section = "210.8(A)(1)",
                 .read_at = "expertce.com; electricallicenserenewal.com section 16"},
      .grade = Grade::verifiedSecondHand,
      .why = "Wet hands and current are a deadly pair, and this protection cuts the current in time.",
      .variants = {{.setting = "edition",
                    .value = "2017",
                    .source = Source{.document = "NEC",
                                     .edition = "2017 and earlier",
                                     .section = "210.8(A)(1)",
                                     .read_at = "electricallicenserenewal.com section 16"}},
                   {.setting = "edition",
                    .value = "2011",
                    .source = Source{.document = "NEC",
                                     .edition = "2017 and earlier",
                                     .section = "210.8(A)(1)",
                                     .read_at = "electricallicenserenewal.com section 16"}},
                   {.setting = "edition",
                    .value = "2008",
                    .source = Source{.document = "NEC",
                                     .edition = "2017 and earlier",
                                     .section = "210.8(A)(1)",
                                     .read_at = "electricallicenserenewal.com section 16"}}},
      .mends = {Mend::state},
      .met = "is protected by a GFCI",
      .missed = "is not protected by a GFCI",
  };
}

}  // namespace elbowroom::us_electrical
