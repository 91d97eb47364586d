// Cut drawings of mirrors by hand. Glass between holes and edges: the fabricator's table of wagnercompanies.com for
// 1/4 in glass: 1/2 in to an edge, 1/2 in between holes, 1 5/8 in to a corner.
#include "core/works/mirror_order.h"

#include <gtest/gtest.h>

#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;
using enum MirrorTroubleKind;

WallItem& put(RoomMaker& room, const char* kind, const char* id, double along, double bottom) {
  WallItem item = typicalWallItem(kind, room.option());
  item.id = {id};
  item.wall = {"n"};
  item.along = in(along);
  item.bottom = in(bottom);
  room.option().on_walls.push_back(item);
  return room.option().on_walls.back();
}

// Wall n, 96 in long; the mirror from 18 to 78, from 36 to 90 in up.
struct Case {
  RoomMaker room{96, 60};
  Case() {
    WallItem& m = put(room, "mirror", "m", 48, 36);
    m.width = 60_in;
    m.height = 54_in;
  }
  MirrorOrder order() const {
    const auto orders = mirrorOrders(room.layout());
    EXPECT_EQ(orders.size(), 1u);
    return orders.at(0);
  }
};

TEST(MirrorOrder, TheBoxesOfTwoSideLights) {
  Case c;
  put(c.room, "side-light", "l2", 68, 60);  // 5 x 12: box at its middle, 66 in up
  put(c.room, "side-light", "l1", 28, 60);
  const MirrorOrder order = c.order();
  EXPECT_EQ(order.mirror.text, "m");
  EXPECT_EQ(order.wall.text, "n");
  EXPECT_EQ(order.width, 60_in);
  EXPECT_EQ(order.height, 54_in);
  EXPECT_EQ(order.thickness, 0.25_in);
  ASSERT_EQ(order.holes.size(), 2u);
  EXPECT_EQ(order.holes[0], (MirrorHole{{"l1"}, 10_in, 30_in, 4_in, 4_in, 4_in}));
  EXPECT_EQ(order.holes[1], (MirrorHole{{"l2"}, 50_in, 30_in, 4_in, 4_in, 4_in}));
  EXPECT_TRUE(order.troubles.empty());
}

// 0.4375 in of glass are left to the left, right, lower and upper edge in turn; 0.5 in to each are enough.
TEST(MirrorOrder, AHoleTooNearAnyOfTheFourEdges) {
  const struct {
    double along, bottom;
  } near[] = {{18 + 2.4375, 54}, {78 - 2.4375, 54}, {48, 36 + 2.4375 - 6}, {48, 90 - 2.4375 - 6}};
  for (const auto& [along, bottom] : near) {
    SCOPED_TRACE(along);
    SCOPED_TRACE(bottom);
    Case c;
    put(c.room, "side-light", "l", along, bottom);
    const MirrorOrder order = c.order();
    EXPECT_EQ(rimToEdge(order.holes.at(0), order), 0.4375_in);
    ASSERT_EQ(order.troubles.size(), 1u);
    EXPECT_EQ(order.troubles[0], (MirrorTrouble{nearEdge, {"l"}, {}, 0.4375_in, 0.5_in}));
    const double inward = 0.0625;
    WallItem& light = c.room.option().on_walls.back();
    light.along += in(along < 48 ? inward : along > 48 ? -inward : 0);
    light.bottom += in(along != 48 ? 0 : bottom < 54 ? inward : -inward);
    EXPECT_TRUE(c.order().troubles.empty());
  }
}

TEST(MirrorOrder, TheBoxIsWhereThePlanSaysItIs) {
  Case c;
  put(c.room, "side-light", "l", 48, 60).facts["box_up"] = 3_in;
  EXPECT_EQ(c.order().holes.at(0).from_bottom, 27_in);  // 60 + 3 - 36
}

TEST(MirrorOrder, AReceptacleIsCutSquareUnderItsCover) {
  Case c;
  put(c.room, "receptacle", "r", 24, 42);  // cover 2 3/4 x 4 1/2
  const MirrorHole hole = c.order().holes.at(0);
  EXPECT_EQ(hole, (MirrorHole{{"r"}, 6_in, 8.25_in, 0_in, 2.25_in, 4_in}));
}

TEST(MirrorOrder, WhatIsOnlyScrewedOnOrElsewhereMakesNoHole) {
  Case c;
  put(c.room, "hook", "h", 48, 60);
  put(c.room, "side-light", "beside", 10, 60);  // 7.5 to 12.5 on the wall
  put(c.room, "side-light", "gone", 48, 60).status = Status::remove;
  WallItem& other = put(c.room, "side-light", "other", 48, 60);
  other.wall = {"s"};
  EXPECT_TRUE(c.order().holes.empty());
  EXPECT_TRUE(c.order().troubles.empty());
}

