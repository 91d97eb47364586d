#include "core/works/backing.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/plan/backed.h"
#include "core/plan/bays.h"
#include "core/plan/glass_hinges.h"
#include "core/plan/later_bars.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

using namespace literals;

// Nobody publishes a height of the backing for other things or other heights of bars: as high, about their middle.
constexpr Length kZoneHigh = kBackingHigh - kBackingLow;
constexpr Length kBelowRim = 12_in;   // brackets of basins and benches; the maker's template says where
constexpr Length kBasinRim = 34_in, kSeat = 18_in, kGlassTop = 72_in;
constexpr Length kHingeStud = Length::nanometres(88'900'000);  // a 2 by 4 laid flat, 3 1/2 in

bool counts(Status s) { return s != Status::remove; }

bool held(const Layout& layout, int wall, const Facts& thing, Pull pull) {
  return heldBy(layout.option.room.walls[static_cast<std::size_t>(wall)], thing, pull).holds.value_or(false);
}

BackingZone zoneFor(BackingFor use, const ElementId& wall, std::vector<ElementId> items) {
  const BackingBuild build = buildFor(use);
  BackingZone z;
  z.wall = wall;
  z.items = std::move(items);
  z.use = use;
  z.material = build.material;
  z.load = build.load;
  z.source = build.source;
  z.grade = build.grade;
  z.caution = build.caution;
  return z;
}

std::optional<BackingFor> useOf(const WallItem& item) {
  const WallKindInfo* info = findWallKind(item.kind);
  if (info == nullptr || !info->backing) return std::nullopt;
  switch (info->use) {
    case WallUse::grabBar:
      return item.kind == "grab-bar-fold" ? BackingFor::foldingBar : BackingFor::bar;
    case WallUse::heat:
      return BackingFor::heater;
    case WallUse::mirror:
      return BackingFor::mirror;
    default:
      return BackingFor::holder;
  }
}

void addItems(const Layout& layout, std::vector<BackingZone>& zones) {
  for (const PlacedWallItem& i : layout.on_walls) {
    const auto use = useOf(i.item);
    if (!use || i.wall < 0 || !counts(i.item.status)) continue;
    BackingZone z = zoneFor(*use, i.item.wall, {i.item.id});
    z.from = i.from;
    z.to = i.to;
    z.bottom = i.bottom;
    z.top = i.top;
    z.answered = held(layout, i.wall, i.item.facts, pullOf(i.item));
    const bool bar = *use == BackingFor::bar || *use == BackingFor::foldingBar;
    if (bar && i.bottom < kBackingHigh && i.top > kBackingLow) {
      z.bottom = std::min(z.bottom, kBackingLow);
      z.top = std::max(z.top, kBackingHigh);
    } else if (z.top - z.bottom < kZoneHigh && *use != BackingFor::mirror) {
      z.bottom = std::max((i.bottom + i.top - kZoneHigh) / 2, Length{});
      z.top = z.bottom + kZoneHigh;
    }
    if (i.item.kind == "mirror") {
      const double pounds = glassWeight(i.item.width * i.item.height, i.depth).value();
      z.load = fmt::format("its own weight, about {:.0f} lb ({:.0f} kg)", pounds, pounds * 0.45359237);
    }
    zones.push_back(std::move(z));
  }
}

void addFixtures(const Layout& layout, std::vector<BackingZone>& zones) {
  for (const PlacedFixture& f : layout.fixtures) {
    if (f.wall < 0 || !counts(f.fixture.status) || !yesNo(f.fixture.facts, "wall_hung").value_or(false)) continue;
    const bool bench = f.fixture.kind == FixtureKind::bench;
    if (!bench && f.fixture.kind != FixtureKind::basin && f.fixture.kind != FixtureKind::vanity) continue;
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(f.wall)];
    BackingZone z = zoneFor(bench ? BackingFor::bench : BackingFor::basin, wall.id, {f.fixture.id});
    const Length middle = dot(f.back_center - wall.from, wall.along);
    z.from = middle - f.fixture.width / 2;
    z.to = middle + f.fixture.width / 2;
    z.answered = held(layout, f.wall, f.fixture.facts, Pull::heavy);
    z.top = f.fixture.height.value_or(bench ? kSeat : kBasinRim);
    if (bench) z.top = lengthOf(f.fixture.facts, "seat_height").value_or(z.top);
    z.bottom = std::max(z.top - kBelowRim, Length{});
    zones.push_back(std::move(z));
  }
}

void addHinges(const Layout& layout, std::vector<BackingZone>& zones) {
  for (const GlassHinge& hinge : glassHinges(layout)) {
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(hinge.wall)];
    BackingZone z = zoneFor(BackingFor::glassHinge, wall.id, {hinge.fixture});
    z.from = hinge.along - kHingeStud / 2;
    z.to = hinge.along + kHingeStud / 2;
    z.top = hinge.top.value_or(kGlassTop);
    z.answered = yesNo(findFixture(layout.option, hinge.fixture)->facts, "hinge_backing").value_or(false);
    zones.push_back(std::move(z));
  }
}

void addLater(const Layout& layout, std::vector<BackingZone>& zones) {
  for (const LaterBar& bar : laterBars(layout)) {
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(bar.wall)];
    BackingZone z = zoneFor(BackingFor::bar, wall.id, {bar.fixture});
    z.later = true;
    z.from = bar.from;
    z.to = bar.to;
    z.bottom = kBackingLow;
    z.top = kBackingHigh;
    z.answered = held(layout, bar.wall, {}, Pull::bar);
    const bool there = std::any_of(zones.begin(), zones.end(), [&](const BackingZone& o) {
      return o.use == BackingFor::bar && !o.later && o.wall == z.wall && o.from < z.to && z.from < o.to &&
             o.bottom < z.top && z.bottom < o.top;
    });
    if (!there) zones.push_back(std::move(z));
  }
}

