#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

Rule showerCurblessDrop() {
  return {
      .id = "shower-curbless-drop",
      .book = "comfort",
      .title = "floor lowered for it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::curblessDrops,
      .source = {.document = "Trade articles on curbless showers",
                 .edition = "",
                 .section = "",
                 .read_at = "tileletter.com, March 2016, and greenbuildingadvisor.com on lowered "
                            "subfloors: at least 1/4 in per foot to the drain; no drop at a drain in the "
                            "entry, jlconline.com on curbless retrofits"},
      .grade = Grade::derived,
      .why = "Where the floor cannot drop by the fall it needs, water runs out into the room.",
      .limit_words = "1/4 in per foot of run to the drain",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
