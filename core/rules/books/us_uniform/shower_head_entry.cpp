#include "core/rules/checks/wet.h"

namespace elbowroom::us_uniform {

Rule showerHeadEntry() {
  return {
      .id = "shower-head-entry",
      .book = "us-uniform",
      .title = "shower head",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::headsAwayFromEntry,
      .source = {.document = "UPC",
                 .edition = "California edition 2019",
                 .section = "408.9",
                 .read_at = "thebuildingcodeforum.com 30240 and inspectionnews.net t-55419, both quote it"},
      .grade = Grade::verifiedSecondHand,
      .why = "One turns the water on without standing in it, and the room stays dry when the door opens.",
  };
}

}  // namespace elbowroom::us_uniform
