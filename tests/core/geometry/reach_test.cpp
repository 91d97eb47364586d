#include "core/geometry/reach.h"

#include <gtest/gtest.h>

#include <random>

namespace elbowroom {
namespace {
using namespace literals;

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
std::vector<Segment> edgesOf(const Outline& ring) {
  std::vector<Segment> edges;
  for (std::size_t i = 0; i < ring.size(); ++i) edges.push_back({ring[i], ring[(i + 1) % ring.size()]});
  return edges;
}
Outline box(double x0, double y0, double x1, double y1) {
  return {at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)};
}

const Outline kRoom = box(0, 0, 100, 80);
// A wing 4 in thick that comes down 30 in from the north wall at x = 50.
const Outline kWinged{at(0, 80),  at(50, 80),  at(50, 50), at(54, 50),
                      at(54, 80), at(100, 80), at(100, 0), at(0, 0)};

TEST(GapInSight, IsThePlainDistanceInAnOpenRoom) {
  const auto gap = gapInSight(at(80, 80), edgesOf(box(0, 50, 40, 80)), kRoom, {});
  ASSERT_TRUE(gap);
  EXPECT_NEAR(gap->distance.inches(), 40, 1e-6);
  EXPECT_EQ(gap->to, at(40, 80)) << "along the wall is no crossing";
}

TEST(GapInSight, AWingHidesWhatLiesBehindIt) {
  // From (70, 80) past the wing's end (54, 50): slope 30/16; at y = 40 one sees from x = 70 - 40 * 16/30 = 48
  // 2/3 on.
  EXPECT_FALSE(gapInSight(at(70, 80), edgesOf(box(0, 50, 50, 80)), kWinged, {}));
  const auto gap = gapInSight(at(70, 80), edgesOf(box(0, 40, 50, 80)), kWinged, {});
  ASSERT_TRUE(gap);
  EXPECT_NEAR(gap->to.y.inches(), 42.5, 1e-6) << "on its side at x = 50: 80 - 20 * 30/16";
  EXPECT_NEAR(gap->distance.inches(), std::hypot(20, 37.5), 1e-6);
}

TEST(GapInSight, NotThroughTheWallThatBothTouch) {
  EXPECT_FALSE(gapInSight(at(60, 80), {{at(10, 80), at(49, 80)}}, kWinged, {}));
  EXPECT_TRUE(gapInSight(at(40, 80), {{at(10, 80), at(30, 80)}}, kWinged, {}));
}

TEST(GapInSight, RoundTheEndOfAScreen) {
  const std::vector<Segment> screen{{at(40, 44), at(40, 80)}};
  const auto gap = gapInSight(at(60, 80), {{at(4, 44), at(40, 44)}}, kRoom, screen);
  ASSERT_TRUE(gap);
  EXPECT_NEAR(gap->distance.inches(), std::hypot(20, 36), 1e-6);
  EXPECT_FALSE(gapInSight(at(60, 80), {{at(4, 50), at(4, 80)}}, kRoom, screen)) << "wholly behind it";
}

bool crosses(Segment s, Segment t) {
  const auto side = [](Point a, Point b, Point p) {
    return (b.x - a.x).inches() * (p.y - a.y).inches() - (b.y - a.y).inches() * (p.x - a.x).inches();
  };
  return side(s.a, s.b, t.a) * side(s.a, s.b, t.b) < -1e-6 &&
         side(t.a, t.b, s.a) * side(t.a, t.b, s.b) < -1e-6;
}

// Against 4,000 points along the target: none that is seen is nearer, and one is nearly as near (a corner may
// be cut by 1/64 in, which the lever of the ray makes three times as much here at most).
constexpr double kCorner = 3 / 64.0;
TEST(GapInSight, AgreesWithManyPoints) {
  std::mt19937 random(7);
  const auto between = [&](double a, double b) {
    return std::uniform_real_distribution<double>(a, b)(random);
  };
  int hidden = 0;
  for (int n = 0; n < 300; ++n) {
    const double wing = between(20, 80), deep = between(5, 60), thick = between(2, 6);
    const Outline room{at(0, 80),
                       at(wing, 80),
                       at(wing, 80 - deep),
                       at(wing + thick, 80 - deep),
                       at(wing + thick, 80),
                       at(100, 80),
                       at(100, 0),
                       at(0, 0)};
    const std::vector<Segment> screens{
        {at(between(0, 100), between(0, 20)), at(between(0, 100), between(0, 20))}};
    const Point eye = at(between(wing + thick, 100), 80);
    const Segment target{at(between(0, 100), between(0, 15)), at(between(0, wing), between(20, 79))};
    const auto seen = [&](Point p) {
      const Segment way{eye, p};
      for (const Segment& s : screens)
        if (crosses(way, s)) return false;
      for (const Segment& s : edgesOf(room))
        if (crosses(way, s)) return false;
      return contains(room, p) && contains(room, midpoint(eye, p));
    };
    constexpr int kPoints = 4000;
    double best = HUGE_VAL;
    bool inside = true;
    for (int i = 1; i < kPoints; ++i) {
      const double t = static_cast<double>(i) / kPoints;
      const Point p{target.a.x + (target.b.x - target.a.x).scaled(t),
                    target.a.y + (target.b.y - target.a.y).scaled(t)};
      inside = inside && contains(room, p);
      if (seen(p)) best = std::min(best, distance(eye, p).inches());
    }
    if (!inside) continue;  // a target that runs through the wing
    const auto gap = gapInSight(eye, {target}, room, screens);
    const double step = distance(target.a, target.b).inches() / kPoints;
    if (best == HUGE_VAL) {
      ++hidden;
      EXPECT_FALSE(gap && distance(gap->to, target.a) > 2_in && distance(gap->to, target.b) > 2_in) << n;
      continue;
    }
    ASSERT_TRUE(gap) << n;
    EXPECT_LE(gap->distance.inches(), best + 1e-6) << n;
    EXPECT_GE(gap->distance.inches(), best - step - kCorner) << n;
  }
  EXPECT_GT(hidden, 5);
}

TEST(StretchesWithin, OfAWall) {
  // 20 in below the line, from x = 30 to 60: 36 in off is sqrt(36^2 - 20^2) = 29.933 beyond either end.
  const Outline thing = box(30, 30, 60, 60);
  const auto parts = stretchesWithin({at(0, 80), at(100, 80)}, thing, 36_in);
  ASSERT_EQ(parts.size(), 1u);
  EXPECT_NEAR(parts[0].from.inches(), 30 - 29.933, 1e-3);
  EXPECT_NEAR(parts[0].to.inches(), 60 + 29.933, 1e-3);
  EXPECT_TRUE(stretchesWithin({at(0, 80), at(100, 80)}, thing, 19_in).empty());
  const auto flush = stretchesWithin({at(0, 60), at(100, 60)}, thing, 36_in);
  ASSERT_EQ(flush.size(), 1u);
  EXPECT_EQ(flush[0], (Stretch{Length{}, 96_in})) << "cut at the line's own end";
}

TEST(StretchesWithin, TwoOfAThingWithTwoArms) {
  const Outline fork{at(10, 0),  at(90, 0),  at(90, 70), at(80, 70),
                     at(80, 10), at(20, 10), at(20, 70), at(10, 70)};
  const auto parts = stretchesWithin({at(0, 80), at(100, 80)}, fork, 10.5_in);
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_NEAR(parts[0].to.inches(), 20 + std::sqrt(10.5 * 10.5 - 100), 1e-3);
  EXPECT_NEAR(parts[1].from.inches(), 80 - std::sqrt(10.5 * 10.5 - 100), 1e-3);
}

}  // namespace
}  // namespace elbowroom
