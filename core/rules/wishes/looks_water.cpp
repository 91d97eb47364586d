#include "core/people/body.h"
#include "core/plan/ceiling.h"
#include "core/rules/check.h"
#include "core/rules/checks/at_water.h"
#include "core/rules/wishes/looks.h"

namespace elbowroom::wishes {
namespace {
using namespace literals;
using Seen = Sight::Seen;

// About the middle of the hip heights of adults who kneel (5 % 14.3, 95 % 17.8 in).
constexpr Length kRimToLeanOver = 16_in;

Sight controlOf(const CheckInput& in, const PlacedFixture& shower, const std::vector<Measurement>& controls) {
  Sight sight;
  for (const Measurement& m : controls) {
    if (m.measured != Quantity{true}) continue;
    for (const PlacedWallItem& i : in.layout.on_walls)
      if (i.item.id == m.subjects.front() && i.item.shower == shower.fixture.id) add(sight, i);
  }
  if (!sight.elements.empty()) sight.seen = Seen::yes;
  return sight;
}

Sight glassOf(const CheckInput& in, const PlacedFixture& shower) {
  const auto ceiling = lowestCeilingOver(in.layout, shower.footprint);
  if (!ceiling) {
    Sight of_room{
        .seen = Seen::notStated, .places = {checks::pointAt(shower.center)}, .fact = "ceiling.height"};
    return of_room;
  }
  Sight sight{.seen = Seen::yes};
  for (const Pane& pane : shower.fixture.glass) {
    if (!pane.height && sight.seen == Seen::yes) sight = {.seen = Seen::notStated,
               .elements = {shower.fixture.id},
               .places = {checks::pointAt(shower.center)},
               .fact = "glass.height"};
    if (pane.height && *pane.height >= ceiling->height - kMetTolerance) sight = {.seen = Seen::no};
  }
  return sight;
}

}  // namespace

Sight controlAway(const CheckInput& in) {
  const std::vector<Measurement> controls = checks::controlsOutOfSpray(in);
  return atFixtures(in, holdsSpray, [&](const PlacedFixture& f) { return controlOf(in, f, controls); });
}

Sight handSpray(const CheckInput& in) {
  Sight there = anyOf(in.layout.on_walls,
                      [](const PlacedWallItem& i) { return checks::counts(i) && i.item.kind == "hand-spray"; });
  return there.seen == Seen::yes ? there
                                 : atFixtures(in, holdsSpray, [](const PlacedFixture&) { return Sight{}; });
}

Sight niche(const CheckInput& in) {
  Sight there =
      anyOf(in.layout.on_walls, [](const PlacedWallItem& i) { return checks::counts(i) && i.item.kind == "niche"; });
  return there.seen == Seen::yes ? there
                                 : atFixtures(in, holdsSpray, [](const PlacedFixture&) { return Sight{}; });
}

Sight glassBelowCeiling(const CheckInput& in) {
  return atFixtures(
      in, [](const PlacedFixture& f) { return checks::isShower(f) && !f.fixture.glass.empty(); },
      [&](const PlacedFixture& f) { return glassOf(in, f); });
}

Sight curbless(const CheckInput& in) {
  return atFixtures(in, checks::isShower, [](const PlacedFixture& f) -> Sight {
    if (!f.fixture.curb) return {.seen = Seen::notStated, .fact = "curb"};
    return {.seen = *f.fixture.curb == Length{} ? Seen::yes : Seen::no};
  });
}

Sight bathToLeanOver(const CheckInput& in) {
  Length rim = kRimToLeanOver;
  bool named = false;
  for (const Person& p : in.layout.settings.people) {
    if (!kneels(p)) continue;
    rim = named ? std::min(rim, kneelingHip(p)) : kneelingHip(p);
    named = true;
  }
  return atFixtures(in, checks::isBath, [&](const PlacedFixture& f) -> Sight {
    if (!f.fixture.height) return {.seen = Seen::notStated, .fact = "height"};
    return {.seen = *f.fixture.height <= rim + kMetTolerance ? Seen::yes : Seen::no};
  });
}

}  // namespace elbowroom::wishes
