#include "core/rules/checks/door_parts.h"

#include <algorithm>
#include <cmath>

#include "core/plan/catalogue.h"
#include "core/rules/checks/air.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/doors.h"
#include "core/rules/checks/fans.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

constexpr Length kDeepOpening = 24_in;  // guideline 1
constexpr Length kCasingProud = Length::nanometres(19'050'000);  // 3/4 in of casing before the wall

bool isDoor(const PlacedOpening& o) { return o.opening.kind == OpeningKind::door && o.wall >= 0; }
bool hasLeaf(const PlacedOpening& o) { return isDoor(o) && o.opening.action != DoorAction::cased; }
Place doorway(const PlacedOpening& o) { return lineFrom(o.left, o.right); }

template <typename Wanted, typename Each>
std::vector<Measurement> eachDoor(const CheckInput& in, Wanted wanted, Each each) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (!wanted(o)) continue;
    Measurement m{.subjects = {o.opening.id}, .measured = std::nullopt, .places = {doorway(o)}};
    each(m, o);
    found.push_back(std::move(m));
  }
  return found;
}

void statedLength(Measurement& m, const PlacedOpening& o, const char* fact) {
  if (const auto stated = lengthOf(o.opening.facts, fact))
    m.measured = *stated;
  else
    m.fact = fact;
}

}  // namespace

std::vector<Measurement> deepDoorOpenings(const CheckInput& in) {
  std::vector<Measurement> found = doorClearOpenings(in);
  found.erase(std::remove_if(found.begin(), found.end(),
                             [&](const Measurement& m) {
                               const Opening* o = findOpening(in.layout.option, m.subjects[0]);
                               const Wall* wall = o ? findWall(in.layout.option, o->wall) : nullptr;
                               return wall == nullptr || wall->thickness <= kDeepOpening;
                             }),
              found.end());
  return found;
}

std::vector<Measurement> doorUndercuts(const CheckInput& in) {
  if (fansOf(in.layout).empty()) return {};
  const auto flow = flowOf(in.layout);
  return eachDoor(in, hasLeaf, [&](Measurement& m, const PlacedOpening& o) {
    statedLength(m, o, "undercut");
    if (!m.measured || !flow || std::get<Length>(*m.measured) == Length{}) return;
    const double speed = speedUnderDoor(*flow, std::get<Length>(*m.measured), o.opening.width);
    m.detail = "speed-under-door:" + std::to_string(std::lround(speed));
  });
}

std::vector<Measurement> doorThresholdsForChair(const CheckInput& in) {
  const auto& people = in.layout.settings.people;
  if (std::none_of(people.begin(), people.end(), [](const Person& p) { return p.chair.has_value(); })) return {};
  return eachDoor(in, isDoor, [](Measurement& m, const PlacedOpening& o) { statedLength(m, o, "threshold"); });
}

std::vector<Measurement> doorsShutTight(const CheckInput& in) {
  return eachDoor(in, isDoor, [](Measurement& m, const PlacedOpening& o) {
    m.measured = o.opening.action != DoorAction::surfaceSliding && o.opening.action != DoorAction::cased;
  });
}

std::vector<Measurement> stockLeaves(const CheckInput& in) {
  return eachDoor(in, hasLeaf, [](Measurement& m, const PlacedOpening& o) {
    const bool two = o.opening.action == DoorAction::doubleLeaf;
    const Length leaf = two ? o.opening.width / 2 : o.opening.width;
    const auto stock = stockLeafWidths();
    m.measured = std::any_of(stock.begin(), stock.end(), [&](Length w) { return abs(w - leaf) < kContact; });
  });
}

std::vector<Measurement> doorCasings(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  const auto wanted = [](const PlacedOpening& o) {
    return isDoor(o) && o.opening.action != DoorAction::surfaceSliding;
  };
  return eachDoor(in, wanted, [&](Measurement& m, const PlacedOpening& o) {
    const WallFrame& wall = in.layout.walls[static_cast<std::size_t>(o.wall)];
    const Obstacles all = obstaclesWhere(in.layout, [](const PlacedFixture&) { return true; });
    const auto beside = [&](Point jamb, Direction away) {
      return aheadOf({jamb, jamb + kCasingProud * wall.inward}, away, in.layout, all);
    };
    const Ahead left = beside(o.left, wall.along.opposite()), right = beside(o.right, wall.along);
    const bool left_nearer = left.distance <= right.distance;
    const Ahead& near = left_nearer ? left : right;
    const Point jamb = left_nearer ? o.left : o.right;
    m.subjects.push_back(idOf(in.layout, near));
    m.measured = near.distance;
    m.places = {lineFrom(jamb, jamb + near.distance * (left_nearer ? wall.along.opposite() : wall.along))};
  });
}

}  // namespace elbowroom::checks
