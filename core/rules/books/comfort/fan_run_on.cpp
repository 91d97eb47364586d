#include "core/rules/checks/fans.h"

namespace elbowroom::comfort {

Rule fanRunOn() {
  return {
      .id = "fan-run-on",
      .book = "comfort",
      .title = "time it runs on after use",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Amount::of(20),
      .measure = checks::fanRunOns,
      .source = {.document = "Home ventilation guidance",
                 .edition = "",
                 .section = "",
                 .read_at = "ahahome.org and hometalk.com on bathroom ventilation: 20 min after use"},
      .grade = Grade::verifiedSecondHand,
      .why = "Five or ten minutes leave a quarter to a half of the moisture in the room.",
      .unit = "min",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
