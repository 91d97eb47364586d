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
#include "core/geometry/placed.h"
#include "core/geometry/turning_shape.h"

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

struct Leaf;

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
  // Nearest place over all turns; on ties (0.01 in) the turn nearest to the given one. A returned place truly
  // fits (kContact) and is within 0.02 in of the nearest there is. nullopt is a proof: a rectangle 0.02 in
  // smaller each way has no place either, at any turn.
  std::optional<Placed> nearestRectangleAnyTurn(Length along, Length across, Placed near) const;
  // Any place at any turn, square to the plan or to a wall where that is possible. nullopt is the same proof.
  std::optional<Placed> rectangleSomewhere(Length along, Length across) const;

  // T-shaped turning space at any angle; square to the plan or to a wall where that is possible. nullopt is a
  // proof: a T whose sides all lie 0.01 in farther in has no place either.
  std::optional<Placed> turningT() const;  // kTurningT2010
  std::optional<Placed> turningT(const TurningShape& shape) const;
  // The same where `with_knees` is this room with less in the way (knee and toe space counted): at most one
  // end of the T may lie over what only this floor blocks (2010 ADA Standards 304.3.2). An end is what of an
  // arm lies beyond the base, or of the base beyond the bar. A place without knee space is preferred.
  std::optional<PlacedTurning> turningT(const TurningShape& shape, const FreeFloor& with_knees) const;

 private:
  friend class WidestWays;
  friend std::optional<Placed> beyondSweep(const FreeFloor&, const std::vector<Leaf>&, Length, Length, Placed);
  struct Kernel;
  std::shared_ptr<const Kernel> kernel_;
};

Outline rectangleOutline(Length along, Length across, Placed place);

}  // namespace elbowroom
