#include "core/plan/layout.h"

#include <gtest/gtest.h>

#include <numbers>

#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

TEST(WallFrames, FaceTheRoomAndMeetInMitres) {
  RoomMaker room(96, 60);
  room.option().room.walls[0].thickness = in(6.5);
  const Layout layout = room.layout();
  ASSERT_EQ(layout.walls.size(), 4u);
  const WallFrame& north = layout.walls[0];
  EXPECT_EQ(north.inward, (Direction{0, -1}));
  EXPECT_EQ(north.length, 96_in);
  // Outer corners are where the outer faces of 6.5 and 4.5 in walls cross.
  EXPECT_EQ(north.body, (Outline{room.at(0, 0), room.at(-4.5, -6.5), room.at(100.5, -6.5), room.at(96, 0)}));
  Area bodies;
  for (const WallFrame& wall : layout.walls) {
    EXPECT_LT(signedAreaOf(wall.body), Area{});  // clockwise
    bodies = bodies + areaOf(wall.body);
  }
  EXPECT_NEAR(bodies.squareInches(), 105.0 * 71.0 - 96.0 * 60.0, 1e-6);
}

TEST(WallFrames, BodiesOfAnLShapeFillTheOutside) {
  // Overall 84 x 78 with a recess: corners as DOJ Guidance on the 2010 ADA Standards, plan 2C.
  const RoomMaker room({{0, 18}, {44, 18}, {44, 0}, {84, 0}, {84, 78}, {0, 78}}, 78);
  const Layout layout = room.layout();
  EXPECT_NEAR(layout.room_area.squareFeet(), 40.0, 1e-9);  // printed
  Area bodies;
  for (const WallFrame& wall : layout.walls) bodies = bodies + areaOf(wall.body);
  // The outer outline is 93 x 87 less the same recess of 44 x 18.
  EXPECT_NEAR(bodies.squareInches(), 93.0 * 87 - 44 * 18 - 40 * 144, 1e-6);
}

TEST(WallFrames, ThinPierDoesNotTurnItsBodyInsideOut) {
  // A 4 in wide tongue of wall standing into the room between 4 1/2 in walls.
  const RoomMaker room({{0, 0}, {40, 0}, {40, 20}, {44, 20}, {44, 0}, {96, 0}, {96, 60}}, 60);
  for (const WallFrame& wall : room.layout().walls) {
    EXPECT_FALSE(selfCrossing(wall.body)) << wall.id.text;
    EXPECT_LT(signedAreaOf(wall.body), Area{}) << wall.id.text;
  }
}

TEST(Fixtures, ToiletIsTankAndBowlWithItsForemostPointExact) {
  RoomMaker room(60, 87);
  Fixture& wc = room.fixture("wc", FixtureKind::toilet, "n", 18, 20, 29.2);
  wc.bowl_width = 14_in;
  wc.tank_width = 19_in;
  wc.tank_depth = 8_in;
  const Layout layout = room.layout();
  const PlacedFixture& placed = layout.fixtures[0];
  EXPECT_EQ(placed.front_center, room.at(18, 29.2));
  Length lowest = 1000_in;
  for (const Point& p : placed.footprint) lowest = std::min(lowest, p.y);
  EXPECT_EQ(lowest, room.at(0, 29.2).y);
  EXPECT_GT(signedAreaOf(placed.footprint), Area{});
  // Tank + straight part of the bowl + half an ellipse of semi-axes 7 and 14.
  const double exact = 19.0 * 8 + 14.0 * (29.2 - 8 - 14) + std::numbers::pi / 2 * 7 * 14;
  EXPECT_LT(areaOf(placed.footprint).squareInches(), exact);
  EXPECT_NEAR(areaOf(placed.footprint).squareInches(), exact, 0.002 * exact);
  EXPECT_EQ(placed.front, (Segment{room.at(8, 29.2), room.at(28, 29.2)}));
  EXPECT_EQ(placed.left_side, (Segment{room.at(8, 0), room.at(8, 29.2)}));
}

