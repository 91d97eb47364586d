#include "core/rules/checks/bath_bars.h"

#include <algorithm>

#include "core/rules/checks/bars.h"
#include "core/rules/checks/water_side.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

// Finish and flange between a bath or shower and the wall beside it.
constexpr Length kFlush = 3_in;

template <typename Make>
std::vector<Measurement> perBath(const CheckInput& in, Make make) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isBath(f)) make(found, f);
  return found;
}

Measurement of(const PlacedWallItem& i, const PlacedFixture& f) {
  return {.subjects = {i.item.id, f.fixture.id}, .places = {placeOf(i)}};
}

bool hasHeadSeat(const PlacedFixture& bath) { return yesNo(bath.fixture.facts, "head_seat").value_or(false); }

// Distance of a bar's near end from that end of the bath.
Length fromEnd(const Spot& spot, const PlacedFixture& bath, Hand end) {
  const Length half = bath.fixture.width / 2;
  return end == Hand::left ? half - spot.left_to : half + spot.left_from;
}
Hand other(Hand h) { return h == Hand::left ? Hand::right : Hand::left; }

template <typename Make>
std::vector<Measurement> perBackBar(const CheckInput& in, Make make) {
  return perBath(in, [&](std::vector<Measurement>& found, const PlacedFixture& f) {
    for (const PlacedWallItem* bar : barsBehind(in.layout, f)) {
      Measurement m = of(*bar, f);
      make(m, *bar, f);
      found.push_back(std::move(m));
    }
  });
}

std::vector<Measurement> backBarsFrom(const CheckInput& in, bool head) {
  return perBackBar(in, [&](Measurement& m, const PlacedWallItem& bar, const PlacedFixture& f) {
    const std::optional<Hand> control = controlSide(in.layout, f);
    if (!control) {
      m.subjects = {f.fixture.id, bar.item.id};
      m.detail = "control-end-not-stated";
      m.fact = "control";
      return;
    }
    m.measured = fromEnd(spotOf(in.layout, f, bar), f, head ? other(*control) : *control);
    if (head && hasHeadSeat(f)) m.limit = sizeOf(in, 0);
  });
}

// Bars on the wall at one end of the bath, over the bath.
std::vector<Measurement> endBars(const CheckInput& in, bool head) {
  return perBath(in, [&](std::vector<Measurement>& found, const PlacedFixture& f) {
    const std::optional<Hand> control = controlSide(in.layout, f);
    if (!control || (head && hasHeadSeat(f))) return;
    const Hand end = head ? other(*control) : *control;
    for (const PlacedWallItem& i : in.layout.on_walls) {
      if (!counts(i) || !alongWall(i)) continue;
      const Spot spot = spotOf(in.layout, f, i);
      if (spot.on != (end == Hand::left ? Spot::On::left : Spot::On::right)) continue;
      if (abs(spot.left()) > f.fixture.width / 2 + kFlush || spot.out_from > reachFromWall(in.layout, f))
        continue;
      Measurement m = of(i, f);
      m.measured = i.item.width;
      found.push_back(std::move(m));
    }
  });
}

bool hasSideBar(const CheckInput& in, const PlacedFixture& f, Hand hand) {
  return std::any_of(in.layout.on_walls.begin(), in.layout.on_walls.end(), [&](const PlacedWallItem& i) {
    if (!counts(i) || !alongWall(i)) return false;
    const Spot spot = spotOf(in.layout, f, i);
    return spot.on == (hand == Hand::left ? Spot::On::left : Spot::On::right) &&
           abs(spot.left()) <= f.fixture.width / 2 + kFlush && spot.out_from <= reachFromWall(in.layout, f);
  });
}

// Controls that belong to a fixture.
template <typename Wanted, typename Make>
std::vector<Measurement> perControl(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!counts(i) || i.item.kind != "control") continue;
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (f.fixture.id != i.item.shower || !counts(f) || !wanted(f)) continue;
      Measurement m = of(i, f);
      if (make(m, i, f)) found.push_back(std::move(m));
    }
  }
  return found;
}

auto showerOf(const CheckInput& in, bool transfer) {
  return [&in, transfer](const PlacedFixture& f) {
    return isShower(f) && (kindOf(in.layout, f) == ShowerKind::transfer) == transfer;
  };
}

std::vector<Measurement> controlHeights(const CheckInput& in, bool transfer) {
  return perControl(in, showerOf(in, transfer),
                    [](Measurement& m, const PlacedWallItem& i, const PlacedFixture&) {
                      m.measured = centreOf(i);
                      return true;
                    });
}

