#include <algorithm>
#include <cmath>

#include "core/drawing/figures.h"

namespace elbowroom {
namespace {

// A fixture's own frame: origin at the middle of its back, x to the right as one faces the wall, y forward.
struct Canvas {
  Pen pen;
  double w, d;
  Role line, detail;
};

bool saysOf(const Fixture& f, const char* key, const char* word) {
  const auto it = f.extra.find(key);
  return it != f.extra.end() && it->second.find(word) != std::string::npos;
}

void drain(Canvas& c, double x, double y, double r) {
  c.pen.circle(c.detail, x, y, r);
  c.pen.circle(c.detail, x, y, r * 0.3, true);
}

// Spout and two handles, seen from above; the spout points along (dx, dy).
void tap(Canvas& c, double x, double y, double dx, double dy, double size) {
  c.pen.line(c.detail, x, y, x + dx * size, y + dy * size);
  c.pen.circle(c.detail, x, y, size * 0.28, true);
  for (const double side : {-1.0, 1.0}) {
    c.pen.circle(c.detail, x - side * dy * size * 0.9, y + side * dx * size * 0.9, size * 0.22);
  }
}

void bowl(Canvas& c, double x, double y, double rx, double ry) {
  c.pen.ellipse(c.detail, x, y, rx, ry);
  c.pen.ellipse(c.detail, x, y, rx * 0.88, ry * 0.86);
  drain(c, x, y - ry * 0.1, std::min(0.9, rx * 0.2));
}

void toilet(Canvas& c, const Fixture& f) {
  const double tank = std::min(f.tank_depth ? f.tank_depth->inches() : 8.0, c.d * 0.45);
  const double bowl_width = std::min(f.bowl_width ? f.bowl_width->inches() : 14.0, c.w);
  const double tank_width = std::min(f.tank_width ? f.tank_width->inches() : c.w, c.w);
  const double length = c.d - tank;
  c.pen.line(c.line, -bowl_width / 2, tank, bowl_width / 2, tank);
  const double inset = std::min(0.9, tank * 0.12);
  c.pen.rectangle(c.detail, -tank_width / 2 + inset, inset, tank_width / 2 - inset, tank - inset, 1);
  c.pen.ellipse(c.detail, 0, tank + length * 0.54, bowl_width * 0.4, length * 0.39);
  c.pen.ellipse(c.detail, 0, tank + length * 0.55, bowl_width * 0.27, length * 0.28);
}

void bath(Canvas& c, bool tap_right) {
  const double rim = std::min({2.6, c.w * 0.08, c.d * 0.12}), side = tap_right ? 1 : -1;
  c.pen.rectangle(c.detail, -c.w / 2 + rim, rim, c.w / 2 - rim, c.d - rim, std::min(c.d * 0.28, 8.0));
  drain(c, side * (c.w / 2 - rim - std::min(5.0, c.w * 0.12)), c.d / 2, std::min(1.2, c.d * 0.06));
  tap(c, side * (c.w / 2 - rim * 0.5), c.d / 2, -side, 0, std::min(2.6, c.d * 0.1));
}

void shower(Canvas& c, const Fixture& f) {
  const double curb = f.curb.value_or(Length::fromInches(4)) > Length{} ? std::min(4.0, c.d * 0.15) : 0;
  const double front = c.d - curb;
  if (saysOf(f, "drain", "linear")) {
    const double slot = std::min(2.5, front * 0.1);
    c.pen.rectangle(c.detail, -c.w / 2 + 2, 1, c.w / 2 - 2, 1 + slot);
    for (int i = 1; i < 4; ++i) {
      const double x = -c.w / 2 + c.w * i / 4;
      c.pen.line(c.detail, x, front, x, 1 + slot);
      c.pen.poly(c.detail, {{x - 0.9, 3.4 + slot}, {x, 1 + slot}, {x + 0.9, 3.4 + slot}}, false);
    }
  } else {
    const double r = std::min(2.0, std::min(c.w, front) * 0.06), y = front / 2;
    for (const double sx : {-1.0, 1.0}) {
      for (const double sy : {-1.0, 1.0}) {
        const double cx = sx * c.w / 2, cy = y + sy * front / 2, n = std::hypot(cx, cy - y);
        c.pen.line(c.detail, cx, cy, cx * r / n, y + (cy - y) * r / n);
      }
    }
    drain(c, 0, y, r);
  }
  if (curb > 0) c.pen.line(c.line, -c.w / 2, front, c.w / 2, front);
}

void details(Canvas& c, const Fixture& f) {
  switch (f.kind) {
    case FixtureKind::toilet:
      return toilet(c, f);
    case FixtureKind::bidet:
      c.pen.ellipse(c.detail, 0, c.d * 0.56, c.w * 0.33, c.d * 0.34);
      drain(c, 0, c.d * 0.56, 0.8);
      return tap(c, 0, c.d * 0.12, 0, 1, 1.8);
    case FixtureKind::basin:
      bowl(c, 0, c.d * 0.56, c.w * 0.38, c.d * 0.32);
      return tap(c, 0, c.d * 0.13, 0, 1, std::min(2.4, c.d * 0.13));
    case FixtureKind::vanity: {
      const int basins = std::clamp(f.basins.value_or(1), 0, 6);
      for (int i = 0; i < basins; ++i) {
        const double each = c.w / basins, x = -c.w / 2 + each * (i + 0.5);
        bowl(c, x, c.d * 0.56, std::min(8.5, each * 0.38), std::min(6.5, c.d * 0.3));
        tap(c, x, c.d * 0.15, 0, 1, std::min(2.4, c.d * 0.12));
      }
      return;
    }
    case FixtureKind::bath:
      return bath(c, saysOf(f, "drain", "right"));
    case FixtureKind::freestandingBath: {
      const double rim = std::min(2.2, c.d * 0.09);
      c.pen.rectangle(c.detail, -c.w / 2 + rim, rim, c.w / 2 - rim, c.d - rim, c.d);
      return drain(c, 0, c.d / 2, 1.1);
    }
    case FixtureKind::shower:
      return shower(c, f);
    case FixtureKind::cabinet:
      return c.pen.line(c.detail, -c.w / 2, c.d, c.w / 2, 0);
    case FixtureKind::linenCloset:
      c.pen.line(c.detail, -c.w / 2, c.d, c.w / 2, 0);
      return c.pen.line(c.detail, -c.w / 2, 0, c.w / 2, c.d);
    case FixtureKind::bench:
      for (int i = 1; i < 5; ++i) c.pen.line(c.detail, -c.w / 2, c.d * i / 5, c.w / 2, c.d * i / 5);
      return;
    case FixtureKind::washer:
      c.pen.line(c.detail, -c.w / 2, c.d * 0.16, c.w / 2, c.d * 0.16);
      return c.pen.circle(c.detail, 0, c.d * 0.58, std::min(c.w, c.d * 0.84) * 0.38);
    case FixtureKind::heater: {
      const int fins = std::clamp(static_cast<int>(c.w / 2.5), 3, 24);
      for (int i = 1; i < fins; ++i) {
        const double x = -c.w / 2 + c.w * i / fins;
        c.pen.line(c.detail, x, c.d * 0.2, x, c.d * 0.8);
      }
      return;
    }
  }
}

}  // namespace

DisplayList drawFixture(const PlacedFixture& placed, const DrawStyle&) {
  const Fixture& f = placed.fixture;
  const bool removed = f.status == Status::remove;
  const Direction forward = placed.facing;
  const Point back = placed.center - (f.depth / 2) * forward;
  Canvas c{Pen({back, forward.left(), forward}, f.id), f.width.inches(), f.depth.inches(),
           removed ? Role::fixtureRemoved : Role::fixture,
           removed ? Role::fixtureRemoved : Role::fixtureDetail};
  if (f.kind == FixtureKind::freestandingBath && placed.footprint.size() <= 4) {
    c.pen.rectangle(c.line, -c.w / 2, 0, c.w / 2, c.d, c.d);
  } else {
    c.pen.add(c.line, PolyPrim{placed.footprint, true, false});
  }
  details(c, f);
  return c.pen.take();
}

}  // namespace elbowroom
