#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule basinKneeHeight() {
  return {
      .id = "basin-knee-height",
      .book = "us-access",
      .title = "clear height under it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 27_in,
      .measure = checks::kneeHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "306.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The knees of somebody who sits fit under the basin.",
  };
}

}  // namespace elbowroom::us_access
