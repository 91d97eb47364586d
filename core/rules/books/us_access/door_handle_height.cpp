#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule doorHandleHeight() {
  return {
      .id = "door-handle-height",
      .book = "us-access",
      .title = "height of the handle",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 34_in,
      .limit_high = 48_in,
      .measure = checks::doorHandles,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "404.2.7",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The handle is in reach sitting and standing.",
  };
}

}  // namespace elbowroom::us_access
