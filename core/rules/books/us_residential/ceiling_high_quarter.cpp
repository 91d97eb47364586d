#include "core/rules/checks/headroom.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule ceilingHighQuarter() {
  return {
      .id = "ceiling-high-quarter",
      .book = "us-residential",
      .title = "floor under a ceiling of 7 ft",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(1),
      .measure = checks::highQuarter,
      .source = {.document = "R305.1 as amended by a state",
                 .edition = "Minnesota, from memory",
                 .section = "",
                 .read_at = "the text of an amended R305.1 at bookerpicdecor.blogspot.com/2021/12; that it "
                            "is that state's is from memory"},
      .grade = Grade::memory,
      .why = "Up to three quarters of the room may lie under the lower part of a slope.",
      .limit_words = "a quarter of the floor",
      .sizes = {84_in},
      .variants = {{.setting = "state", .value = "none", .off = true},
                   {.setting = "state", .value = "massachusetts", .off = true},
                   {.setting = "state", .value = "california", .off = true},
                   {.setting = "state", .value = "chicago", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
