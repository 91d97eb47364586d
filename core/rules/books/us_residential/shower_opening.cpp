#include "core/rules/checks/wet.h"

namespace elbowroom::us_residential {

using namespace literals;

// The door is taken as wide as the plan says; its hinges and stiles take some of that.
Rule showerOpening() {
  return {
      .id = "shower-opening",
      .book = "us-residential",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 22_in,
      .measure = checks::showerOpenings,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2708.1.1",
                 .read_at = "howtolookatahouse.com 2018/6; section number from memory"},
      .grade = Grade::verifiedSecondHand,
      .why = "One must get in and out, and be helped out, without squeezing.",
  };
}

}  // namespace elbowroom::us_residential
