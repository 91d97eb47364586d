#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule accessPanel() {
  return {
      .id = "access-panel",
      .book = "us-uniform",
      .title = "access panel",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 12_in,
      .measure = checks::accessPanels,
      .source = {.document = "UPC",
                 .edition = "2006",
                 .section = "404.2",
                 .read_at = "thebuildingcodeforum.com thread on setting a whirlpool tub"},
      .grade = Grade::verifiedSecondHand,
      .why = "Concealed slip joints leak one day and must be reached.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
