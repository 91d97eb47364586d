#include "core/rules/checks/drainage.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule trapArmLeast() {
  return {
      .id = "trap-arm-least",
      .book = "us-uniform",
      .title = "least pipe from the trap to the vent",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 4_in,
      .measure = checks::trapArmsLeast,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "",
                 .read_at = "jlconline.com on locating plumbing vents; section not read"},
      .grade = Grade::verifiedSecondHand,
      .why = "A vent too near to the trap fouls.",
      .limit_words = "twice the size of the drain",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
