#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathRimFree() {
  return {
      .id = "bath-rim-free",
      .book = "us-access",
      .title = "free rim",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::bathRimsFree,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.7",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Whoever moves over from a chair slides across the rim.",
      .met = "no track runs along its rim",
      .missed = "a track runs along its rim",
  };
}

}  // namespace elbowroom::us_access
