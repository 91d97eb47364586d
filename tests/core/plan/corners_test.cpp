// Expected figures are worked by hand.
#include "core/plan/corners.h"

#include <gtest/gtest.h>

#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

const CornerTouch* of(const std::vector<CornerTouch>& all, const char* id, const char* wall) {
  for (const CornerTouch& t : all)
    if (t.id.text == id && t.wall.text == wall) return &t;
  return nullptr;
}

TEST(CornerTouches, AFixtureShowsItsDepthOnTheNeighbour) {
  RoomMaker room(96, 60);
  // On the south wall, flush in its left corner, which is the east wall's right end.
  room.fixture("v", FixtureKind::vanity, "s", 15, 30, 21).height = 34_in;
  const auto all = cornerTouches(room.layout());
  ASSERT_EQ(all.size(), 1u);
  const CornerTouch& t = all[0];
  EXPECT_EQ(t.wall, ElementId{"e"});
  EXPECT_FALSE(t.at_left);
  EXPECT_EQ(t.from, 39_in);
  EXPECT_EQ(t.to, 60_in);
  EXPECT_EQ(t.high, 34_in);
  std::get<OnWall>(room.option().fixtures[0].placement).along = in(18.5);  // 3 1/2 in off the corner
  EXPECT_TRUE(cornerTouches(room.layout()).empty());
}

TEST(CornerTouches, AFullWidthBathShowsOnBothNeighbours) {
  RoomMaker room(60, 80);
  room.fixture("b", FixtureKind::bath, "n", 30, 60, 30).height = 15_in;
  const auto all = cornerTouches(room.layout());
  ASSERT_EQ(all.size(), 2u);
  EXPECT_TRUE(of(all, "b", "e")->at_left);
  EXPECT_FALSE(of(all, "b", "w")->at_left);
  EXPECT_EQ(of(all, "b", "w")->from, 50_in);
}

TEST(CornerTouches, AThingOfTheWallShowsItsDepthAndARecessNothing) {
  RoomMaker room(96, 60);
  WallItem shelf = typicalWallItem("shelf", room.option());
  shelf.id = {"sh"}, shelf.wall = {"n"}, shelf.width = 24_in, shelf.along = 84_in, shelf.bottom = 50_in;
  shelf.height = 2_in, shelf.depth = 8_in;
  room.option().on_walls = {shelf};
  const auto all = cornerTouches(room.layout());
  ASSERT_EQ(all.size(), 1u);
  EXPECT_EQ(all[0].wall, ElementId{"e"});
  EXPECT_TRUE(all[0].at_left);
  EXPECT_EQ(all[0].from, 0_in);
  EXPECT_EQ(all[0].to, 8_in);
  EXPECT_EQ(all[0].low, 50_in);
  EXPECT_EQ(all[0].high, 52_in);
  room.option().on_walls[0].kind = "niche";
  EXPECT_TRUE(cornerTouches(room.layout()).empty());
  room.option().on_walls[0] = shelf;
  room.option().on_walls[0].status = Status::remove;
  EXPECT_TRUE(cornerTouches(room.layout()).empty());
}

TEST(CornerTouches, RoundACornerThatStandsOutNothingShows) {
  // An L: the corner at (60, 40) points into the room.
  RoomMaker room({{0, 0}, {100, 0}, {100, 40}, {60, 40}, {60, 80}, {0, 80}}, 80);
  // Walls: n, e, s (100,40)-(60,40), w (60,40)-(60,80), x, y. A cabinet at the right end of s.
  room.fixture("c", FixtureKind::cabinet, "s", 31, 18, 14);
  EXPECT_TRUE(cornerTouches(room.layout()).empty());
}

}  // namespace
}  // namespace elbowroom
