#include "core/plan/edit.h"

#include <gtest/gtest.h>

#include "core/geometry/measure.h"
#include "core/plan/integrity.h"
#include "core/plan/wall_line.h"
#include "tests/core/plan/hall_bath.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::hallBath;

Result<Plan> applied(const Plan& plan, Change change, std::size_t option = 0) {
  return apply(plan, Edit{option, std::move(change), "", ""});
}

// The accepted result's first option; a refusal fails the test.
Option after(const Plan& plan, Change change) {
  const Result<Plan> result = applied(plan, std::move(change));
  if (!result.ok()) {
    ADD_FAILURE() << result.error().message;
    return {};
  }
  EXPECT_EQ(integrity(*result), std::nullopt);
  return result->options[0];
}

std::string refusal(const Plan& plan, Change change, std::size_t option = 0) {
  const Result<Plan> result = applied(plan, std::move(change), option);
  return result.ok() ? "accepted" : result.error().message;
}

Point placeOf(const Option& o, const ElementId& wall, Length along) { return wallLine(o, wall)->at(along); }
Point placeOf(const Option& o, const Fixture& f) {
  const auto& on = std::get<OnWall>(f.placement);
  return placeOf(o, on.wall, on.along);
}
const OnWall& onWallOf(const Option& o, const char* id) {
  return std::get<OnWall>(findFixture(o, {id})->placement);
}

TEST(PutElements, ReplacesByIdInPlaceAndAddsWhatIsNew) {
  const Plan plan = hallBath();
  Fixture wc = *findFixture(plan.options[0], {"wc"});
  wc.placement = OnWall{{"s"}, 30_in, {}};
  const Fixture shower = typicalFixture(FixtureKind::shower, plan.options[0]);
  const Option o = after(plan, PutFixtures{{wc, shower}});
  ASSERT_EQ(o.fixtures.size(), 5u);
  EXPECT_EQ(o.fixtures[1], wc);
  EXPECT_EQ(o.fixtures[4], shower);
  EXPECT_EQ(o.fixtures[0], plan.options[0].fixtures[0]);

  Opening door = plan.options[0].openings[0];
  door.action = DoorAction::pocket;
  EXPECT_EQ(after(plan, PutOpenings{{door}}).openings[0].action, DoorAction::pocket);
  WallItem mirror = plan.options[0].on_walls[0];
  mirror.bottom = 40_in;
  EXPECT_EQ(after(plan, PutWallItems{{mirror}}).on_walls[0].bottom, 40_in);
}

TEST(PutElements, WhatWouldBreakThePlanIsRefusedWithTheReason) {
  const Plan plan = hallBath();
  Opening door = plan.options[0].openings[0];
  door.along = 10_in;
  EXPECT_EQ(refusal(plan, PutOpenings{{door}}), "A door reaches past the end of its wall.");
  Fixture stranger = plan.options[0].fixtures[0];
  stranger.id = {"d1"};
  EXPECT_EQ(refusal(plan, PutFixtures{{stranger}}), "The id \"d1\" is used twice.");
  stranger = plan.options[0].fixtures[0];
  stranger.width = {};
  EXPECT_EQ(refusal(plan, PutFixtures{{stranger}}), "The bath must have a width of more than zero.");
  EXPECT_EQ(refusal(plan, PutFixtures{}, 1), "The option to change does not exist.");
}

TEST(RemoveElements, TakesAnyKindAndRefusesUnknownIdsAndWalls) {
  const Plan plan = hallBath();
  const Option o = after(plan, RemoveElements{{{"wc"}, {"d1"}, {"m"}, {"f"}}});
  EXPECT_EQ(o.fixtures.size(), 3u);
  EXPECT_EQ(o.openings.size(), 1u);
  EXPECT_TRUE(o.on_walls.empty());
  EXPECT_TRUE(o.on_ceiling.empty());
  EXPECT_EQ(refusal(plan, RemoveElements{{{"wc"}, {"ghost"}}}),
            "There is nothing with the id \"ghost\" to remove.");
  EXPECT_NE(refusal(plan, RemoveElements{{{"n"}}}).find("wall"), std::string::npos);
}

