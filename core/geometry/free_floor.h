// Where a round or rectangular thing fits on the free floor of a room.
//
// Built once from raw outlines: the room's inside face (any simple ring) and solid obstacles, which may stand
// flush, touch, overlap each other or stick out of the room. All answers are computed on the raw outlines by
// distances (no overlay), so coincident edges do not matter. Const member functions are safe to call from
// several threads.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/geometry/measure.h"

namespace elbowroom {

struct Clearance {
  Length distance;   // negative: inside an obstacle or outside the room, by how much
  Point nearest;     // on the boundary that limits
  int obstacle = -1; // index, -1 for a wall
};

// Verdict for a shape at one place.
struct Fit {
  bool fits = false;   // with kContact of overlap forgiven
  Length misses_by;    // how deep the worst obstacle or wall reaches into the shape; 0 when it fits
  Point at;            // where it reaches deepest, or the nearest point when it fits
  int obstacle = -1;   // -1 for a wall
};

struct Placed {
  Point center;
  Angle turn;          // of the shape's long side against +x
};

class FreeFloor {
 public:
  FreeFloor();  // no room: nothing fits
  FreeFloor(Outline room, std::vector<Outline> obstacles);
  ~FreeFloor();
  FreeFloor(FreeFloor&&) noexcept;
  FreeFloor& operator=(FreeFloor&&) noexcept;
  FreeFloor(const FreeFloor&);
  FreeFloor& operator=(const FreeFloor&);

  const Outline& room() const;
  const std::vector<Outline>& obstacles() const;

  // Signed distance to the nearest wall or obstacle.
  Clearance clearanceAt(Point p) const;

  // Largest circle anywhere on the free floor; radius within 0.005 in of exact, never larger than the truth
  // at the returned centre. Radius 0 when there is no free floor.
  Circle largestCircle() const;
  // The circle of this diameter whose centre is nearest to `near` (within 0.02 in of the nearest possible);
  // nullopt when it fits nowhere. A circle short by less than 0.02 in of diameter counts as fitting.
  std::optional<Circle> nearestCircle(Length diameter, Point near) const;
  Fit circleFit(Circle c) const;

  // A rectangle of `along` by `across` centred at `place.center`, its `along` side turned by `place.turn`.
  Fit rectangleFit(Length along, Length across, Placed place) const;
  // Nearest centre to `near` at exactly this turn (exact Minkowski of the convex pattern with every edge).
  std::optional<Placed> nearestRectangle(Length along, Length across, Placed near) const;
  // Nearest place over all turns (every degree, and each turn parallel to an edge of the room or an
  // obstacle); prefers the given turn on ties. A returned place truly fits; nullopt may miss a fit that
  // exists only between those turns (stated on screen as "no place found").
  std::optional<Placed> nearestRectangleAnyTurn(Length along, Length across, Placed near) const;

  // T-shaped turning space inside a 60 x 60 square: base and arms 36 wide, arms 12 and base 24 clear
  // (2010 Standards 304.3.2). Centre = centre of the square, turn = direction from the base to the bar.
  std::optional<Placed> turningT() const;

 private:
  struct Kernel;
  std::shared_ptr<const Kernel> kernel_;
};

// The T's outline at a place, for drawing.
Outline turningTOutline(Placed place);
Outline rectangleOutline(Length along, Length across, Placed place);

}  // namespace elbowroom
