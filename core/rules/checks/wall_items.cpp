#include "core/rules/checks/wall_items.h"

#include <algorithm>

#include "core/people/sight.h"
#include "core/plan/bays.h"
#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/shared_searches.h"

namespace elbowroom::checks {
namespace {

using Item = PlacedWallItem;

const Wall& wallOf(const CheckInput& in, const Item& i) {
  return in.layout.option.room.walls[static_cast<std::size_t>(i.wall)];
}

template <typename Wanted>
std::vector<Measurement> centres(const CheckInput& in, Wanted wanted) {
  return eachOnWall(in, wanted, [](Measurement& m, const Item& i) { m.measured = centreOf(i); });
}

bool isLamp(const Item& i) { return is(i.item, WallUse::lamp); }
bool isRecess(const Item& i) { return is(i.item, WallUse::recess) && i.recessed; }

// The adult whose figure is the greatest or least; nullptr without adults who stand.
template <typename Figure>
const Person* adultWith(const CheckInput& in, Figure figure, bool greatest) {
  const Person* found = nullptr;
  for (const Person& p : in.layout.settings.people) {
    if (p.child || p.chair) continue;
    if (!found || (greatest ? figure(p) > figure(*found) : figure(p) < figure(*found))) found = &p;
  }
  return found;
}

// A shelf in a niche; what a mirror that is cut to measure gets a hole for (how it sits there is for the rules of
// mirrors); what hangs there as found.
bool mayShare(const std::vector<MirrorOrder>& mirrors, const Item& a, const Item& b) {
  if (a.item.status == Status::keep && b.item.status == Status::keep) return true;
  const auto on = [&](const Item& below, const Item& above) {
    if (is(below.item, WallUse::recess) && is(above.item, WallUse::shelf)) return true;
    const auto of_it = [&](const auto& part) { return part.item == above.item.id; };
    return std::any_of(mirrors.begin(), mirrors.end(), [&](const MirrorOrder& order) {
      return order.mirror == below.item.id &&
             (std::any_of(order.holes.begin(), order.holes.end(), of_it) ||
              std::any_of(order.troubles.begin(), order.troubles.end(), of_it));
    });
  };
  return on(a, b) || on(b, a);
}

// Does the towel hang over the fixture? It hangs this far off the wall.
constexpr Length kTowelOut = Length::nanometres(4 * 25'400'000);
bool hangsOver(const Layout& layout, const Item& bar, const PlacedFixture& f) {
  const Direction out = layout.walls[static_cast<std::size_t>(bar.wall)].inward;
  const Outline towel{bar.right, bar.left, bar.left + kTowelOut * out, bar.right + kTowelOut * out};
  return commonArea(towel, f.footprint) > Area{};
}

}  // namespace

std::vector<Measurement> towelBarHeights(const CheckInput& in) {
  return centres(in, [](const Item& i) { return is(i.item, WallUse::rail); });
}
std::vector<Measurement> towelFalls(const CheckInput& in) {
  const auto isBar = [](const Item& i) { return is(i.item, WallUse::rail); };
  return eachOnWall(in, isBar, [&](Measurement& m, const Item& bar) {
    const Length height = centreOf(bar);
    Length under;  // the floor
    ElementId met;
    const auto meets = [&](Length top, const ElementId& id) {
      if (top >= height || top <= under) return;
      under = top;
      met = id;
    };
    for (const Item& i : in.layout.on_walls)
      if (counts(i) && i.item.id != bar.item.id && i.wall == bar.wall && !i.recessed && !isMirror(i) &&
          meet(i.from, i.to, bar.from, bar.to))
        meets(i.top, i.item.id);
    for (const PlacedFixture& f : in.layout.fixtures)
      if (counts(f) && !isShower(f) && hangsOver(in.layout, bar, f)) meets(heightOf(f.fixture), f.fixture.id);
    m.measured = height - under;
    if (!met.empty()) m.subjects.push_back(met);
  });
}
std::vector<Measurement> hookHeights(const CheckInput& in) {
  return centres(in, [](const Item& i) { return is(i.item, WallUse::hook); });
}
std::vector<Measurement> showerHeadHeights(const CheckInput& in) {
  return centres(in, [](const Item& i) { return i.item.kind == "shower-head"; });
}
std::vector<Measurement> showerControlHeights(const CheckInput& in) {
  return centres(in, [&](const Item& i) {
    const Fixture* f = findFixture(in.layout.option, i.item.shower);
    return i.item.kind == "control" && f && f->kind == FixtureKind::shower;
  });
}
std::vector<Measurement> sideLightHeights(const CheckInput& in) {
  return centres(in, [](const Item& i) { return isLamp(i) && i.item.height > i.item.width; });
}
std::vector<Measurement> lightOverMirrorHeights(const CheckInput& in) {
  return centres(in, [](const Item& i) { return isLamp(i) && i.item.height < i.item.width; });
}

std::vector<Measurement> nicheHeights(const CheckInput& in) {
  return eachOnWall(
      in, [](const Item& i) { return i.item.kind == "niche" && !i.item.shower.empty(); },
      [](Measurement& m, const Item& i) { m.measured = i.bottom; });
}

std::vector<Measurement> hoses(const CheckInput& in) {
  return eachOnWall(
      in, [](const Item& i) { return i.item.kind == "hand-spray"; },
      [](Measurement& m, const Item& i) {
        if (const auto hose = lengthOf(i.item.facts, "hose"))
          m.measured = *hose;
        else
          m.fact = "hose";
      });
}

std::vector<Measurement> mirrorTops(const CheckInput& in) {
  const Person* who = adultWith(in, mirrorTopFor, true);
  if (!who) return {};
  return eachOnWall(in, isMirror, [&](Measurement& m, const Item& i) {
    m.measured = i.top;
    m.limit = mirrorTopFor(*who);
  });
}

std::vector<Measurement> mirrorBottoms(const CheckInput& in) {
  const Person* who = adultWith(in, mirrorWaistBottomFor, false);
  if (!who) return {};
  return eachOnWall(in, isMirror, [&](Measurement& m, const Item& i) {
    m.measured = i.bottom;
    m.limit = mirrorWaistBottomFor(*who);
  });
}

std::vector<Measurement> mirrorBottomsForChair(const CheckInput& in) {
  const auto& people = in.layout.settings.people;
  if (std::none_of(people.begin(), people.end(), [](const Person& p) { return p.chair.has_value(); })) return {};
  return eachOnWall(in, isMirror, [](Measurement& m, const Item& i) { m.measured = i.bottom; });
}

std::vector<Measurement> recessDepths(const CheckInput& in) {
  return eachOnWall(in, isRecess, [&](Measurement& m, const Item& i) {
    m.measured = i.depth;
    m.limit = studDepth(wallOf(in, i));
  });
}

std::vector<Measurement> recessBays(const CheckInput& in) {
  return eachOnWall(in, isRecess, [&](Measurement& m, const Item& i) {
    const auto fit = bayFit(in.layout, i);
    if (!fit) {
      m.fact = "studs";
      m.subjects = {wallOf(in, i).id, i.item.id};
      return;
    }
    m.measured = fit->fits || yesNo(i.item.facts, "header").value_or(false);
  });
}

std::vector<Measurement> recessesInside(const CheckInput& in) {
  return eachOnWall(in, isRecess, [&](Measurement& m, const Item& i) { m.measured = !wallOf(in, i).exterior; });
}

std::vector<Measurement> grabBarsBacked(const CheckInput& in) {
  return eachOnWall(
      in, [](const Item& i) { return is(i.item, WallUse::grabBar); },
      [&](Measurement& m, const Item& i) {
        // How thick the plywood behind a bar is, is a rule of its own.
        const Pull pull = pullOf(i.item) == Pull::bar ? Pull::light : pullOf(i.item);
        askBacked(m, wallOf(in, i), i.item.id, i.item.facts, pull);
      });
}

std::vector<Measurement> holdersBacked(const CheckInput& in) {
  return eachOnWall(
      in,
      [](const Item& i) {
        return is(i.item, WallUse::rail) || is(i.item, WallUse::holder) || is(i.item, WallUse::shelf) ||
               is(i.item, WallUse::hook);
      },
      [&](Measurement& m, const Item& i) {
        askBacked(m, wallOf(in, i), i.item.id, i.item.facts, Pull::light);
      });
}

std::vector<Measurement> waterFrost(const CheckInput& in) {
  return eachOnWall(
      in, [&](const Item& i) { return is(i.item, WallUse::water) && wallOf(in, i).exterior; },
      [&](Measurement& m, const Item& i) {
        if (const auto safe = yesNo(wallOf(in, i).facts, "frost_protected")) {
          m.measured = *safe;
          return;
        }
        m.subjects = {wallOf(in, i).id, i.item.id};
        m.fact = "frost_protected";
      });
}

std::vector<Measurement> itemsApart(const CheckInput& in) {
  const std::vector<MirrorOrder>& mirrors = sharedMirrorOrders(in);
  return eachOnWall(
      in, [](const Item&) { return true; },
      [&](Measurement& m, const Item& i) {
        m.measured = true;
        for (const Item& o : in.layout.on_walls) {
          if (&o == &i) break;  // one finding per pair, at the later one
          if (!counts(o) || o.wall != i.wall) continue;
          if (!meet(i.from, i.to, o.from, o.to) || !meet(i.bottom, i.top, o.bottom, o.top)) continue;
          if (mayShare(mirrors, i, o)) continue;
          m.measured = false;
          m.subjects.push_back(o.item.id);
        }
      });
}

std::vector<Measurement> itemsWithinWalls(const CheckInput& in) {
  std::vector<Measurement> found;
  std::vector<bool> said(in.layout.walls.size());
  for (const Item& i : in.layout.on_walls) {
    if (!counts(i)) continue;
    const auto wall = static_cast<std::size_t>(i.wall);
    const bool within = i.from >= -kContact && i.to <= in.layout.walls[wall].length + kContact;
    if (within && said[wall]) continue;
    said[wall] = said[wall] || within;
    found.push_back({.subjects = {i.item.id}, .measured = within, .places = {placeOf(i)}});
  }
  return found;
}

std::vector<Measurement> itemsOffOpenings(const CheckInput& in) {
  return eachOnWall(
      in, [](const Item&) { return true; },
      [&](Measurement& m, const Item& i) {
        m.measured = true;
        for (const PlacedOpening& o : in.layout.openings) {
          const Length half = openingWidth(o.opening) / 2, at = o.opening.along;
          const Length low =
              o.opening.kind == OpeningKind::window ? o.opening.sill.value_or(Length{}) : Length{};
          if (o.wall != i.wall || !meet(i.from, i.to, at - half, at + half) ||
              !meet(i.bottom, i.top, low, low + o.opening.height))
            continue;
          m.measured = false;
          m.subjects.push_back(o.opening.id);
        }
      });
}

}  // namespace elbowroom::checks
