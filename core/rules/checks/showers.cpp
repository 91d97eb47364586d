#include "core/rules/checks/showers.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kNarrow = 25_in;  // IRC P2708.1 exception 2
constexpr double kLargeSquareInches = 1300;

bool isRectangle(const Outline& ring) {
  if (ring.size() != 4) return false;
  const Direction first = Direction::between(ring[0], ring[1]);
  return abs(dot(ring[2] - ring[1], first)) < kContact && abs(dot(ring[3] - ring[0], first)) < kContact;
}

Measurement discOf(const PlacedFixture& f) {
  const Length disc = largestDisc(f.footprint);
  const bool across = f.fixture.width <= f.fixture.depth;
  const Direction way = across ? leftOf(f) : f.facing;
  return {.subjects = {f.fixture.id},
          .measured = disc,
          .places = {lineFrom(f.center - (disc / 2) * way, f.center + (disc / 2) * way),
                     {Place::Kind::zone, f.footprint}}};
}

}  // namespace

Length largestDisc(const Outline& ring) {
  if (isRectangle(ring)) return std::min(distance(ring[0], ring[1]), distance(ring[1], ring[2]));
  return FreeFloor(ring, {}).largestCircle().radius * 2;
}

std::vector<Measurement> showerDiscs(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isShower(f)) found.push_back(discOf(f));
  return found;
}

std::vector<Measurement> showerDiscsOrLarge(const CheckInput& in) {
  std::vector<Measurement> found = showerDiscs(in);
  std::size_t next = 0;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    Measurement& m = found[next++];
    const bool narrow = std::get<Length>(*m.measured) < limitOf(in) - kMetTolerance;
    if (!narrow || areaOf(f.footprint).squareInches() < kLargeSquareInches) continue;
    m.limit = kNarrow;
    m.detail = "large-shower";
  }
  return found;
}

std::vector<Measurement> showerAreas(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isShower(f))
      found.push_back({.subjects = {f.fixture.id},
                       .measured = areaOf(f.footprint),
                       .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}});
  return found;
}

}  // namespace elbowroom::checks