TEST(SetRoom, KeepsTheCornersGivenAndRefusesToDropAWallInUse) {
  const Plan plan = hallBath();
  Room room = plan.options[0].room;
  room.walls[3].thickness = 6_in;
  EXPECT_EQ(after(plan, SetRoom{room}).room, room);
  room.walls[2].id = {"south"};
  EXPECT_EQ(refusal(plan, SetRoom{room}), "The wall of the toilet would vanish; remove the toilet first.");
  EXPECT_EQ(refusal(plan, SetRoom{{}}), "The wall of the door would vanish; remove the door first.");
}

TEST(PutWall, ChangesMarksButNotTheCorner) {
  const Plan plan = hallBath();
  Wall w = plan.options[0].room.walls[0];
  w.from = {1_in, 1_in};
  w.thickness = 5_in;
  w.plumbing = true;
  const Option o = after(plan, PutWall{w});
  EXPECT_EQ(o.room.walls[0].from, (Point{0_in, 60_in}));
  EXPECT_EQ(o.room.walls[0].thickness, 5_in);
  EXPECT_TRUE(o.room.walls[0].plumbing);
  w.id = {"zz"};
  EXPECT_EQ(refusal(plan, PutWall{w}), "The wall to change does not exist.");
}

// s runs from (96,0) to (0,0). Its left corner moved 12 in to the right: what stands on it stays where it is
// in the room, so its distance from the left end grows by 12.
TEST(MoveCorner, ElementsKeepTheirPlaceAlongAWallThatGrows) {
  const Plan plan = hallBath();
  const Option& before = plan.options[0];
  const Option o = after(plan, MoveCorner{{"s"}, {108_in, 0_in}});
  EXPECT_EQ(onWallOf(o, "wc").along, 57_in);
  EXPECT_EQ(onWallOf(o, "v").along, 87_in);
  EXPECT_EQ(findWallItem(o, {"m"})->along, 87_in);
  for (const char* id : {"wc", "v"})
    EXPECT_EQ(placeOf(o, *findFixture(o, {id})), placeOf(before, *findFixture(before, {id})));
  // studs stood at 8, 24, ... from (96,0): now 20 = 4 + 16
  EXPECT_EQ(o.room.walls[2].studs->first, 4_in);
  // the walls that did not change keep theirs to the nanometre
  EXPECT_EQ(o.openings, before.openings);
}

TEST(MoveCorner, OnAWallThatTurnsThePlaceIsProjected) {
  const Plan plan = hallBath();
  const Option o = after(plan, MoveCorner{{"e"}, {90_in, 70_in}});
  // n now runs from (0,60) to (90,70); the window's old centre (48,60) falls on it at 48 cos(a), cos a =
  // 90/hypot(90,10)
  EXPECT_NEAR(findOpening(o, {"win"})->along.inches(), 48 * 90 / std::hypot(90.0, 10.0), 1e-6);
  // The bath filled the old wall to its right end; its projection reaches 0.11 in past the leaning wall's
  // end.
  EXPECT_EQ(onWallOf(o, "b").along, wallLine(o, ElementId{"e"})->length - 30_in);
}

TEST(MoveCorner, AnOpeningIsPushedToStayOnAShorterWallAndRefusedWhereItCannot) {
  const Plan plan = hallBath();
  // w runs up from (0,0); n's corner comes down to 50: the door (25..55 from below) moves down to end at the
  // corner.
  const Option o = after(plan, MoveCorner{{"n"}, {0_in, 50_in}});
  EXPECT_EQ(findOpening(o, {"d1"})->along, 35_in);
  EXPECT_EQ(refusal(plan, MoveCorner{{"n"}, {0_in, 29_in}}), "The wall would be shorter than its door.");
  EXPECT_EQ(refusal(plan, MoveCorner{{"e"}, {20_in, 60_in}}), "The wall would be shorter than its window.");
  EXPECT_EQ(refusal(plan, MoveCorner{{"zz"}, {0_in, 0_in}}), "The wall to change does not exist.");
}

