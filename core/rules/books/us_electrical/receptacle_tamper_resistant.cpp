#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule receptacleTamperResistant() {
  return {
      .id = "receptacle-tamper-resistant",
      .book = "us-electrical",
      .title = "tamper resistance",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::receptaclesTamperResistant,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "406.12",
                 .read_at = "handout of a US city on bathroom remodels (spotidoc.com 163327)"},
      .grade = Grade::verified,
      .why = "Shutters keep a pin in a small hand out.",
      .mends = {Mend::state},
      .met = "is tamper-resistant",
      .missed = "is not tamper-resistant",
  };
}

}  // namespace elbowroom::us_electrical
