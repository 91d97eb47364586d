// 2010 ADA Standards 403.5.1: 36 in, 32 in at one place for at most 24 in, by hand-made rooms.
#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {

using testing_room::in;
using testing_room::TestRoom;

// A room 50 in across with a cabinet that leaves `gap` between it and the other wall.
TestRoom roomWith(double gap, double long_for) {
  TestRoom room(50, 160);
  room.toilet(25);
  room.door("s", 25, 30, Hand::left, Swing::out);
  room.add("cabinet", FixtureKind::cabinet, "w", 70, long_for, 50 - gap);
  return room;
}

Finding wayIn(const TestRoom& room) {
  const auto found = room.findings("us-access", "route-width");
  EXPECT_EQ(found.size(), 1u);
  return found.empty() ? Finding{} : found[0];
}

TEST(RouteWidth, MayBeNarrowOnceForAShortStretch) {
  const Finding short_stretch = wayIn(roomWith(33, 24));
  EXPECT_EQ(short_stretch.limit, Quantity{in(32)});
  EXPECT_EQ(short_stretch.measured, Quantity{in(33)});
  EXPECT_EQ(short_stretch.detail, "way-narrow-once");
  EXPECT_NE(short_stretch.outcome, Outcome::shortfall);
}

TEST(RouteWidth, NotForALongStretchNorForLess) {
  const Finding long_stretch = wayIn(roomWith(33, 24 + 1 / 16.0));
  EXPECT_EQ(long_stretch.limit, Quantity{in(36)});
  EXPECT_EQ(long_stretch.outcome, Outcome::shortfall);
  EXPECT_EQ(wayIn(roomWith(32 - 1 / 16.0, 20)).outcome, Outcome::shortfall);
  EXPECT_NE(wayIn(roomWith(32, 20)).outcome, Outcome::shortfall);
}

// The same place, and another one of 34 in later on the way.
TEST(RouteWidth, NotWhereTheWayIsNarrowAgain) {
  TestRoom room = roomWith(33, 20);
  room.add("bench", FixtureKind::cabinet, "w", 110, 20, 16);
  EXPECT_EQ(wayIn(room).limit, Quantity{in(36)});
  EXPECT_EQ(wayIn(room).outcome, Outcome::shortfall);
}

}  // namespace
}  // namespace elbowroom
