#include "core/plan/copies.h"

#include <gtest/gtest.h>

#include "core/plan/move_things.h"
#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

// 96 x 60 in: a shower with its head and a bar on the north wall, a fan on the ceiling.
struct Bath {
  RoomMaker room{96, 60};
  Bath() {
    room.fixture("sh", FixtureKind::shower, "n", 18, 36, 36);
    put("head", "shower-head", "n", 18, 78, 6, 6).shower = {"sh"};
    put("bar", "towel-bar", "n", 60, 48, 24, 3);
    room.option().on_ceiling.push_back({{"fan"}, "fan", {48_in, 30_in}, {}, {}, {}, {}, {}});
  }
  WallItem& put(const char* id, const char* kind, const char* wall, double along, double bottom, double w,
                double h) {
    WallItem i = typicalWallItem(kind, room.option());
    i.id = {id}, i.wall = {wall}, i.along = in(along), i.bottom = in(bottom), i.width = in(w),
    i.height = in(h);
    room.option().on_walls.push_back(i);
    return room.option().on_walls.back();
  }
  Copies copies(std::vector<ElementId> ids) const { return copiesOf(room.layout(), ids); }
};

TEST(Copies, ABarGoesBesideItselfWithTwoInchesBetween) {
  Bath bath;
  // 48 to 72; to the right it would end at 98, so to the left: 60 - 26.
  const PutThings put = putDown(bath.copies({{"bar"}}), bath.room.layout());
  ASSERT_EQ(put.size(), 1u);
  EXPECT_EQ(put.on_walls[0].along, 34_in);
  EXPECT_EQ(put.on_walls[0].bottom, 48_in);
  EXPECT_EQ(put.on_walls[0].wall, ElementId{"n"});
  EXPECT_EQ(put.on_walls[0].id, ElementId{"bar2"});
  bath.room.option().on_walls[1].along = 40_in;
  EXPECT_EQ(putDown(bath.copies({{"bar"}}), bath.room.layout()).on_walls[0].along, 66_in);
}

TEST(Copies, InItsOwnPlaceWhereNothingIsAndOnTheWallThatIsChosen) {
  Bath bath;
  const Copies copies = bath.copies({{"bar"}});
  Bath other;
  other.room.option().on_walls.clear();
  EXPECT_EQ(putDown(copies, other.room.layout()).on_walls[0].along, 60_in);
  EXPECT_EQ(putDown(copies, other.room.layout()).on_walls[0].id, ElementId{"bar"});
  // The east wall is 60 long: it ends at its right end.
  const WallItem east = putDown(copies, other.room.layout(), {"e"}).on_walls[0];
  EXPECT_EQ(east.wall, ElementId{"e"});
  EXPECT_EQ(east.along, 48_in);
}

TEST(Copies, AHeadGoesWithTheCopyOfItsShower) {
  Bath bath;
  const PutThings put = putDown(bath.copies({{"sh"}, {"head"}}), bath.room.layout());
  ASSERT_EQ(put.fixtures.size(), 1u);
  ASSERT_EQ(put.on_walls.size(), 1u);
  EXPECT_EQ(put.on_walls[0].shower, put.fixtures[0].id);
  Bath other;
  other.room.option().fixtures.clear();
  EXPECT_TRUE(putDown(bath.copies({{"head"}}), other.room.layout()).on_walls[0].shower.empty());
}

TEST(Copies, ACeilingItemStaysInTheRoom) {
  Bath bath;
  EXPECT_EQ(putDown(bath.copies({{"fan"}}), bath.room.layout()).on_ceiling[0].at, (Point{54_in, 24_in}));
  bath.room.option().on_ceiling[0].at = {94_in, 3_in};
  EXPECT_EQ(putDown(bath.copies({{"fan"}}), bath.room.layout()).on_ceiling[0].at, (Point{88_in, 9_in}));
}

TEST(Copies, PuttingThemDownIsOneEditThatThePlanTakes) {
  Bath bath;
  const PutThings put = putDown(bath.copies({{"sh"}, {"head"}, {"bar"}, {"fan"}}), bath.room.layout());
  EXPECT_EQ(put.size(), 4u);
  const Result<Plan> after = apply(bath.room.plan, {0, put, "Paste", ""});
  ASSERT_TRUE(after.ok());
  EXPECT_EQ(after->options[0].on_walls.size(), 4u);
  EXPECT_EQ(after->options[0].on_ceiling.size(), 2u);
}

