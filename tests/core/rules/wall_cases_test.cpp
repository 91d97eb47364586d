// Things on walls held against people, water and glass, at the limit and a sixteenth of an inch to either side. Reach,
// eyes: ANSUR II ratios (0.461, 0.935); spray: worked example T29; child's mirror: T19; glass: wagnercompanies.com.
#include <gtest/gtest.h>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/at_water.h"
#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {

using testing_room::in;
using testing_room::met;
using testing_room::TestRoom;
using namespace literals;

WallItem& put(TestRoom& room, const char* kind, const char* id, const char* wall, double along) {
  WallItem item = typicalWallItem(kind, room.option());
  item.id = {id};
  item.wall = {wall};
  item.along = in(along);
  room.option().on_walls.push_back(item);
  return room.option().on_walls.back();
}
Outcome at(const TestRoom& room, const char* rule) { return room.outcome("craft", rule); }
void shower(TestRoom& room, double width = 36, double depth = 36) {
  room.add("sh", FixtureKind::shower, "n", width / 2, width, depth);
}

// Arm 8, head at 80, control at 45: 14.2 to 28.2 in from the head's wall.
TEST(WallCases, TheSprayBandOfTheWorkedExample) {
  const auto band = checks::sprayOnWall(8_in, 35_in);
  EXPECT_NEAR(band.near.inches(), 14.2, 0.05);
  EXPECT_NEAR(band.far.inches(), 28.2, 0.05);
  EXPECT_NEAR(band.half.inches(), 6.57, 0.01);  // 35 tan 10 / cos 20
}

TEST(WallCases, AControlOutOfTheSpray) {
  TestRoom room(96, 96);
  shower(room);
  WallItem& head = put(room, "shower-head", "h", "n", 18);
  head.bottom = 78_in;  // centre 80
  head.shower = {"sh"};
  WallItem& control = put(room, "control", "c", "w", 66);  // 96 - 66 = 30 from the head's wall
  control.bottom = 41.5_in;                                // centre 45
  control.shower = {"sh"};
  EXPECT_TRUE(met(at(room, "control-out-of-spray")));
  WallItem& c = room.option().on_walls[1];
  for (const auto& [from_wall, fine] :
       {std::pair{28.3, true}, {28.1, false}, {20.0, false}, {14.3, false}, {14.1, true}, {11.0, true}}) {
    c.along = in(96 - from_wall);
    EXPECT_EQ(met(at(room, "control-out-of-spray")), fine) << from_wall;
  }
  c.wall = {"n"};
  for (const auto& [along, fine] : {std::pair{18.0, false}, {24.5, false}, {24.6, true}}) {
    c.along = in(along);
    EXPECT_EQ(met(at(room, "control-out-of-spray")), fine) << along;
  }
}

TEST(WallCases, AHeadOnTheCeilingSpraysDown) {
  TestRoom room(96, 96);
  shower(room);
  CeilingItem head = typicalCeilingItem("shower-head", room.option());
  head.at = {18_in, 78_in};
  room.option().on_ceiling.push_back(head);
  WallItem& control = put(room, "control", "c", "n", 18);
  control.bottom = 42.5_in;  // 46 up, 50 under the ceiling: 4 + 50 tan 10 = 12.8 round the head, the wall 18 off
  control.shower = {"sh"};
  EXPECT_TRUE(met(at(room, "control-out-of-spray")));
  room.option().on_ceiling[0].at.y = 84_in;  // 12 off
  EXPECT_EQ(at(room, "control-out-of-spray"), Outcome::shortfall);
}

// The median woman reaches 0.461 x 64 = 29.504 in; the shortest named adult her own.
TEST(WallCases, AControlReachedFromOutside) {
  TestRoom room(96, 96);
  shower(room, 36, 60);
  room.option().fixtures[0].glass = {Pane{Side::right, 76_in, {}, {}, {}, {}}};
  put(room, "control", "c", "w", 36 + 29.5).shower = {"sh"};
  EXPECT_TRUE(met(at(room, "control-from-outside")));
  room.option().on_walls[0].along += 0.0625_in;
  EXPECT_EQ(at(room, "control-from-outside"), Outcome::shortfall);
  EXPECT_NEAR(room.measured("craft", "control-from-outside"), 29.5625, 1e-6);
  room.plan().people = {Person{"Tall", 74_in, false, {}, {}}, Person{"Child", 40_in, true, {}, {}}};  // 34.1
  EXPECT_TRUE(met(at(room, "control-from-outside")));
}

