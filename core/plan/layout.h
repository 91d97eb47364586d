// Everything the plan's figures imply about one option's floor, derived once: wall frames, footprints, swings,
// pockets. The canvas, the rules, the measures and the sheets all read this and never derive it again.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/geometry/free_floor.h"
#include "core/geometry/sweep.h"
#include "core/plan/plan.h"

namespace elbowroom {

struct WallFrame {
  ElementId id;
  Point from, to;       // left and right end on the inside face
  Length length;
  Direction along;      // from -> to
  Direction inward;     // into the room
  Length thickness;
  bool exterior = false, plumbing = false;
  Outline body;         // the cut wall, mitred with its neighbours, clockwise from `from`
  // The point on the inside face at this distance from the left end.
  Point at(Length along_wall) const { return from + along_wall * along; }
};

struct PlacedFixture {
  Fixture fixture;
  int wall = -1;            // index into Layout::walls, -1 when standing free
  Outline footprint;        // true outline (toilet: tank and bowl), counter-clockwise
  Outline floor_block;      // what blocks a wheelchair's toes: the footprint less counted knee and toe space;
                            // empty when nothing does
  bool solid = true;        // false: status remove, or a curbless shower without glass: the floor is free
  Point center;             // of the width x depth rectangle
  Direction facing;         // from the back to the front
  Point back_center, front_center;  // ends of the centreline (front = foremost point)
  Segment front;            // the foremost edge over the full width, left to right facing the fixture
  Segment left_side, right_side;    // sides of the rectangle, back to front, as seen facing the wall
};

struct PlacedOpening {
  Opening opening;
  int wall = -1;
  Point left, right;        // jambs on the inside face, openingWidth apart
  Outline in_wall;          // the hole through the wall's body
  std::vector<Leaf> leaves; // hinged: 1; double: 2; bifold: 2 quarters that cover its panels
  bool leaves_inside = false;       // they sweep this room's floor
  Outline cavity;           // pocket: the recess in the wall (2W + 1 in with the opening), leaf's parking part
  Outline park;             // surface sliding: the whole leaf parked beside the opening, on the room side
};

// A thing on a wall. The strip, the plan and the rules take its place from here.
struct PlacedWallItem {
  WallItem item;
  int wall = -1;            // index into Layout::walls
  Point left, right;        // its ends on the inside face, as seen facing the wall
  Length from, to;          // the same ends along the wall, from its left end
  Length bottom, top;       // above the finished floor
  Length depth;             // as stated, else its kind's usual depth
  bool recessed = false;    // the depth goes into the wall
  Outline outline;          // on the plan, counter-clockwise; without area when it has no depth
};

struct PlacedCeilingItem {
  CeilingItem item;
  Length width, depth;      // as stated, else its kind's usual size
  Outline outline;          // the rectangle round it, counter-clockwise
};

struct Layout {
  Plan settings;            // the plan without its options (unit, books, people, ...)
  Option option;
  std::vector<WallFrame> walls;
  Outline room;             // inside face, clockwise as stored; empty when nothing is drawn
  Area room_area;
  std::vector<PlacedFixture> fixtures;
  std::vector<PlacedOpening> openings;
  std::vector<PlacedWallItem> on_walls;        // in the option's order
  std::vector<PlacedCeilingItem> on_ceiling;   // in the option's order
  // Obstacles of the two floors below, in the order of solid fixtures; obstacle i is fixtures[solid[i]].
  std::vector<int> solid;
  std::vector<Outline> solid_outlines;
  std::vector<Box> solid_boxes;  // round them
  FreeFloor floor;          // footprints block
  FreeFloor floor_with_knees;  // floor_block outlines block (knee and toe space counted); same indices
  bool knee_space_counts = false;  // the two differ
};

// Precondition: integrity(option) holds and the option index is valid. An option without walls gives an
// empty room and every list that can be derived without walls.
Layout deriveLayout(const Plan& plan, std::size_t option);

// nullptr: no such wall.
const WallFrame* findWallFrame(const Layout&, const ElementId& wall);

// Width x depth rectangle of a fixture's placement, and its true outline.
Outline fixtureRectangle(const Option&, const Fixture&);
Outline fixtureOutline(const Option&, const Fixture&);

// Jamb to jamb: the leaf's width, which the plan states. A surface-sliding leaf covers its opening by 2 in at
// each side (usual overlap of trade articles), so its opening is 4 in less than the leaf. Window,
// cased: the opening as stated.
Length openingWidth(const Opening&);

// Clear opening of a door in its present surroundings (comfort.md section 2, T03 and T04):
//  hinged/double: leaf width + gaps - (pin offset + thickness) - stop at 90 degrees, or less where it cannot
//  open that far; pocket: leaf - 1/2 in (memory grade); surface sliding and cased: the opening;
//  bifold: leaf width less the folded panels' thickness.
Length clearOpening(const PlacedOpening&, Angle opens);

// What stands in the way of a door's action, found without any book: "pocket meets the corner", ...
enum class DoorTrouble { pocketMeetsCorner, pocketMeetsOpening, pocketMeetsPipes, noWallToSlideOn, slideMeetsOpening,
                         slideMeetsFixture };
struct Trouble {
  DoorTrouble kind;
  ElementId other;      // the wall, opening or fixture it meets
  Length short_by;      // how much wall is missing; 0 for pipes
  Point at;
};
std::vector<Trouble> doorTroubles(const Layout&, const PlacedOpening&);

}  // namespace elbowroom
