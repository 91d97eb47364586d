#include "core/rules/checks/spacing.h"

#include <algorithm>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

bool facesAlike(const PlacedFixture& a, const PlacedFixture& b) {
  return a.facing.x * b.facing.x + a.facing.y * b.facing.y > 0.999;
}

// Do the two stand side by side, that is, does one pass the other when moved straight sideways?
bool sideBySide(const PlacedFixture& a, const PlacedFixture& b) {
  const auto extent = [&](const PlacedFixture& f) {
    return std::pair{dot(f.back_center - a.back_center, a.facing),
                     dot(f.front_center - a.back_center, a.facing)};
  };
  const auto [a_back, a_front] = extent(a);
  const auto [b_back, b_front] = extent(b);
  return std::min(a_front, b_front) > std::max(a_back, b_back);
}

Measurement centresOf(const CheckInput& in, const PlacedFixture& a, const PlacedFixture& b, Length apart) {
  const Direction towards = rightOf(a);
  const Length limit = limitOf(in);
  Measurement m{.subjects = {b.fixture.id, a.fixture.id}, .measured = apart};
  m.places = {lineFrom(a.center, a.center + apart * towards)};
  if (apart < limit) m.places.push_back(stripBetween(centreline(b), towards, Length{}, limit - apart));
  return m;
}

template <typename Wanted>
std::vector<Measurement> centres(const CheckInput& in, Wanted wanted) {
  std::vector<Measurement> found;
  for (const PlacedFixture& a : in.layout.fixtures) {
    if (!counts(a) || !wanted(a)) continue;
    const PlacedFixture* next = nullptr;
    Length nearest;
    for (const PlacedFixture& b : in.layout.fixtures) {
      if (&a == &b || !counts(b) || !wanted(b) || !facesAlike(a, b) || !sideBySide(a, b)) continue;
      const Length apart = dot(b.center - a.center, rightOf(a));
      if (apart <= Length{} || (next != nullptr && apart >= nearest)) continue;
      next = &b;
      nearest = apart;
    }
    if (next != nullptr) found.push_back(centresOf(in, a, *next, nearest));
  }
  return found;
}

// Half of the smallest usual basin (15 in across) and an inch of counter: no basin's centre is nearer to the
// end.
constexpr Length kLeastEnd = Length::nanometres(8'500 * 25'400);

std::vector<Measurement> basinSpacing(const CheckInput& in, Length to_side) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    const std::optional<int> basins = basinsOf(f);
    if (!counts(f) || !isBasin(f) || !basins || *basins < 2 || in.layout.room.empty()) continue;
    const Length half = f.fixture.width / 2;
    const auto end = [&](const Ahead& side) { return std::max(to_side - (side.distance - half), kLeastEnd); };
    const Length left = end(in.around[i].left), right = end(in.around[i].right);
    const Length apart = std::max(Length{}, f.fixture.width - left - right);
    const Point middle = midpoint(f.center, f.front_center);
    found.push_back(
        {.subjects = {f.fixture.id},
         .measured = apart,
         .places = {lineFrom(middle + (half - left) * leftOf(f), middle + (half - right) * rightOf(f))},
         .detail = "basins-as-far-apart-as-allowed",
         .limit = limitOf(in) * (*basins - 1)});
  }
  return found;
}

}  // namespace

std::vector<Measurement> fixtureCentres(const CheckInput& in) {
  return centres(in, [](const PlacedFixture& f) { return isToilet(f) || (isBasin(f) && basinsOf(f) == 1); });
}
std::vector<Measurement> toiletCentres(const CheckInput& in) { return centres(in, isToilet); }
std::vector<Measurement> basinGaps(const CheckInput& in) {
  std::vector<Measurement> found =
      centres(in, [](const PlacedFixture& f) { return f.fixture.kind == FixtureKind::basin && basinsOf(f) == 1; });
  const auto halfOf = [&](const ElementId& id) { return findFixture(in.layout.option, id)->width / 2; };
  for (Measurement& m : found) {
    const Length halves = halfOf(m.subjects[0]) + halfOf(m.subjects[1]);
    const Length gap = std::max(Length{}, std::get<Length>(*m.measured) - halves);
    const Segment line{m.places[0].points[0], m.places[0].points[1]};
    const Direction towards = Direction::between(line.a, line.b);
    const Point edge = line.a + halfOf(m.subjects[1]) * towards;
    m.measured = gap;
    m.places = {lineFrom(edge, edge + gap * towards)};
  }
  return found;
}
std::vector<Measurement> basinSpacing15(const CheckInput& in) { return basinSpacing(in, 15_in); }
std::vector<Measurement> basinSpacing20(const CheckInput& in) { return basinSpacing(in, 20_in); }

}  // namespace elbowroom::checks