TEST(WallCases, AHeadOverTheTallest) {
  TestRoom room(96, 96);
  shower(room);
  put(room, "shower-head", "h", "n", 18).bottom = 74_in;
  EXPECT_EQ(at(room, "head-over-tallest"), Outcome::notApplicable);
  room.plan().people = {Person{"Tall", 74_in, false, {}, {}}, Person{"Short", 64_in, false, {}, {}}};
  EXPECT_EQ(at(room, "head-over-tallest"), Outcome::close);
  room.option().on_walls[0].bottom = 73.9375_in;
  EXPECT_EQ(at(room, "head-over-tallest"), Outcome::shortfall);
}

// From the middle of the back wall, rail from 42 in: corner hypot(18, 36) = 40.249 across, 25 down: 47.381.
TEST(WallCases, AHoseToTheFarthestCorner) {
  TestRoom room(96, 96);
  shower(room);
  WallItem& spray = put(room, "hand-spray", "s", "n", 18);
  spray.shower = {"sh"};
  EXPECT_EQ(at(room, "hose-reaches-corners"), Outcome::unknown);
  room.option().on_walls[0].facts["hose"] = 47.4375_in;
  EXPECT_TRUE(met(at(room, "hose-reaches-corners")));
  room.option().on_walls[0].facts["hose"] = 47.3125_in;
  EXPECT_EQ(at(room, "hose-reaches-corners"), Outcome::shortfall);
  EXPECT_NEAR(room.shortBy("craft", "hose-reaches-corners"), 47.381 - 47.3125, 0.001);
}

// Round a glass side: from n, 60 from the corner, to the shower's front 36 wide: by the glass' end.
TEST(WallCases, ASwitchRoundTheGlass) {
  TestRoom room(96, 96);
  shower(room);
  put(room, "switch", "s", "n", 46);
  EXPECT_NEAR(room.measured("craft", "switch-out-of-reach"), 10, 1e-6);  // the right side is open
  room.option().fixtures[0].glass = {Pane{Side::right, 76_in, {}, {}, {}, {}}};
  EXPECT_NEAR(room.measured("craft", "switch-out-of-reach"), std::hypot(10, 36), 1e-5);  // 37.4
  EXPECT_TRUE(met(at(room, "switch-out-of-reach")));  // the 95 % man: 0.461 x 73.6 = 33.93
  room.option().on_walls[0].along = 18_in;            // in it
  EXPECT_EQ(room.measured("craft", "switch-out-of-reach"), 0);
  room.option().on_walls[0].facts["shower_assembly"] = true;
  EXPECT_EQ(at(room, "switch-out-of-reach"), Outcome::notApplicable);
}

TEST(WallCases, ATowelWithinReach) {
  TestRoom room(96, 96);
  shower(room);
  EXPECT_EQ(at(room, "towel-at-shower"), Outcome::notApplicable);
  put(room, "hook", "k", "n", 36 + 29.5);
  EXPECT_TRUE(met(at(room, "towel-at-shower")));
  room.option().on_walls[0].along += 0.0625_in;
  EXPECT_EQ(at(room, "towel-at-shower"), Outcome::shortfall);
  put(room, "towel-heater", "t", "e", 48);  // farther: the nearest counts
  EXPECT_NEAR(room.measured("craft", "towel-at-shower"), 29.5625, 1e-6);
}

// The wall e, 96 long from the north; the ceiling rises from `low` at it to 96 in at 48 in.
TEST(WallCases, UnderASlope) {
  TestRoom room(96, 96);
  room.option().room.ceiling.slopes = {{{"e"}, 80_in, 48_in, {}}};
  WallItem& light = put(room, "light", "l", "e", 40);
  light.bottom = 75_in;  // to 80
  EXPECT_EQ(at(room, "wall-item-under-ceiling"), Outcome::close);
  room.option().on_walls[0].bottom += 0.0625_in;
  EXPECT_EQ(at(room, "wall-item-under-ceiling"), Outcome::shortfall);
  // On the north wall, 12 wide, its right end 12 from e: 80 + 16 x 12 / 48 = 84 there.
  WallItem& item = room.option().on_walls[0];
  item.wall = {"n"};
  item.width = 12_in;
  item.along = 78_in;
  item.bottom = 79_in;
  EXPECT_EQ(at(room, "wall-item-under-ceiling"), Outcome::close);
  item.bottom += 0.0625_in;
  EXPECT_EQ(at(room, "wall-item-under-ceiling"), Outcome::shortfall);
  room.option().room.ceiling = {};
  EXPECT_EQ(at(room, "wall-item-under-ceiling"), Outcome::unknown);
}