// Above the rim, below the top of a bar over it, and nearer to the open side than to the wall behind.
bool placedWell(const CheckInput& in, const PlacedWallItem& i, const PlacedFixture& f, Length rim) {
  const Spot spot = spotOf(in.layout, f, i);
  if (spot.on != Spot::On::left && spot.on != Spot::On::right) return false;
  const Length front = reachFromWall(in.layout, f);
  if (i.bottom < rim || spot.out() < front - f.fixture.depth / 2 || spot.out() > front) return false;
  return std::none_of(in.layout.on_walls.begin(), in.layout.on_walls.end(), [&](const PlacedWallItem& bar) {
    return counts(bar) && bar.wall == i.wall && alongWall(bar) && bar.from < i.to && i.from < bar.to &&
           centreOf(bar) < centreOf(i);
  });
}

std::vector<Measurement> statedOfSeats(const CheckInput& in, const char* fact) {
  return perBath(in, [&](std::vector<Measurement>& found, const PlacedFixture& f) {
    if (!hasHeadSeat(f)) return;
    Measurement m{.subjects = {f.fixture.id}, .places = {pointAt(f.center)}};
    if (const auto stated = lengthOf(f.fixture.facts, fact))
      m.measured = *stated;
    else
      m.fact = fact;
    found.push_back(std::move(m));
  });
}

}  // namespace

std::vector<const PlacedWallItem*> barsBehind(const Layout& layout, const PlacedFixture& bath) {
  std::vector<const PlacedWallItem*> bars;
  for (const PlacedWallItem& i : layout.on_walls) {
    if (!counts(i) || !alongWall(i)) continue;
    const Spot spot = spotOf(layout, bath, i);
    if (spot.on == Spot::On::rear && abs(spot.left()) < bath.fixture.width / 2) bars.push_back(&i);
  }
  std::stable_sort(bars.begin(), bars.end(),
                   [](const auto* a, const auto* b) { return centreOf(*a) > centreOf(*b); });
  return bars;
}

bool isLowerBathBar(const Layout& layout, const PlacedWallItem& i) {
  for (const PlacedFixture& f : layout.fixtures) {
    if (!counts(f) || !isBath(f)) continue;
    const auto bars = barsBehind(layout, f);
    if (bars.size() >= 2 && bars.back() == &i && centreOf(*bars.front()) > centreOf(i)) return true;
  }
  return false;
}

std::vector<Measurement> bathBackBars(const CheckInput& in) {
  return perBath(in, [&](std::vector<Measurement>& found, const PlacedFixture& f) {
    const auto bars = barsBehind(in.layout, f);
    if (bars.empty()) return;
    Measurement m{.subjects = {f.fixture.id}, .measured = Count{static_cast<int>(bars.size())}};
    for (const PlacedWallItem* bar : bars) m.places.push_back(placeOf(*bar));
    found.push_back(std::move(m));
  });
}
std::vector<Measurement> bathBackBarLengths(const CheckInput& in) {
  return perBackBar(in, [](Measurement& m, const PlacedWallItem& bar, const PlacedFixture&) {
    m.measured = bar.item.width;
  });
}
std::vector<Measurement> bathBackBarsFromHead(const CheckInput& in) { return backBarsFrom(in, true); }
std::vector<Measurement> bathBackBarsFromControl(const CheckInput& in) { return backBarsFrom(in, false); }

std::vector<Measurement> bathLowerBars(const CheckInput& in) {
  return perBath(in, [&](std::vector<Measurement>& found, const PlacedFixture& f) {
    const auto bars = barsBehind(in.layout, f);
    if (bars.size() < 2) return;
    Measurement m = of(*bars.back(), f);
    if (f.fixture.height) {
      m.measured = bars.back()->top - *f.fixture.height;
    } else {
      m.subjects = {f.fixture.id, bars.back()->item.id};
      m.fact = "height";
    }
    found.push_back(std::move(m));
  });
}
std::vector<Measurement> bathControlBars(const CheckInput& in) { return endBars(in, false); }
std::vector<Measurement> bathHeadBars(const CheckInput& in) { return endBars(in, true); }

std::vector<Measurement> bathControlPlaces(const CheckInput& in) {
  return perControl(
      in, [](const PlacedFixture& f) { return isBath(f); },
      [&](Measurement& m, const PlacedWallItem& i, const PlacedFixture& f) {
        if (f.fixture.height) {
          m.measured = placedWell(in, i, f, *f.fixture.height);
        } else if (!placedWell(in, i, f, {})) {
          m.measured = false;
        } else {
          m.subjects = {f.fixture.id, i.item.id};
          m.fact = "height";
        }
        return true;
      });
}
std::vector<Measurement> bathSeatHeights(const CheckInput& in) { return statedOfSeats(in, "seat_height"); }
std::vector<Measurement> bathSeatDepths(const CheckInput& in) { return statedOfSeats(in, "seat_depth"); }
std::vector<Measurement> bathRimsFree(const CheckInput& in) {
  return perBath(in, [&](std::vector<Measurement>& found, const PlacedFixture& f) {
    if (f.fixture.kind != FixtureKind::bath) return;
    Measurement m{.subjects = {f.fixture.id}, .places = {lineFrom(f.front.a, f.front.b)}};
    if (const auto track = yesNo(f.fixture.facts, "rim_track"))
      m.measured = !*track;
    else
      m.fact = "rim_track";
    found.push_back(std::move(m));
  });
}

