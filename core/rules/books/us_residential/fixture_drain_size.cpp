#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule fixtureDrainSize() {
  return {
      .id = "fixture-drain-size",
      .book = "us-residential",
      .title = "size of its drain",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 1.25_in,
      .measure = checks::drainSizes,
      .source = {.document = "IRC",
                 .edition = "from memory",
                 .section = "Table P3201.7",
                 .read_at = "from memory"},
      .grade = Grade::memory,
      .why = "A drain too small for its fixture clogs.",
      .limit_words = "by the kind of fixture",
      .sizes = {3_in, 1.25_in, 1.5_in, 2_in},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
