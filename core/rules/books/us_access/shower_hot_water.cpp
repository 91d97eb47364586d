#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

Rule showerHotWater() {
  return {
      .id = "shower-hot-water",
      .book = "us-access",
      .title = "limit of its hot water",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = Amount::of(120),
      .measure = checks::showerWaterLimits,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.6",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Nobody who cannot jump aside is scalded.",
      .unit = "\u00b0F",
  };
}

}  // namespace elbowroom::us_access
