#include "core/rules/checks/headroom.h"

#include <algorithm>

#include "core/plan/ceiling.h"
#include "core/rules/checks/wet.h"

namespace elbowroom::checks {

namespace {

Measurement notStated(Measurement m) {
  m.detail = "ceiling-not-stated";
  m.fact = "ceiling.height";
  return m;
}

// The square at the head, moved and where need be cut so that it lies within the fixture's rectangle.
Outline squareAt(const PlacedFixture& f, Point head, Length side) {
  const Length w = std::min(side, f.fixture.width), d = std::min(side, f.fixture.depth);
  const Length half = f.fixture.width / 2;
  const Length u = std::clamp(dot(head - f.back_center, rightOf(f)), w / 2 - half, half - w / 2);
  const Length v = std::clamp(dot(head - f.back_center, f.facing), d / 2, f.fixture.depth - d / 2);
  const auto at = [&](Length du, Length dv) {
    return f.back_center + (u + du) * rightOf(f) + (v + dv) * f.facing;
  };
  return {at(-w / 2, -d / 2), at(w / 2, -d / 2), at(w / 2, d / 2), at(-w / 2, d / 2)};
}

}  // namespace

std::vector<Measurement> ceilingsOverShowers(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.empty()) return found;
  const auto level = in.layout.option.room.ceiling.height;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !takesShowers(in.layout, f)) continue;
    const auto head = headOf(in.layout, f);
    const Outline area = head ? squareAt(f, head->at, in.rule->sizes[0]) : f.footprint;
    const auto low = lowestCeilingOver(in.layout, area);
    Measurement m{.subjects = {f.fixture.id}, .places = {pointAt(f.center), {Place::Kind::zone, area}}};
    if (!low) {
      found.push_back(notStated(std::move(m)));
      continue;
    }
    m.places.front() = pointAt(low->at);
    if (head || low->height >= limitOf(in) || *level < limitOf(in))
      m.measured = low->height;
    else
      m.detail = "head-not-placed";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> ceilingsBeforeFixtures(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !(isToilet(f) || isBasin(f) || isBath(f))) continue;
    const Point at = f.front_center + (in.rule->sizes[0] / 2) * f.facing;
    Measurement m{.subjects = {f.fixture.id},
                  .measured = std::nullopt,
                  .places = {pointAt(at), stripBetween(f.front, f.facing, Length{}, in.rule->sizes[0])}};
    const auto height = ceilingHeightAt(in.layout, at);
    if (!height) {
      found.push_back(notStated(std::move(m)));
      continue;
    }
    m.measured = *height;
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> ceilingsOverFixtures(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !(isToilet(f) || isBasin(f) || isBath(f)) || f.footprint.empty()) continue;
    Measurement m{.subjects = {f.fixture.id},
                  .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}};
    const auto low = lowestCeilingOver(in.layout, f.footprint);
    if (!low) {
      found.push_back(notStated(std::move(m)));
      continue;
    }
    m.measured = low->height;
    m.places.front() = pointAt(low->at);
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> ceilingsBeforeAndIn(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.size() < 4 || in.layout.option.room.ceiling.slopes.empty())
    return found;
  const auto& sizes = in.rule->sizes;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const bool water = isBath(f) || isShower(f);
    if (!counts(f) || !(water || isToilet(f) || isBasin(f))) continue;
    const Length deep = sizes[water ? 2 : 0], half = sizes[water ? 3 : 1] / 2;
    const auto at = [&](Length u, Length v) { return f.front_center + u * rightOf(f) + v * f.facing; };
    const Length back = water ? -std::min(deep, f.fixture.depth) : Length{};
    const Outline area{at(-half, back), at(half, back), at(half, deep), at(-half, deep)};
    const auto low = lowestCeilingOver(in.layout, area);
    if (!low) continue;
    found.push_back({.subjects = {f.fixture.id},
                     .measured = low->height,
                     .places = {pointAt(low->at), {Place::Kind::zone, area}}});
  }
  return found;
}

std::vector<Measurement> highQuarter(const CheckInput& in) {
  const auto& slopes = in.layout.option.room.ceiling.slopes;
  if (in.rule == nullptr || in.rule->sizes.empty() || slopes.empty() || in.layout.room.empty()) return {};
  const auto high = areaWithCeiling(in.layout, in.layout.room, in.rule->sizes[0]);
  if (!high) return {};
  return {{.subjects = {},
           .measured = *high,
           .places = {pointAt(centroidOf(in.layout.room))},
           .limit = areaOf(in.layout.room).scaled(0.25)}};
}

std::vector<Measurement> highHalf(const CheckInput& in) {
  const auto& slopes = in.layout.option.room.ceiling.slopes;
  if (in.rule == nullptr || in.rule->sizes.size() < 2 || slopes.empty() || in.layout.room.empty()) return {};
  const auto high = areaWithCeiling(in.layout, in.layout.room, in.rule->sizes[0]);
  const auto floor = areaWithCeiling(in.layout, in.layout.room, in.rule->sizes[1]);
  if (!high || !floor) return {};
  return {{.subjects = {},
           .measured = *high,
           .places = {pointAt(centroidOf(in.layout.room))},
           .limit = floor->scaled(0.5)}};
}

}  // namespace elbowroom::checks
