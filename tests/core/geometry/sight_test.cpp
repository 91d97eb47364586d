// What is seen through an opening: by similar triangles, and against many single rays.
#include "core/geometry/sight.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "core/geometry/measure.h"

namespace elbowroom {
namespace {
using namespace literals;

Length in(double inches) { return Length::fromInches(inches); }
Point at(double x, double y) { return {in(x), in(y)}; }
Outline box(double x0, double y0, double x1, double y1) {
  return {at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)};
}
std::vector<Segment> edges(const Outline& ring) {
  std::vector<Segment> out;
  for (std::size_t i = 0; i < ring.size(); ++i) out.push_back({ring[i], ring[(i + 1) % ring.size()]});
  return out;
}

// An eye 40 in before a 20 in opening sees 60 in of a wall 80 in behind it (similar triangles).
TEST(Sight, TheViewWidensAsTheRaysDo) {
  const Segment opening{at(-10, 0), at(10, 0)};
  const Outline seen = seenThrough(at(0, -40), opening, {{at(-100, 80), at(100, 80)}}, 500_in);
  EXPECT_NEAR(areaOf(seen).squareInches(), (20 + 60) / 2.0 * 80, 1e-6);
  EXPECT_GT(signedAreaOf(seen), Area{}) << "counter-clockwise";
}

// A screen from x = 0 to the right, 20 in behind the opening, hides the right half.
TEST(Sight, AScreenCastsItsShadow) {
  const Segment opening{at(-10, 0), at(10, 0)};
  const std::vector<Segment> opaque{{at(-100, 80), at(100, 80)}, {at(0, 20), at(50, 20)}};
  const Outline seen = seenThrough(at(0, -40), opening, opaque, 500_in);
  const double left = (10 + 30) / 2.0 * 80, right = (10 + 15) / 2.0 * 20;
  EXPECT_NEAR(areaOf(seen).squareInches(), left + right, 1e-6);
}

TEST(Sight, SegmentsThatCrossEachHideAPart) {
  const Segment opening{at(-10, 0), at(10, 0)};
  // An X of two screens between (-10, 10), (10, 30) and (-10, 30), (10, 10), from an eye at 40 in.
  const std::vector<Segment> opaque{{at(-20, 10), at(20, 50)}, {at(-20, 50), at(20, 10)}};
  const Outline seen = seenThrough(at(0, -40), opening, opaque, 500_in);
  // Rays x = s (y + 40), |s| <= 1/4; nearest on the left is y = x + 30: x = 70 s / (1 - s), at s = -1/4 x = -14.
  // Left of the middle: the quadrilateral (-10,0), (0,0), (0,30), (-14,16).
  EXPECT_NEAR(areaOf(seen).squareInches(), 2 * (0.5 * (10 * 16 + 14 * 30)), 1e-6);
}

TEST(Sight, ShareOfAThing) {
  const Segment opening{at(-10, 0), at(10, 0)};
  const Point eye = at(0, -40);
  const Outline whole = box(-5, 20, 5, 30);
  EXPECT_NEAR(seenOf(whole, eye, opening, {}).share, 1, 1e-12);
  // Its front edge counts: half of it behind a screen that begins at the middle.
  EXPECT_NEAR(seenOf(whole, eye, opening, {{at(0, 10), at(50, 10)}}).share, 0.5, 1e-9);
  EXPECT_EQ(seenOf(whole, eye, opening, {{at(-50, 10), at(50, 10)}}).share, 0);
  EXPECT_EQ(seenOf(whole, eye, opening, {{at(-50, 10), at(50, 10)}}).at, eye);
  EXPECT_NEAR(seenOf(whole, eye, opening, {{at(-50, 40), at(50, 40)}}).share, 1, 1e-12) << "behind it";
  // Past the jamb: rays end at slope 1/4; a thing from x = 10 to 30 at y = 40 shows from 10 to 20.
  const Outline beside{at(10, 40), at(30, 40), at(30, 40.001)};
  EXPECT_NEAR(seenOf(beside, eye, opening, {}).share,
              (std::atan(20.0 / 80) - std::atan(10.0 / 80)) / (std::atan(30.0 / 80) - std::atan(10.0 / 80)), 1e-4);
  EXPECT_EQ(seenOf(box(60, 20, 70, 30), eye, opening, {}).share, 0) << "outside the rays";
  EXPECT_EQ(seenOf(box(-5, -70, 5, -60), eye, opening, {}).share, 0) << "behind the eye";
}

// The distance at which a ray meets a segment; its own arithmetic, by Cramer's rule.
double meets(double ox, double oy, double dx, double dy, const Segment& s) {
  const double ax = s.a.x.inches() - ox, ay = s.a.y.inches() - oy;
  const double ex = (s.b.x - s.a.x).inches(), ey = (s.b.y - s.a.y).inches();
  const double det = dx * ey - dy * ex;
  if (std::abs(det) < 1e-14) return 1e9;
  const double t = (ax * ey - ay * ex) / det, u = (ax * dy - ay * dx) / det;
  return t > 0 && u >= 0 && u <= 1 ? t : 1e9;
}

TEST(Sight, AgreesWithManySingleRays) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> x(-60, 60), y(5, 110), size(2, 40), turn(0, 2 * std::numbers::pi);
  for (int round = 0; round < 60; ++round) {
    const Point eye = at(x(random) / 10, -30 - y(random) / 2);
    const Segment opening{at(-16, 0), at(16, 0)};
    std::vector<Segment> opaque{{at(-90, 120), at(90, 120)}};
    for (int i = 0; i < 6; ++i) {
      const Point a = at(x(random), y(random));
      opaque.push_back({a, a + in(size(random)) * Direction::fromAngle(Angle::fromRadians(turn(random)))});
    }
    const double cx = x(random) / 2, cy = y(random);
    const Outline thing = box(cx - 9, cy - 6, cx + 9, cy + 6);
    constexpr int kRays = 20'000;
    int on_it = 0, would = 0;
    for (int k = 0; k < kRays; ++k) {
      const double ex = eye.x.inches(), ey = eye.y.inches();
      const double from = std::atan2(-ey, -90 - ex), to = std::atan2(-ey, 90 - ex);
      const double angle = from + (to - from) * (k + 0.5) / kRays, dx = std::cos(angle), dy = std::sin(angle);
      double on_thing = 1e9, hidden = 1e9;
      for (const Segment& s : edges(thing)) on_thing = std::min(on_thing, meets(ex, ey, dx, dy, s));
      for (const Segment& s : opaque) hidden = std::min(hidden, meets(ex, ey, dx, dy, s));
      would += on_thing < 1e8 ? 1 : 0;
      on_it += on_thing < hidden && meets(ex, ey, dx, dy, opening) < 1e8 ? 1 : 0;
    }
    ASSERT_GT(would, 0);
    EXPECT_NEAR(seenOf(thing, eye, opening, opaque).share, static_cast<double>(on_it) / would, 20.0 / would)
        << round;
  }
}

}  // namespace
}  // namespace elbowroom