TEST(MoveCorner, RefusedWhenWallsWouldCrossOrLeaveTheWorld) {
  Plan plan = hallBath();
  plan.options[0].openings.clear();
  EXPECT_EQ(applied(plan, MoveCorner{{"n"}, {120_in, 30_in}}).error().code, "integrity/walls-cross");
  EXPECT_EQ(applied(plan, MoveCorner{{"n"}, {0_in, 0.5_in}}).error().code, "integrity/wall-too-short");
  EXPECT_EQ(applied(plan, MoveCorner{{"n"}, {Length::nanometres(INT64_MAX / 2), 0_in}}).error().code,
            "edit/too-far");
}

TEST(MoveCorner, FixturesAreKeptWhollyOnTheirWallWhenTheyWere) {
  const Plan plan = hallBath();
  // s shortens from the right: (96,0)..(20,0), 76 long. The vanity at 75 (60..90) ends at the corner.
  const Option o = after(plan, MoveCorner{{"w"}, {20_in, 0_in}});
  EXPECT_EQ(onWallOf(o, "v").along, 61_in);
  EXPECT_EQ(onWallOf(o, "wc").along, 45_in);
  // The vanity is 30 wide: on a shorter wall it stays centred.
  EXPECT_EQ(onWallOf(after(plan, MoveCorner{{"w"}, {76_in, 0_in}}), "v").along, 10_in);
}

TEST(MoveWall, SlidesBothCornersAlongTheNeighbours) {
  const Plan plan = hallBath();
  const Option o = after(plan, MoveWall{{"e"}, 6_in});
  EXPECT_EQ(o.room.walls[1].from, (Point{90_in, 60_in}));
  EXPECT_EQ(o.room.walls[2].from, (Point{90_in, 0_in}));
  EXPECT_EQ(o.room.walls.size(), 4u);
  // what stands on s keeps its place: 6 less from the corner that came nearer
  EXPECT_EQ(onWallOf(o, "wc").along, 39_in);
  EXPECT_EQ(onWallOf(o, "b").along, 30_in);
  // and outward, there and back, is the same plan
  const Result<Plan> out = applied(plan, MoveWall{{"n"}, -(7_in)});
  EXPECT_EQ(areaOf(roomOutline(out->options[0].room)), 96_in * 67_in);
  EXPECT_EQ(*applied(*out, MoveWall{{"n"}, 7_in}), plan);
}

TEST(MoveWall, AlongASlantedNeighbourTheDistanceIsSquareToTheWall) {
  Plan plan = hallBath();
  plan.options[0].fixtures.clear();
  plan.options[0].on_walls.clear();
  plan = *applied(plan, MoveCorner{{"e"}, {76_in, 60_in}});  // e leans: (76,60) to (96,0)
  const Option o = after(plan, MoveWall{{"n"}, 6_in});
  EXPECT_EQ(o.room.walls[0].from, (Point{0_in, 54_in}));
  EXPECT_EQ(o.room.walls[1].from, (Point{78_in, 54_in}));
  const Option slanted = after(plan, MoveWall{{"e"}, 3_in});
  const WallLine was = wallLine(plan.options[0], 1), now = wallLine(slanted, 1);
  EXPECT_NEAR(dot(now.from - was.from, was.inward).inches(), 3, 1e-6);
  EXPECT_NEAR(dot(now.to - was.from, was.inward).inches(), 3, 1e-6);
}

TEST(MoveWall, PartOfASplitWallLeavesTheOtherPartAndMakesAReturn) {
  Plan plan = hallBath();
  plan = *applied(plan, SplitWall{{"n"}, 72_in, {"n2"}});
  const Option o = after(plan, MoveWall{{"n2"}, -(12_in)});
  ASSERT_EQ(o.room.walls.size(), 6u);
  EXPECT_EQ(o.room.walls[0].from, (Point{0_in, 60_in}));
  EXPECT_EQ(o.room.walls[1].from, (Point{72_in, 60_in}));
  EXPECT_EQ(o.room.walls[2].id.text, "n2");
  EXPECT_EQ(o.room.walls[2].from, (Point{72_in, 72_in}));
  EXPECT_EQ(o.room.walls[3].from, (Point{96_in, 72_in}));
  EXPECT_EQ(areaOf(roomOutline(o.room)), 96_in * 60_in + 24_in * 12_in);
  // a middle part makes an alcove with a return at each side
  plan = *applied(hallBath(), RemoveElements{{{"win"}}});
  plan = *applied(plan, SplitWall{{"n"}, 72_in, {"n3"}});
  plan = *applied(plan, SplitWall{{"n"}, 36_in, {"n2"}});
  const Option alcove = after(plan, MoveWall{{"n2"}, -(10_in)});
  EXPECT_EQ(alcove.room.walls.size(), 8u);
  EXPECT_EQ(areaOf(roomOutline(alcove.room)), 96_in * 60_in + 36_in * 10_in);
}

