#include <algorithm>
#include <cmath>

#include "core/plan/catalogue.h"
#include "core/plan/snap.h"
#include "core/rules/remedies/trade_sizes.h"
#include "core/rules/remedies/ways.h"

namespace elbowroom::remedies {
namespace {

using namespace literals;

constexpr double kSwap = 24, kElsewhere = 30, kFarFactor = 0.25, kOtherSize = 6;

// A thing that was to stay where it is will be moved, and the plan must not say otherwise; another size is a new
// thing.
Fixture moved(Fixture f) {
  if (f.status == Status::keep) f.status = Status::move;
  return f;
}
Fixture replaced(Fixture f) {
  if (f.status == Status::keep || f.status == Status::move) f.status = Status::fresh;
  return f;
}

std::optional<Placement> shifted(const Layout& layout, const Fixture& f, Vector by) {
  if (const auto* standing = std::get_if<Standing>(&f.placement)) return Standing{standing->at + by, standing->turn};
  OnWall on = std::get<OnWall>(f.placement);
  const WallFrame* wall = findWallFrame(layout, on.wall);
  if (wall == nullptr) return std::nullopt;
  on.along += dot(by, wall->along);
  on.gap += dot(by, wall->inward);
  return on;
}

Point middleOf(const Option& option, const Fixture& f) {
  const Outline rectangle = fixtureRectangle(option, f);
  return rectangle.empty() ? Point{} : centroidOf(rectangle);
}

// Whether the fixture stands on floor of its own there, so that a check is worth its time.
bool standsFree(const Layout& layout, const Fixture& f, const ElementId& but = {}) {
  const Outline outline = fixtureOutline(layout.option, f);
  if (outline.empty() || gapToBoundary(outline, layout.room).overlap) return false;
  for (std::size_t i = 0; i < layout.solid.size(); ++i) {
    const ElementId& id = layout.fixtures[static_cast<std::size_t>(layout.solid[i])].fixture.id;
    if (id != f.id && id != but && gapBetween(outline, layout.solid_outlines[i]).overlap) return false;
  }
  return true;
}

// Not from its wall into the room: only what stands free or has a gap behind it goes to and fro.
void addSlides(const Layout& layout, const PlacedFixture& p, Ways& ways) {
  const bool on_wall = p.wall >= 0;
  const auto* on = std::get_if<OnWall>(&p.fixture.placement);
  const std::vector<SideGap> gaps = sideGaps(layout, p.fixture.id);
  for (const SideGap& gap : gaps) {
    const Direction way = gap.grow.opposite();  // toward gap.other
    const double ahead = way.x * p.facing.x + way.y * p.facing.y;
    if (on_wall && ahead > 0.5 && p.fixture.kind != FixtureKind::freestandingBath) continue;
    if (gap.distance <= kContact) continue;
    Family f;
    f.move = {.way = Mend::slide, .moved = p.fixture.id, .other = gap.other};
    for (const SideGap& opposite : gaps)
      if (opposite.grow.x * way.x + opposite.grow.y * way.y > 0.9) f.behind = opposite.other;
    f.most = gap.distance;
    f.effort = {0, 1};
    f.at = [&layout, fixture = p.fixture, way](Length by) -> Change {
      Fixture there = moved(fixture);
      if (const auto placement = shifted(layout, fixture, by * way)) there.placement = *placement;
      return PutFixtures{{there}};
    };
    ways.families.push_back(std::move(f));
  }
  if (on == nullptr || on->gap <= kContact) return;
  Family back;
  back.move = {.way = Mend::slide, .moved = p.fixture.id, .other = on->wall};
  back.most = on->gap;
  back.effort = {0, 1};
  back.at = [fixture = p.fixture](Length by) -> Change {
    Fixture there = moved(fixture);
    std::get<OnWall>(there.placement).gap -= by;
    return PutFixtures{{there}};
  };
  ways.families.push_back(std::move(back));
}

void addSizes(const Layout& layout, const PlacedFixture& p, Ways& ways) {
  struct Size {
    const TradeSize* size;
    Length change;
  };
  const Fixture& f = p.fixture;
  for (const bool wider : {false, true}) {
    std::vector<Size> sizes;
    for (const TradeSize& s : tradeSizes()) {
      if (s.kind != f.kind || (s.width == f.width && s.depth == f.depth)) continue;
      if (wider ? s.width < f.width || s.depth < f.depth : s.width > f.width || s.depth > f.depth) continue;
      if (f.basins && s.basins != 0 && *f.basins > s.basins) continue;
      sizes.push_back({&s, abs(s.width - f.width) + abs(s.depth - f.depth)});
    }
    std::stable_sort(sizes.begin(), sizes.end(), [](const Size& a, const Size& b) { return a.change < b.change; });
    if (sizes.size() > 6) sizes.resize(6);
    for (const Size& s : sizes) {
      const Length dw = f.width - s.size->width, dd = f.depth - s.size->depth;
      // Its middle stays, or one of its sides.
      for (const int side : {0, -1, 1}) {
        if (side != 0 && dw == Length{}) continue;
        Fixture there = replaced(f);
        there.width = s.size->width;
        there.depth = s.size->depth;
        if (there.bowl_width) there.bowl_width = std::min(*there.bowl_width, there.width);
        if (there.tank_width) there.tank_width = std::min(*there.tank_width, there.width);
        if (auto* on = std::get_if<OnWall>(&there.placement)) {
          on->along += dw / 2 * side;
        } else {
          auto& standing = std::get<Standing>(there.placement);
          standing.at = standing.at - dd / 2 * p.facing + (dw / 2 * side) * p.facing.left();
        }
        if (!standsFree(layout, there)) continue;
        const Move move{.way = wider ? Mend::wider : Mend::narrower,
                        .moved = f.id,
                        .by = s.change,
                        .width = there.width,
                        .depth = there.depth};
        const double shift = abs(dw / 2 * side).inches();
        ways.candidates.push_back(
            {move, PutFixtures{{there}}, kOtherSize + s.change.inches() + shift * 0.1, false});
      }
    }
  }
}

void addTurnsInPlace(const Layout& layout, const PlacedFixture& p, Ways& ways) {
  const auto* standing = std::get_if<Standing>(&p.fixture.placement);
  if (standing == nullptr) return;
  for (const Angle turn : {90_deg, 180_deg, 270_deg}) {
    Fixture there = moved(p.fixture);
    there.placement = Standing{standing->at, (standing->turn + turn).normalised()};
    if (!standsFree(layout, there)) continue;
    ways.candidates.push_back(
        {{.way = Mend::turn, .moved = p.fixture.id, .turned = turn}, PutFixtures{{there}}, 8, false});
  }
}

// Against another wall: into its corners, beside what stands there, to its middle.
void addOtherWalls(const Layout& layout, const PlacedFixture& p, Ways& ways) {
  if (!infoOf(p.fixture.kind).wants_wall) return;
  const Point from = p.center;
  const Length half = p.fixture.width / 2;
  std::vector<Candidate> found;
  for (std::size_t w = 0; w < layout.walls.size(); ++w) {
    const WallFrame& wall = layout.walls[w];
    if (static_cast<int>(w) == p.wall || wall.length < p.fixture.width) continue;
    std::vector<Length> places{half, wall.length - half, wall.length / 2};
    for (const PlacedFixture& other : layout.fixtures) {
      if (other.wall != static_cast<int>(w) || other.fixture.id == p.fixture.id || !other.solid) continue;
      const Length along = std::get<OnWall>(other.fixture.placement).along, reach = other.fixture.width / 2 + half;
      places.push_back(along - reach);
      places.push_back(along + reach);
    }
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
    for (const Length along : places) {
      if (along < half || along > wall.length - half) continue;
      Fixture there = moved(p.fixture);
      there.placement = OnWall{wall.id, along, {}};
      if (!standsFree(layout, there)) continue;
      const Length far = distance(from, middleOf(layout.option, there));
      found.push_back({{.way = Mend::turn, .moved = p.fixture.id, .other = wall.id, .by = far},
                       PutFixtures{{there}},
                       kElsewhere + kFarFactor * far.inches(),
                       false});
    }
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const Candidate& a, const Candidate& b) { return a.effort < b.effort; });
  if (found.size() > 8) found.resize(8);
  std::move(found.begin(), found.end(), std::back_inserter(ways.candidates));
}

// Where `in` stands in the place of `out`, which stood in a corner if it did.
std::optional<OnWall> inPlaceOf(const Layout& layout, const Fixture& in, const Fixture& out) {
  const auto* on = std::get_if<OnWall>(&out.placement);
  const WallFrame* wall = on == nullptr ? nullptr : findWallFrame(layout, on->wall);
  if (wall == nullptr || wall->length < in.width) return std::nullopt;
  const Length half = in.width / 2;
  Length along = on->along;
  if (on->along - out.width / 2 <= kContact) along = half;
  if (wall->length - on->along - out.width / 2 <= kContact) along = wall->length - half;
  return OnWall{wall->id, std::clamp(along, half, wall->length - half), {}};
}

void addSwaps(const Layout& layout, const PlacedFixture& p, Ways& ways) {
  const auto* mine = std::get_if<OnWall>(&p.fixture.placement);
  if (mine == nullptr) return;
  for (const PlacedFixture& other : layout.fixtures) {
    const auto* theirs = std::get_if<OnWall>(&other.fixture.placement);
    if (other.fixture.id == p.fixture.id || theirs == nullptr || other.fixture.status == Status::remove) continue;
    Fixture a = moved(p.fixture), b = moved(other.fixture);
    if (mine->wall == theirs->wall) {
      // The two keep the span they take together.
      const bool a_first = mine->along < theirs->along;
      const Fixture &first = a_first ? a : b, &second = a_first ? b : a;
      const Length left = std::min(mine->along, theirs->along) - first.width / 2;
      const Length right = std::max(mine->along, theirs->along) + second.width / 2;
      const Length second_then = left + second.width / 2, first_then = right - first.width / 2;
      a.placement = OnWall{mine->wall, a_first ? first_then : second_then, {}};
      b.placement = OnWall{mine->wall, a_first ? second_then : first_then, {}};
    } else {
      const auto there = inPlaceOf(layout, a, other.fixture), here = inPlaceOf(layout, b, p.fixture);
      if (!there || !here) continue;
      a.placement = *there;
      b.placement = *here;
    }
    if (!standsFree(layout, a, b.id) || !standsFree(layout, b, a.id)) continue;
    if (gapBetween(fixtureOutline(layout.option, a), fixtureOutline(layout.option, b)).overlap) continue;
    const Length far =
        distance(p.center, middleOf(layout.option, a)) + distance(other.center, middleOf(layout.option, b));
    ways.candidates.push_back({{.way = Mend::swap, .moved = p.fixture.id, .other = other.fixture.id, .by = far},
                               PutFixtures{{a, b}},
                               kSwap + kFarFactor * far.inches(),
                               other.fixture.status == Status::keep});
  }
}

void addHeights(const PlacedFixture& p, Ways& ways) {
  if (!p.fixture.height) return;
  for (const bool up : {true, false}) {
    Family f;
    f.move = {.way = up ? Mend::raise : Mend::lower, .moved = p.fixture.id};
    f.most = std::min(12_in, up ? 12_in : *p.fixture.height - 1_in);
    if (f.most <= Length{}) continue;
    f.effort = {2, 0.5};
    f.at = [fixture = p.fixture, up](Length by) -> Change {
      Fixture there = replaced(fixture);
      *there.height += up ? by : -by;
      return PutFixtures{{there}};
    };
    ways.families.push_back(std::move(f));
  }
}

}  // namespace

void addFixtureWays(const Layout& layout, const PlacedFixture& p, Ways& ways) {
  addSlides(layout, p, ways);
  addTurnsInPlace(layout, p, ways);
  addSizes(layout, p, ways);
  addSwaps(layout, p, ways);
  addOtherWalls(layout, p, ways);
  addHeights(p, ways);
}

}  // namespace elbowroom::remedies
