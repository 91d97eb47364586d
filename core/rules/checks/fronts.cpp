#include "core/rules/checks/fronts.h"

#include <algorithm>

#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

template <typename Wanted>
std::vector<Measurement> fullFronts(const CheckInput& in, Wanted wanted) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !wanted(f) || in.layout.room.empty()) continue;
    const Ahead& ahead = in.around[i].front;
    found.push_back({.subjects = {f.fixture.id, idOf(in.layout, ahead)},
                     .measured = ahead.distance,
                     .places = placesOf(f.front, f.facing, ahead, limitOf(in))});
  }
  return found;
}

struct Stretch {
  Segment front;
  Ahead ahead;
};

// The stretch of this width along the front from which one can go furthest straight ahead. The best one
// begins or ends at an end of the front or where an obstacle or a corner of the room begins or ends.
Stretch clearestStretch(const CheckInput& in, const PlacedFixture& f, Length width) {
  const Obstacles& others = thingsAround(in, f);
  const Direction along = Direction::between(f.front.a, f.front.b);
  const Length whole = distance(f.front.a, f.front.b);
  const Length room_to_slide = whole - width;
  std::vector<Length> starts{Length{}};
  if (room_to_slide > Length{}) {
    starts.push_back(room_to_slide);
    const auto add = [&](const Outline& ring) {
      for (const Point& p : ring) {
        const Length at = dot(p - f.front.a, along);
        for (const Length start : {at, at - width})
          if (start > Length{} && start < room_to_slide) starts.push_back(start);
      }
    };
    for (const BoxedOutline& ring : others.outlines)
      if (ring.outline->size() <= 8)
        add(*ring.outline);
      else
        add({ring.box.low, ring.box.high});  // a bowl's curve: its ends decide
    add(in.layout.room);
  }
  std::sort(starts.begin(), starts.end());
  starts.erase(std::unique(starts.begin(), starts.end()), starts.end());
  std::optional<Stretch> best;
  for (const Length start : starts) {
    const Segment part{f.front.a + start * along, f.front.a + std::min(start + width, whole) * along};
    const Ahead ahead = aheadOf(part, f.facing, in.layout, others);
    if (!best || ahead.distance > best->ahead.distance) best = Stretch{part, ahead};
  }
  return *best;
}

template <typename Wanted>
std::vector<Measurement> stretchFronts(const CheckInput& in, Wanted wanted, Length width, const char* detail,
                                       Length limit) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !wanted(f) || in.layout.room.empty()) continue;
    Stretch best{f.front, in.around[i].front};
    const bool partly = best.ahead.distance < limit && f.fixture.width > width;
    if (partly) best = clearestStretch(in, f, width);
    found.push_back({.subjects = {f.fixture.id, idOf(in.layout, best.ahead)},
                     .measured = best.ahead.distance,
                     .places = placesOf(best.front, f.facing, best.ahead, limit),
                     .detail = partly ? detail : ""});
  }
  return found;
}

}  // namespace

std::vector<Measurement> toiletFronts(const CheckInput& in) { return fullFronts(in, isToilet); }
std::vector<Measurement> basinFronts(const CheckInput& in) { return fullFronts(in, isBasin); }
std::vector<Measurement> bathFronts(const CheckInput& in) {
  return bathFrontsFor(in, limitOf(in));
}
std::vector<Measurement> bathFrontsFor(const CheckInput& in, Length limit) {
  return stretchFronts(in, isBath, 30_in, "clearest-30", limit);
}
std::vector<Measurement> showerFronts(const CheckInput& in) {
  return stretchFronts(in, isShower, 22_in, "clearest-22", limitOf(in));
}

std::vector<Measurement> toiletWideFronts(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isToilet(f) || in.layout.room.empty()) continue;
    const Zone zone{f.front_center, leftOf(f), f.facing, 15_in, 15_in, limitOf(in)};
    found.push_back(measuredIn(in.layout, zone, roomFor(in.layout, thingsAround(in, f), zone), f.fixture.id));
  }
  return found;
}

}  // namespace elbowroom::checks
