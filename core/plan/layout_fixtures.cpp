#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/plan/layout_parts.h"
#include "core/plan/wall_line.h"

namespace elbowroom {
namespace layout_parts {
namespace {

using namespace literals;

constexpr int kHalfCurveChords = 32;  // even, so that the foremost point is a vertex

// 2010 Standards 306.3: knee space counts from 27 in high and 11 in deep at 9 in above the floor. 306.2: toe
// space reaches at most 6 in beyond the knees and never deeper than 25 in under the element.
constexpr Length kKneeHeight = 27_in, kKneeDepth = 11_in, kToeBeyondKnee = 6_in, kDeepestToe = 25_in;

void addPoint(Outline& ring, Length u, Length v) {
  const Point p{u, v};
  if (ring.empty() || !(ring.back() == p)) ring.push_back(p);
}

// Half an ellipse from u = -half_width to +half_width, bulging to v = base + bulge (either sign).
void addHalfEllipse(Outline& ring, Length half_width, Length base, Length bulge) {
  const double side = bulge < Length{} ? 1 : -1;  // a back curve runs the other way
  for (int k = 0; k <= kHalfCurveChords; ++k) {
    const double a = std::numbers::pi * k / kHalfCurveChords;
    addPoint(ring, half_width.scaled(side * std::cos(a)), base + bulge.scaled(std::sin(a)));
  }
}

Outline rectangleInFrame(const Fixture& f) {
  const Length half = f.width / 2;
  return {{-half, {}}, {-half, f.depth}, {half, f.depth}, {half, {}}};
}

// The bowl's front is as long as the bowl is wide; our choice, no published figure. It is what lets the
// published toilet room touch its circle at the front of the bowl (DOJ Guidance on the 2010 ADA Standards, 1A).
Outline toiletInFrame(const Fixture& f) {
  const Length tank = std::min(f.tank_width.value_or(f.width), f.width) / 2;
  const Length tank_depth = std::min(f.tank_depth.value_or(8_in), f.depth);
  const Length bowl = std::min(f.bowl_width.value_or(14_in), f.width) / 2;
  const Length nose = std::min(2 * bowl, f.depth - tank_depth);
  Outline ring;
  addPoint(ring, -tank, {});
  addPoint(ring, -tank, tank_depth);
  if (nose > Length{}) {
    addPoint(ring, -bowl, tank_depth);
    addHalfEllipse(ring, bowl, f.depth - nose, nose);
    addPoint(ring, bowl, tank_depth);
  }
  addPoint(ring, tank, tank_depth);
  addPoint(ring, tank, {});
  return ring;
}

bool statesRoundFront(const Fixture& f) {
  const auto shape = f.extra.find("shape");
  if (shape == f.extra.end()) return false;
  return shape->second == "\"round\"" || shape->second == "\"rounded\"" || shape->second == "\"oval\"";
}

Outline roundFrontInFrame(const Fixture& f) {
  const Length half = f.width / 2, nose = std::min(half, f.depth);
  Outline ring;
  addPoint(ring, -half, {});
  addHalfEllipse(ring, half, f.depth - nose, nose);
  addPoint(ring, half, {});
  return ring;
}

// Half circles at the ends of the longer side.
Outline stadiumInFrame(const Fixture& f) {
  Outline ring;
  if (f.depth >= f.width) {
    const Length r = f.width / 2;
    addHalfEllipse(ring, r, f.depth - r, r);
    addHalfEllipse(ring, r, r, -r);
  } else {
    Fixture upright = f;
    std::swap(upright.width, upright.depth);
    for (const Point& p : stadiumInFrame(upright)) addPoint(ring, upright.depth / 2 - p.y, p.x + f.depth / 2);
  }
  if (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
  return ring;
}

// What blocks the floor at toe height: the part of the outline behind the toe space.
Outline behind(const Outline& ring, Length v_most) {
  Outline kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i], b = ring[(i + 1) % ring.size()];
    if (a.y <= v_most) kept.push_back(a);
    if ((a.y < v_most && b.y > v_most) || (a.y > v_most && b.y < v_most)) {
      const Length u = a.x + (b.x - a.x).scaled((v_most - a.y) / (b.y - a.y));
      kept.push_back({u, v_most});
    }
  }
  return kept;
}

Length countedIntrusion(const Fixture& f) {
  if (!f.knee_space || f.knee_space->height < kKneeHeight || f.knee_space->depth < kKneeDepth) return {};
  const Length beyond_knee = f.knee_space->depth + kToeBeyondKnee;
  return std::min({f.knee_space->toe.value_or(beyond_knee), beyond_knee, kDeepestToe});
}

bool isSolid(const Fixture& f) {
  if (f.status == Status::remove) return false;
  const bool curbless = f.kind == FixtureKind::shower && f.curb == Length{};
  return !curbless || !f.glass.empty();
}

Outline onPlan(const FixtureFrame& frame, const Outline& ring) {
  Outline out;
  out.reserve(ring.size());
  for (const Point& p : ring) out.push_back(frame.at(p.x, p.y));
  return out;
}

}  // namespace

FixtureFrame frameOf(const Option& option, const Fixture& fixture) {
  if (const auto* on = std::get_if<OnWall>(&fixture.placement)) {
    const std::optional<std::size_t> wall = wallIndex(option, on->wall);
    if (!wall) return {};
    const WallLine line = wallLine(option, *wall);
    return {static_cast<int>(*wall), line.at(on->along) + on->gap * line.inward, line.inward};
  }
  const Standing& standing = std::get<Standing>(fixture.placement);
  const Direction facing = Direction{0, -1}.turned(standing.turn);
  return {-1, standing.at - (fixture.depth / 2) * facing, facing};
}

Outline outlineInFrame(const Fixture& f) {
  switch (f.kind) {
    case FixtureKind::toilet: return toiletInFrame(f);
    case FixtureKind::freestandingBath: return stadiumInFrame(f);
    case FixtureKind::basin: return statesRoundFront(f) ? roundFrontInFrame(f) : rectangleInFrame(f);
    default: return rectangleInFrame(f);
  }
}

PlacedFixture placeFixture(const Option& option, const Fixture& fixture) {
  const FixtureFrame frame = frameOf(option, fixture);
  const Length half = fixture.width / 2, depth = fixture.depth;
  PlacedFixture placed;
  placed.fixture = fixture;
  placed.wall = frame.wall;
  const Outline ring = outlineInFrame(fixture);
  placed.footprint = onPlan(frame, ring);
  const Length intrusion = countedIntrusion(fixture);
  if (intrusion <= Length{}) placed.floor_block = placed.footprint;
  else if (intrusion < depth) placed.floor_block = onPlan(frame, behind(ring, depth - intrusion));
  placed.solid = isSolid(fixture);
  placed.center = frame.at({}, depth / 2);
  placed.facing = frame.facing;
  placed.back_center = frame.back_center;
  placed.front_center = frame.at({}, depth);
  placed.front = {frame.at(-half, depth), frame.at(half, depth)};
  placed.left_side = {frame.at(-half, {}), frame.at(-half, depth)};
  placed.right_side = {frame.at(half, {}), frame.at(half, depth)};
  return placed;
}

}  // namespace layout_parts

Outline fixtureRectangle(const Option& option, const Fixture& fixture) {
  return layout_parts::onPlan(layout_parts::frameOf(option, fixture), layout_parts::rectangleInFrame(fixture));
}

Outline fixtureOutline(const Option& option, const Fixture& fixture) {
  return layout_parts::onPlan(layout_parts::frameOf(option, fixture), layout_parts::outlineInFrame(fixture));
}

}  // namespace elbowroom
