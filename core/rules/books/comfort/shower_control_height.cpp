#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerControlHeight() {
  return {
      .id = "shower-control-height",
      .book = "comfort",
      .title = "height of its centreline",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 38_in,
      .limit_high = 48_in,
      .measure = checks::showerControlHeights,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 10",
                 .read_at = "nkba.com guidelines page 10"},
      .grade = Grade::verifiedSecondHand,
      .why = "Everybody reaches it without stretching or stooping.",
  };
}

}  // namespace elbowroom::comfort
