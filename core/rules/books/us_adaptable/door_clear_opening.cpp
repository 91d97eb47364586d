#include "core/rules/checks/doors.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "us-adaptable",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 31.75_in,
      .measure = checks::doorClearOpenings,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1104.5",
                 .read_at = "table of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair or a walker passes.",
      .variants = {{.setting = "text", .value = "fair-housing", .limit = 32_in, .source = Source{.document = "Fair Housing Accessibility Guidelines",
                            .edition = "1991, nominal",
                            .section = "requirement 3",
                            .read_at = "abadiaccess.com"}, .grade = Grade::verified}},
  };
}

}  // namespace elbowroom::us_adaptable
