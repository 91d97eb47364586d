#include "core/plan/snap.h"

#include <gtest/gtest.h>

#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

const SnapRules kOn{true, 3_in, 0.5_in};
const SnapRules kOff{false, 3_in, 0.5_in};

const OnWall& onWall(const Snapped& s) { return std::get<OnWall>(s.placement); }

struct Case {
  double x, y;  // of the cursor, y down
  const char* wall;
  double along;
  SnapReason reason;
};

// A cabinet 18 x 14 in a room of 96 x 60.
TEST(SnapFixture, ToWallsCornersAndMiddles) {
  RoomMaker room(96, 60);
  Fixture& cab = room.fixture("cab", FixtureKind::cabinet, "n", 30, 18, 14);
  const Layout layout = room.layout();
  const Case cases[] = {
      {30.2, 9, "n", 30, SnapReason::wall},           // to the half inch
      {70.2, 9, "n", 70, SnapReason::wall},           // counted from the nearer, right corner: 25 3/4 -> 26
      {11, 9, "n", 9, SnapReason::corner},            // 2 in from flush
      {2, 7, "n", 9, SnapReason::corner},             // pushed past the corner
      {-5, -5, "n", 9, SnapReason::corner},           // outside the room
      {49.5, 8, "n", 48, SnapReason::wallCentre},
      {90, 30, "e", 30, SnapReason::wallCentre},      // its back turns to the next wall
      {8, 22, "w", 38, SnapReason::wall},             // walls run clockwise: 60 - 22 from its left end
      {200, 40.1, "e", 40, SnapReason::wall},         // far outside
  };
  for (const Case& c : cases) {
    const Snapped s = snapFixture(layout, cab, room.at(c.x, c.y), kOn);
    ASSERT_TRUE(std::holds_alternative<OnWall>(s.placement)) << c.x << " " << c.y;
    EXPECT_EQ(onWall(s).wall.text, c.wall) << c.x << " " << c.y;
    EXPECT_EQ(onWall(s).along.inches(), c.along) << c.x << " " << c.y;
    EXPECT_EQ(s.reason, c.reason) << c.x << " " << c.y << " " << wordsOf(s.reason);
  }
}

// Fresh from the Tray in a hall bath of 60 x 96: the wall one points at, also near its end, where the centre of a deep
// thing is nearer to the long wall's places.
TEST(SnapFixture, WhatIsNewGoesToTheWallPointedAt) {
  RoomMaker room(60, 96);
  const Layout layout = room.layout();
  Fixture toilet;
  toilet.id = ElementId{"wc"};
  toilet.kind = FixtureKind::toilet;
  toilet.width = 20_in;
  toilet.depth = 28_in;
  toilet.placement = Standing{};
  Fixture bath = toilet;
  bath.kind = FixtureKind::bath;
  bath.width = 60_in;
  bath.depth = 30_in;
  struct New {
    const Fixture& thing;
    double x, y;
    const char* wall;
    double along;
  };
  const New cases[] = {
      {toilet, 20, 3, "n", 20}, {toilet, 41, 2, "n", 41}, {toilet, 5, 3, "n", 10},   {toilet, 3, 5, "w", 86},
      {toilet, 57, 20, "e", 20}, {toilet, 44, 94, "s", 16}, {toilet, 12, 11, "n", 12}, {toilet, 11, 12, "w", 84},
      {bath, 15, 4, "n", 30},   {bath, 52, 6, "n", 30},   {bath, 5, 40, "w", 56},     {bath, 20, 92, "s", 30},
  };
  for (const New& c : cases) {
    const Snapped s = snapFixture(layout, c.thing, room.at(c.x, c.y), SnapRules{true, 0.5_in, 0.5_in});
    ASSERT_TRUE(std::holds_alternative<OnWall>(s.placement)) << c.x << " " << c.y;
    EXPECT_EQ(onWall(s).wall.text, c.wall) << c.x << " " << c.y;
    EXPECT_NEAR(onWall(s).along.inches(), c.along, 0.51) << c.x << " " << c.y;
  }
}

