#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule showerLinerUp() {
  return {
      .id = "shower-liner-up",
      .book = "us-residential",
      .title = "liner above the threshold",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 3_in,
      .measure = checks::linersUp,
      .source = {.document = "IRC",
                 .edition = "older editions",
                 .section = "P2709.2",
                 .read_at = "inspectorsjournal.com topic 9897"},
      .grade = Grade::verifiedSecondHand,
      .why = "The liner is what keeps water out of the wall when the floor floods.",
      .variants = {{.setting = "edition", .value = "2021", .limit = 2_in,
                    .source = Source{.document = "IRC",
                            .edition = "newer editions, from memory",
                            .section = "P2709.2",
                            .read_at = "older value at inspectorsjournal.com topic 9897; 2 in from memory"},
                    .grade = Grade::memory}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
