#include "core/rules/checks/lights.h"

namespace elbowroom::comfort {

using namespace literals;

Rule lightEachBasin() {
  return {
      .id = "light-each-basin",
      .book = "comfort",
      .title = "a light for each basin",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::lightsPerBasin,
      .source = {.document = "Trade articles on bathroom lighting",
                 .edition = "",
                 .section = "",
                 .read_at = "jlconline.com and masterslighting.com: two basins before one mirror are lit as two tasks; taken "
                            "as a lamp of its own within 30 in of each basin, or one that reaches over both; basins are "
                            "taken in the middle of their shares of the counter"},
      .grade = Grade::derived,
      .why = "One lamp between two people throws the shadow of each on the other.",
      .sizes = {30_in, 30_in},
      .met = "lights each basin",
      .missed = "does not light each basin",
  };
}

}  // namespace elbowroom::comfort