TEST(WallCases, GlassBetweenHolesAndEdges) {
  TestRoom room(96, 96);
  WallItem& mirror = put(room, "mirror", "m", "n", 48);  // 18 to 78
  mirror.width = 60_in;
  put(room, "sconce-box", "a", "n", 20.5);  // 1/2 in of glass, and 1/4 in thick
  EXPECT_EQ(at(room, "mirror-hole-to-edge"), Outcome::close);
  room.option().on_walls[1].along = 20.4375_in;
  EXPECT_EQ(at(room, "mirror-hole-to-edge"), Outcome::shortfall);
  room.option().on_walls[0].depth = 0.125_in;  // then 1/4 in is enough
  EXPECT_TRUE(met(at(room, "mirror-hole-to-edge")));
  room.option().on_walls[0].depth = 0.25_in;
  room.option().on_walls[1].along = 40_in;
  put(room, "sconce-box", "b", "n", 44.5);
  EXPECT_EQ(at(room, "mirror-hole-to-hole"), Outcome::close);
  room.option().on_walls[2].along = 44.4375_in;
  EXPECT_EQ(at(room, "mirror-hole-to-hole"), Outcome::shortfall);
}

TEST(WallCases, OnlyTheNearestOfAWallIsNamedWhereAllIsWell) {
  TestRoom room(96, 96);
  put(room, "light", "high", "n", 20).bottom = 85_in;
  put(room, "switch", "low", "n", 60);
  put(room, "switch", "other", "e", 60);
  const auto fine = room.findings("craft", "wall-item-under-ceiling");
  ASSERT_EQ(fine.size(), 2u);
  EXPECT_EQ(fine[0].subjects[0].text == "high" || fine[1].subjects[0].text == "high", true);
  room.option().on_walls[0].bottom = 92_in;
  room.option().on_walls[1].bottom = 94_in;
  int missed = 0;
  for (const Finding& f : room.findings("craft", "wall-item-under-ceiling")) missed += f.outcome == Outcome::shortfall;
  EXPECT_EQ(missed, 2);
}

// Eyes of 5 ft 4 in: 59.84; of 6 ft 2 in: 69.19; a child of 40.1 in: 35.8, its face from 33.8 down.
TEST(WallCases, SetToSomebodysEyes) {
  TestRoom room(96, 96);
  room.plan().people = {Person{"Short", 64_in, false, {}, {}}, Person{"Tall", 74_in, false, {}, {}}};
  WallItem& small = put(room, "makeup-mirror", "m", "n", 20);  // 9 high
  EXPECT_EQ(at(room, "makeup-mirror-eyes"), Outcome::notApplicable);
  small.person = "Short";
  for (const auto& [centre, fine] : {std::pair{59.84, true}, {64.3, true}, {64.4, false}, {55.3, false}, {55.4, true}}) {
    room.option().on_walls[0].bottom = in(centre - 4.5);
    EXPECT_EQ(met(at(room, "makeup-mirror-eyes")), fine) << centre;
  }
  WallItem& light = put(room, "side-light", "l", "n", 60);  // 12 high, centre 63
  light.person = "Tall";
  EXPECT_EQ(at(room, "side-light-eyes"), Outcome::shortfall);
  room.option().on_walls[1].bottom = 57.25_in;  // to 69.25
  EXPECT_TRUE(met(at(room, "side-light-eyes")));
}

