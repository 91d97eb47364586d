#include "core/rules/checks/headroom.h"

namespace elbowroom::us_residential {

using namespace literals;

// Only under a sloped ceiling: 21 by 24 in before a toilet or basin, 24 by 30 in before and within a bath or
// shower. Which of the two sides of a figure runs ahead is not said; taken as written.
Rule ceilingBeforeAndIn() {
  return {
      .id = "ceiling-before-and-in",
      .book = "us-residential",
      .title = "ceiling before it and in it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 76_in,
      .measure = checks::ceilingsBeforeAndIn,
      .source = {.document = "R305.1 as amended by a state",
                 .edition = "Minnesota, from memory",
                 .section = "",
                 .read_at = "the text of an amended R305.1 at bookerpicdecor.blogspot.com/2021/12; that it "
                            "is that state's is from memory"},
      .grade = Grade::memory,
      .why = "Under a roof a person stands before a fixture, and in a shower, for longer than anywhere else.",
      .sizes = {21_in, 24_in, 24_in, 30_in},
      .variants = {{.setting = "state", .value = "none", .off = true},
                   {.setting = "state", .value = "massachusetts", .off = true},
                   {.setting = "state", .value = "california", .off = true},
                   {.setting = "state", .value = "chicago", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
