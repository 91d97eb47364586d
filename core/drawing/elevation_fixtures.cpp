#include <algorithm>

#include "core/drawing/elevation_parts.h"
#include "core/plan/catalogue.h"

namespace elbowroom {
namespace {

constexpr double kFlush = 3;  // inches; a side this near a wall shows on it

struct Silhouette {
  double left = 0, right = 0, top = 0;
  bool stated = true;  // its height
};

Silhouette silhouetteOf(const Fixture& fixture, double left, double right) {
  return {left, right, heightOf(fixture).inches(), fixture.height.has_value()};
}

Role outlineRole(const Fixture& fixture, const Silhouette& s) {
  return fixture.status == Status::remove ? Role::fixtureRemoved : s.stated ? Role::fixture : Role::hidden;
}

void drawToilet(Pen& pen, const Fixture& f, const Silhouette& s, Role role) {
  const double middle = (s.left + s.right) / 2, width = s.right - s.left;
  const double half_tank = std::min(width, f.tank_width ? f.tank_width->inches() : width) / 2;
  const double half_bowl = std::min(width, f.bowl_width ? f.bowl_width->inches() : width * 0.7) / 2;
  const double seat = std::min(15.0, s.top * 0.6);
  pen.rectangle(role, middle - half_tank, seat, middle + half_tank, s.top, 1);
  pen.line(Role::fixtureDetail, middle - half_tank, s.top - 1.2, middle + half_tank, s.top - 1.2);
  pen.poly(role,
           {{middle - half_bowl, seat},
            {middle + half_bowl, seat},
            {middle + half_bowl * 0.95, seat * 0.8},
            {middle + half_bowl * 0.55, seat * 0.35},
            {middle + half_bowl * 0.6, 0},
            {middle - half_bowl * 0.6, 0},
            {middle - half_bowl * 0.55, seat * 0.35},
            {middle - half_bowl * 0.95, seat * 0.8}},
           true);
  pen.line(Role::fixtureDetail, middle - half_bowl, seat - 1, middle + half_bowl, seat - 1);
}

// Bowls behind the front of a counter, one per basin.
void drawBowls(Pen& pen, const Silhouette& s, int count, double rim) {
  const double each = (s.right - s.left) / count, rx = std::min(9.0, each * 0.36);
  const double deep = std::min(6.0, std::max(0.0, rim - 1));
  for (int i = 0; i < count; ++i) {
    const double c = s.left + each * (i + 0.5);
    pen.arc(Role::clearZone, c, rim, rx, deep, 180, 360);
  }
}

void drawVanity(Pen& pen, const Fixture& f, const Silhouette& s, Role role) {
  const int bowls = std::max(1, f.basins.value_or(1));
  const double counter = s.top - 1.5, toe = std::min(4.0, counter / 4);
  if (f.knee_space) {
    pen.rectangle(role, s.left, std::max(0.0, f.knee_space->height.inches()), s.right, s.top);
    pen.line(Role::fixtureDetail, s.left, counter, s.right, counter);
    return drawBowls(pen, s, bowls, counter);
  }
  pen.rectangle(role, s.left, 0, s.right, s.top);
  pen.line(Role::fixtureDetail, s.left, counter, s.right, counter);
  pen.line(Role::fixtureDetail, s.left, toe, s.right, toe);
  const double width = s.right - s.left;
  const int doors = std::max(2 * bowls, static_cast<int>(width / 22 + 0.5));
  for (int i = 1; i < doors; ++i) {
    const double at = s.left + width * i / doors;
    pen.line(Role::fixtureDetail, at, toe, at, counter);
  }
  drawBowls(pen, s, bowls, counter);
}

// Fixed glass and a glass door in front of a shower or bath, as the usual two strokes.
void drawGlass(Pen& pen, const Fixture& f, const Silhouette& s) {
  for (const Pane& pane : f.glass) {
    if (pane.side != Side::front) continue;
    const double top = pane.height ? pane.height->inches() : s.top, low = f.curb ? f.curb->inches() : 0;
    pen.rectangle(Role::fixtureDetail, s.left, low, s.right, top);
    const double w = s.right - s.left, h = top - low;
    for (const double at : {0.42, 0.47})
      pen.line(Role::fixtureDetail, s.left + w * at, low + h * 0.55, s.left + w * (at + 0.1), low + h * 0.65);
    if (!pane.door) continue;
    const double door = std::min(w, pane.door->inches());
    const bool left = pane.hinge.value_or(Hand::left) == Hand::left;
    const double edge = left ? s.left + door : s.right - door;
    pen.line(Role::fixtureDetail, edge, low, edge, top);
  }
}

void drawFront(Pen& pen, const Fixture& f, const Silhouette& s) {
  const Role role = outlineRole(f, s), detail = Role::fixtureDetail;
  const double middle = (s.left + s.right) / 2, width = s.right - s.left;
  switch (f.kind) {
    case FixtureKind::toilet:
      return drawToilet(pen, f, s, role);
    case FixtureKind::basin:
    case FixtureKind::bidet: {
      const double rim = std::max(0.0, s.top - 6);
      pen.poly(
          role,
          {{s.left, s.top}, {s.right, s.top}, {middle + width * 0.25, rim}, {middle - width * 0.25, rim}},
          true);
      if (yesNo(f.facts, "wall_hung").value_or(false)) return;
      pen.line(detail, middle - width * 0.12, rim, middle - width * 0.1, 0);
      pen.line(detail, middle + width * 0.12, rim, middle + width * 0.1, 0);
      return;
    }
    case FixtureKind::vanity:
      return drawVanity(pen, f, s, role);
    case FixtureKind::shower: {
      const double curb = f.curb ? f.curb->inches() : 0;
      pen.rectangle(role, s.left, 0, s.right, s.top);
      if (curb > 0) pen.line(detail, s.left, curb, s.right, curb);
      return drawGlass(pen, f, s);
    }
    case FixtureKind::cabinet:
    case FixtureKind::linenCloset:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      pen.line(detail, middle, 0, middle, s.top);
      return;
    case FixtureKind::bath:
    case FixtureKind::freestandingBath:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      pen.line(detail, s.left, s.top - 1.5, s.right, s.top - 1.5);
      return drawGlass(pen, f, s);
    case FixtureKind::washer:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      pen.circle(detail, middle, s.top * 0.5, std::min(width, s.top) * 0.3);
      return;
    case FixtureKind::bench:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      pen.line(detail, s.left, s.top - 1.5, s.right, s.top - 1.5);
      return;
    case FixtureKind::heater: {
      pen.rectangle(role, s.left, 0, s.right, s.top);
      const int fins = std::clamp(static_cast<int>(width / 4), 2, 16);
      for (int i = 1; i < fins; ++i) {
        const double at = s.left + width * i / fins;
        pen.line(detail, at, s.top * 0.08, at, s.top * 0.92);
      }
      return;
    }
  }
}

// Extent of a footprint along a wall, and how near it comes to it.
struct Beside {
  double low, high, nearest;
};
Beside beside(const WallFrame& wall, const Outline& footprint) {
  Beside b{1e9, -1e9, 1e9};
  for (const Point& p : footprint) {
    const double along = dot(p - wall.from, wall.along).inches();
    b.low = std::min(b.low, along);
    b.high = std::max(b.high, along);
    b.nearest = std::min(b.nearest, dot(p - wall.from, wall.inward).inches());
  }
  return b;
}

}  // namespace

DisplayList drawFixtureOnWall(const Layout& layout, const PlacedFixture& placed, std::size_t index,
                              double x) {
  const WallFrame& wall = layout.walls[index];
  const Fixture& f = placed.fixture;
  Pen pen(elevationFrame(), f.id);
  if (placed.wall == static_cast<int>(index)) {
    const double c = x + dot(placed.center - wall.from, wall.along).inches(), half = f.width.inches() / 2;
    drawFront(pen, f, silhouetteOf(f, c - half, c + half));
    return pen.take();
  }
  const Beside b = beside(wall, placed.footprint);
  const double low = std::max(b.low, 0.0), high = std::min(b.high, wall.length.inches());
  if (b.nearest > kFlush || b.nearest < -kFlush || high - low < 1) return {};
  const Silhouette s = silhouetteOf(f, x + low, x + high);
  pen.rectangle(f.status == Status::remove ? Role::fixtureRemoved : Role::fixtureDetail, s.left, 0, s.right,
                s.top);
  return pen.take();
}

}  // namespace elbowroom
