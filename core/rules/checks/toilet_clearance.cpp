#include "core/rules/checks/toilet_clearance.h"

#include <algorithm>
#include <cstdint>

#include "core/rules/check.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

struct Asked {
  Length width, depth;
  Length depth_beside_basin, basin_from_centre, basin_depth;  // 0: no such exception; no limit of its depth
};

// The space in its own frame: from the corner of the rear wall and the side wall, `away` from the side wall,
// `out` from the rear wall.
struct Frame {
  Point rear;  // on the rear wall, at the toilet's centreline
  Direction away, out;
  Length to_side;
  Point at(Length from_side, Length from_rear) const {
    return rear + (from_side - to_side) * away + from_rear * out;
  }
};

Frame frameOf(const CheckInput& in, const PlacedFixture& wc) {
  const auto& [left, right] = sideWalls(in, wc);
  const bool side_left = left.distance <= right.distance;
  return {wc.back_center, side_left ? rightOf(wc) : leftOf(wc), wc.facing,
          side_left ? left.distance : right.distance};
}

bool allowedBeside(const PlacedFixture& basin, const PlacedFixture& wc, const Frame& frame, const Asked& asked) {
  if (asked.depth_beside_basin <= Length{}) return false;
  if (asked.basin_depth > Length{} && basin.fixture.depth > asked.basin_depth + kMetTolerance) return false;
  if (basin.fixture.kind != FixtureKind::basin || !basin.fixture.knee_space || basin.wall != wc.wall)
    return false;
  Length nearest = Length::nanometres(INT64_MAX);
  for (const Point& p : basin.footprint) nearest = std::min(nearest, dot(p - frame.rear, frame.away));
  return nearest >= asked.basin_from_centre - kMetTolerance;
}

struct Space {
  Ahead side, far;  // from the centreline to both sides, over the depth
  Ahead deep;       // from the rear wall outward, over the width
  Length width;     // of both sides together
  Length depth, asked_width;

  Length widthLacks() const { return asked_width - width; }
  Length depthLacks() const { return depth - deep.distance; }
  bool fits() const { return widthLacks() < kMetTolerance && depthLacks() < kMetTolerance; }
};

Space spaceOf(const CheckInput& in, const PlacedFixture& wc, const Frame& frame, const Obstacles& obstacles,
              Length asked_width, Length depth) {
  const Layout& layout = in.layout;
  // Lines that would leave the room are cut at its walls, so that a room too small one way is judged that
  // way.
  const Segment back{wc.left_side.a, wc.right_side.a};
  const Length room_depth = aheadOf(back, frame.out, layout, {}).distance;
  const Segment line{frame.at(frame.to_side, Length{}), frame.at(frame.to_side, std::min(depth, room_depth))};
  const auto& [left, right] = sideWalls(in, wc);
  const Length room_width = left.distance + right.distance;
  const Segment rear{frame.at(Length{}, Length{}), frame.at(std::min(asked_width, room_width), Length{})};
  Space s{aheadOf(line, frame.away.opposite(), layout, obstacles),
          aheadOf(line, frame.away, layout, obstacles),
          aheadOf(rear, frame.out, layout, obstacles),
          {},
          depth,
          asked_width};
  s.width = s.far.distance + s.side.distance;
  return s;
}

Measurement clearanceOf(const CheckInput& in, const PlacedFixture& wc, const Asked& asked) {
  const Layout& layout = in.layout;
  const Frame frame = frameOf(in, wc);
  const Obstacles& all = thingsAround(in, wc);
  const Obstacles but_basin = obstaclesWhere(
      layout, [&](const PlacedFixture& o) { return &o != &wc && !allowedBeside(o, wc, frame, asked); });
  Space s = spaceOf(in, wc, frame, all, asked.width, asked.depth);
  std::string detail;
  if (!s.fits() && all.outlines.size() != but_basin.outlines.size()) {
    s = spaceOf(in, wc, frame, but_basin, asked.width, asked.depth_beside_basin);
    detail = "basin-beside-toilet";
  }
  // Something in a corner of the space is out of it once either dimension is free: name the one that lacks
  // less.
  const bool width_short = s.widthLacks() >= kMetTolerance, depth_short = s.depthLacks() >= kMetTolerance;
  if (depth_short && (!width_short || s.depthLacks() < s.widthLacks())) {
    const Length d = s.deep.distance;
    return {.subjects = {wc.fixture.id, idOf(layout, s.deep)},
            .measured = d,
            .places = {lineFrom(s.deep.at - d * frame.out, s.deep.at),
                       {Place::Kind::zone,
                        {frame.at(Length{}, d), frame.at(asked.width, d), frame.at(asked.width, s.depth),
                         frame.at(Length{}, s.depth)}}},
            .detail = detail,
            .limit = s.depth};
  }
  Measurement m{.subjects = {wc.fixture.id, idOf(layout, s.far)},
                .measured = s.width,
                .places = {lineFrom(s.far.at - s.width * frame.away, s.far.at)},
                .detail = detail};
  if (width_short)
    m.places.push_back({Place::Kind::zone,
                        {frame.at(s.width, Length{}), frame.at(asked.width, Length{}), frame.at(asked.width, s.depth),
                         frame.at(s.width, s.depth)}});
  return m;
}

}  // namespace

std::vector<Measurement> toiletClearances(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  const Asked asked{limitOf(in), sizeOf(in, 0), sizeOf(in, 1), sizeOf(in, 2), sizeOf(in, 3)};
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && f.fixture.kind == FixtureKind::toilet) found.push_back(clearanceOf(in, f, asked));
  return found;
}

}  // namespace elbowroom::checks
