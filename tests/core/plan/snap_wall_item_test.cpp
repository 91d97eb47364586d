// Expected figures are worked by hand from the rooms below.
#include "core/plan/snap_wall_item.h"

#include <gtest/gtest.h>

#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

const SnapRules kOn{true, 2_in, 0.5_in};
const SnapRules kOff{false, 2_in, 0.5_in};

// 96 x 60 in, 96 in high; a vanity 30 x 34 in high on the south wall, centre 60 in from its left end.
struct Bath {
  RoomMaker room{96, 60};
  Bath() {
    room.option().room.ceiling.height = 96_in;
    room.fixture("v", FixtureKind::vanity, "s", 60, 30, 21).height = 34_in;
    item("m", "s", 60, 40, 24, 30);
  }
  WallItem& item(const char* id, const char* wall, double along, double bottom, double width, double height) {
    WallItem i;
    i.id = {id};
    i.kind = "mirror";
    i.wall = {wall};
    i.along = in(along);
    i.bottom = in(bottom);
    i.width = in(width);
    i.height = in(height);
    room.option().on_walls.push_back(i);
    return room.option().on_walls.back();
  }
  WallSnapped drag(double along, double centre, const SnapRules& rules = kOn, const char* id = "m",
                   std::vector<HeightLine> eyes = {}) const {
    const Layout layout = room.layout();
    return snapOnWall(layout, *wallBoxOf(layout, {id}), {in(along), in(centre)}, rules, eyes);
  }
};

TEST(SnapOnWall, TakesTheCentrelineOfWhatStandsBelow) {
  const WallSnapped s = Bath().drag(61.3, 56);
  EXPECT_EQ(s.middle, 60_in);
  EXPECT_EQ(s.along.reason, WallSnapReason::fixtureCentre);
  EXPECT_EQ(s.along.other, ElementId{"v"});
  ASSERT_TRUE(s.along.guide);
  EXPECT_EQ(s.along.guide->a.x, 60_in);
}

TEST(SnapOnWall, EachBowlOfADoubleHasItsOwn) {
  Bath bath;
  bath.room.option().fixtures[0].basins = 2;
  EXPECT_EQ(bath.drag(53.1, 56).middle, 52.5_in);  // 45 + 30/4
  EXPECT_EQ(bath.drag(67.0, 56).middle, 67.5_in);
}

TEST(SnapOnWall, WithoutSnappingItStandsExactlyThere) {
  const WallSnapped s = Bath().drag(61.3, 56.21, kOff);
  EXPECT_EQ(s.middle, 61.3_in);
  EXPECT_EQ(s.bottom, 41.21_in);
  EXPECT_EQ(s.along.reason, WallSnapReason::none);
  EXPECT_EQ(s.height.reason, WallSnapReason::none);
}

TEST(SnapOnWall, ElsewhereItTakesTheNearestStepFromTheNearerCorner) {
  Bath bath;
  bath.room.option().fixtures.clear();
  const WallSnapped left = bath.drag(30.2, 61.3);
  EXPECT_EQ(left.middle, 30_in);
  EXPECT_EQ(left.bottom, 46.5_in);  // 46.3
  EXPECT_EQ(left.height.reason, WallSnapReason::step);
  bath.room.option().room.walls[0].from.x = -0.2_in;  // the north wall is now 96.2 long
  bath.room.option().on_walls[0].wall = {"n"};
  EXPECT_EQ(bath.drag(70.3, 61.3).middle, 96.2_in - 26_in);
}

TEST(SnapOnWall, PastACornerItGoesOverToTheNeighbour) {
  const Bath bath;
  const WallSnapped at_corner = bath.drag(4, 56);
  EXPECT_EQ(at_corner.wall, ElementId{"s"});
  EXPECT_EQ(at_corner.middle, 12_in);
  EXPECT_EQ(at_corner.along.reason, WallSnapReason::corner);
  // Walls run n, e, s, w: left of the south wall is the east one, 60 in long.
  const WallSnapped left = bath.drag(-1, 56);
  EXPECT_EQ(left.wall, ElementId{"e"});
  EXPECT_EQ(left.middle, 48_in);
  EXPECT_EQ(bath.drag(-20, 56).middle, 40_in);
  const WallSnapped right = bath.drag(116.2, 56);
  EXPECT_EQ(right.wall, ElementId{"w"});
  EXPECT_EQ(right.middle, 20_in);
}

