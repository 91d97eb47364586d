#include <gtest/gtest.h>

#include <random>

#include "core/plan/snap.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

TEST(SideGaps, OfAFixtureOnItsWall) {
  RoomMaker room(96, 60);
  room.fixture("v", FixtureKind::vanity, "n", 70, 30, 21);   // 55 to 85
  room.fixture("cab", FixtureKind::cabinet, "n", 29, 18, 14);  // 20 to 38
  const auto gaps = sideGaps(room.layout(), {"cab"});
  ASSERT_EQ(gaps.size(), 3u);
  EXPECT_EQ(gaps[0].distance, 20_in);
  EXPECT_EQ(gaps[0].other, ElementId{"w"});
  EXPECT_EQ(gaps[0].grow, (Direction{1, 0}));
  EXPECT_EQ(gaps[1].distance, 17_in);
  EXPECT_EQ(gaps[1].other, ElementId{"v"});
  EXPECT_EQ(gaps[2].distance, 46_in);
  EXPECT_EQ(gaps[2].other, ElementId{"s"});
  for (const SideGap& gap : gaps) EXPECT_EQ(distance(gap.line.a, gap.line.b), gap.distance);
}

TEST(SideGaps, OfAnOpeningReachToTheNextOneAndTheCorner) {
  RoomMaker room(96, 60);
  room.door("d", "s", 60, 30, Hand::left, Swing::in);  // 45 to 75
  room.door("win", "s", 20, 20, Hand::left, Swing::in).kind = OpeningKind::window;
  const auto gaps = sideGaps(room.layout(), {"d"});
  ASSERT_EQ(gaps.size(), 2u);
  EXPECT_EQ(gaps[0].distance, 15_in);
  EXPECT_EQ(gaps[0].other, ElementId{"win"});
  EXPECT_EQ(gaps[1].distance, 21_in);
  EXPECT_EQ(gaps[1].other, ElementId{"w"});
}

TEST(PlaceForGap, RefusesWhatIsOffTheWall) {
  RoomMaker room(96, 60);
  room.fixture("cab", FixtureKind::cabinet, "n", 29, 18, 14);
  const Layout layout = room.layout();
  const auto gaps = sideGaps(layout, {"cab"});
  EXPECT_FALSE(placeForGap(layout, {"cab"}, gaps[0], 79_in));  // 78 is the most
  EXPECT_TRUE(placeForGap(layout, {"cab"}, gaps[0], 78_in));
  EXPECT_FALSE(placeForGap(layout, {"cab"}, gaps[0], -1_in));
  EXPECT_FALSE(placeForGap(layout, {"cab"}, gaps[2], 47_in));  // into the wall behind
}

// Typing a figure gives that figure, on square and slanted walls and standing free at any turn.
TEST(PlaceForGap, RoundTrip) {
  std::mt19937 random(7);
  const auto pick = [&](double low, double high) {
    return std::round(std::uniform_real_distribution<>(low, high)(random) * 16) / 16;
  };
  int tried = 0;
  for (int i = 0; i < 300; ++i) {
    RoomMaker room({{0, 0}, {100, 0}, {150, 60}, {150, 140}, {0, 140}}, 140);
    room.fixture("a", FixtureKind::cabinet, i % 2 ? "n" : "e", pick(25, 50), 18, 14);
    if (i % 3 == 0) room.option().fixtures[0].placement = Standing{room.at(60, 70), Angle::fromDegrees(pick(0, 360))};
    const Layout before = room.layout();
    for (std::size_t k = 0; k < 3; ++k) {
      const auto gaps = sideGaps(before, {"a"});
      const Length wanted = std::max(0.5_in, gaps[k].distance + in(pick(-4, 4)));
      const auto place = placeForGap(before, {"a"}, gaps[k], wanted);
      if (!place) continue;
      RoomMaker moved = room;
      moved.option().fixtures[0].placement = *place;
      const auto after = sideGaps(moved.layout(), {"a"});
      EXPECT_EQ(after[k].other, gaps[k].other);
      EXPECT_NEAR(after[k].distance.inches(), wanted.inches(), 1e-6) << i << " side " << k;
      ++tried;
    }
  }
  EXPECT_GT(tried, 600);
}

}  // namespace
}  // namespace elbowroom
