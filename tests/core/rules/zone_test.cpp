// A rectangle of floor by hand-made figures.
#include "core/rules/checks/zone.h"

#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom::checks {
namespace {

using testing_room::in;
using testing_room::TestRoom;

Point at(double x, double y) { return {in(x), in(y)}; }
Zone before(double x, double to_left, double to_right) {
  return {at(x, 100), {-1, 0}, {0, -1}, in(to_left), in(to_right), in(48)};
}

// A cabinet that reaches 12 in into the rectangle from the side, 40 in out: the side lacks 12 in, the depth 8
// in. The depth is measured over the width between the walls, not over what the cabinet leaves of it.
TEST(Zone, LacksTheSmallerOfSideAndDepth) {
  TestRoom test(100, 100);
  test.add("cabinet", FixtureKind::cabinet, "w", 40, 40, 47);
  const Layout layout = deriveLayout(test.plan(), 0);
  const Obstacles all = obstaclesWhere(layout, [](const PlacedFixture&) { return true; });
  const Room room = roomFor(layout, all, before(50, 15, 15));
  EXPECT_EQ(room.left.distance, in(3));
  EXPECT_EQ(room.left.hit, 0);
  EXPECT_EQ(room.right.distance, in(50));
  EXPECT_EQ(room.deep.distance, in(40));
  EXPECT_EQ(room.side_lacks, in(12));
  EXPECT_EQ(room.deep_lacks, in(8));
  EXPECT_EQ(room.lacks(), in(8));
}

TEST(Zone, SlidesAlongItsLineWithWhatStandsBesideIt) {
  TestRoom test(100, 100);
  test.add("cabinet", FixtureKind::cabinet, "w", 40, 40, 47);
  test.add("bench", FixtureKind::cabinet, "s", 20, 30, 62);
  const Layout layout = deriveLayout(test.plan(), 0);
  const Obstacles all = obstaclesWhere(layout, [](const PlacedFixture&) { return true; });
  const RoomBeside beside = roomBeside(layout, all, before(50, 30, 0));
  for (double right = 0; right <= 30; right += 1) {
    const Zone zone = before(50, 30 - right, right);
    const Room slid = roomFor(layout, all, zone, beside), anew = roomFor(layout, all, zone);
    EXPECT_EQ(slid.left.distance, anew.left.distance);
    EXPECT_EQ(slid.right.distance, anew.right.distance);
    EXPECT_EQ(slid.deep.distance, anew.deep.distance);
    EXPECT_EQ(slid.lacks(), anew.lacks());
    EXPECT_EQ(slid.deep.distance, right > 15 ? in(38) : in(40)) << right;
  }
}

}  // namespace
}  // namespace elbowroom::checks
