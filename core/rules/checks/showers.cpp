#include "core/rules/checks/showers.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kNarrow = 25_in;  // IRC P2708.1 exception 2
constexpr Length kRims = 6_in;     // what the rims of a receptor may take of its length

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

// UPC 408.7 exception 2. Called for what is too small otherwise: the receptor is then what is measured.
void takeReceptor(const CheckInput& in, Measurement& m, const PlacedFixture& f, bool as_area) {
  if (in.rule == nullptr || in.rule->sizes.size() < 2) return;
  const Length width = in.rule->sizes[0], length = in.rule->sizes[1];
  const auto instead = yesNo(f.fixture.facts, "instead_of_bath");
  if (instead == false || (!instead && std::max(f.fixture.width, f.fixture.depth) < length - kRims)) return;
  if (!instead) {
    m.detail = "receptor-may-do";
    return;
  }
  const auto shorter = lengthOf(f.fixture.facts, "receptor_short"),
             longer = lengthOf(f.fixture.facts, "receptor_long");
  if (!shorter || !longer) {
    m.measured.reset();
    m.fact = shorter ? "receptor_long" : "receptor_short";
    return;
  }
  if (*shorter < width - kMetTolerance || *longer < length - kMetTolerance) return;
  m.detail = "receptor-instead-of-bath";
  m.limit = as_area ? Quantity{width * length} : Quantity{width};
  m.measured = as_area ? Quantity{*shorter * *longer} : Quantity{*shorter};
}

template <typename T>
bool tooSmall(const CheckInput& in, const Measurement& m) {
  const T* limit = in.rule == nullptr ? nullptr : std::get_if<T>(&in.rule->limit);
  if constexpr (std::is_same_v<T, Length>)
    return limit != nullptr && std::get<T>(*m.measured) < *limit - kMetTolerance;
  else
    return limit != nullptr && std::get<T>(*m.measured) < *limit;
}

template <typename T, typename Inside, typename Stated>
std::vector<Measurement> outside(const CheckInput& in, Inside inside, Stated stated) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    Measurement m{.subjects = {f.fixture.id},
                  .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}};
    const auto shorter = lengthOf(f.fixture.facts, "receptor_short"),
               longer = lengthOf(f.fixture.facts, "receptor_long");
    m.measured = inside(f);
    if (const std::optional<T> said = stated(shorter, longer)) {
      m.measured = *said;
    } else if (tooSmall<T>(in, m)) {
      m.measured.reset();
      m.fact = shorter ? "receptor_long" : "receptor_short";
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

Length largestDisc(const Outline& ring) {
  if (isRectangle(ring)) return std::min(distance(ring[0], ring[1]), distance(ring[1], ring[2]));
  return FreeFloor(ring, {}).largestCircle().radius * 2;
}

std::vector<Measurement> showerDiscs(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isShower(f)) {
      found.push_back(discOf(f));
      if (tooSmall<Length>(in, found.back())) takeReceptor(in, found.back(), f, false);
    }
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
    if (counts(f) && isShower(f)) {
      found.push_back({.subjects = {f.fixture.id},
                       .measured = areaOf(f.footprint),
                       .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}});
      if (tooSmall<Area>(in, found.back())) takeReceptor(in, found.back(), f, true);
    }
  return found;
}

std::vector<Measurement> showerOutsideSides(const CheckInput& in) {
  return outside<Length>(
      in, [](const PlacedFixture& f) { return largestDisc(f.footprint); },
      [](std::optional<Length> shorter, std::optional<Length>) { return shorter; });
}
std::vector<Measurement> showerOutsideAreas(const CheckInput& in) {
  return outside<Area>(
      in, [](const PlacedFixture& f) { return areaOf(f.footprint); },
      [](std::optional<Length> shorter, std::optional<Length> longer) {
        return shorter && longer ? std::optional(*shorter * *longer) : std::nullopt;
      });
}

}  // namespace elbowroom::checks
