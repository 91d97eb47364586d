#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

Rule toiletFlushSide() {
  return {
      .id = "toilet-flush-side",
      .book = "us-access",
      .title = "flush on the open side",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::flushOnOpenSide,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.6",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Whoever has moved over to the chair can still flush.",
  };
}

}  // namespace elbowroom::us_access
