#include <algorithm>

#include "core/plan/ceiling.h"
#include "core/plan/snap_wall_item.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/check.h"
#include "core/rules/wishes/looks.h"

namespace elbowroom::wishes {
namespace {
using namespace literals;
using Seen = Sight::Seen;

constexpr Length kReceptacleReach = 36_in;  // trade guideline 24: within 36 in of the basin's edge
constexpr Length kUsualToe = 3_in;          // usual depth of a toe space
constexpr Length kLightsApart = 60_in;      // at most, trade article on lighting for mirrors
constexpr Length kCord = 36_in;             // cords of washing seats are 3 to 4 ft
constexpr Length kFlush = 1_in;             // a mirror this near to its end reaches it

struct Bowls {
  const PlacedFixture* fixture = nullptr;
  std::vector<Point> at;  // left to right as seen facing the wall, at the wall
};

// Basins stand evenly on their counter unless the plan says more.
Bowls bowlsOf(const PlacedFixture& f) {
  Bowls bowls{&f, {}};
  const int count = std::max(1, checks::basinsOf(f).value_or(1));
  const Length share = f.fixture.width / count;
  for (int i = 0; i < count; ++i)
    bowls.at.push_back(f.back_center + (f.fixture.width / 2 - share * i - share / 2) * checks::leftOf(f));
  return bowls;
}

// Beside the bowl at that hand, and near enough to the fixture.
const PlacedWallItem* receptacleBeside(const CheckInput& in, const PlacedFixture& f, Point bowl, Hand hand) {
  const Direction out = hand == Hand::left ? checks::leftOf(f) : checks::rightOf(f);
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!checks::counts(i) || !is(i.item, WallUse::receptacle)) continue;
    if (dot(middleOf(i) - bowl, out) <= Length{}) continue;
    if (gapFromPoint(middleOf(i), f.footprint).distance <= kReceptacleReach) return &i;
  }
  return nullptr;
}

Sight eachSide(const CheckInput& in, const Bowls& left, const Bowls& right) {
  Sight sight;
  const PlacedWallItem* l = receptacleBeside(in, *left.fixture, left.at.front(), Hand::left);
  const PlacedWallItem* r = receptacleBeside(in, *right.fixture, right.at.back(), Hand::right);
  if (l == nullptr || r == nullptr) return sight;
  sight.seen = Seen::yes;
  add(sight, *l);
  add(sight, *r);
  return sight;
}

// Two basins on one wall: the outermost two of it.
Sight basinsOnWalls(const CheckInput& in, const std::vector<Bowls>& all) {
  for (const Bowls& a : all)
    for (const Bowls& b : all) {
      const PlacedFixture &left = *a.fixture, &right = *b.fixture;
      if (left.wall < 0 || left.wall != right.wall) continue;
      if (dot(right.center - left.center, checks::rightOf(left)) <= Length{}) continue;
      if (Sight sight = eachSide(in, a, b); sight.seen == Seen::yes) return sight;
    }
  return {};
}

bool wallToWall(const CheckInput& in, const PlacedWallItem& m) {
  return m.from <= kFlush && m.to >= in.layout.walls[static_cast<std::size_t>(m.wall)].length - kFlush;
}

// The basin or vanity below; nullptr: none.
const PlacedFixture* basinBelow(const CheckInput& in, const PlacedWallItem& m) {
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!checks::counts(f) || !checks::isBasin(f) || f.wall != m.wall) continue;
    const WallFrame& wall = in.layout.walls[static_cast<std::size_t>(f.wall)];
    const Length at = dot(f.center - wall.from, wall.along), half = f.fixture.width / 2;
    if (m.from < at + half && m.to > at - half) return &f;
  }
  return nullptr;
}

Sight counterToCeiling(const CheckInput& in, const PlacedWallItem& m, const PlacedFixture& basin) {
  const ElementId& wall = in.layout.walls[static_cast<std::size_t>(m.wall)].id;
  const auto a = ceilingOn(in.layout, wall, m.from), b = ceilingOn(in.layout, wall, m.to);
  if (!a || !b) return {.seen = Seen::notStated, .places = {placeOf(m)}, .fact = "ceiling.height"};
  Sight sight;
  if (m.top < std::min(*a, *b) - kFlush) return sight;
  if (!basin.fixture.height) {
    sight = {.seen = Seen::notStated, .fact = "height"};
    add(sight, basin);
    return sight;
  }
  if (m.bottom > *basin.fixture.height + kFlush) return sight;
  sight.seen = Seen::yes;
  add(sight, m);
  return sight;
}