TEST(MirrorOrder, AHoleTooNearAnEdge) {
  Case c;
  put(c.room, "side-light", "l", 20.5, 60);  // hole from 0.5 in: just enough
  EXPECT_TRUE(c.order().troubles.empty());
  c.room.option().on_walls[1].along = 20.4375_in;
  ASSERT_EQ(c.order().troubles.size(), 1u);
  EXPECT_EQ(c.order().troubles[0], (MirrorTrouble{nearEdge, {"l"}, {}, 0.4375_in, 0.5_in}));
}

TEST(MirrorOrder, AHoleTooNearACorner) {
  Case c;
  WallItem& r = put(c.room, "receptacle", "r", 0, 0);
  r.along = 18_in + 1.125_in + 1.125_in;    // its cut-out from 1.125 in from the left
  r.bottom = 36_in + 1.125_in - 0.25_in;    // and from 1.125 in up: 1.591 in from the corner
  ASSERT_EQ(c.order().troubles.size(), 1u);
  EXPECT_EQ(c.order().troubles[0].kind, nearCorner);
  EXPECT_NEAR(c.order().troubles[0].measured.inches(), 1.591, 0.001);
  EXPECT_EQ(c.order().troubles[0].needed, 1.625_in);
  c.room.option().on_walls[1].along += 0.0625_in;  // hypot(1.1875, 1.125) = 1.636
  EXPECT_TRUE(c.order().troubles.empty());
}

TEST(MirrorOrder, TwoHolesTooNearEachOther) {
  Case c;
  put(c.room, "sconce-box", "a", 40, 60);
  put(c.room, "sconce-box", "b", 44.5, 60);  // 4.5 apart, 4 in holes: 1/2 in of glass
  EXPECT_TRUE(c.order().troubles.empty());
  c.room.option().on_walls[2].along = 44.4375_in;
  ASSERT_EQ(c.order().troubles.size(), 1u);
  EXPECT_EQ(c.order().troubles[0], (MirrorTrouble{nearHole, {"b"}, {"a"}, 0.4375_in, 0.5_in}));
  c.room.option().on_walls[2].along = 42_in;  // one into the other
  EXPECT_EQ(c.order().troubles.at(0).measured, 0_in);
}

TEST(MirrorOrder, RoundAndSquareAreMeasuredRimToRim) {
  Case c;
  put(c.room, "sconce-box", "a", 40, 60);   // centre 62
  put(c.room, "receptacle", "r", 40 + 3.4375, 62 - 2.25);  // cut-out from 2.3125 to the right: 0.3125 of glass
  ASSERT_EQ(c.order().troubles.size(), 1u);
  EXPECT_EQ(c.order().troubles[0].measured, 0.3125_in);
}

TEST(MirrorOrder, AHoleOverTheEdgeAndALightHalfOnTheMirror) {
  Case c;
  put(c.room, "side-light", "cut", 19, 60);   // hole from -1 to 3
  ASSERT_EQ(c.order().troubles.size(), 1u);
  EXPECT_EQ(c.order().troubles[0], (MirrorTrouble{holeOverEdge, {"cut"}, {}, -1_in, {}}));
  EXPECT_EQ(c.order().holes.size(), 1u);
  c.room.option().on_walls[1].along = 16_in;  // 13.5 to 18.5, its hole ends at the edge: none in the glass
  EXPECT_TRUE(c.order().holes.empty());
  ASSERT_EQ(c.order().troubles.size(), 1u);
  EXPECT_EQ(c.order().troubles[0], (MirrorTrouble{itemOverEdge, {"cut"}, {}, 4.5_in, {}}));
}

TEST(MirrorOrder, AHoleWiderThanAThirdOfTheMirror) {
  Case c;
  c.room.option().on_walls[0].width = 12_in;
  put(c.room, "sconce-box", "a", 48, 60);
  EXPECT_TRUE(c.order().troubles.empty());
  c.room.option().on_walls[0].width = 11.9375_in;
  ASSERT_EQ(c.order().troubles.size(), 1u);
  EXPECT_EQ(c.order().troubles[0].kind, holeTooLarge);
}

TEST(MirrorOrder, OnlyNewMirrorsAreOrdered) {
  Case c;
  c.room.option().on_walls[0].status = Status::keep;
  put(c.room, "lit-mirror", "lit", 20, 40);
  EXPECT_TRUE(mirrorOrders(c.room.layout()).empty());
}

}  // namespace
}  // namespace elbowroom
