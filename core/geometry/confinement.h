// How a clear floor space is shut in at its sides (2010 ADA Standards 305.7: alcoves).
#pragma once

#include "core/geometry/free_floor.h"

namespace elbowroom {

// A clear floor space in front of a fixture: a rectangle whose back lies at the fixture (or the alcove's
// back), `width` along the back and `depth` away from it. Forward approach: 30 wide, 48 deep; parallel: 48
// wide, 30 deep.
struct ApproachSpace {
  Point back_center;  // middle of the side at the fixture
  Direction outward;  // from the fixture into the room
  Length width, depth;
};

struct Flank {
  // Nearest thing beside this side of the space within `room_needed` of it, measured square to the side;
  // equal to room_needed when nothing stands there.
  Length gap;
  // How far out from the back the farthest such thing reaches; 0 when nothing stands there.
  Length depth;
};

struct Confinement {
  Flank left, right;  // as seen from the fixture looking out
  // How far out from the back both sides together leave less than width + room_needed: the depth of the
  // alcove as far as it is too narrow for the wider space. 0 when it is nowhere.
  Length depth;
  // Least clear width between what stands left and right, over that depth; width + room_needed when depth is
  // 0.
  Length width;
};

// `room_needed`: how much wider the space has to be when it is confined (forward 36 - 30 = 6 in, parallel
// 60 - 48 = 12 in). Looks out from the back as far as nothing stands across the space itself, at
// most `look`. 305.7 asks for the
// wider space when Confinement::depth is more than 24 in (forward) or 15 in (parallel).
// Walls and obstacles of `floor` count beside the space; what reaches into it (deeper than kContact) does not
// count here, nor what lies less than kContact out from the back.
Confinement confinementOf(const FreeFloor& floor, const ApproachSpace& space, Length room_needed,
                          Length look = Length::nanometres(3'048'000'000));

}  // namespace elbowroom
