#include "core/rules/checks/electrical_places.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kAtWall = 1_in;      // a receptor stands this close to a wall when the finish fills the gap
constexpr Length kLeastBowl = 15_in;  // the smallest usual basin, as in core/rules/checks/spacing.cpp

Outline strip(const PlacedFixture& f, Length off, Length width) {
  const Point back = f.back_center + off * rightOf(f);
  const Vector half = (width / 2) * rightOf(f), deep = f.fixture.depth * f.facing;
  return {back - half, back + half, back + half + deep, back - half + deep};
}

// The wall closes this side; else one would get at it along the wall, past the end of the glass.
bool isAtWall(const Layout& layout, const Segment& line) {
  return std::any_of(layout.walls.begin(), layout.walls.end(), [&](const WallFrame& wall) {
    const auto off = [&](Point p) { return gapBetween(Segment{wall.from, wall.to}, Segment{p, p}).distance; };
    return off(line.a) <= kAtWall && off(line.b) <= kAtWall;
  });
}

int nearestWall(const Layout& layout, Point p) {
  const ElementId id = wallAt(layout, p);
  for (std::size_t i = 0; i < layout.walls.size(); ++i)
    if (layout.walls[i].id == id) return static_cast<int>(i);
  return -1;
}

}  // namespace

std::vector<const PlacedWallItem*> receptaclesOf(const Layout& layout) {
  std::vector<const PlacedWallItem*> found;
  for (const PlacedWallItem& i : layout.on_walls)
    if (counts(i) && is(i.item, WallUse::receptacle)) found.push_back(&i);
  return found;
}

Length boxHeightOf(const PlacedWallItem& i) { return i.bottom + boxUp(i.item); }

bool isBathroom(const Layout& layout) {
  if (yesNo(layout.option.room.facts, "compartment") == true) return true;
  const auto any = [&](auto wanted) {
    return std::any_of(layout.fixtures.begin(), layout.fixtures.end(),
                       [&](const PlacedFixture& f) { return counts(f) && wanted(f); });
  };
  return any(isBasin) && (any(isToilet) || any(isBath) || any(isShower));
}

std::optional<Length> rimOf(const PlacedFixture& f) {
  return isShower(f) ? f.fixture.curb : f.fixture.height;
}
const char* rimFactOf(const PlacedFixture& f) { return isShower(f) ? "curb" : "height"; }

std::vector<Bowl> bowlsOf(const PlacedFixture& f) {
  const std::optional<int> count = basinsOf(f);
  std::vector<Bowl> bowls;
  if (!count || !isBasin(f)) return bowls;
  const Length share = f.fixture.width / *count;
  const bool free = f.fixture.kind == FixtureKind::basin && *count == 1;
  const Length least = std::min(f.fixture.bowl_width.value_or(free ? share : kLeastBowl), share);
  const Length most = std::min(f.fixture.bowl_width.value_or(share), share);
  for (int i = 0; i < *count; ++i) {
    const Length off = share.scaled(i + 0.5) - f.fixture.width / 2;
    bowls.push_back({&f, strip(f, off, least), strip(f, off, most)});
  }
  return bowls;
}

bool isBesideBasin(const Layout& layout, const PlacedFixture& f, int wall) {
  const int count = static_cast<int>(layout.walls.size());
  const int behind = f.wall >= 0 ? f.wall : nearestWall(layout, f.back_center);
  if (behind < 0 || wall < 0) return false;
  const int apart = (wall - behind + count) % count;
  if (apart != 0 && apart != 1 && apart != count - 1) return false;
  const WallFrame& frame = layout.walls[static_cast<std::size_t>(wall)];
  return dot(f.center - frame.from, frame.inward) > Length{};
}

OpenEdges openEdgesOf(const Layout& layout, const PlacedFixture& f, Length height) {
  OpenEdges found;
  const std::pair<Side, Segment> sides[] = {{Side::front, f.front},
                                            {Side::left, f.left_side},
                                            {Side::right, f.right_side},
                                            {Side::back, {f.left_side.a, f.right_side.a}}};
  for (const auto& [side, line] : sides) {
    const auto pane = std::find_if(f.fixture.glass.begin(), f.fixture.glass.end(),
                                   [side = side](const Pane& p) { return p.side == side && !p.door; });
    const bool glass = pane != f.fixture.glass.end() && pane->height.value_or(height) >= height;
    if (glass && !pane->height) found.asks = true;
    if (glass)
      found.glass.push_back(line);
    else if (!isAtWall(layout, line))
      found.edges.push_back(line);
  }
  if (!found.glass.empty()) return found;
  found.edges.clear();  // an outline that is no rectangle
  for (std::size_t i = 0; i < f.footprint.size(); ++i)
    found.edges.push_back({f.footprint[i], f.footprint[(i + 1) % f.footprint.size()]});
  return found;
}

std::optional<Gap> wayToWater(const Layout& layout, const PlacedWallItem& i, const PlacedFixture& water, bool& asks) {
  const OpenEdges open = openEdgesOf(layout, water, boxHeightOf(i));
  const Gap straight = gapBetween(widthOf(i), water.footprint);
  asks = open.asks;
  if (straight.distance <= kContact && open.glass.empty()) return straight;
  std::optional<Gap> best;
  for (const Point from : {straight.from, i.left, i.right}) {
    const auto gap = gapInSight(from, open.edges, layout.room, open.glass);
    if (gap && (!best || gap->distance < best->distance)) best = gap;
  }
  return best;
}

}  // namespace elbowroom::checks