// A mirror 84 to be cut has a hole for a side light; one that hangs there already, or is bought whole, has none.
TEST(WallCases, OnlyAMirrorThatIsCutHasLightsOnIt) {
  TestRoom room(96, 96);
  put(room, "mirror", "m", "n", 48).width = 84_in;
  const Length up = room.option().on_walls[0].bottom + 6_in;
  put(room, "side-light", "l", "n", 30).bottom = up;
  const auto apart = [&] {
    for (const Finding& f : room.findings("craft", "wall-items-apart"))
      if (f.outcome == Outcome::shortfall) return false;
    return true;
  };
  EXPECT_TRUE(apart());
  room.option().on_walls[0].status = Status::keep;
  EXPECT_FALSE(apart());
  room.option().on_walls[1].status = Status::keep;  // both as found
  EXPECT_TRUE(apart());
  room.option().on_walls[0].status = Status::fresh;
  room.option().on_walls[0].kind = "lit-mirror";
  EXPECT_FALSE(apart());
  room.option().on_walls[0].kind = "mirror";
  room.option().on_walls[1] = typicalWallItem("towel-bar", room.option());
  room.option().on_walls[1].id = {"l"};
  room.option().on_walls[1].wall = {"n"};
  room.option().on_walls[1].along = 48_in;
  room.option().on_walls[1].bottom = up;
  EXPECT_FALSE(apart()) << "a bar gets no hole";
}

TEST(WallCases, AThingWithinItsWall) {
  TestRoom room(96, 60);
  WallItem& mirror = put(room, "mirror", "m", "e", 30);  // the wall is 60 long
  mirror.width = 60_in;
  EXPECT_TRUE(met(at(room, "wall-item-within-wall")));
  mirror.width = 60.0625_in;
  EXPECT_EQ(at(room, "wall-item-within-wall"), Outcome::shortfall);
  mirror.width = 20_in;
  mirror.along = 9.9375_in;
  EXPECT_EQ(at(room, "wall-item-within-wall"), Outcome::shortfall);
  put(room, "hook", "h", "e", 40);
  int clear = 0, missed = 0;
  for (const Finding& f : room.findings("craft", "wall-item-within-wall")) {
    missed += f.outcome == Outcome::shortfall && f.subjects[0].text == "m";
    clear += f.outcome == Outcome::clear && f.subjects[0].text == "h";
  }
  EXPECT_EQ(missed, 1);
  EXPECT_EQ(clear, 1);
}

// The ceiling falls from 96 at 48 in to 72 at wall e: along wall n it is 84 high 24 in from e.
TEST(WallCases, AWindowUnderASlope) {
  TestRoom room(96, 96);
  Ceiling& ceiling = room.option().room.ceiling;
  ceiling.height = 96_in;
  ceiling.slopes = {CeilingSlope{{"e"}, 72_in, 48_in}};
  Opening& w = room.door("n", 60, 24, Hand::left);  // 48 to 72 along n
  w.kind = OpeningKind::window;
  w.sill = 44_in;
  w.height = 40_in;
  EXPECT_TRUE(met(at(room, "opening-under-ceiling")));
  w.height = 40.0625_in;
  EXPECT_EQ(at(room, "opening-under-ceiling"), Outcome::shortfall);
  w.sill.reset();
  EXPECT_EQ(at(room, "opening-under-ceiling"), Outcome::notApplicable);
}

TEST(WallCases, AMirrorForTheChild) {
  TestRoom room(96, 96);
  put(room, "mirror", "m", "n", 48).bottom = 33.75_in;
  EXPECT_EQ(at(room, "mirror-shows-child"), Outcome::notApplicable);
  room.plan().people = {Person{"Child", 40.1_in, true, {}, {}}};
  EXPECT_TRUE(met(at(room, "mirror-shows-child")));
  room.option().on_walls[0].bottom = 33.875_in;
  EXPECT_EQ(at(room, "mirror-shows-child"), Outcome::shortfall);
  put(room, "mirror", "full", "e", 48).bottom = 10_in;  // another one serves it
  EXPECT_TRUE(met(at(room, "mirror-shows-child")));
}

TEST(WallCases, AReceptacleForEachOfTwo) {
  TestRoom room(120, 96);
  Fixture& v = room.add("v", FixtureKind::vanity, "n", 60, 60, 21);  // 30 to 90
  v.basins = 2;
  EXPECT_EQ(at(room, "receptacle-per-person"), Outcome::shortfall) << "none at all";
  put(room, "receptacle", "a", "n", 20);
  EXPECT_EQ(at(room, "receptacle-per-person"), Outcome::shortfall);
  put(room, "receptacle", "b", "e", 57);  // hypot(30, 36) from it
  EXPECT_EQ(at(room, "receptacle-per-person"), Outcome::shortfall);
  room.option().on_walls[1].along = 40_in;  // hypot(30, 19) = 35.5
  EXPECT_TRUE(met(at(room, "receptacle-per-person")));
}

}  // namespace
}  // namespace elbowroom
