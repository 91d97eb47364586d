#include "core/rules/checks/toilet_space.h"

namespace elbowroom::au_access {

using namespace literals;

Rule toiletCirculationExisting() {
  return {
      .id = "toilet-circulation-existing",
      .book = "au-access",
      .title = "circulation space",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 2000_mm,
      .measure = checks::toiletCirculation,
      .source = {.document = "AS 1428.1",
                 .edition = "2001, for existing buildings",
                 .section = "",
                 .read_at = "canberraaccessconsultants.au"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes beside the seat.",
      .limit_words = "2000 mm long from the rear wall and 1600 mm wide from the side wall",
      .sizes = {1600_mm, 100_mm},
      .variants = {{.setting = "text", .value = "livable", .off = true},
                   {.setting = "room", .value = "new", .off = true}},
  };
}

}  // namespace elbowroom::au_access
