#include "core/rules/checks/room.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/shared_searches.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

// The search for the T costs more than the rest of a check; a floor smaller than the T, or without room for
// the largest disc within it, need not be searched.
bool couldHold(const TurningShape& shape, const CheckInput& in, bool knees) {
  const Area forgiven = 10_in * 1_in;  // contact all round
  const Figures& figures = in.figures;
  const Circle& largest = knees ? figures.turning.with_knees : figures.turning.largest;
  return (knees || figures.free_floor + forgiven > areaOf(shape)) &&
         largest.radius * 2 > discWithin(shape) - kContact * 4;
}

// Every T of the texts holds the one of 2010; where that is not there, no larger one is looked for.
bool holds2010(const TurningShape& s) {
  const TurningShape& t = kTurningT2010;
  return s.across >= t.across && s.along >= t.along && s.bar_width >= t.bar_width &&
         s.base_width >= t.base_width;
}

// What lies between the jambs of a door that swings out, up to its leaf, is floor to turn on.
const Length kUsualLeaf = 1.375_in;
std::optional<Outline> roomWithDoorways(const Layout& layout) {
  Outline ring;
  bool more = false;
  for (std::size_t w = 0; w < layout.walls.size(); ++w) {
    const WallFrame& wall = layout.walls[w];
    ring.push_back(wall.from);
    std::vector<const PlacedOpening*> doors;
    for (const PlacedOpening& o : layout.openings)
      if (o.wall == static_cast<int>(w) && o.opening.kind == OpeningKind::door &&
          o.opening.action == DoorAction::hinged && o.opening.swing == Swing::out)
        doors.push_back(&o);
    std::sort(doors.begin(), doors.end(),
              [](const auto* a, const auto* b) { return a->opening.along < b->opening.along; });
    for (const PlacedOpening* o : doors) {
      const Length deep = wall.thickness - o->opening.leaf_thickness.value_or(kUsualLeaf);
      if (deep <= kContact || distance(wall.from, o->left) < kContact ||
          distance(wall.to, o->right) < kContact)
        continue;
      const Direction out = wall.inward.opposite();
      for (const Point p : {o->left, o->left + deep * out, o->right + deep * out, o->right})
        ring.push_back(p);
      more = true;
    }
  }
  return more ? std::optional(ring) : std::nullopt;
}

void turnInDoorway(const CheckInput& in, Measurement& m) {
  const std::optional<Outline> ring = roomWithDoorways(in.layout);
  if (!ring) return;
  const Circle circle = FreeFloor(*ring, in.layout.floor_with_knees.obstacles()).largestCircle();
  if (circle.radius * 2 <= limitOf(in) - kMetTolerance) return;
  m.measured = circle.radius * 2;
  m.detail = "turning-in-doorway";
  m.places = across(circle);
}

}  // namespace

std::optional<PlacedTurning> turningTIn(const CheckInput& in, const TurningShape& shape, bool knees) {
  knees = knees && in.layout.knee_space_counts;
  if (!couldHold(shape, in, knees)) return std::nullopt;
  if (shape != kTurningT2010 && holds2010(shape) && !sharedTurningT(in, kTurningT2010, knees))
    return std::nullopt;
  return sharedTurningT(in, shape, knees);
}

bool turnByT(const CheckInput& in, const TurningShape& shape, bool knees, Measurement& m) {
  const std::optional<PlacedTurning> t = turningTIn(in, shape, knees);
  if (!t) return false;
  const Direction up = Direction{1, 0}.turned(t->place.turn);
  const Point bar = t->place.center + (shape.along - shape.bar_width) / 2 * up, middle = t->place.center;
  m.measured = shape.across;
  if (shape != kTurningT2010) m.limit = shape.across;
  m.detail = t->under_knees == TurningEnd::none ? "turning-by-t" : "turning-by-t-knees";
  m.places = {lineFrom(bar - shape.across / 2 * up.left(), bar + shape.across / 2 * up.left()),
              lineFrom(middle - shape.along / 2 * up, middle + shape.along / 2 * up)};
  return true;
}

std::vector<Measurement> turningSpace(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  const TurningFigures& turning = in.figures.turning;
  const Length diameter = turning.with_knees.radius * 2;
  Measurement m{.subjects = {},
                .measured = diameter,
                .places = across(turning.with_knees),
                .detail = turning.knee_space_used ? "knee-space-used" : ""};
  if (diameter > limitOf(in) - kMetTolerance || turnByT(in, kTurningT2010, true, m)) return {m};
  turnInDoorway(in, m);
  return {m};
}

std::vector<Measurement> turningSpaceForChair(const CheckInput& in) {
  const auto& people = in.layout.settings.people;
  const bool anyone =
      std::any_of(people.begin(), people.end(), [](const Person& p) { return p.chair.has_value(); });
  return anyone ? turningSpace(in) : std::vector<Measurement>{};
}

std::vector<Measurement> bareCircle(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  const Circle& circle = in.figures.turning.largest;
  return {{.subjects = {}, .measured = circle.radius * 2, .places = across(circle)}};
}

std::vector<Measurement> dressingSpace(const CheckInput& in) {
  if (yesNo(in.layout.option.room.facts, "compartment") == true) return {};
  return bareCircle(in);
}

std::vector<Measurement> heatSources(const CheckInput& in) {
  const Layout& layout = in.layout;
  if (layout.room.empty()) return {};
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {pointAt(centroidOf(layout.room))}};
  const bool drawn =
      std::any_of(layout.fixtures.begin(), layout.fixtures.end(),
                  [](const PlacedFixture& f) { return counts(f) && f.fixture.kind == FixtureKind::heater; }) ||
      std::any_of(layout.on_walls.begin(), layout.on_walls.end(), [](const PlacedWallItem& i) {
        return counts(i) && (i.item.kind == "radiator" || i.item.kind == "towel-heater");
      });
  const auto in_floor = yesNo(layout.option.room.facts, "floor_heat");
  if (drawn || in_floor)
    m.measured = drawn || *in_floor;
  else
    m.fact = "floor_heat";
  return {m};
}
std::vector<Measurement> ceilingHeight(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {pointAt(centroidOf(in.layout.room))}};
  if (const auto& height = in.layout.option.room.ceiling.height)
    m.measured = *height;
  else
    m.detail = "ceiling-not-stated", m.fact = "ceiling.height";
  return {m};
}

}  // namespace elbowroom::checks
