#include "core/rules/checks/doors.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "uk-access",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 750_mm,
      .measure = checks::doorClearOpenings,
      .source = {.document = "Approved Document M",
                 .edition = "volume 1, 2015 with 2016 amendments",
                 .section = "",
                 .read_at = "building wiki that quotes the table"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair or a walker passes; a narrow corridor asks for a wider door.",
      .limit_words = "750 to 800 mm, by the corridor outside",
      .variants = {{.setting = "corridor", .value = "1050", .limit = 775_mm},
                   {.setting = "corridor", .value = "900-side", .limit = 800_mm},
                   {.setting = "dwelling", .value = "m4-3", .limit = 850_mm, .source = Source{.document = "Approved Document M",
                            .edition = "volume 1, 2015 with 2016 amendments",
                            .section = "",
                            .read_at = ""}, .grade = Grade::memory}},
  };
}

}  // namespace elbowroom::uk_access
