#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

Rule showerLinearDrain() {
  return {
      .id = "shower-linear-drain",
      .book = "comfort",
      .title = "linear drain for a wheelchair",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::linearDrains,
      .source = {.document = "Arithmetic of a floor that falls to its middle",
                 .edition = "",
                 .section = "",
                 .read_at = "code asks at least 1/4 in per foot, access at most 1:48: only a floor in "
                            "one plane meets both"},
      .grade = Grade::derived,
      .why = "On a floor that falls to a point a chair rolls and tips.",
      .mends = {Mend::state},
      .met = "drains along a line, in one plane",
      .missed = "falls to a point",
  };
}

}  // namespace elbowroom::comfort
