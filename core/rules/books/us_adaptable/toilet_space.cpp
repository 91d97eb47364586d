#include "core/rules/checks/toilet_space.h"

namespace elbowroom::us_adaptable {

using namespace literals;

// A side wall is not required; a vanity up to 24 in deep may reach in when 33 in stay free.
Rule toiletSpace() {
  return {
      .id = "toilet-space",
      .book = "us-adaptable",
      .title = "clear space about it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 48_in,
      .measure = checks::toiletSpacesEitherSide,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.1.2",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes before or beside the seat.",
      .limit_words = "48 in wide and 56 in deep (66 in where one comes from the front)",
      .sizes = {56_in, 16_in, 18_in, 24_in, 33_in},
      .variants = {{.setting = "option", .value = "b", .off = true},
                   {.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