TEST(SnapFixture, StepsAreCountedFromTheNearerCorner) {
  RoomMaker room(96.3, 60);
  Fixture& cab = room.fixture("cab", FixtureKind::cabinet, "n", 30, 18, 14);
  const Layout layout = room.layout();
  EXPECT_EQ(onWall(snapFixture(layout, cab, room.at(30.2, 9), kOn)).along, 30_in);
  EXPECT_EQ(onWall(snapFixture(layout, cab, room.at(70.2, 9), kOn)).along, in(96.3 - 26));
}

TEST(SnapFixture, BesideANeighbourButNeverBesideItself) {
  RoomMaker room(120, 60);
  room.fixture("v", FixtureKind::vanity, "n", 60, 30, 21);  // 45 to 75
  Fixture& cab = room.fixture("cab", FixtureKind::cabinet, "n", 20, 18, 14);
  const Layout layout = room.layout();
  const Fixture moving = cab;
  const Snapped left = snapFixture(layout, moving, room.at(34, 8), kOn);
  EXPECT_EQ(left.reason, SnapReason::neighbour);
  EXPECT_EQ(onWall(left).along, 36_in);
  EXPECT_EQ(left.other, ElementId{"v"});
  const Snapped right = snapFixture(layout, moving, room.at(86, 8), kOn);
  EXPECT_EQ(onWall(right).along, 84_in);
  // 1 in beside where it stands: nothing there holds it but the step.
  EXPECT_EQ(onWall(snapFixture(layout, moving, room.at(21, 8), kOn)).along, 21_in);
}

TEST(SnapFixture, InLineWithWhatStandsOpposite) {
  RoomMaker room(120, 90);
  room.fixture("wc", FixtureKind::toilet, "s", 40, 20, 28);  // centreline at x 80
  Fixture& cab = room.fixture("cab", FixtureKind::cabinet, "n", 20, 18, 14);
  const Snapped s = snapFixture(room.layout(), cab, room.at(81, 7), kOn);
  EXPECT_EQ(s.reason, SnapReason::alignedCentre);
  EXPECT_EQ(onWall(s).along, 80_in);
  ASSERT_TRUE(s.guide);
  EXPECT_EQ(s.guide->a, room.at(80, 76));
  EXPECT_EQ(s.guide->b, room.at(80, 7));
}

TEST(SnapFixture, OffKeepsTheExactPlace) {
  RoomMaker room(96, 60);
  Fixture& cab = room.fixture("cab", FixtureKind::cabinet, "n", 30, 18, 14);
  const Layout layout = room.layout();
  EXPECT_EQ(onWall(snapFixture(layout, cab, room.at(10.13, 9), kOff)).along, in(10.13));
  Fixture tub = room.standing("t", FixtureKind::freestandingBath, 40, 30, 30, 20);
  EXPECT_EQ(std::get<Standing>(snapFixture(layout, tub, room.at(41.13, 30.2), kOff).placement).at,
            room.at(41.13, 30.2));
}

TEST(SnapFixture, StandsFreeAwayFromWalls) {
  RoomMaker room(120, 120);
  Fixture& cab = room.fixture("cab", FixtureKind::cabinet, "e", 30, 18, 14);
  const Snapped s = snapFixture(room.layout(), cab, room.at(60.2, 60.1), kOn);
  const Standing& standing = std::get<Standing>(s.placement);
  EXPECT_EQ(standing.at, room.at(60, 60));
  EXPECT_EQ(standing.turn, 270_deg);  // keeps facing away from the east wall
  EXPECT_EQ(s.reason, SnapReason::step);
}

TEST(SnapFixture, FreestandingTubGoesFlushAndStaysInside) {
  RoomMaker room(120, 120);
  Fixture tub = room.standing("t", FixtureKind::freestandingBath, 60, 60, 60, 30);
  const Layout layout = room.layout();
  const Snapped wall = snapFixture(layout, tub, room.at(70.2, 17), kOn);
  EXPECT_EQ(std::get<Standing>(wall.placement).at, room.at(70, 15));
  EXPECT_EQ(wall.reason, SnapReason::wall);
  const Snapped corner = snapFixture(layout, tub, room.at(-40, 500), kOn);
  EXPECT_EQ(std::get<Standing>(corner.placement).at, room.at(30, 105));
  EXPECT_EQ(corner.reason, SnapReason::corner);
}

