#include "core/rules/checks/fans.h"

namespace elbowroom::comfort {

using namespace literals;

Rule fanFlowVolume() {
  return {
      .id = "fan-flow-volume",
      .book = "comfort",
      .title = "air under a high ceiling",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Amount{},
      .measure = checks::roomAirByVolume,
      .source = {.document = "Home Ventilating Institute",
                 .edition = "",
                 .section = "",
                 .read_at = "ahahome.org on bathroom ventilation: volume times 8 / 60; the larger figure "
                            "counts under a high ceiling"},
      .grade = Grade::verifiedSecondHand,
      .why = "A high room holds more air than its floor tells.",
      .limit_words = "8 changes of air an hour",
      .sizes = {96_in},
      .unit = "cfm",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
