#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

Rule showerCentreFall() {
  return {
      .id = "shower-centre-fall",
      .book = "comfort",
      .title = "steepest fall to a drain in the middle",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Amount{4167},
      .measure = checks::centreFalls,
      .source = {.document = "Arithmetic of a floor that falls to its middle",
                 .edition = "",
                 .section = "",
                 .read_at = "1/4 in per foot from the corners must not exceed 1/2 in per foot on the "
                            "short way; both limits at greenbuildingadvisor.com"},
      .grade = Grade::derived,
      .why = "A long narrow shower with one drain in the middle gets a floor one slips on.",
      .unit = "%",
      .mends = {Mend::state, Mend::narrower},
  };
}

}  // namespace elbowroom::comfort