TEST(MoveWall, RefusedWhenTheRoomWouldVanish) {
  EXPECT_EQ(refusal(hallBath(), MoveWall{{"e"}, 96_in}), "The wall would be shorter than its window.");
  Plan plan = hallBath();
  plan.options[0].openings.clear();
  EXPECT_FALSE(applied(plan, MoveWall{{"e"}, 96_in}).ok());
  EXPECT_EQ(applied(plan, MoveWall{{"e"}, 100_in}).error().code, "integrity/wall-turns-wrong");
  EXPECT_FALSE(applied(plan, MoveWall{{"e"}, Length::nanometres(INT64_MAX / 2)}).ok());
}

TEST(SplitWall, ElementsStayWhereTheyAreOnTheTwoParts) {
  const Plan plan = hallBath();
  const Option& before = plan.options[0];
  const Option o = after(plan, SplitWall{{"s"}, 58_in, {"s2"}});
  ASSERT_EQ(o.room.walls.size(), 5u);
  EXPECT_EQ(o.room.walls[3].id.text, "s2");
  EXPECT_EQ(o.room.walls[3].from, (Point{38_in, 0_in}));
  EXPECT_TRUE(o.room.walls[3].plumbing);
  EXPECT_EQ(onWallOf(o, "wc"), (OnWall{{"s"}, 45_in, {}}));
  EXPECT_EQ(onWallOf(o, "v"), (OnWall{{"s2"}, 17_in, {}}));
  EXPECT_EQ(findWallItem(o, {"m"})->wall.text, "s2");
  for (const char* id : {"wc", "v"})
    EXPECT_EQ(placeOf(o, *findFixture(o, {id})), placeOf(before, *findFixture(before, {id})));
  // studs at 8, 24, 40, 56, 72 from the left: 14 from the new corner
  EXPECT_EQ(o.room.walls[3].studs->first, 14_in);
}

TEST(SplitWall, RefusedInAnOpeningAtTheEndAndWithATakenId) {
  const Plan plan = hallBath();
  EXPECT_EQ(refusal(plan, SplitWall{{"w"}, 30_in, {"w2"}}), "The new corner would be in the door.");
  EXPECT_EQ(refusal(plan, SplitWall{{"n"}, 59_in, {"n2"}}), "The new corner would be in the window.");
  EXPECT_EQ(refusal(plan, SplitWall{{"s"}, 96_in, {"s2"}}), "The new corner must be on the wall.");
  EXPECT_EQ(applied(plan, SplitWall{{"s"}, 0.5_in, {"s2"}}).error().code, "integrity/wall-too-short");
  EXPECT_EQ(applied(plan, SplitWall{{"s"}, 48_in, {"wc"}}).error().code, "integrity/duplicate-id");
  EXPECT_EQ(applied(plan, SplitWall{{"s"}, 48_in, {}}).error().code, "integrity/empty-id");
  // Just beside the door is no trouble.
  EXPECT_TRUE(applied(plan, SplitWall{{"w"}, 25_in, {"w2"}}).ok());
  EXPECT_TRUE(applied(plan, SplitWall{{"w"}, 55_in, {"w2"}}).ok());
}

TEST(RemoveCorner, UndoesASplitExactly) {
  const Plan plan = hallBath();
  for (const char* id : {"n", "e", "s", "w"})
    for (const Length along : {10_in, 20_in, 58_in, 59_in}) {
      const Result<Plan> split = applied(plan, SplitWall{{id}, along, {"x"}});
      if (!split.ok()) continue;
      EXPECT_EQ(*applied(*split, RemoveCorner{{"x"}}), plan) << id;
    }
}

