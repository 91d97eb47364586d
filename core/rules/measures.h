// The figures of an option that hold without any book: free floor, turning, doors, routes.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/routes.h"
#include "core/plan/layout.h"

namespace elbowroom {

struct DoorFigures {
  ElementId id;
  DoorAction action;
  Length clear_opening;
  Angle opens;                        // 90 degrees or less for leaves; 0 for the others
  std::optional<ElementId> hits;      // what stops it (a fixture or wall id) before 90 degrees
  std::optional<Point> hits_at;
  Area sweep;                         // quarter circle(s) of the leaf or leaves, wherever they swing
  Area square;                        // the keep-clear square(s)
  Area floor_taken;                   // of this room: sweep if it swings in, else 0
  Length wall_needed;                 // pocket: 2W + 1 in; surface sliding: free strip = leaf W; else 0
  Length wall_there;                  // of wall_needed, how much the wall has, opening included; more is more
  std::vector<Trouble> troubles;
};

struct TurningFigures {
  Circle largest;                     // over the bare floor
  Circle with_knees;                  // knee and toe space counted; equal to largest when none counts
  bool knee_space_used = false;       // with_knees is larger
};

struct Figures {
  Area room_area, free_floor;
  TurningFigures turning;
  std::vector<DoorFigures> doors;
};
// The part that is recomputed at every mouse move.
Figures figuresOf(const Layout&);
DoorFigures doorFigures(const Layout&, const PlacedOpening&);

// The slower part, for `measure` and on request.
struct RouteFigure { ElementId to; Route route; };
std::vector<RouteFigure> routeFigures(const Layout&);  // from the first door's middle, 1 in inside
std::optional<Placed> turningTFigure(const Layout&);

}  // namespace elbowroom
