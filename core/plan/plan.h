// The plan as a value: what the person said, nothing derived. Plan file version 1 (design.md section 3)
// stores exactly this. Equality is memberwise; ids are unique within an option.
//
// Keys of the file that this version does not model are kept in `extra` (key -> JSON text) and written back.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/id.h"
#include "core/base/length.h"
#include "core/base/length_text.h"
#include "core/geometry/point.h"
#include "core/plan/facts.h"

namespace elbowroom {

using Extra = std::map<std::string, std::string>;

struct Studs {
  Length first;    // centre of the first stud from the wall's left end
  Length spacing;  // on centre
  Extra extra = {};
  bool operator==(const Studs&) const = default;
};

// Walls run clockwise seen from above; `from` is the left end seen from inside, at the finished inside face;
// the right end is the next wall's `from`.
struct Wall {
  ElementId id;
  Point from;
  Length thickness;
  bool exterior = false;
  bool plumbing = false;  // pipes run in this wall
  std::optional<Studs> studs;
  Facts facts;
  Extra extra;
  bool operator==(const Wall&) const = default;
};

// The ceiling falls toward a wall: `low` above the floor at that wall's inside face, rising evenly to the
// ceiling's height at `run` from it.
struct CeilingSlope {
  ElementId wall;
  Length low, run;
  Extra extra = {};
  bool operator==(const CeilingSlope&) const = default;
};

struct Ceiling {
  std::optional<Length> height;  // finished floor to ceiling; unset = not stated
  std::vector<CeilingSlope> slopes;  // precondition: the height is stated
  Extra extra;
  bool operator==(const Ceiling&) const = default;
};

struct Room {
  std::vector<Wall> walls;  // empty (nothing drawn yet) or at least three
  Ceiling ceiling;
  Facts facts;
  Extra extra;
  bool operator==(const Room&) const = default;
};

enum class OpeningKind { door, window };
enum class DoorAction { hinged, doubleLeaf, pocket, surfaceSliding, bifold, cased };
enum class Hand { left, right };  // as seen from inside the room facing the wall
enum class Swing { in, out };

struct Opening {
  ElementId id;
  OpeningKind kind = OpeningKind::door;
  ElementId wall;
  Length along;   // wall's left end to the opening's centreline
  Length width;   // door: the leaf, also where it slides (cased: the opening); window: the opening
  Length height;
  std::optional<Length> sill;  // windows: above finished floor
  DoorAction action = DoorAction::hinged;
  Hand hinge = Hand::right;    // hinged, bifold
  Swing swing = Swing::in;     // hinged, double, bifold
  std::optional<Hand> toward;  // pocket_toward / slides_toward
  std::optional<Length> leaf_thickness;  // default 1 3/8 in
  std::optional<Length> stop;            // how far the stop covers the opening; default 7/16 in
  std::optional<bool> closer, latch;
  Facts facts;
  Extra extra;
  bool operator==(const Opening&) const = default;
};

enum class FixtureKind {
  toilet, bidet, basin, vanity, bath, freestandingBath, shower, cabinet, linenCloset, bench, washer, heater
};
enum class Status { keep, move, fresh, remove };  // "fresh" is written "new"

// Back flush on a wall (plus `gap`), centred `along` from the wall's left end.
struct OnWall {
  ElementId wall;
  Length along;
  Length gap;
  bool operator==(const OnWall&) const = default;
};
// Standing free: `at` is the centre of the footprint; at turn 0 the back faces +y and the width runs along x.
struct Standing {
  Point at;
  Angle turn;
  bool operator==(const Standing&) const = default;
};
using Placement = std::variant<OnWall, Standing>;

struct KneeSpace {
  Length height;                 // clear height under the front
  Length depth;                  // clear depth from the front, knee level
  std::optional<Length> toe;     // clear depth from the front at the floor; default depth + 6 in
  Extra extra = {};
  bool operator==(const KneeSpace&) const = default;
};

enum class Side { back, front, left, right };  // as seen facing the wall behind the fixture

// One side of a shower that is closed with glass.
struct Pane {
  Side side = Side::front;
  std::optional<Length> height;          // above the finished floor
  std::optional<Length> door;            // width of the door in it; unset: fixed glass
  std::optional<Swing> door_swing;       // in, out of the shower; unset with a door: it slides or is not stated
  std::optional<Hand> hinge;
  Extra extra = {};
  bool operator==(const Pane&) const = default;
};

struct Fixture {
  ElementId id;
  FixtureKind kind = FixtureKind::cabinet;
  std::string name;  // optional label of the person's own
  Placement placement;
  Length width, depth;
  std::optional<Length> height;
  Status status = Status::fresh;  // "new": what a missing key means, so it is not written
  std::optional<int> basins;
  std::optional<KneeSpace> knee_space;
  std::optional<Length> bowl_width, tank_width, tank_depth;  // toilet
  std::optional<Length> curb;                                // shower; 0 = curbless
  std::vector<Pane> glass;                                   // shower
  Facts facts;
  Extra extra;  // shape, drain, floor_recess, ... until modelled
  bool operator==(const Fixture&) const = default;
};

// A thing on a wall (mirror, receptacle, grab bar, ...). Kinds: core/plan/wall_catalogue.h; others are kept.
struct WallItem {
  ElementId id;
  std::string kind;
  ElementId wall;
  Length along, bottom, width, height;
  std::string name;             // optional label of the person's own
  std::optional<Length> depth;  // out of the wall's face; of a niche or recessed cabinet: into it
  ElementId shower;             // head, control, hand spray, spout, niche: the shower or bath it belongs to
  std::string person;           // file key "for": whom its height is set to
  Status status = Status::fresh;
  Facts facts;
  Extra extra;
  bool operator==(const WallItem&) const = default;
};
struct CeilingItem {
  ElementId id;
  std::string kind;
  Point at;
  std::string name;
  std::optional<Length> width, depth;  // along x and y
  Facts facts;
  Extra extra;
  bool operator==(const CeilingItem&) const = default;
};

// A finding that the person has read and accepts, with the reason. It stays listed and prints.
struct Acknowledged {
  std::string book, rule;
  std::vector<ElementId> subjects;
  std::string reason;  // never empty
  Extra extra = {};
  bool operator==(const Acknowledged&) const = default;
};

// The answer to one point of the Wish list; a point without an answer is undecided.
struct Wish {
  bool in = true;
  std::string reason;  // never empty when out
  Extra extra = {};
  bool operator==(const Wish&) const = default;
};

struct Option {
  std::string name;
  Room room;
  std::vector<Opening> openings;
  std::vector<Fixture> fixtures;
  std::vector<WallItem> on_walls;
  std::vector<CeilingItem> on_ceiling;
  std::vector<Acknowledged> acknowledged;
  std::map<std::string, Wish> wishes;  // by key of the point
  Extra extra;
  bool operator==(const Option&) const = default;
};

struct Chair {
  Length width, length;
  Extra extra = {};
  bool operator==(const Chair&) const = default;
};
struct Person {
  std::string name;
  Length stature;
  bool child = false;
  std::optional<Chair> chair;
  Extra extra;
  bool operator==(const Person&) const = default;
};

// What the person has changed about a rule, with the reason.
struct RuleChange {
  std::string book, rule;
  bool off = false;
  std::optional<std::variant<Length, Area, Angle, Count, Amount>> limit;  // instead of the book's
  std::string reason;  // never empty
  Extra extra = {};
  bool operator==(const RuleChange&) const = default;
};

struct Plan {
  Unit unit = Unit::inches;
  std::string title;
  std::vector<std::string> books;
  // Settings of the books ("us-electrical": {"edition": "2020"}); what is not set stands at the book's default.
  std::map<std::string, std::map<std::string, std::string>> book_settings;
  std::vector<RuleChange> rule_changes;
  std::vector<Person> people;
  std::vector<Option> options;  // at least one; names unique
  std::optional<Angle> north;           // direction of north, counter-clockwise from +y; file key "north"
  std::optional<Length> site_tolerance; // file key "site_tolerance"; default 1/2 in
  Extra extra;
  bool operator==(const Plan&) const = default;
};

// Lookups; nullptr when absent.
const Wall* findWall(const Option&, const ElementId&);
const Opening* findOpening(const Option&, const ElementId&);
const Fixture* findFixture(const Option&, const ElementId&);
const WallItem* findWallItem(const Option&, const ElementId&);
const CeilingItem* findCeilingItem(const Option&, const ElementId&);
// Whether any wall, opening, fixture or item on a wall or the ceiling has this id.
bool hasElement(const Option&, const ElementId&);
// A fresh id with this stem, unused in the option: "wc", "wc2", "wc3", ...
ElementId freshId(const Option&, const std::string& stem);
// An empty plan with one option "As found", the default books and nobody in it: who uses the room is for the
// person to say.
Plan emptyPlan(Unit unit);

}  // namespace elbowroom
