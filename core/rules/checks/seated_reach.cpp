#include "core/rules/checks/seated_reach.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/wall_spots.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using Item = PlacedWallItem;

bool overCounter(const CheckInput& in, const Item& i) {
  const PlacedFixture* under = standingUnder(in.layout, i);
  return under && (isBasin(*under) || under->fixture.kind == FixtureKind::cabinet);
}

template <typename Wanted>
std::vector<Measurement> bottoms(const CheckInput& in, Wanted wanted) {
  return eachOnWall(in, wanted, [](Measurement& m, const Item& i) { m.measured = i.bottom; });
}

bool isOperable(const Item& i) {
  if (is(i.item, WallUse::receptacle)) return !yesNo(i.item.facts, "for_toilet_seat").value_or(false);
  return is(i.item, WallUse::control);
}

// What one reaches across; not where the thing is below its top, behind it.
const PlacedFixture* inTheWay(const CheckInput& in, const Item& i) {
  const PlacedFixture* under = standingUnder(in.layout, i);
  return under && !(under->fixture.height && i.top <= *under->fixture.height) ? under : nullptr;
}
bool behind(const CheckInput& in, const Item& i) {
  return standingUnder(in.layout, i) != nullptr && inTheWay(in, i) == nullptr;
}
bool kneesUnder(const PlacedFixture& f) { return countedUnder(f) > Length{}; }

}  // namespace

std::vector<Measurement> mirrorBottomsOverBasins(const CheckInput& in) {
  return bottoms(in, [&](const Item& i) { return isMirror(i) && overCounter(in, i); });
}
std::vector<Measurement> mirrorBottomsElsewhere(const CheckInput& in) {
  return bottoms(in, [&](const Item& i) { return isMirror(i) && !overCounter(in, i); });
}
std::vector<Measurement> mirrorLowerEdges(const CheckInput& in) { return bottoms(in, isMirror); }
std::vector<Measurement> mirrorUpperEdges(const CheckInput& in) {
  return eachOnWall(in, isMirror, [](Measurement& m, const Item& i) { m.measured = i.top; });
}

std::vector<Measurement> shelfTops(const CheckInput& in) {
  return eachOnWall(
      in, [](const Item& i) { return is(i.item, WallUse::shelf) && i.item.shower.empty(); },
      [](Measurement& m, const Item& i) { m.measured = i.top; });
}

std::vector<Measurement> operablePartHeights(const CheckInput& in) {
  return eachOnWall(
      in, [&](const Item& i) { return isOperable(i) && !behind(in, i); },
      [&](Measurement& m, const Item& i) {
        m.measured = centreOf(i);
        const PlacedFixture* under = inTheWay(in, i);
        if (!under) return;
        const std::size_t at = kneesUnder(*under) ? 0 : 2;
        if (reachFromWall(in.layout, *under) <= sizeOf(in, at)) return;
        m.limit_high = sizeOf(in, at + 1);
        m.subjects.push_back(under->fixture.id);
      });
}

std::vector<Measurement> reachesAcross(const CheckInput& in) {
  return eachOnWall(
      in, [&](const Item& i) { return isOperable(i) && inTheWay(in, i) != nullptr; },
      [&](Measurement& m, const Item& i) {
        const PlacedFixture& under = *inTheWay(in, i);
        m.subjects.push_back(under.fixture.id);
        m.measured = reachFromWall(in.layout, under);
        if (!kneesUnder(under)) m.limit = sizeOf(in, 0);
        m.places = {lineFrom(under.back_center, under.front_center)};
      });
}

std::vector<Measurement> reachesOver(const CheckInput& in) {
  return eachOnWall(
      in,
      [&](const Item& i) {
        const PlacedFixture* under = isOperable(i) ? inTheWay(in, i) : nullptr;
        return under && !kneesUnder(*under);
      },
      [&](Measurement& m, const Item& i) {
        const PlacedFixture& under = *inTheWay(in, i);
        m.places = {lineFrom(under.back_center, under.front_center)};
        if (under.fixture.height) {
          m.measured = *under.fixture.height;
          m.subjects.push_back(under.fixture.id);
        } else {
          m.subjects = {under.fixture.id, i.item.id};
          m.fact = "height";
        }
      });
}

std::vector<Measurement> protrusions(const CheckInput& in) {
  return eachOnWall(
      in,
      [&](const Item& i) {
        return !i.recessed && !is(i.item, WallUse::grabBar) && i.item.shower.empty() &&
               i.bottom > sizeOf(in, 0) && i.bottom <= sizeOf(in, 1) && i.depth > Length{} &&
               standingUnder(in.layout, i) == nullptr;
      },
      [](Measurement& m, const Item& i) {
        m.measured = i.depth;
        const Point middle = midpoint(i.left, i.right);
        const Vector out = i.outline.size() == 4 ? i.outline[1] - i.outline[0] : Vector{};
        m.places = {lineFrom(middle, middle + out)};
      });
}

}  // namespace elbowroom::checks