TEST(Fixtures, StandingKeepsItsBackToPlusYAtTurnZero) {
  RoomMaker room(100, 100);
  room.standing("a", FixtureKind::cabinet, 50, 53, 18, 14);
  room.standing("b", FixtureKind::cabinet, 20, 20, 18, 14).placement = Standing{room.at(20, 20), 90_deg};
  const Layout layout = room.layout();
  EXPECT_EQ(layout.fixtures[0].back_center, room.at(50, 46));
  EXPECT_EQ(layout.fixtures[0].facing, (Direction{0, -1}));
  // Turned a quarter counter-clockwise the back faces -x.
  EXPECT_EQ(layout.fixtures[1].back_center, room.at(13, 20));
  EXPECT_EQ(layout.fixtures[1].front_center, room.at(27, 20));
}

TEST(Fixtures, FreestandingBathIsAStadium) {
  RoomMaker room(100, 100);
  room.standing("b", FixtureKind::freestandingBath, 50, 50, 60, 30);
  const Outline bath = room.layout().fixtures[0].footprint;
  EXPECT_GE(bath.size(), 48u);
  EXPECT_EQ(boundsOf(bath), (Box{room.at(20, 65), room.at(80, 35)}));
  EXPECT_NEAR(areaOf(bath).squareInches(), 30.0 * 30 + std::numbers::pi * 225, 1.5);
  EXPECT_GT(signedAreaOf(bath), Area{});
  EXPECT_FALSE(selfCrossing(bath));
}

TEST(Fixtures, RoundFrontOnlyWhereStated) {
  RoomMaker room(100, 100);
  Fixture& basin = room.fixture("b", FixtureKind::basin, "n", 50, 20, 18);
  EXPECT_EQ(room.layout().fixtures[0].footprint.size(), 4u);
  basin.extra["shape"] = "\"round\"";
  EXPECT_NEAR(areaOf(room.layout().fixtures[0].footprint).squareInches(), 20 * 8 + std::numbers::pi * 50, 0.5);
}

// 2010 Standards 306.2 and 306.3.
TEST(KneeSpace, CountsFromItsLeastHeightAndDepth) {
  RoomMaker room(100, 100);
  Fixture& basin = room.fixture("b", FixtureKind::basin, "n", 50, 20, 20);
  const auto blockDepth = [&](double height, double depth, std::optional<double> toe) {
    basin.knee_space = KneeSpace{in(height), in(depth), toe ? std::optional(in(*toe)) : std::nullopt};
    const PlacedFixture placed = room.layout().fixtures[0];
    if (placed.floor_block.empty()) return 0.0;
    const Box box = boundsOf(placed.floor_block);
    return (box.high.y - box.low.y).inches();
  };
  EXPECT_EQ(blockDepth(27, 11, {}), 3);      // 11 + 6 = 17 of 20
  EXPECT_EQ(blockDepth(26.9, 11, {}), 20);   // too low
  EXPECT_EQ(blockDepth(27, 10.9, {}), 20);   // too shallow
  EXPECT_EQ(blockDepth(27, 11, 19), 3);      // toes no more than 6 beyond the knees
  EXPECT_EQ(blockDepth(27, 11, 12), 8);      // less where stated so
  EXPECT_EQ(blockDepth(27, 14, {}), 0);      // wholly free
  basin.depth = 30_in;
  EXPECT_EQ(blockDepth(27, 24, {}), 5);      // never deeper than 25
}

TEST(Layouts, RemovedThingsAndOpenShowersLeaveTheFloorFree) {
  RoomMaker room(100, 100);
  room.fixture("old", FixtureKind::cabinet, "n", 50, 20, 20).status = Status::remove;
  room.fixture("wet", FixtureKind::shower, "s", 50, 36, 36).curb = Length{};
  room.fixture("glazed", FixtureKind::shower, "e", 20, 36, 36).curb = Length{};
  room.option().fixtures.back().glass.push_back(Pane{});
  room.fixture("curbed", FixtureKind::shower, "w", 20, 36, 36).curb = 2_in;
  const Layout layout = room.layout();
  EXPECT_EQ(layout.solid, (std::vector<int>{2, 3}));
  EXPECT_EQ(layout.floor.obstacles().size(), 2u);
  EXPECT_FALSE(layout.knee_space_counts);
}

TEST(Layouts, WithoutWallsThereIsNothingButTheLists) {
  Plan plan = emptyPlan(Unit::inches);
  const Layout layout = deriveLayout(plan, 0);
  EXPECT_TRUE(layout.room.empty());
  EXPECT_EQ(layout.room_area, Area{});
  EXPECT_EQ(layout.floor.largestCircle().radius, Length{});
}

}  // namespace
}  // namespace elbowroom