TEST(SnapOnWall, StaysWhereTheNeighbourIsNarrowerThanItself) {
  Bath bath;
  bath.room.option().on_walls[0].width = 62_in;
  const WallSnapped s = bath.drag(-5, 56);
  EXPECT_EQ(s.wall, ElementId{"s"});
  EXPECT_EQ(s.middle, 31_in);
}

TEST(SnapOnWall, HeightsRimCeilingFloorEyeAndOthers) {
  Bath bath;
  bath.item("sw", "s", 20, 40, 3, 5);
  const WallSnapped rim = bath.drag(60, 50);  // lower edge at 35
  EXPECT_EQ(rim.bottom, 34_in);
  EXPECT_EQ(rim.height.reason, WallSnapReason::rim);
  EXPECT_EQ(bath.drag(14, 50).height.reason, WallSnapReason::step);  // no vanity below it there
  EXPECT_EQ(bath.drag(60, 80.5).bottom, 66_in);
  EXPECT_EQ(bath.drag(60, 80.5).height.reason, WallSnapReason::ceiling);
  EXPECT_EQ(bath.drag(60, 120).bottom, 66_in);
  EXPECT_EQ(bath.drag(60, 3).bottom, Length{});
  // 74 in tall, eyes at 0.935 S = 69.19 in (ANSUR II ratio)
  const WallSnapped eye = bath.drag(60, 68.4, kOn, "m", {{"Tall adult", 69.19_in}});
  EXPECT_EQ(eye.bottom, 69.19_in - 15_in);
  EXPECT_EQ(eye.height.person, "Tall adult");
  EXPECT_EQ(bath.drag(60, 42.9).bottom, 27.5_in);  // middle of the switch: 42.5
  EXPECT_EQ(bath.drag(60, 42.9).height.reason, WallSnapReason::itemMiddle);
}

TEST(SnapOnWall, EdgeToEdgeWithAnotherThing) {
  Bath bath;
  bath.item("l", "s", 20, 50, 5, 20);
  // The mirror's left edge on the light's right edge: 22.5 + 12.
  const WallSnapped s = bath.drag(35.4, 70);
  EXPECT_EQ(s.middle, 34.5_in);
  EXPECT_EQ(s.along.reason, WallSnapReason::itemEdge);
  EXPECT_EQ(s.along.other, ElementId{"l"});
}

TEST(SnapOnWall, TheMiddleOfAStudBay) {
  Bath bath;
  bath.room.option().room.walls[2].studs = Studs{8_in, 16_in};
  const WallSnapped s = bath.drag(16.6, 60);  // studs at 8 and 24
  EXPECT_EQ(s.middle, 16_in);
  EXPECT_EQ(s.along.reason, WallSnapReason::bayCentre);
}

TEST(CeilingOn, FollowsTheSlopes) {
  Bath bath;
  Ceiling& ceiling = bath.room.option().room.ceiling;
  ceiling.slopes.push_back({{"w"}, 60_in, 48_in});  // 60 at the west wall, 96 from 48 in on
  const Layout layout = bath.room.layout();
  // The south wall runs from the east to the west corner: its right end is at the west wall.
  EXPECT_EQ(ceilingOn(layout, {"s"}, 96_in), 60_in);
  EXPECT_EQ(ceilingOn(layout, {"s"}, 72_in), 78_in);
  EXPECT_EQ(ceilingOn(layout, {"s"}, 20_in), 96_in);
  EXPECT_EQ(ceilingOn(layout, {"w"}, 30_in), 60_in);
  EXPECT_EQ(ceilingOn(layout, {"e"}, 30_in), 96_in);
  // Its right edge at 84: 60 + 12 * 36/48 = 69 there, so its lower edge can be at 39 at most.
  const WallSnapped s = bath.drag(72, 80, kOff);
  EXPECT_EQ(s.bottom, 39_in);
}

