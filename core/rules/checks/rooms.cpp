#include "core/rules/checks/rooms.h"

#include <algorithm>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

std::vector<Measurement> toiletRoomDepths(const CheckInput& in) {
  const PlacedFixture* toilet = nullptr;
  std::size_t index = 0;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f)) continue;
    if (toilet != nullptr || f.fixture.kind != FixtureKind::toilet) return {};
    toilet = &f;
    index = i;
  }
  if (toilet == nullptr || in.layout.room.empty() || toilet->wall < 0) return {};
  const Length gap = std::get<OnWall>(toilet->fixture.placement).gap;
  const Ahead& ahead = in.around[index].front;
  const Length depth = gap + toilet->fixture.depth + ahead.distance;
  const Point back = toilet->back_center - gap * toilet->facing;
  return {{.subjects = {toilet->fixture.id},
           .measured = depth,
           .places = {lineFrom(back, back + depth * toilet->facing)}}};
}

std::vector<Measurement> doorLeaves(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (o.opening.kind != OpeningKind::door) continue;
    found.push_back(
        {.subjects = {o.opening.id}, .measured = o.opening.width, .places = {lineFrom(o.left, o.right)}});
  }
  return found;
}

std::vector<Measurement> compartmentDoors(const CheckInput& in) {
  if (yesNo(in.layout.option.room.facts, "compartment") != true) return {};
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (o.opening.kind != OpeningKind::door) continue;
    found.push_back(
        {.subjects = {o.opening.id}, .measured = !o.leaves_inside, .places = {lineFrom(o.left, o.right)}});
  }
  return found;
}

std::vector<Measurement> slipResistantFloor(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {pointAt(centroidOf(in.layout.room))}};
  if (const auto stated = yesNo(in.layout.option.room.facts, "slip_resistant_floor"))
    m.measured = *stated;
  else
    m.fact = "slip_resistant_floor";
  return {m};
}

}  // namespace elbowroom::checks
