#include "core/rules/checks/shower_doors.h"

#include <algorithm>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

struct GlassSide {
  Point left, right;  // ends as seen from outside the shower
  Direction out;
};

GlassSide sideOf(const PlacedFixture& f, Side side) {
  switch (side) {
    case Side::front:
      return {f.front.a, f.front.b, f.facing};
    case Side::back:
      return {f.right_side.a, f.left_side.a, f.facing.opposite()};
    case Side::left:
      return {f.left_side.a, f.left_side.b, leftOf(f)};
    case Side::right:
      return {f.right_side.b, f.right_side.a, rightOf(f)};
  }
  return {};
}

template <typename Each>
void forDoors(const CheckInput& in, Each each) {
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    for (const Pane& pane : f.fixture.glass)
      if (pane.door) each(f, pane);
  }
}

Place doorOf(const PlacedFixture& f, const Pane& pane) {
  const GlassSide side = sideOf(f, pane.side);
  return lineFrom(side.left, side.right);
}

}  // namespace

std::vector<Leaf> glassLeaves(const PlacedFixture& f) {
  std::vector<Leaf> leaves;
  if (!counts(f) || !isShower(f)) return leaves;
  for (const Pane& pane : f.fixture.glass) {
    if (!pane.door || !pane.hinge || pane.door_swing != Swing::out) continue;
    const GlassSide side = sideOf(f, pane.side);
    const bool left = *pane.hinge == Hand::left;
    const Point hinge = left ? side.left : side.right;
    const Direction closed = Direction::between(hinge, left ? side.right : side.left);
    leaves.push_back({hinge, *pane.door, closed, left ? -90_deg : 90_deg});
  }
  return leaves;
}

std::vector<Measurement> showerDoorsOutward(const CheckInput& in) {
  std::vector<Measurement> found;
  forDoors(in, [&](const PlacedFixture& f, const Pane& pane) {
    if (!pane.door_swing) return;
    const bool out = *pane.door_swing == Swing::out;
    if (found.empty() || found.back().subjects[0] != f.fixture.id) {
      found.push_back({.subjects = {f.fixture.id}, .measured = out, .places = {doorOf(f, pane)}});
    } else if (!out) {
      found.back().measured = false;
      found.back().places = {doorOf(f, pane)};
    }
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
    const Obstacles others = obstaclesWhere(in.layout, [&](const PlacedFixture& o) { return &o != &f; });
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
      if (const auto touch = firstTouch(leaf, leaf.width, others.outlines)) {
        const auto hit = static_cast<std::size_t>(others.fixture[static_cast<std::size_t>(touch->obstacle)]);
        stopped(*touch, in.layout.fixtures[hit].fixture.id);
      }
      found.push_back(std::move(m));
    }
  }
  return found;
}

}  // namespace elbowroom::checks
