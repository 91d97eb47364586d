#include "core/rules/sightline.h"

#include <algorithm>

#include "core/people/body.h"

namespace elbowroom {

namespace {
using namespace literals;

const WallFrame& wallOf(const Layout& layout, const PlacedOpening& door) {
  return layout.walls[static_cast<std::size_t>(door.wall)];
}

Vector through(const Layout& layout, const PlacedOpening& door) {
  const WallFrame& wall = wallOf(layout, door);
  return wall.thickness * wall.inward.opposite();
}

Length highestEye(const std::vector<Person>& people) {
  if (people.empty()) return eyesOf(tallMan()).high;
  Length highest;
  for (const Person& p : people) highest = std::max(highest, eyesOf(p).high);
  return highest;
}

bool hides(const PlacedFixture& f, Length eye_height) {
  if (f.fixture.status == Status::remove || f.footprint.empty()) return false;
  if (!f.fixture.height) return f.fixture.kind == FixtureKind::linenCloset;
  return *f.fixture.height >= eye_height && f.fixture.kind != FixtureKind::shower;
}

constexpr Length kFarthest = 600_in;

}  // namespace

Point eyeOutside(const Layout& layout, const PlacedOpening& door, Length out) {
  return midpoint(door.left, door.right) + through(layout, door) - out * wallOf(layout, door).inward;
}

Segment doorwayOutside(const Layout& layout, const PlacedOpening& door) {
  const Vector out = through(layout, door);
  return {door.left + out, door.right + out};
}

std::vector<Segment> opaqueThrough(const Layout& layout, const PlacedOpening& door, Angle opens,
                                   Length eye_height) {
  std::vector<Segment> opaque;
  for (std::size_t i = 0; i < layout.walls.size(); ++i) {
    const WallFrame& wall = layout.walls[i];
    if (static_cast<int>(i) != door.wall) {
      opaque.push_back({wall.from, wall.to});
      continue;
    }
    const Segment outside = doorwayOutside(layout, door);
    opaque.insert(opaque.end(), {{wall.from, door.left},
                                 {door.right, wall.to},
                                 {door.left, outside.a},
                                 {door.right, outside.b}});
  }
  const DoorAction action = door.opening.action;
  if (action == DoorAction::hinged || action == DoorAction::doubleLeaf)
    for (const Leaf& leaf : door.leaves) {
      const Angle turned = leaf.sweep < Angle{} ? -opens : opens;
      opaque.push_back({leaf.hinge, leaf.hinge + leaf.width * leaf.closed.turned(turned)});
    }
  for (const PlacedFixture& f : layout.fixtures) {
    if (!hides(f, eye_height)) continue;
    for (std::size_t i = 0; i < f.footprint.size(); ++i)
      opaque.push_back({f.footprint[i], f.footprint[(i + 1) % f.footprint.size()]});
  }
  return opaque;
}

std::optional<SightFigure> sightFigure(const Layout& layout, const PlacedOpening& door, Angle opens, Length out) {
  if (door.opening.kind != OpeningKind::door || door.wall < 0 || layout.room.empty()) return std::nullopt;
  const std::vector<Segment> opaque =
      opaqueThrough(layout, door, opens, highestEye(layout.settings.people));
  SightFigure figure;
  figure.door = door.opening.id;
  figure.eye = eyeOutside(layout, door, out);
  const Segment doorway = doorwayOutside(layout, door);
  figure.seen = seenThrough(figure.eye, doorway, opaque, kFarthest);
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.kind == FixtureKind::toilet && f.fixture.status != Status::remove)
      figure.toilets.push_back({f.fixture.id, seenOf(f.footprint, figure.eye, doorway, opaque)});
  return figure;
}

}  // namespace elbowroom