// In an acute corner the next wall, not the end of the wall, limits: every snapped place lies inside the room.
TEST(SnapFixture, NeverThroughAWall) {
  const RoomMaker maker({{0, 0}, {60, 0}, {140, 80}, {140, 120}, {90, 120}, {90, 90}, {0, 90}}, 120);
  RoomMaker room = maker;
  Fixture& cab = room.fixture("cab", FixtureKind::cabinet, "n", 30, 20, 16);
  const Layout layout = room.layout();
  for (double x = -20; x <= 160; x += 3.7) {
    for (double y = -20; y <= 140; y += 3.3) {
      Fixture moved = cab;
      moved.placement = snapFixture(layout, cab, room.at(x, y), kOn).placement;
      if (!std::holds_alternative<OnWall>(moved.placement)) continue;
      const Outline body = fixtureRectangle(layout.option, moved);
      // No more than a sliver of contact (1/64 in) along its sides.
      EXPECT_LT((areaOf(body) - commonArea(body, layout.room)).squareInches(), 0.6) << x << " " << y;
    }
  }
}

TEST(SnapOpening, SlidesAlongWallsAndChangesThem) {
  RoomMaker room(96, 60);
  room.door("d", "s", 60, 30, Hand::left, Swing::in);
  room.door("d2", "n", 48, 24, Hand::left, Swing::in);  // 36 to 60
  const Layout layout = room.layout();
  const Opening door = room.option().openings[0];
  const Case cases[] = {
      {30.2, 70, "s", 66, SnapReason::step},       // counted from the right corner
      {47, 62, "s", 48, SnapReason::wallCentre},
      {200, 59, "e", 45, SnapReason::corner},      // never off its end
      {17.2, -3, "n", 15, SnapReason::corner},
      {34, 2, "n", 21, SnapReason::neighbour},     // never over another opening
      {-3, 22.1, "w", 38, SnapReason::step},
  };
  for (const Case& c : cases) {
    const auto s = snapOpening(layout, door, room.at(c.x, c.y), kOn);
    ASSERT_TRUE(s);
    EXPECT_EQ(s->wall.text, c.wall) << c.x;
    EXPECT_EQ(s->along.inches(), c.along) << c.x;
    EXPECT_EQ(s->reason, c.reason) << c.x << " " << wordsOf(s->reason);
  }
  Opening wide = door;
  wide.width = 100_in;
  EXPECT_FALSE(snapOpening(layout, wide, room.at(40, 0), kOn));
}

TEST(SnapCorner, AnglesStepsAndClosing) {
  const auto p = [](double x, double y) { return Point{in(x), in(y)}; };
  const std::vector<Point> walls{p(0, 60), p(96, 60), p(96, 0)};
  const auto at = [&](std::vector<Point> so_far, double x, double y, SnapReason reason, double wx, double wy) {
    const SnappedPoint s = snapCorner(so_far, p(x, y), kOn);
    EXPECT_EQ(s.reason, reason) << x << " " << y << " " << wordsOf(s.reason);
    EXPECT_NEAR(s.point.x.inches(), wx, 1e-6) << x << " " << y;
    EXPECT_NEAR(s.point.y.inches(), wy, 1e-6) << x << " " << y;
  };
  at({}, 0.2, 60.3, SnapReason::step, 0, 60.5);
  at({p(0, 60)}, 96.1, 61, SnapReason::rightAngle, 96, 60);
  at({p(0, 60), p(96, 60)}, 97.2, 20.2, SnapReason::rightAngle, 96, 20);
  at({p(0, 60), p(96, 60)}, 117, 39.5, SnapReason::halfAngle, 96 + 29.5 / std::sqrt(2), 60 - 29.5 / std::sqrt(2));
  at(walls, 1.5, 0.4, SnapReason::endPoint, 0, 0);  // under the first corner
  at(walls, 1, 58.5, SnapReason::closing, 0, 60);
  const SnappedPoint off = snapCorner(walls, p(0.3, 59.9), kOff);
  EXPECT_EQ(off.point, p(0.3, 59.9));
}

}  // namespace
}  // namespace elbowroom
