// Expected figures are worked by hand.
#include "core/plan/arrange_wall_items.h"

#include <gtest/gtest.h>

#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

// 96 x 60 in, 96 high; a, b, c on the south wall: 10 wide at 10, 20 wide at 30, 10 wide at 70; a vanity below b.
struct Things {
  RoomMaker room{96, 60};
  std::vector<ElementId> all{{"a"}, {"b"}, {"c"}};
  Things() {
    room.option().room.ceiling.height = 96_in;
    room.fixture("v", FixtureKind::vanity, "s", 30, 24, 21).height = 34_in;
    put("a", 10, 40, 10, 10);
    put("b", 30, 45, 20, 30);
    put("c", 70, 50, 10, 10);
  }
  void put(const char* id, double along, double bottom, double width, double height) {
    WallItem i;
    i.id = {id};
    i.kind = "mirror";
    i.wall = {"s"};
    i.along = in(along), i.bottom = in(bottom), i.width = in(width), i.height = in(height);
    room.option().on_walls.push_back(i);
  }
  Layout layout() const { return room.layout(); }
};

const WallItem* of(const std::vector<WallItem>& items, const char* id) {
  for (const WallItem& i : items)
    if (i.id.text == id) return &i;
  return nullptr;
}

TEST(ArrangeWallItems, LinesUpEdgesAndCentres) {
  const Things t;
  EXPECT_EQ(of(arranged(t.layout(), t.all, Arrange::lefts), "b")->along, 15_in);    // left edge at 5
  EXPECT_EQ(of(arranged(t.layout(), t.all, Arrange::rights), "a")->along, 70_in);   // right edge at 75
  EXPECT_EQ(of(arranged(t.layout(), t.all, Arrange::centres), "c")->along, 40_in);  // between 5 and 75
  EXPECT_EQ(of(arranged(t.layout(), t.all, Arrange::tops), "a")->bottom, 65_in);    // top at 75
  EXPECT_EQ(of(arranged(t.layout(), t.all, Arrange::bottoms), "c")->bottom, 40_in);
  EXPECT_TRUE(arranged(t.layout(), std::vector<ElementId>{{"a"}}, Arrange::tops).empty());
}

TEST(ArrangeWallItems, EqualGaps) {
  const Things t;
  const auto moved = spacedEvenly(t.layout(), t.all);  // 70 wide less 40 of things: gaps of 15
  ASSERT_EQ(moved.size(), 1U);
  EXPECT_EQ(moved[0].id, ElementId{"b"});
  EXPECT_EQ(moved[0].along, 40_in);  // 5 + 10 + 15 + 10
}

TEST(ArrangeWallItems, MirroredAboutACentreline) {
  const Things t;
  const std::vector<ElementId> a{{"a"}}, c{{"c"}};
  EXPECT_EQ(mirroredAbout(t.layout(), a, 30_in)[0].along, 50_in);
  EXPECT_TRUE(mirroredAbout(t.layout(), c, 20_in).empty());  // would leave the wall
}

TEST(ArrangeWallItems, WallToWallAndCounterToCeiling) {
  Things t;
  const auto wide = wallToWall(t.layout(), {"b"});
  ASSERT_EQ(wide.size(), 1U);
  EXPECT_EQ(wide[0].width, 96_in);
  EXPECT_EQ(wide[0].along, 48_in);
  t.room.door("d", "s", 80, 30, Hand::left, Swing::in);
  EXPECT_EQ(wallToWall(t.layout(), {"b"})[0].width, 65_in);  // up to the door's jamb
  const auto high = counterToCeiling(t.layout(), {"b"});
  EXPECT_EQ(high[0].bottom, 34_in);
  EXPECT_EQ(high[0].height, 62_in);
  EXPECT_EQ(counterToCeiling(t.layout(), {"c"})[0].height, 46_in);  // nothing below: from its own lower edge
}

TEST(ArrangeWallItems, EyeLevelAndBays) {
  Things t;
  const std::vector<ElementId> b{{"b"}};
  const auto eye = atHeight(t.layout(), b, {"Tall adult", 69_in});
  EXPECT_EQ(eye[0].bottom, 54_in);
  EXPECT_EQ(eye[0].person, "Tall adult");
  EXPECT_EQ(atHeight(t.layout(), b, {"Giant", 90_in})[0].bottom, 66_in);  // under the ceiling
  EXPECT_TRUE(intoBay(t.layout(), {"a"}).empty());
  t.room.option().room.walls[2].studs = Studs{8_in, 16_in};
  // 10 in wide at 10: its left edge goes to the stud's right face, 8 3/4 in.
  EXPECT_EQ(intoBay(t.layout(), {"a"})[0].along, 13.75_in);
  EXPECT_TRUE(intoBay(t.layout(), {"b"}).empty());  // 20 in wide: no bay takes it
}

}  // namespace
}  // namespace elbowroom