TEST(CeilingOn, NotStatedIsNoLimit) {
  Bath bath;
  bath.room.option().room.ceiling.height.reset();
  EXPECT_FALSE(ceilingOn(bath.room.layout(), {"s"}, 10_in));
  EXPECT_EQ(bath.drag(60, 150, kOff).bottom, 135_in);
}

const WallGap* gapOf(const std::vector<WallGap>& gaps, WallSide side, const char* other) {
  for (const WallGap& gap : gaps)
    if (gap.side == side && gap.other.text == other) return &gap;
  return nullptr;
}

TEST(WallGaps, FloorCornersNeighboursCeiling) {
  Bath bath;
  bath.item("l", "s", 20, 50, 5, 20);
  bath.item("far", "s", 90, 0, 5, 5);  // not at its height
  const auto gaps = wallGaps(bath.room.layout(), {"m"});
  ASSERT_EQ(gaps.size(), 5U);
  EXPECT_EQ(gaps[0].side, WallSide::below);
  EXPECT_EQ(gaps[0].distance, 40_in);
  EXPECT_EQ(gapOf(gaps, WallSide::left, "")->distance, 48_in);
  EXPECT_EQ(gapOf(gaps, WallSide::right, "")->distance, 24_in);
  EXPECT_EQ(gapOf(gaps, WallSide::left, "l")->distance, 48_in - 22.5_in);
  EXPECT_EQ(gapOf(gaps, WallSide::above, "")->distance, 26_in);
}

TEST(WallGaps, BoxesAreMeasuredFromTheirCentre) {
  Bath bath;
  bath.item("r", "s", 20, 40, 3, 5);
  const auto gaps = wallGaps(bath.room.layout(), {"r"});
  EXPECT_TRUE(gaps[0].to_centre);
  EXPECT_EQ(gaps[0].distance, 42.5_in);
  EXPECT_EQ(gapOf(gaps, WallSide::left, "")->distance, 20_in);
  const auto box = boxForWallGap(bath.room.layout(), {"r"}, gaps[0], 44_in);
  ASSERT_TRUE(box);
  EXPECT_EQ(box->low, 41.5_in);
}

TEST(WallGaps, TypingMakesEachDistanceExact) {
  Bath bath;
  bath.item("l", "s", 20, 50, 5, 20);
  bath.room.door("d", "w", 30, 30, Hand::left, Swing::in);
  for (const char* id : {"m", "l"}) {
    const Layout before = bath.room.layout();
    for (const WallGap& gap : wallGaps(before, {id})) {
      const Length wanted = gap.distance + 1.25_in;
      const auto box = boxForWallGap(before, {id}, gap, wanted);
      ASSERT_TRUE(box) << id;
      Bath moved = bath;
      for (WallItem& i : moved.room.option().on_walls)
        if (i.id == box->id) i.along = box->middle(), i.bottom = box->low;
      const auto after = wallGaps(moved.room.layout(), {id});
      const WallGap* now = gapOf(after, gap.side, gap.other.text.c_str());
      ASSERT_TRUE(now);
      EXPECT_EQ(now->distance, wanted) << id;
    }
  }
  const Layout layout = bath.room.layout();
  const auto gaps = wallGaps(layout, {"m"});
  EXPECT_FALSE(boxForWallGap(layout, {"m"}, gaps[1], 90_in));   // past the right corner
  EXPECT_FALSE(boxForWallGap(layout, {"m"}, gaps[0], 67_in));   // through the ceiling
  EXPECT_FALSE(boxForWallGap(layout, {"m"}, gaps[0], -1_in));
}

TEST(WallGaps, DoorsAndFixturesOnlyAlongTheWall) {
  Bath bath;
  bath.room.door("d", "w", 30, 30, Hand::left, Swing::in);
  const auto door = wallGaps(bath.room.layout(), {"d"});
  ASSERT_EQ(door.size(), 2U);
  EXPECT_EQ(door[0].distance, 15_in);
  const auto vanity = wallGaps(bath.room.layout(), {"v"});
  ASSERT_EQ(vanity.size(), 2U);
  EXPECT_EQ(vanity[1].distance, 21_in);
}

}  // namespace
}  // namespace elbowroom
