#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

// Between 2009 and 2021 the text became "where a receptor has a curb"; in which edition is not established.
Rule showerCurbThere() {
  return {
      .id = "shower-curb-there",
      .book = "us-residential",
      .title = "curb",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::curbsThere,
      .source = {.document = "IRC",
                 .edition = "2009",
                 .section = "P2709.1",
                 .read_at = "thebuildingcodeforum.com post 159996, the section quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "The edition of 2009 asks every shower receptor for a curb that holds the water.",
      .variants = {{.setting = "edition", .value = "2021", .off = true},
                   {.setting = "edition", .value = "2018", .off = true}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
