#include "core/people/body.h"
#include "core/plan/ceiling.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/check.h"
#include "core/rules/wishes/looks.h"

namespace elbowroom::wishes {
namespace {
using namespace literals;
using Seen = Sight::Seen;

// Worked from a head 80 in up on an 8 in arm, tilted 20 degrees with a cone of 20: at the height of a valve the
// spray falls 14 to 28 in before the head's wall, and a forearm to a side valve nearer than 12 in or farther than
// 30 in does not cross it.
constexpr Length kBeforeSpray = 12_in, kBeyondSpray = 30_in;
// About the middle of the hip heights of adults who kneel (5 % 14.3, 95 % 17.8 in).
constexpr Length kRimToLeanOver = 16_in;

bool away(const CheckInput& in, const PlacedWallItem& control, const PlacedWallItem& head) {
  const WallFrame& wall = in.layout.walls[static_cast<std::size_t>(head.wall)];
  const Vector off = middleOf(control) - middleOf(head);
  const Length ahead = dot(off, wall.inward), aside = abs(dot(off, wall.along));
  return ahead >= kBeyondSpray || aside >= kBeyondSpray || (control.wall != head.wall && ahead < kBeforeSpray);
}

bool away(const PlacedWallItem& control, const PlacedCeilingItem& head) {
  return distance(middleOf(control), head.item.at) >= kBeyondSpray;
}

Sight controlOf(const CheckInput& in, const PlacedFixture& shower) {
  Sight sight;
  bool head = false;
  const auto mine = [&](const PlacedWallItem& i, std::string_view kind) {
    return isHere(i) && i.item.kind == kind && i.item.shower == shower.fixture.id;
  };
  for (const PlacedWallItem& control : in.layout.on_walls) {
    if (!mine(control, "control")) continue;
    bool clear = true;
    for (const PlacedWallItem& i : in.layout.on_walls) {
      if (!mine(i, "shower-head")) continue;
      head = true;
      clear = clear && away(in, control, i);
    }
    for (const PlacedCeilingItem& i : in.layout.on_ceiling) {
      if (i.item.kind != "shower-head" || !contains(shower.footprint, i.item.at)) continue;
      head = true;
      clear = clear && away(control, i);
    }
    if (!head || !clear) continue;
    sight.seen = Seen::yes;
    add(sight, control);
  }
  return sight;
}

Sight glassOf(const CheckInput& in, const PlacedFixture& shower) {
  const auto ceiling = lowestCeilingOver(in.layout, shower.footprint);
  if (!ceiling) {
    Sight of_room{.seen = Seen::notStated, .places = {checks::pointAt(shower.center)}, .fact = "ceiling.height"};
    return of_room;
  }
  Sight sight{.seen = Seen::yes};
  for (const Pane& pane : shower.fixture.glass) {
    if (!pane.height && sight.seen == Seen::yes) sight = {.seen = Seen::notStated, .fact = "glass.height"};
    if (pane.height && *pane.height >= ceiling->height - kMetTolerance) sight = {.seen = Seen::no};
  }
  return sight;
}

}  // namespace

Sight controlAway(const CheckInput& in) {
  return atFixtures(in, holdsSpray, [&](const PlacedFixture& f) { return controlOf(in, f); });
}

Sight handSpray(const CheckInput& in) {
  Sight there = anyOf(in.layout.on_walls, [](const PlacedWallItem& i) { return isHere(i) && i.item.kind == "hand-spray"; });
  return there.seen == Seen::yes ? there : atFixtures(in, holdsSpray, [](const PlacedFixture&) { return Sight{}; });
}

Sight niche(const CheckInput& in) {
  Sight there = anyOf(in.layout.on_walls, [](const PlacedWallItem& i) { return isHere(i) && i.item.kind == "niche"; });
  return there.seen == Seen::yes ? there : atFixtures(in, holdsSpray, [](const PlacedFixture&) { return Sight{}; });
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
