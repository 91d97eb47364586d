#include <algorithm>

#include "core/plan/backed.h"
#include "core/plan/later_bars.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/check.h"
#include "core/rules/checks/room.h"
#include "core/rules/checks/shared_searches.h"
#include "core/rules/straight_ways.h"
#include "core/rules/wishes/looks.h"

namespace elbowroom::wishes {
namespace {
using namespace literals;
using Seen = Sight::Seen;

constexpr Length kWideOpening = 32_in;  // trade guideline 1; 2010 ADA Standards 404.2.3
constexpr Length kTurning = 60_in;      // 2010 ADA Standards 304.3
constexpr Length kRoute = 36_in;        // 2010 ADA Standards 403.5.1

bool opensWide(const CheckInput& in, const PlacedOpening& o) {
  const auto& doors = in.figures.doors;
  const auto at =
      std::find_if(doors.begin(), doors.end(), [&](const DoorFigures& d) { return d.id == o.opening.id; });
  return isDoor(o) && at != doors.end() && at->clear_opening >= kWideOpening - kMetTolerance;
}

Sight atDoors(const CheckInput& in, bool (*shows)(const CheckInput&, const PlacedOpening&)) {
  Sight there = anyOf(in.layout.openings, [&](const PlacedOpening& o) { return shows(in, o); });
  if (there.seen == Seen::yes) return there;
  Sight doors = anyOf(in.layout.openings, isDoor);
  doors.seen = doors.elements.empty() ? Seen::notApplicable : Seen::no;
  return doors;
}

// The search for the T is kept for rooms whose circle is short: it is the dearer one.
bool turns(const CheckInput& in) {
  if (in.figures.turning.with_knees.radius * 2 >= kTurning - kMetTolerance) return true;
  const Rule* rule = findRule("us-access", "turning-space");
  if (rule == nullptr) return false;
  const auto found = checks::turningSpace({in.layout, in.figures, in.around, rule, in.memo});
  const auto* across =
      found.empty() || !found[0].measured ? nullptr : std::get_if<Length>(&*found[0].measured);
  return across != nullptr && *across >= kTurning - kMetTolerance;
}

bool reaches(const CheckInput& in) {
  for (std::size_t k = 0; k < in.layout.solid.size(); ++k) {
    const PlacedFixture& f = in.layout.fixtures[static_cast<std::size_t>(in.layout.solid[k])];
    if (!isGoal(f.fixture.kind)) continue;
    const std::optional<checks::Way> way = checks::sharedWay(in, k, kRoute);
    if (way && way->route.width < kRoute - kMetTolerance) return false;
  }
  return true;
}

}  // namespace

Sight naturalLight(const CheckInput& in) {
  Sight there =
      anyOf(in.layout.openings, [](const PlacedOpening& o) { return o.opening.kind == OpeningKind::window; });
  for (const PlacedCeilingItem& i : in.layout.on_ceiling) {
    if (i.item.kind != "light-tube") continue;
    there.seen = Seen::yes;
    there.elements.push_back(i.item.id);
    there.places.push_back(checks::pointAt(i.item.at));
  }
  return there;
}

// Where bars may come at toilets, baths and showers: as the backing schedule has it.
Sight backing(const CheckInput& in) {
  Sight sight{.seen = Seen::notApplicable};
  std::vector<ElementId> silent;
  for (const LaterBar& later : laterBars(in.layout)) {
    const Wall& wall = in.layout.option.room.walls[static_cast<std::size_t>(later.wall)];
    const WallFrame& frame = in.layout.walls[static_cast<std::size_t>(later.wall)];
    if (sight.seen == Seen::notApplicable) sight.seen = Seen::yes;
    addOnce(sight.elements, wall.id);
    sight.places.push_back(checks::lineFrom(frame.at(later.from), frame.at(later.to)));
    const Facts* thing = nullptr;
    for (const PlacedWallItem& i : in.layout.on_walls)
      if (checks::counts(i) && i.wall == later.wall && is(i.item, WallUse::grabBar) &&
          pullOf(i.item) == Pull::bar && checks::meet(i.from, i.to, later.from, later.to) &&
          checks::meet(i.bottom, i.top, kBackingLow, kBackingHigh))
        thing = &i.item.facts;
    const Held held = heldBy(wall, thing ? *thing : Facts{}, Pull::bar);
    if (held.holds == false) sight.seen = Seen::no;
    if (held.holds) continue;
    if (silent.empty() || held.fact == sight.fact) addOnce(silent, wall.id);
    if (sight.fact.empty()) sight.fact = held.fact;  // asked of the first wall that does not say it
  }
  if (sight.seen == Seen::yes && !silent.empty()) {
    sight.seen = Seen::notStated;
    sight.elements = silent;
  } else {
    sight.fact.clear();
  }
  return sight;
}

Sight slidingDoor(const CheckInput& in) {
  return atDoors(in, [](const CheckInput&, const PlacedOpening& o) {
    return isDoor(o) &&
           (o.opening.action == DoorAction::pocket || o.opening.action == DoorAction::surfaceSliding);
  });
}

Sight timerSwitch(const CheckInput& in) {
  return anyOf(in.layout.on_walls, [](const PlacedWallItem& i) {
    return checks::counts(i) && (i.item.kind == "timer-switch" || i.item.kind == "humidity-switch");
  });
}

Sight wideDoor(const CheckInput& in) { return atDoors(in, opensWide); }

Sight wheelchairReady(const CheckInput& in) {
  const bool anything =
      std::any_of(in.layout.fixtures.begin(), in.layout.fixtures.end(),
                  [](const PlacedFixture& f) { return checks::counts(f) && isGoal(f.fixture.kind); });
  Sight sight = wideDoor(in);
  if (!anything) sight.seen = Seen::notApplicable;
  if (sight.seen == Seen::yes && !(turns(in) && reaches(in))) sight.seen = Seen::no;
  if (sight.seen == Seen::yes)
    for (const Place& p : checks::across(in.figures.turning.with_knees)) sight.places.push_back(p);
  return sight;
}

}  // namespace elbowroom::wishes
