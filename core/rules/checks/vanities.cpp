#include "core/rules/checks/vanities.h"

#include <algorithm>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {

bool isVanity(const PlacedFixture& f) { return f.fixture.kind == FixtureKind::vanity; }
bool standsOnFloor(const PlacedFixture& f) {
  return isVanity(f) && !f.fixture.knee_space && yesNo(f.fixture.facts, "wall_hung") != true;
}

template <typename Wanted, typename Make>
std::vector<Measurement> each(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !wanted(f)) continue;
    found.push_back(
        {.subjects = {f.fixture.id}, .measured = std::nullopt, .places = {lineFrom(f.front.a, f.front.b)}});
    make(found.back(), f, in.around[i]);
  }
  return found;
}

std::vector<Measurement> toeSpace(const CheckInput& in, const char* key) {
  return each(in, standsOnFloor, [&](Measurement& m, const PlacedFixture& f, const Around&) {
    if (const auto stated = lengthOf(f.fixture.facts, key))
      m.measured = *stated;
    else
      m.fact = key;
  });
}

}  // namespace

std::vector<Measurement> doubleVanityWidths(const CheckInput& in) {
  const auto wanted = [](const PlacedFixture& f) { return isVanity(f) && f.fixture.basins.value_or(1) >= 2; };
  return each(in, wanted,
              [](Measurement& m, const PlacedFixture& f, const Around&) { m.measured = f.fixture.width; });
}

std::vector<Measurement> wallPerBasin(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  return each(in, isBasin, [](Measurement& m, const PlacedFixture& f, const Around& around) {
    const Length wall = around.left.distance + around.right.distance;
    m.places = {lineFrom(f.back_center + around.left.distance * leftOf(f),
                         f.back_center + around.right.distance * rightOf(f))};
    const auto basins = basinsOf(f);
    if (!basins) {
      m.detail = "basins-not-stated";
      m.fact = "basins";
      return;
    }
    m.measured = wall / std::max(1, *basins);
  });
}

std::vector<Measurement> toeSpaceDepths(const CheckInput& in) { return toeSpace(in, "toe_depth"); }
std::vector<Measurement> toeSpaceHeights(const CheckInput& in) { return toeSpace(in, "toe_height"); }

std::vector<Measurement> counterCorners(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  std::vector<Measurement> found =
      each(in, isVanity, [](Measurement& m, const PlacedFixture& f, const Around& around) {
        const Length nearer = f.fixture.width / 2 + kContact;
        if (around.left.distance <= nearer && around.right.distance <= nearer)
          m.subjects.clear();  // both corners are shut in
        else if (const auto rounded = yesNo(f.fixture.facts, "rounded_corners"))
          m.measured = *rounded;
        else
          m.fact = "rounded_corners";
      });
  found.erase(
      std::remove_if(found.begin(), found.end(), [](const Measurement& m) { return m.subjects.empty(); }),
      found.end());
  return found;
}

}  // namespace elbowroom::checks
