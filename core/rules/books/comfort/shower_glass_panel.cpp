#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerGlassPanel() {
  return {
      .id = "shower-glass-panel",
      .book = "comfort",
      .title = "narrowest fixed glass",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 4.5_in,
      .measure = checks::fixedGlassWidths,
      .source = {.document = "Trade articles on shower glass",
                 .edition = "",
                 .section = "",
                 .read_at = "askingfact.com on the least width of shower doors and panels"},
      .grade = Grade::verifiedSecondHand,
      .why = "A narrower strip of glass cannot be held and cut safely; a wider door or a wall takes its place.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
