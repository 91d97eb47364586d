// Studs of a wall and the clear bays between them: what fits into the wall without cutting one.
//
// Studs are 1 1/2 in wide. Beside each opening stands a trimmer and a king stud; the rough opening of a
// hinged door is 1 in wider to each side than its leaf (W + 2 in, comfort table of doors), a pocket takes 2W
// + 1 in, every other opening is taken as stated. Between trimmers nothing counts as a bay. What stands in
// the wall's corners is not known and left out; a bay ends at the wall's end.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

Length studWidth();  // 1 1/2 in

struct WallSpan {
  Length from, to;  // from the wall's left end
  Length width() const { return to - from; }
  bool operator==(const WallSpan&) const = default;
};
struct Stud {
  Length at;            // its centreline
  bool beside = false;  // trimmer or king stud of an opening
};

// In order from the left; nullopt: the plan does not state the wall's studs.
std::optional<std::vector<Stud>> studsOf(const Layout&, int wall);
// Clear bays, in order from the left; nullopt as above.
std::optional<std::vector<WallSpan>> baysOf(const Layout&, int wall);

struct BayFit {
  bool fits = false;
  Length bay;                  // clear width of the bay that its centreline is in; 0: none
  std::optional<Length> move;  // least shift along the wall (right is more) to stand in one bay; 0 when it
                               // fits where it is; nullopt: no bay of this wall is wide enough
  std::vector<Stud> cut;  // studs in its way
};
// nullopt: no wall, or its studs are not stated.
std::optional<BayFit> bayFit(const Layout&, const PlacedWallItem&);

// Depth between the two faces' finish: as stated (fact stud_depth), else the thickness less 1/2 in of board
// on each side (4 1/2 in: 3 1/2; 6 1/2 in: 5 1/2) and 3/8 in where a backing of 1/2 in plywood under 3/8 in
// board replaces one of them (4 7/8 in: 3 1/2). Never less than 0.
Length studDepth(const Wall&);

}  // namespace elbowroom
