// Expected figures are worked by hand from the rooms below.
#include "core/plan/wall_defaults.h"

#include <gtest/gtest.h>

#include "core/plan/snap.h"
#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

// 96 x 60 in; a bath along the whole east wall, a vanity of two bowls on the south wall, 15 to 75 in from its left.
RoomMaker bath() {
  RoomMaker room(96, 60);
  room.fixture("b", FixtureKind::bath, "e", 30, 60, 30);
  room.fixture("v", FixtureKind::vanity, "s", 60, 60, 21).basins = 2;
  return room;
}

WallItem put(const RoomMaker& room, const char* kind, const char* wall, double along) {
  WallItem item = typicalWallItem(kind, room.plan.options[0]);
  item.wall = {wall};
  item.along = in(along);
  return withDefaults(room.layout(), item);
}

TEST(WallDefaults, AHeadBelongsToTheBathOnWhoseWallItIs) {
  const RoomMaker room = bath();
  EXPECT_EQ(put(room, "shower-head", "e", 10).shower, ElementId{"b"});
  // The bath's ends lie on the north and south walls: 30 in from the corners they share with the east wall.
  EXPECT_EQ(put(room, "shower-head", "n", 80).shower, ElementId{"b"});
  EXPECT_EQ(put(room, "niche", "s", 20).shower, ElementId{"b"});
  EXPECT_EQ(put(room, "shower-head", "n", 40).shower, ElementId{});
  EXPECT_EQ(put(room, "towel-bar", "e", 30).shower, ElementId{});
}

TEST(WallDefaults, WhatIsNamedStays) {
  const RoomMaker room = bath();
  WallItem item = typicalWallItem("niche", room.plan.options[0]);
  item.wall = {"e"};
  item.along = 20_in;
  item.shower = {"other"};
  EXPECT_EQ(withDefaults(room.layout(), item).shower, ElementId{"other"});
}

TEST(WallDefaults, AMirrorTakesTheCentrelineOfTheNearerBowl) {
  const RoomMaker room = bath();
  EXPECT_EQ(put(room, "mirror", "s", 50).along, 45_in);  // 30 + 60/4
  EXPECT_EQ(put(room, "mirror", "s", 66).along, 75_in);
  EXPECT_EQ(put(room, "mirror", "n", 20).along, 20_in);
  EXPECT_EQ(put(room, "receptacle", "s", 50).along, 50_in);
}

TEST(SnapCeilingItem, LinesUpWithWhatStandsBelowOnEachAxis) {
  RoomMaker room = bath();
  CeilingItem fan = typicalCeilingItem("fan", room.option());
  const Layout layout = room.layout();
  const SnapRules on{true, 2_in, 0.5_in}, off{false, 2_in, 0.5_in};
  // The vanity's centre is 36 in from the west wall (the south wall runs from the east), the room's middle 30 in up.
  const SnappedCeiling s = snapCeilingItem(layout, fan, {37_in, 31.1_in}, on);
  EXPECT_EQ(s.at, (Point{36_in, 30_in}));
  EXPECT_TRUE(s.guide_x && s.guide_y);
  EXPECT_EQ(snapCeilingItem(layout, fan, {60.2_in, 50.3_in}, on).at, (Point{60_in, 50.5_in}));
  EXPECT_EQ(snapCeilingItem(layout, fan, {37_in, 31.1_in}, off).at, (Point{37_in, 31.1_in}));
}

}  // namespace
}  // namespace elbowroom