TEST(RemoveCorner, ElementsMoveToTheJoinedWall) {
  Plan plan = hallBath();
  plan.options[0].openings.clear();
  // Without the corner (96,0), e runs on from (96,60) to (0,0) and takes toilet, vanity and mirror.
  const Option o = after(plan, RemoveCorner{{"s"}});
  ASSERT_EQ(o.room.walls.size(), 3u);
  for (const char* id : {"wc", "v", "b"}) EXPECT_EQ(onWallOf(o, id).wall.text, "e");
  EXPECT_EQ(findWallItem(o, {"m"})->wall.text, "e");
  // (51,0) from (96,60) along (-96,-60)/113.208: (45*96 + 60*60)/113.208
  EXPECT_NEAR(onWallOf(o, "wc").along.inches(), (45.0 * 96 + 60 * 60) / std::hypot(96.0, 60.0), 1e-6);
  Plan three = plan;
  three.options = {o};
  EXPECT_EQ(refusal(three, RemoveCorner{{"e"}}),
            "A room needs at least three walls.");
}

TEST(RemoveCorner, TheFirstCornerJoinsTheLastWall) {
  Plan plan = hallBath();
  plan = *applied(plan, SplitWall{{"w"}, 58_in, {"x"}});
  // The ring may begin anywhere: here it begins with x, so x's corner joins the last wall.
  auto& walls = plan.options[0].room.walls;
  std::rotate(walls.begin(), walls.end() - 1, walls.end());
  ASSERT_EQ(walls[0].id.text, "x");
  const Option o = after(plan, RemoveCorner{{"x"}});
  EXPECT_EQ(o.room.walls, hallBath().options[0].room.walls);
}

TEST(Options, AreCopiedRenamedAndRemoved) {
  const Plan plan = hallBath();
  const Plan two = *applied(plan, AddOption{"Pocket door", 0});
  ASSERT_EQ(two.options.size(), 2u);
  EXPECT_EQ(two.options[1].fixtures, plan.options[0].fixtures);
  EXPECT_EQ(two.options[1].room, plan.options[0].room);
  EXPECT_EQ(two.options[1].name, "Pocket door");
  const Plan empty = *applied(two, AddOption{"Empty", -1});
  EXPECT_TRUE(empty.options[2].room.walls.empty());
  EXPECT_EQ(applied(two, AddOption{"As found", 1}).error().code, "integrity/option-name");
  EXPECT_EQ(applied(two, AddOption{"", 1}).error().code, "integrity/option-name");
  EXPECT_EQ(refusal(two, AddOption{"Other", 2}), "The option to copy does not exist.");
  EXPECT_EQ(applied(two, RenameOption{"As found"}, 1).error().code, "integrity/option-name");
  EXPECT_EQ(applied(two, RenameOption{"Slider"}, 1)->options[1].name, "Slider");
  EXPECT_EQ(refusal(two, RenameOption{"X"}, 2), "The option to rename does not exist.");
  EXPECT_EQ(*applied(two, RemoveOption{}, 1), plan);
  EXPECT_EQ(refusal(plan, RemoveOption{}), "The last option of a plan cannot be removed.");
  EXPECT_EQ(refusal(two, RemoveOption{}, 2), "The option to remove does not exist.");
}

TEST(Options, MovedTheyKeepTheirOrderButTheFirstStaysFirst) {
  Plan plan = *applied(hallBath(), AddOption{"B", 0});
  plan = *applied(plan, AddOption{"C", 0});
  plan = *applied(plan, AddOption{"D", 0});
  const auto names = [](const Plan& p) {
    std::string all;
    for (const Option& o : p.options) all += o.name.substr(0, 1);
    return all;
  };
  EXPECT_EQ(names(*applied(plan, MoveOption{3}, 1)), "ACDB");
  EXPECT_EQ(names(*applied(plan, MoveOption{1}, 3)), "ADBC");
  EXPECT_EQ(*applied(plan, MoveOption{2}, 2), plan);
  EXPECT_EQ(*applied(plan, MoveOption{0}, 0), plan);
  const std::string first = "The first option is the room as found; it stays first.";
  EXPECT_EQ(refusal(plan, MoveOption{1}, 0), first);
  EXPECT_EQ(refusal(plan, MoveOption{0}, 2), first);
  EXPECT_EQ(refusal(plan, MoveOption{4}, 2), "The option to move does not exist.");
  EXPECT_EQ(refusal(plan, MoveOption{1}, 4), "The option to move does not exist.");
}

