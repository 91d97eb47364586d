#include "core/plan/ceiling.h"

#include <gtest/gtest.h>

#include <random>

#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

RoomMaker attic() {
  RoomMaker room(100, 80);
  room.option().room.ceiling.height = 96_in;
  room.option().room.ceiling.slopes = {{{"n"}, 48_in, 60_in, {}}};  // rises 0.8 in per inch
  return room;
}

TEST(CeilingHeight, IsNotKnownUntilStated) {
  RoomMaker room(100, 80);
  const Layout layout = room.layout();
  EXPECT_FALSE(ceilingHeightAt(layout, room.at(10, 10)));
  EXPECT_FALSE(lowestCeilingOver(layout, layout.room));
  EXPECT_FALSE(areaWithCeiling(layout, layout.room, 80_in));
  EXPECT_FALSE(ceilingAlong(layout, {room.at(0, 0), room.at(100, 0)}));
}

// By hand: 48 + 0.8 d, level from 60 in off the wall.
TEST(CeilingHeight, RisesEvenlyFromItsWall) {
  const RoomMaker room = attic();
  const Layout layout = room.layout();
  for (const auto& [d, height] :
       {std::pair{0.0, 48.0}, {10.0, 56.0}, {40.0, 80.0}, {60.0, 96.0}, {75.0, 96.0}})
    EXPECT_EQ(*ceilingHeightAt(layout, room.at(33, d)), in(height)) << d;
  EXPECT_EQ(*ceilingHeightAt(layout, room.at(33, -5)), 48_in) << "within the wall";
}

TEST(CeilingHeight, OfTwoSlopesTheLowerCounts) {
  RoomMaker room = attic();
  room.option().room.ceiling.slopes.push_back({{"e"}, 60_in, 40_in, {}});  // 60 + 0.9 d
  const Layout layout = room.layout();
  EXPECT_EQ(*ceilingHeightAt(layout, room.at(90, 40)), 69_in);  // 80 and 60 + 9
  EXPECT_EQ(*ceilingHeightAt(layout, room.at(90, 10)), 56_in);
}

TEST(CeilingHeight, LowestOverAnArea) {
  const RoomMaker room = attic();
  const Layout layout = room.layout();
  const auto low =
      lowestCeilingOver(layout, {room.at(10, 30), room.at(40, 25), room.at(40, 70), room.at(10, 70)});
  EXPECT_EQ(low->height, 68_in);
  EXPECT_EQ(low->at, room.at(40, 25));
  EXPECT_EQ(lowestCeilingOver(layout, layout.room)->height, 48_in);
}

// Points all over random triangles never lie under a lower ceiling than the lowest one found.
TEST(CeilingHeight, NothingIsLowerThanTheLowest) {
  RoomMaker room = attic();
  room.option().room.ceiling.slopes.push_back({{"e"}, 60_in, 40_in, {}});
  const Layout layout = room.layout();
  std::mt19937 random(7);
  std::uniform_real_distribution<double> x(0, 100), y(0, 80), share(0, 1);
  for (int i = 0; i < 200; ++i) {
    const Outline t{room.at(x(random), y(random)), room.at(x(random), y(random)),
                    room.at(x(random), y(random))};
    const Length low = lowestCeilingOver(layout, t)->height;
    for (int k = 0; k < 50; ++k) {
      double a = share(random), b = share(random);
      if (a + b > 1) a = 1 - a, b = 1 - b;
      const Point p{t[0].x + (t[1].x - t[0].x).scaled(a) + (t[2].x - t[0].x).scaled(b),
                    t[0].y + (t[1].y - t[0].y).scaled(a) + (t[2].y - t[0].y).scaled(b)};
      EXPECT_GE(*ceilingHeightAt(layout, p), low - Length::nanometres(4));
    }
  }
}

// 84 in is reached 45 in from the wall: 35 x 100 of 80 x 100 remain; in an L the part beside it counts too.
TEST(CeilingHeight, AreaThatIsHighEnough) {
  const RoomMaker room = attic();
  const Layout layout = room.layout();
  EXPECT_NEAR(areaWithCeiling(layout, layout.room, 84_in)->squareInches(), 3500, 1e-6);
  EXPECT_NEAR(areaWithCeiling(layout, layout.room, 48_in)->squareInches(), 8000, 1e-6);
  EXPECT_EQ(*areaWithCeiling(layout, layout.room, 97_in), Area{});
  // The U of a 100 x 80 block with a notch 20 wide and 70 deep in its lower edge: two legs and no bridge.
  const Outline u{room.at(0, 0),   room.at(100, 0), room.at(100, 80), room.at(60, 80),
                  room.at(60, 10), room.at(40, 10), room.at(40, 80),  room.at(0, 80)};
  EXPECT_NEAR(areaWithCeiling(layout, u, 84_in)->squareInches(), 80 * 35, 1e-6);
}

TEST(CeilingHeight, LineAlongAWall) {
  RoomMaker room = attic();
  const Layout level = room.layout();
  const auto west = *ceilingAlong(level, {room.at(0, 80), room.at(0, 0)});
  ASSERT_EQ(west.size(), 3u);
  EXPECT_EQ(west[0].height, 96_in);
  EXPECT_EQ(west[1].along, 20_in);
  EXPECT_EQ(west[1].height, 96_in);
  EXPECT_EQ(west[2].along, 80_in);
  EXPECT_EQ(west[2].height, 48_in);
  const auto north = *ceilingAlong(level, {room.at(0, 0), room.at(100, 0)});
  ASSERT_EQ(north.size(), 2u);
  EXPECT_EQ(north[1].height, 48_in);

  // A ridge: 48 + 0.8 d from the north, 48 + 0.8 d from the south, 80 in apart: they meet at 40 in, 80 in
  // high, though both planes would go on to 60 in.
  room.option().room.ceiling.slopes.push_back({{"s"}, 48_in, 60_in, {}});
  const auto ridge = *ceilingAlong(room.layout(), {room.at(0, 80), room.at(0, 0)});
  ASSERT_EQ(ridge.size(), 3u);
  EXPECT_EQ(ridge[1].along, 40_in);
  EXPECT_EQ(ridge[1].height, 80_in);
}

}  // namespace
}  // namespace elbowroom
