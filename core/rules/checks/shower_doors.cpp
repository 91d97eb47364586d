#include "core/rules/checks/shower_doors.h"

#include <algorithm>

#include "core/rules/checks/shower_sides.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

template <typename Each>
void forDoors(const CheckInput& in, Each each) {
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    for (const Pane& pane : f.fixture.glass)
      if (pane.door) each(f, pane);
  }
}

Place doorOf(const PlacedFixture& f, const Pane& pane) {
  const Segment line = sideOf(f, pane.side).line;
  return lineFrom(line.a, line.b);
}

}  // namespace

std::vector<Leaf> glassLeaves(const PlacedFixture& f) {
  std::vector<Leaf> leaves;
  if (!counts(f) || !isShower(f)) return leaves;
  for (const Pane& pane : f.fixture.glass) {
    if (!pane.door || !pane.hinge || pane.door_swing != Swing::out) continue;
    const Segment side = sideOf(f, pane.side).line;
    const bool left = *pane.hinge == Hand::left;
    const Point hinge = left ? side.a : side.b;
    const Direction closed = Direction::between(hinge, left ? side.b : side.a);
    leaves.push_back({hinge, *pane.door, closed, left ? -90_deg : 90_deg});
  }
  return leaves;
}

std::vector<Measurement> showerDoorsOutward(const CheckInput& in) {
  std::vector<Measurement> found;
  forDoors(in, [&](const PlacedFixture& f, const Pane& pane) {
    if (!pane.door_swing && !pane.hinge) return;
    if (found.empty() || found.back().subjects[0] != f.fixture.id)
      found.push_back({.subjects = {f.fixture.id}, .measured = true, .places = {doorOf(f, pane)}});
    Measurement& m = found.back();
    // One that opens inward decides, then one that may.
    if (pane.door_swing == Swing::in)
      m.measured = false, m.fact = {}, m.places = {doorOf(f, pane)};
    else if (!pane.door_swing && m.measured == Quantity(true))
      m.measured.reset(), m.fact = "glass.door_swing", m.places = {doorOf(f, pane)};
  });
  return found;
}

std::vector<Measurement> showerDoorWidths(const CheckInput& in) {
  std::vector<Measurement> found;
  forDoors(in, [&](const PlacedFixture& f, const Pane& pane) {
    found.push_back({.subjects = {f.fixture.id}, .measured = *pane.door, .places = {doorOf(f, pane)}});
  });
  return found;
}

std::vector<Measurement> glassDoorSwings(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (in.layout.room.empty()) continue;
    const std::vector<Leaf> leaves = glassLeaves(f);
    if (leaves.empty()) continue;
    const Obstacles& things = thingsAround(in, f);
    std::vector<Outline> others;
    for (const BoxedOutline& thing : things.outlines) others.push_back(*thing.outline);
    for (const Leaf& leaf : leaves) {
      Measurement m{.subjects = {f.fixture.id},
                    .measured = 90_deg,
                    .places = {lineFrom(leaf.hinge, leaf.hinge + leaf.width * leaf.closed)}};
      m.limit = 90_deg;
      const auto stopped = [&](const Touch& touch, ElementId by) {
        if (touch.opened >= std::get<Angle>(*m.measured)) return;
        const Angle opened = leaf.sweep < Angle{} ? -touch.opened : touch.opened;
        const Leaf rest{leaf.hinge, leaf.width, leaf.closed.turned(opened), leaf.sweep - opened};
        m.measured = touch.opened;
        m.subjects = {f.fixture.id, by};
        m.places = {pointAt(touch.at), {Place::Kind::zone, sectorOutline(rest, 12)}};
      };
      if (const auto wall = firstWallTouch(leaf, in.layout.room)) stopped(*wall, wallAt(in.layout, wall->at));
      if (const auto touch = firstTouch(leaf, leaf.width, others)) {
        const auto hit = static_cast<std::size_t>(things.fixture[static_cast<std::size_t>(touch->obstacle)]);
        stopped(*touch, in.layout.fixtures[hit].fixture.id);
      }
      found.push_back(std::move(m));
    }
  }
  return found;
}

}  // namespace elbowroom::checks
