#include "core/rules/checks/pockets.h"

#include <algorithm>
#include <array>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

bool isPocket(const PlacedOpening& o) {
  return o.opening.kind == OpeningKind::door && o.opening.action == DoorAction::pocket && o.wall >= 0;
}
Place doorway(const PlacedOpening& o) { return lineFrom(o.left, o.right); }

const WallFrame& wallOf(const CheckInput& in, const PlacedOpening& o) {
  return in.layout.walls[static_cast<std::size_t>(o.wall)];
}

// Kinds of things on walls by what they need of the wall.
constexpr std::array kDeep{"receptacle",  "switch",       "timer-switch", "humidity-switch", "combined-switch",
                           "light",       "side-light",   "sconce-box",   "lit-mirror",      "makeup-mirror",
                           "control",     "shower-head",  "hand-spray",   "spout",           "niche",
                           "exhaust",     "access-panel", "radiator",     "towel-heater",    "medicine-cabinet",
                           "grab-bar",    "grab-bar-l",   "grab-bar-fold"};
constexpr std::array kScrewed{"towel-bar", "hook", "paper-holder", "shelf", "mirror"};

template <typename Kinds>
bool among(const Kinds& kinds, const WallItem& item) {
  return std::any_of(kinds.begin(), kinds.end(), [&](const char* kind) { return item.kind == kind; });
}

struct Hung {
  const WallItem* item;
  Point at;  // on the wall's face, in the middle of the item
};

// What hangs on the door's wall where its leaf parks.
std::vector<Hung> before(const CheckInput& in, const PlacedOpening& o) {
  std::vector<Hung> hung;
  const WallFrame& wall = wallOf(in, o);
  Length low = wall.length, high;
  for (const Point& p : o.cavity) {
    const Length along = dot(p - wall.from, wall.along);
    low = std::min(low, along);
    high = std::max(high, along);
  }
  for (const WallItem& item : in.layout.option.on_walls) {
    if (item.wall != o.opening.wall || item.status == Status::remove || item.bottom >= o.opening.height) continue;
    const Length half = item.width / 2;
    if (item.along + half > low + kContact && item.along - half < high - kContact)
      hung.push_back({&item, wall.at(item.along)});
  }
  return hung;
}

template <typename Each>
std::vector<Measurement> eachPocket(const CheckInput& in, Each each) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings)
    if (isPocket(o)) found.push_back(each(o));
  return found;
}

}  // namespace

std::vector<Measurement> pocketBoxes(const CheckInput& in) {
  return eachPocket(in, [&](const PlacedOpening& o) {
    Measurement m{.subjects = {o.opening.id}, .measured = true, .places = {doorway(o)}};
    for (const Hung& hung : before(in, o)) {
      if (!among(kDeep, *hung.item)) continue;
      if (std::get<bool>(*m.measured)) m.places.clear();
      m.measured = false;
      m.subjects.push_back(hung.item->id);
      m.places.push_back(pointAt(hung.at));
    }
    return m;
  });
}

std::vector<Measurement> pocketScrews(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (!isPocket(o)) continue;
    for (const Hung& hung : before(in, o)) {
      if (!among(kScrewed, *hung.item)) continue;
      Measurement m{.subjects = {hung.item->id, o.opening.id}, .measured = std::nullopt, .places = {pointAt(hung.at)}};
      if (const auto screw = lengthOf(hung.item->facts, "screw_length"))
        m.measured = *screw;
      else
        m.fact = "screw_length";
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> pocketWallThicknesses(const CheckInput& in) {
  return eachPocket(in, [&](const PlacedOpening& o) {
    Measurement m{.subjects = {o.opening.id, o.opening.wall},
                  .measured = wallOf(in, o).thickness,
                  .places = {doorway(o)}};
    m.limit = o.opening.leaf_thickness.value_or(1.375_in) >= 1.75_in ? 6.5_in : 4.5_in;
    return m;
  });
}

std::vector<Measurement> pocketLoads(const CheckInput& in) {
  return eachPocket(in, [&](const PlacedOpening& o) {
    Measurement m{.subjects = {o.opening.wall, o.opening.id}, .measured = std::nullopt, .places = {doorway(o)}};
    const Wall* wall = findWall(in.layout.option, o.opening.wall);
    if (const auto bears = wall ? yesNo(wall->facts, "load_bearing") : std::nullopt)
      m.measured = !*bears;
    else
      m.fact = "load_bearing";
    return m;
  });
}

}  // namespace elbowroom::checks
