#include "core/rules/checks/toilet_space.h"

namespace elbowroom::au_access {

using namespace literals;

// A basin may reach in by 100 mm from the front, not from the side.
Rule toiletCirculation() {
  return {
      .id = "toilet-circulation",
      .book = "au-access",
      .title = "circulation space",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 2300_mm,
      .measure = checks::toiletCirculation,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "canberraaccessconsultants.au"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair turns and comes beside the seat.",
      .limit_words = "2300 mm long from the rear wall and 1900 mm wide from the side wall",
      .sizes = {1900_mm, 100_mm},
      .variants = {{.setting = "text", .value = "livable", .off = true},
                   {.setting = "room", .value = "existing", .off = true}},
  };
}

}  // namespace elbowroom::au_access