std::vector<Measurement> transferControlHeights(const CheckInput& in) { return controlHeights(in, true); }
std::vector<Measurement> rollInControlHeights(const CheckInput& in) { return controlHeights(in, false); }

std::vector<Measurement> transferControlReaches(const CheckInput& in) {
  return perControl(in, showerOf(in, true),
                    [&](Measurement& m, const PlacedWallItem& i, const PlacedFixture& f) {
                      const Spot spot = spotOf(in.layout, f, i);
                      if (spot.on != Spot::On::left && spot.on != Spot::On::right) return false;
                      m.measured = spot.out() - (reachFromWall(in.layout, f) - f.fixture.depth / 2);
                      return true;
                    });
}

std::vector<Measurement> controlsFromSeats(const CheckInput& in) {
  return perControl(in, showerOf(in, false),
                    [&](Measurement& m, const PlacedWallItem& i, const PlacedFixture& f) {
                      const Spot spot = spotOf(in.layout, f, i);
                      if (const std::optional<Hand> seat = seatSide(f))
                        m.measured = f.fixture.width / 2 - (*seat == Hand::left ? spot.left() : -spot.left());
                      else if (wordOf(f.fixture.facts, "seat_side") == "back")
                        m.measured = spot.out() - (reachFromWall(in.layout, f) - f.fixture.depth);
                      return m.measured.has_value();
                    });
}

std::vector<Measurement> transferBackBars(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !showerOf(in, true)(f)) continue;
    const std::optional<Hand> control = controlSide(in.layout, f);
    if (!control) continue;
    for (const PlacedWallItem* bar : barsBehind(in.layout, f)) {
      Measurement m = of(*bar, f);
      const Spot spot = spotOf(in.layout, f, *bar);
      m.measured = f.fixture.width / 2 - (*control == Hand::left ? spot.left_from : -spot.left_to);
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> rollInBarsFromWalls(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f) || kindOf(in.layout, f) != ShowerKind::rollIn) continue;
    const std::optional<Hand> seat = seatSide(f);
    for (const PlacedWallItem* bar : barsBehind(in.layout, f)) {
      const Spot spot = spotOf(in.layout, f, *bar);
      std::optional<Length> farthest;
      for (const Hand hand : {Hand::left, Hand::right}) {
        const auto wall = wallBeside(in.layout, f, hand, f.fixture.width / 2 + kFlush);
        if (!wall || seat == hand) continue;
        const Length gap = wall->distance - (hand == Hand::left ? spot.left_to : -spot.left_from);
        if (!farthest || gap > *farthest) farthest = gap;
      }
      if (!farthest) continue;
      Measurement m = of(*bar, f);
      m.measured = *farthest;
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> rollInWallsWithBars(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f) || f.wall < 0 || kindOf(in.layout, f) != ShowerKind::rollIn) continue;
    const std::optional<Hand> seat = seatSide(f);
    const bool seat_behind = wordOf(f.fixture.facts, "seat_side") == "back";
    int walls = seat_behind ? 0 : 1, barred = seat_behind || barsBehind(in.layout, f).empty() ? 0 : 1;
    for (const Hand hand : {Hand::left, Hand::right}) {
      if (seat == hand || !wallBeside(in.layout, f, hand, f.fixture.width / 2 + kFlush)) continue;
      ++walls;
      if (hasSideBar(in, f, hand)) ++barred;
    }
    if (barred == 0) continue;
    found.push_back({.subjects = {f.fixture.id},
                     .measured = Count{barred},
                     .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}},
                     .limit = Count{walls}});
  }
  return found;
}

std::vector<Measurement> transferControlBars(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !showerOf(in, true)(f)) continue;
    const std::optional<Hand> control = controlSide(in.layout, f);
    const bool left = hasSideBar(in, f, Hand::left), right = hasSideBar(in, f, Hand::right);
    if (!control || !(left || right || !barsBehind(in.layout, f).empty())) continue;
    found.push_back({.subjects = {f.fixture.id},
                     .measured = *control == Hand::left ? left : right,
                     .places = {*control == Hand::left ? lineFrom(f.left_side.a, f.left_side.b)
                                                       : lineFrom(f.right_side.a, f.right_side.b)}});
  }
  return found;
}

}  // namespace elbowroom::checks
