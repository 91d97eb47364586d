#include "core/rules/checks/shower_up.h"

#include "core/plan/ceiling.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/showers.h"

namespace elbowroom::checks {
namespace {

using namespace literals;

constexpr Length kHighestDrain = 10_in;  // no drain lies so high above the floor of the room

// Completes a measurement per shower that the ceiling cuts; `make` gets the part that is high enough.
template <typename Make>
std::vector<Measurement> perShower(const CheckInput& in, Make make) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.empty()) return found;
  const Length up = in.rule->sizes[0];
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    const auto low = lowestCeilingOver(in.layout, f.footprint);
    if (!low || low->height >= up + kHighestDrain) continue;
    Measurement m{.subjects = {f.fixture.id}, .places = {pointAt(low->at), {Place::Kind::zone, f.footprint}}};
    const auto above_drain = lengthOf(f.fixture.facts, "curb_above_drain");
    const bool curbless = f.fixture.curb == Length{};
    if (!f.fixture.curb || (!curbless && !above_drain)) {
      m.fact = f.fixture.curb ? "curb_above_drain" : "curb";
      found.push_back(std::move(m));
      continue;
    }
    const Length level = up + (curbless ? Length{} : *f.fixture.curb - *above_drain);
    if (low->height >= level) continue;
    const Outline part = *partWithCeiling(in.layout, f.footprint, level);
    if (part.size() >= 3) m.places.back() = {Place::Kind::zone, part};
    make(m, part, part.size() < 3 ? Area{} : areaOf(part));
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

std::vector<Measurement> showerAreasUp(const CheckInput& in) {
  return perShower(in, [](Measurement& m, const Outline&, Area area) { m.measured = area; });
}

std::vector<Measurement> showerDiscsUp(const CheckInput& in) {
  return perShower(in, [&](Measurement& m, const Outline& part, Area area) {
    m.measured = area > Area{} ? largestDisc(part) : Length{};
    if (in.rule->sizes.size() < 2 || area.squareInches() < kLargeSquareInches) return;
    if (std::get<Length>(*m.measured) >= limitOf(in)) return;
    m.limit = in.rule->sizes[1];
    m.detail = "large-shower";
  });
}

}  // namespace elbowroom::checks
