#include "core/rules/checks/water_side.h"

#include <algorithm>

#include "core/rules/checks/shower_sides.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kLongSide = 48_in;
// A side with less room before it is no way in.
constexpr Length kWayIn = 12_in;

bool worksWater(const WallItem& item) {
  return item.kind == "control" || item.kind == "spout" || item.kind == "shower-head";
}

}  // namespace

std::optional<Hand> seatSide(const PlacedFixture& f) {
  const auto side = wordOf(f.fixture.facts, "seat_side");
  if (side == "left") return Hand::left;
  if (side == "right") return Hand::right;
  return std::nullopt;
}

bool controlPlaced(const Layout& layout, const PlacedFixture& f) {
  return std::any_of(layout.option.on_walls.begin(), layout.option.on_walls.end(), [&](const WallItem& item) {
    return item.shower == f.fixture.id && worksWater(item) && item.status != Status::remove;
  });
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
  WayIn widest;
  for (const ShowerSide& way : sidesOf(shower)) {
    if (way.side == Side::back) continue;
    const Pane* pane = paneOf(shower.fixture, way.side);
    const Length width = pane ? pane->door.value_or(Length{}) : way.length;
    if (way.side != Side::front && aheadOf(way.line, way.out, layout, others).distance < kWayIn) continue;
    if (width > widest.width) widest = {way.side, width};
  }
  return widest;
}

ShowerKind kindOf(const Layout& layout, const PlacedFixture& shower) {
  if (std::max(shower.fixture.width, shower.fixture.depth) < kLongSide) return ShowerKind::transfer;
  return wayInto(layout, shower).width > kLongSide ? ShowerKind::rollIn : ShowerKind::alternate;
}

}  // namespace elbowroom::checks
