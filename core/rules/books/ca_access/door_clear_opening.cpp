#include "core/rules/checks/doors.h"

namespace elbowroom::ca_access {

using namespace literals;

// Within a dwelling the doors of bathrooms may be narrower (9.5.11.3): the book's setting.
Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "ca-access",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 860_mm,
      .measure = checks::doorClearOpenings,
      .source = {.document = "Ontario Building Code",
                 .edition = "2012 as amended to 2017",
                 .section = "3.8.3.3(1)",
                 .read_at = "buildingcode.online"},
      .grade = Grade::verified,
      .why = "A wheelchair or a walker passes, with hands on the wheels.",
      .variants = {{.setting = "door", .value = "suite-wide", .limit = 760_mm, .source = Source{.document = "Ontario Building Code",
                            .edition = "2012 as amended to 2017",
                            .section = "9.5.11.3",
                            .read_at = "buildingcode.online"}},
                   {.setting = "door", .value = "suite-narrow", .limit = 810_mm, .source = Source{.document = "Ontario Building Code",
                            .edition = "2012 as amended to 2017",
                            .section = "9.5.11.3",
                            .read_at = "buildingcode.online"}}},
  };
}

}  // namespace elbowroom::ca_access
