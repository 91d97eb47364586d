#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule basinHeight() {
  return {
      .id = "basin-height",
      .book = "us-access",
      .title = "height of the rim",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 34_in,
      .measure = checks::basinHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "606.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Sitting, one washes hands without water running down the sleeves.",
  };
}

}  // namespace elbowroom::us_access