TEST(Options, AnEditTouchesItsOptionOnly) {
  const Plan two = *applied(hallBath(), AddOption{"Pocket door", 0});
  const Plan out = *applied(two, MoveWall{{"n"}, -(6_in)}, 1);
  EXPECT_EQ(out.options[0], two.options[0]);
  EXPECT_NE(out.options[1], two.options[1]);
}

Person person(const char* name, Length stature) {
  return {name, stature, false, {}, {}};
}

TEST(WholePlan, WhatIsSetToSomebodyFollowsTheNameInAllOptions) {
  Plan plan = hallBath();
  plan.people = {person("Ada", 66_in), person("Ben", 74_in)};
  WallItem mirror;
  mirror.kind = "mirror";
  mirror.wall = {"s"};
  mirror.along = 40_in, mirror.bottom = 40_in, mirror.width = 20_in, mirror.height = 30_in;
  for (const char* name : {"Ada", "Ben", "", "Guest"}) {
    mirror.id = {std::string("for") + name};
    mirror.person = name;
    plan.options[0].on_walls.push_back(mirror);
  }
  const auto two = applied(plan, AddOption{"Another", 0});
  ASSERT_TRUE(two.ok()) << two.error().message;
  plan = *two;
  // Names change places, and one who goes takes nothing along.
  const Plan swapped = *applied(plan, SetPeople{{person("Ben", 66_in), person("Ada", 74_in)}, {{"Ada", "Ben"}, {"Ben", "Ada"}}});
  const Plan gone = *applied(plan, SetPeople{{person("Ada", 66_in)}});
  const Plan heir = *applied(plan, SetPeople{{person("Ben", 66_in)}, {{"Ada", "Ben"}}});
  const Plan let_go = *applied(plan, SetPeople{plan.people, {{"Ben", {}}}});
  const auto of = [](const Plan& p, std::size_t option, const char* id) {
    return findWallItem(p.options[option], {id})->person;
  };
  for (const std::size_t option : {0u, 1u}) {
    EXPECT_EQ(of(swapped, option, "forAda"), "Ben");
    EXPECT_EQ(of(swapped, option, "forBen"), "Ada");
    EXPECT_EQ(of(swapped, option, "for"), "");
    EXPECT_EQ(of(gone, option, "forBen"), "");
    EXPECT_EQ(of(gone, option, "forAda"), "Ada");
    EXPECT_EQ(of(gone, option, "forGuest"), "Guest") << "never was one of the people";
    EXPECT_EQ(of(heir, option, "forAda"), "Ben");
    EXPECT_EQ(of(heir, option, "forBen"), "") << "somebody else took the name";
    EXPECT_EQ(of(let_go, option, "forBen"), "");
  }
}

TEST(WholePlan, SettingsAreSet) {
  const Plan plan = hallBath();
  EXPECT_EQ(applied(plan, SetTitle{"T"})->title, "T");
  EXPECT_EQ(applied(plan, SetUnit{Unit::millimetres})->unit, Unit::millimetres);
  EXPECT_EQ(applied(plan, SetBooks{{"us-access"}})->books, (std::vector<std::string>{"us-access"}));
  EXPECT_EQ(applied(plan, SetNorth{30_deg})->north, 30_deg);
  std::vector<Person> people = plan.people;
  people[0].stature = 70_in;
  EXPECT_EQ(applied(plan, SetPeople{people})->people, people);
  people[0].stature = 0_in;
  EXPECT_EQ(applied(plan, SetPeople{people}).error().code, "integrity/stature");
  EXPECT_EQ(applied(plan, SetCeiling{{84_in, {}, {}}})->options[0].room.ceiling.height, 84_in);
}

}  // namespace
}  // namespace elbowroom