bool lightsSide(const PlacedWallItem& i) {
  if (!checks::counts(i)) return false;
  return i.item.kind == "sconce-box" || (is(i.item, WallUse::lamp) && i.item.height > i.item.width);
}

Sight lightsBeside(const CheckInput& in, const PlacedFixture& f, Point bowl) {
  const PlacedWallItem *left = nullptr, *right = nullptr;
  const auto off = [&](const PlacedWallItem& i) { return dot(middleOf(i) - bowl, checks::rightOf(f)); };
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!lightsSide(i) || i.wall != f.wall || f.wall < 0) continue;
    if (off(i) < Length{} && (left == nullptr || off(i) > off(*left))) left = &i;
    if (off(i) > Length{} && (right == nullptr || off(i) < off(*right))) right = &i;
  }
  Sight sight;
  if (left == nullptr || right == nullptr || off(*right) - off(*left) > kLightsApart + kMetTolerance)
    return sight;
  sight.seen = Seen::yes;
  add(sight, *left);
  add(sight, *right);
  return sight;
}

}  // namespace

Sight doubleReceptacles(const CheckInput& in) {
  std::vector<Bowls> all;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (checks::counts(f) && checks::isBasin(f)) all.push_back(bowlsOf(f));
  if (Sight pair = basinsOnWalls(in, all); pair.seen == Seen::yes) return pair;
  return atFixtures(in, checks::isBasin, [&](const PlacedFixture& f) -> Sight {
    if (!checks::basinsOf(f)) return {.seen = Seen::notStated, .fact = "basins"};
    const Bowls bowls = bowlsOf(f);
    return bowls.at.size() < 2 ? Sight{} : eachSide(in, bowls, bowls);
  });
}

Sight toeSpace(const CheckInput& in) {
  const auto vanity = [](const PlacedFixture& f) { return f.fixture.kind == FixtureKind::vanity; };
  return atFixtures(in, vanity, [](const PlacedFixture& f) -> Sight {
    if (yesNo(f.fixture.facts, "wall_hung").value_or(false)) return {.seen = Seen::yes};
    const auto deep = lengthOf(f.fixture.facts, "toe_depth");
    if (!deep) return {.seen = Seen::notStated, .fact = "toe_depth"};
    return {.seen = *deep > kUsualToe + kMetTolerance ? Seen::yes : Seen::no};
  });
}

Sight fullMirror(const CheckInput& in) {
  Sight best = atFixtures(in, checks::isBasin, [](const PlacedFixture&) { return Sight{}; });
  for (const PlacedWallItem& m : in.layout.on_walls) {
    if (!checks::counts(m) || !checks::isMirror(m)) continue;
    Sight one;
    const PlacedFixture* basin = basinBelow(in, m);
    if (wallToWall(in, m)) {
      one.seen = Seen::yes;
      add(one, m);
    } else if (basin != nullptr) {
      one = counterToCeiling(in, m, *basin);
    }
    if (one.seen == Seen::yes) return one;
    if (one.seen == Seen::notStated) best = one;
  }
  return best;
}

Sight sideLights(const CheckInput& in) {
  return atFixtures(in, checks::isBasin, [&](const PlacedFixture& f) {
    Sight found;
    for (const Point bowl : bowlsOf(f).at)
      if (found.seen != Seen::yes) found = lightsBeside(in, f, bowl);
    return found;
  });
}

Sight makeupMirror(const CheckInput& in) {
  return anyOf(in.layout.on_walls,
               [](const PlacedWallItem& i) { return checks::counts(i) && i.item.kind == "makeup-mirror"; });
}

Sight toiletReceptacle(const CheckInput& in) {
  const auto toilet = [](const PlacedFixture& f) { return f.fixture.kind == FixtureKind::toilet; };
  return atFixtures(in, toilet, [&](const PlacedFixture& f) {
    return anyOf(in.layout.on_walls, [&](const PlacedWallItem& i) {
      return checks::counts(i) && is(i.item, WallUse::receptacle) &&
             gapFromPoint(middleOf(i), f.footprint).distance <= kCord;
    });
  });
}

}  // namespace elbowroom::wishes