bool runsStudToStud(BackingFor use) { return use != BackingFor::mirror && use != BackingFor::glassHinge; }

void reachStuds(const Layout& layout, int wall, BackingZone& z) {
  const auto studs = studsOf(layout, wall);
  if (!studs || !runsStudToStud(z.use)) return;
  const Length from = z.from, to = z.to;
  for (const Stud& s : *studs)
    if (s.at <= from) z.from = s.at;
  for (auto s = studs->rbegin(); s != studs->rend(); ++s)
    if (s->at >= to) z.to = s->at;
}

bool overlap(const BackingZone& a, const BackingZone& b) {
  return a.wall == b.wall && a.use == b.use && a.later == b.later && a.from < b.to && b.from < a.to &&
         a.bottom < b.top && b.bottom < a.top;
}

// A mirror's load is its own, so mirrors stay apart.
void join(std::vector<BackingZone>& zones) {
  for (std::size_t i = 0; i < zones.size(); ++i)
    for (std::size_t k = i + 1; k < zones.size();) {
      BackingZone &a = zones[i], &b = zones[k];
      if (a.use == BackingFor::mirror || !overlap(a, b)) {
        ++k;
        continue;
      }
      a.from = std::min(a.from, b.from);
      a.to = std::max(a.to, b.to);
      a.bottom = std::min(a.bottom, b.bottom);
      a.top = std::max(a.top, b.top);
      a.answered = a.answered && b.answered;
      for (const ElementId& id : b.items)
        addOnce(a.items, id);
      zones.erase(zones.begin() + static_cast<std::ptrdiff_t>(k));
      k = i + 1;
    }
}

}  // namespace

BackingBuild buildFor(BackingFor use) {
  switch (use) {
    case BackingFor::bar:
      return {"2 by 8 or 2 by 10 between the studs, or 3/4 in plywood over the whole wall",
              "250 lbf (1112 N) at any point: 2010 ADA Standards 609.8",
              "profixdirectory.com on grab bar blocking; jlconline.com on plywood over the whole wall; height: "
              "Fair Housing Act Design Manual chapter 6, as safetyinplace.com gives it",
              Grade::verifiedSecondHand,
              "No source found lets 1/2 in plywood alone carry 250 pounds. Over a bath or shower, measure from its "
              "floor."};
    case BackingFor::foldingBar:
      return {"2 by 10 between the studs, larger than for a straight bar",
              "250 lbf (1112 N) at any point: 2010 ADA Standards 609.8; its free end pulls the screws out",
              "Fair Housing Act Design Manual chapter 6: the area behind the toilet is enlarged for a folding bar "
              "(fragment read)",
              Grade::partial, "No source gives the size for a folding bar: the maker's instructions decide."};
    case BackingFor::holder:
      return {"2 by blocking between the studs, its face flush with theirs, or 1/2 in plywood under 3/8 in board",
              "no load read anywhere",
              "excerpt of a house-building handbook on bathroom blocking, washingtondrywallrepair.com; plywood: "
              "common practice, no source",
              Grade::commonPractice, ""};
    case BackingFor::heater:
      return {"2 by blocking between the studs, or 1/2 in plywood under 3/8 in board", "no load read anywhere",
              "common practice, no source", Grade::commonPractice,
              "No source found for heaters: the maker's drawing says where its brackets are."};
    case BackingFor::basin:
      return {"2 by 6 or 2 by 8 between the studs", "no load read in a text that can be trusted",
              "eatsip365.com, wall-mount sink step by step", Grade::verifiedSecondHand,
              "The height of the bracket is on the maker's template; the zone shown is the foot below the rim."};
    case BackingFor::bench:
      return {"2 by 4 or 2 by 6 between the studs", "no load read anywhere",
              "engineerfix.com on a floating shower bench", Grade::verifiedSecondHand,
              "It bears a person's whole weight at its front edge: the maker or an engineer sizes it."};
    case BackingFor::mirror:
      return {"1/2 in plywood under 3/8 in board, or blocking at its clips", "its own weight",
              "common practice, no source", Grade::commonPractice, ""};
    case BackingFor::glassHinge:
      return {"solid wood: two studs laid flat", "the weight of the door on its hinges",
              "dmgglass.com, frameless details", Grade::verifiedSecondHand,
              "The glazier's drawing says where the hinges come."};
  }
  return {};
}

Amount glassWeight(Area area, Length thickness) {
  const double kilograms = area.squareMetres() * thickness.millimetres() / 1000 * 2500;
  return {std::llround(kilograms / 0.45359237 * 1000)};
}

std::vector<BackingZone> backingZones(const Layout& layout) {
  std::vector<BackingZone> zones;
  addItems(layout, zones);
  addFixtures(layout, zones);
  addHinges(layout, zones);
  addLater(layout, zones);
  const auto indexOf = [&](const ElementId& id) {
    const auto at =
        std::find_if(layout.walls.begin(), layout.walls.end(), [&](const WallFrame& w) { return w.id == id; });
    return static_cast<int>(at - layout.walls.begin());
  };
  for (BackingZone& z : zones) {
    const int wall = indexOf(z.wall);
    reachStuds(layout, wall, z);
    z.from = std::max(z.from, Length{});
    z.to = std::min(z.to, layout.walls[static_cast<std::size_t>(wall)].length);
  }
  join(zones);
  std::stable_sort(zones.begin(), zones.end(), [&](const BackingZone& a, const BackingZone& b) {
    return std::pair(indexOf(a.wall), a.from) < std::pair(indexOf(b.wall), b.from);
  });
  return zones;
}

}  // namespace elbowroom
