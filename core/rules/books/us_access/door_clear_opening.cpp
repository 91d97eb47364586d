#include "core/rules/checks/doors.h"

namespace elbowroom::us_access {

using namespace literals;

// In alterations the stop at the latch side may stand 5/8 in into it.
Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "us-access",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 32_in,
      .measure = checks::doorClearOpenings,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "404.2.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair or a walker passes, with hands on the wheels.",
      .variants = {{.setting = "work",
                    .value = "alteration",
                    .limit = 31.375_in,
                    .source = Source{.document = "2010 ADA Standards",
                                     .edition = "",
                                     .section = "404.2.3 exception 1",
                                     .read_at = "ada.gov text of the standards"}}},
  };
}

}  // namespace elbowroom::us_access
