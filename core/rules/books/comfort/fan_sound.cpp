#include "core/rules/checks/fans.h"

namespace elbowroom::comfort {

Rule fanSound() {
  return {
      .id = "fan-sound",
      .book = "comfort",
      .title = "loudness",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Amount::of(3),
      .measure = checks::fanLoudness,
      .source = {.document = "Building America Solution Center",
                 .edition = "",
                 .section = "",
                 .read_at = "basc.pnnl.gov on ratings of intermittent and of continuous fans: 3 and 1.0 "
                            "sones"},
      .grade = Grade::verifiedSecondHand,
      .why = "A loud fan is switched off before it has done its work.",
      .unit = "sones",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
