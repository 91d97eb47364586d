#include "core/rules/checks/water_side.h"

#include <algorithm>

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kLongSide = 48_in;
// A side with less room before it is no way in.
constexpr Length kWayIn = 12_in;

bool worksWater(const WallItem& item) {
  return item.kind == "control" || item.kind == "bath-spout" || item.kind == "spout" ||
         item.kind == "shower-head" || item.kind == "tub-spout";
}

}  // namespace

std::optional<Hand> seatSide(const PlacedFixture& f) {
  const auto side = wordOf(f.fixture.facts, "seat_side");
  if (side == "left") return Hand::left;
  if (side == "right") return Hand::right;
  return std::nullopt;
}

std::optional<Hand> controlSide(const Layout& layout, const PlacedFixture& f) {
  for (const WallItem& item : layout.option.on_walls) {
    if (item.shower != f.fixture.id || !worksWater(item) || item.status == Status::remove) continue;
    const WallFrame* wall = findWallFrame(layout, item.wall);
    if (wall == nullptr) continue;
    const Length off = dot(wall->at(item.along) - f.center, leftOf(f));
    if (abs(off) < 1_in) continue;
    return off > Length{} ? Hand::left : Hand::right;
  }
  if (const auto seat = seatSide(f)) return *seat == Hand::left ? Hand::right : Hand::left;
  return std::nullopt;
}

WayIn wayInto(const Layout& layout, const PlacedFixture& shower) {
  const Obstacles others = obstaclesWhere(layout, [&](const PlacedFixture& o) { return &o != &shower; });
  struct Way {
    Side side;
    Segment edge;
    Direction out;
    Length width;
  };
  const Way ways[] = {{Side::front, shower.front, shower.facing, shower.fixture.width},
                      {Side::left, shower.left_side, leftOf(shower), shower.fixture.depth},
                      {Side::right, shower.right_side, rightOf(shower), shower.fixture.depth}};
  WayIn widest;
  for (const Way& way : ways) {
    Length width = way.width;
    for (const Pane& pane : shower.fixture.glass)
      if (pane.side == way.side) width = pane.door.value_or(Length{});
    if (way.side != Side::front && aheadOf(way.edge, way.out, layout, others).distance < kWayIn) continue;
    if (width > widest.width) widest = {way.side, width};
  }
  return widest;
}

ShowerKind kindOf(const Layout& layout, const PlacedFixture& shower) {
  if (std::max(shower.fixture.width, shower.fixture.depth) < kLongSide) return ShowerKind::transfer;
  return wayInto(layout, shower).width > kLongSide ? ShowerKind::rollIn : ShowerKind::alternate;
}

}  // namespace elbowroom::checks
