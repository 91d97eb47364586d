#include "core/plan/catalogue.h"
#include "core/plan/snap.h"
#include "core/rules/remedies/ways.h"

namespace elbowroom::remedies {
namespace {

using namespace literals;

Hand otherOf(Hand hand) { return hand == Hand::left ? Hand::right : Hand::left; }
Swing otherOf(Swing swing) { return swing == Swing::in ? Swing::out : Swing::in; }

bool hasHinge(DoorAction a) { return a == DoorAction::hinged || a == DoorAction::bifold; }
bool hasSwing(DoorAction a) {
  return a == DoorAction::hinged || a == DoorAction::doubleLeaf || a == DoorAction::bifold;
}

void addDoor(Ways& ways, Mend way, const Opening& then, double effort) {
  Move move{.way = way, .moved = then.id, .door = then};
  ways.candidates.push_back({std::move(move), PutOpenings{{then}}, effort, false});
}

void addHanging(const Opening& door, Ways& ways) {
  if (hasHinge(door.action)) {
    Opening then = door;
    then.hinge = otherOf(door.hinge);
    addDoor(ways, Mend::otherHand, then, 3);
  }
  if (hasSwing(door.action)) {
    Opening then = door;
    then.swing = otherOf(door.swing);
    addDoor(ways, Mend::otherSwing, then, 4);
    if (hasHinge(door.action)) {
      then.hinge = otherOf(door.hinge);
      addDoor(ways, Mend::otherSwing, then, 5);
    }
  }
  if (door.action == DoorAction::pocket || door.action == DoorAction::surfaceSliding) {
    for (const Hand toward : {Hand::left, Hand::right}) {
      if (door.toward == toward) continue;
      Opening then = door;
      then.toward = toward;
      addDoor(ways, Mend::otherHand, then, 6);
    }
  }
}

// The opening in the wall stays as wide as it is: a leaf that slides before the wall is wider than it.
void addActions(const Opening& door, Ways& ways) {
  const Length opening = openingWidth(door);
  const auto with = [&](DoorAction action, std::optional<Hand> toward, double effort) {
    if (action == door.action) return;
    Opening then = door;
    then.action = action;
    then.toward = toward;
    then.width = opening;
    if (action == DoorAction::surfaceSliding) then.width = opening + (opening - openingWidth([&] {
                                                Opening probe = then;
                                                return probe;
                                              }()));
    addDoor(ways, Mend::otherAction, then, effort);
  };
  if (door.action == DoorAction::cased) return;
  for (const Hand toward : {Hand::left, Hand::right}) with(DoorAction::surfaceSliding, toward, 12);
  for (const Hand toward : {Hand::left, Hand::right}) with(DoorAction::pocket, toward, 16);
  with(DoorAction::bifold, std::nullopt, 14);
}

void addLeaves(const Opening& door, Ways& ways) {
  for (const bool wider : {true, false}) {
    int tried = 0;
    const auto stock = stockLeafWidths();
    for (std::size_t i = 0; i < stock.size() && tried < 3; ++i) {
      const Length width = wider ? stock[i] : stock[stock.size() - 1 - i];
      if (wider ? width <= door.width : width >= door.width) continue;
      ++tried;
      for (const int side : {0, -1, 1}) {
        Opening then = door;
        then.width = width;
        then.along += (door.width - width) / 2 * side;
        Move move{.way = wider ? Mend::wider : Mend::narrower, .moved = door.id, .by = abs(width - door.width)};
        move.width = width;
        move.door = then;
        ways.candidates.push_back({std::move(move), PutOpenings{{then}},
                                   8 + abs(width - door.width).inches() + (side == 0 ? 0 : 0.5), false});
        if (!wider || !hasSwing(door.action)) continue;
        // A wider leaf often only has room outside.
        then.swing = otherOf(door.swing);
        Move out = ways.candidates.back().move;
        out.door = then;
        ways.candidates.push_back({std::move(out), PutOpenings{{then}}, ways.candidates.back().effort + 4, false});
      }
    }
  }
}

void addSlides(const Layout& layout, const PlacedOpening& o, Ways& ways) {
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(o.wall)];
  const std::vector<SideGap> gaps = sideGaps(layout, o.opening.id);
  for (const SideGap& gap : gaps) {
    if (gap.distance <= kContact) continue;
    const Direction way = gap.grow.opposite();
    const bool right = way.x * wall.along.x + way.y * wall.along.y > 0;
    Family f;
    f.move = {.way = Mend::slide, .moved = o.opening.id, .other = gap.other};
    for (const SideGap& opposite : gaps)
      if (&opposite != &gap) f.behind = opposite.other;
    f.most = gap.distance;
    f.effort = {36, 1};
    f.at = [opening = o.opening, right](Length by) -> Change {
      Opening there = opening;
      there.along += right ? by : -by;
      return PutOpenings{{there}};
    };
    ways.families.push_back(std::move(f));
  }
}

}  // namespace

void addOpeningWays(const Layout& layout, const PlacedOpening& o, Ways& ways) {
  if (o.opening.kind == OpeningKind::door) {
    addHanging(o.opening, ways);
    addActions(o.opening, ways);
    if (o.opening.action != DoorAction::cased) addLeaves(o.opening, ways);
  }
  addSlides(layout, o, ways);
}

}  // namespace elbowroom::remedies