TEST(MovedBy, EachAlongItsOwnWallAndNeverOffIt) {
  Bath bath;
  bath.put("hook", "hook", "e", 30, 60, 2, 4);
  const std::set<ElementId> all{{"bar"}, {"hook"}, {"fan"}};
  const PutThings put = movedBy(bath.room.layout(), all, {20_in, -5_in});
  ASSERT_EQ(put.on_walls.size(), 2u);
  EXPECT_EQ(put.on_walls[0].along, 80_in);  // the north wall runs to the right
  EXPECT_EQ(put.on_walls[1].along, 35_in);  // the east wall runs down
  EXPECT_EQ(put.on_ceiling[0].at, (Point{68_in, 25_in}));
  EXPECT_EQ(movedBy(bath.room.layout(), {{"bar"}}, {50_in, {}}).on_walls[0].along, 84_in);
  EXPECT_TRUE(movedBy(bath.room.layout(), {{"bar"}}, {{}, 5_in}).empty());
  // A step is a whole one, however the vector lies to the wall.
  EXPECT_EQ(movedBy(bath.room.layout(), {{"bar"}}, {0.1_in, 5_in}, 0.5_in).on_walls[0].along, 60.5_in);
}

// A thing wider than the wall, higher than its ceiling or with a door in all of its places is not put down; with
// room elsewhere it goes there: 24 in beside a door of 30 in from 10 to 40 on a wall of 96 go flush to 40.
TEST(Copies, OnAWallWithoutRoomNothingHangs) {
  Bath bath;
  bath.room.option().on_walls.clear();
  bath.put("bar", "towel-bar", "n", 24, 48, 70, 4);
  const Copies wide = bath.copies({{"bar"}});
  EXPECT_TRUE(putDown(wide, bath.room.layout(), {"e"}).empty()) << "70 in on a wall of 60";
  bath.room.option().on_walls.back().width = 24_in;
  const Copies bar = bath.copies({{"bar"}});
  bath.room.option().on_walls.clear();
  Opening door;
  door.id = {"d"}, door.kind = OpeningKind::door, door.wall = {"n"};
  door.along = 25_in, door.width = 30_in, door.height = 80_in;
  bath.room.option().openings.push_back(door);
  // 12 to 36 is taken; 26 to the right is beside the old place, 38 to 62, and meets the door still.
  ASSERT_EQ(putDown(bar, bath.room.layout()).on_walls.size(), 1u);
  EXPECT_EQ(putDown(bar, bath.room.layout()).on_walls[0].along, 52_in);
  bath.room.option().openings.back().along = 48_in, bath.room.option().openings.back().width = 60_in;
  EXPECT_TRUE(putDown(bar, bath.room.layout()).empty()) << "18 in are left on each side of the door";
  bath.room.option().openings.clear();
  bath.room.option().room.ceiling.height = 50_in;
  EXPECT_TRUE(putDown(bar, bath.room.layout()).empty()) << "4 in from 48 up are more than 50";
}

// 96 in of wall with a 24 in window at 20: the copy goes flush beside it; on another wall it keeps its place.
TEST(Copies, AWindowGoesWhereNoOtherOpeningIs) {
  RoomMaker room{96, 60};
  Opening window;
  window.id = {"win"}, window.kind = OpeningKind::window, window.wall = {"n"};
  window.along = 20_in, window.width = 24_in, window.height = 36_in, window.sill = 40_in;
  room.option().openings.push_back(window);
  const std::vector<ElementId> ids{{"win"}};
  const Copies copies = copiesOf(room.layout(), ids);
  ASSERT_EQ(copies.openings.size(), 1u);
  const PutThings beside = putDown(copies, room.layout());
  ASSERT_EQ(beside.openings.size(), 1u);
  EXPECT_EQ(beside.openings[0].along, 44_in);
  EXPECT_EQ(beside.openings[0].id, ElementId{"win2"});
  EXPECT_EQ(beside.openings[0].sill, 40_in);
  const PutThings other = putDown(copies, room.layout(), {"e"});
  EXPECT_EQ(other.openings[0].wall, ElementId{"e"});
  EXPECT_EQ(other.openings[0].along, 20_in);
  Opening door = window;
  door.id = {"d"}, door.kind = OpeningKind::door, door.along = 60_in, door.width = 50_in;
  room.option().openings.push_back(door);  // 35 to 85: no 24 in are left
  EXPECT_TRUE(putDown(copies, room.layout()).empty());
}

}  // namespace
}  // namespace elbowroom
