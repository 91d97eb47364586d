// Comfort rules that read what the plan states or where things are: what they ask for, whom they leave out,
// and the exceptions of their texts (limits: tests/core/file/rule_limits_test.cpp; the texts: the rules'
// sources).
#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::met;
using testing_room::TestRoom;

const char* const kBook = "comfort";

WallItem& hang(TestRoom& room, const char* id, const char* kind, const char* wall, double along,
               double bottom, double width, double height) {
  WallItem item;
  item.id = {id};
  item.kind = kind;
  item.wall = {wall};
  item.along = in(along);
  item.bottom = in(bottom);
  item.width = in(width);
  item.height = in(height);
  room.option().on_walls.push_back(item);
  return room.option().on_walls.back();
}
CeilingItem& hangUp(TestRoom& room, const char* id, const char* kind, double x, double y) {
  CeilingItem item;
  item.id = {id};
  item.kind = kind;
  item.at = {in(x), in(y)};
  room.option().on_ceiling.push_back(item);
  return room.option().on_ceiling.back();
}
void seat(TestRoom& room) {
  Person p;
  p.name = "Visitor";
  p.stature = 66_in;
  p.chair = Chair{26_in, 48_in};
  room.plan().people.push_back(p);
}
std::string factOf(const TestRoom& room, const char* rule) { return room.findings(kBook, rule).at(0).fact; }

TEST(ComfortRoom, ALightServesWhereItHangsOverTheFloorBefore) {
  TestRoom room(120, 120);
  room.add("v", FixtureKind::vanity, "n", 60, 36, 20);  // its front is 100 in up the plan
  EXPECT_EQ(room.outcome(kBook, "light-at-fixture"), Outcome::unknown);
  EXPECT_EQ(room.findings(kBook, "light-at-fixture")[0].detail, "no-lamp");
  for (const auto& [x, y, serves] : {std::tuple{60.0, 70.0, true},
                                     {60.0, 69.0, false},
                                     {90.0, 100.0, true},
                                     {91.0, 100.0, false},
                                     {30.0, 110.0, true},
                                     {29.0, 110.0, false}}) {
    room.option().on_ceiling.clear();
    hangUp(room, "l", "light", x, y);
    EXPECT_EQ(met(room.outcome(kBook, "light-at-fixture")), serves) << x << " " << y;
  }
  hang(room, "s", "side-light", "n", 36, 57, 5, 12);
  EXPECT_TRUE(met(room.outcome(kBook, "light-at-fixture"))) << "a light beside the mirror serves too";
  room.option().on_walls[0].status = Status::remove;
  EXPECT_FALSE(met(room.outcome(kBook, "light-at-fixture")));
}

TEST(ComfortRoom, EachOfTwoBasinsWantsALampOfItsOwn) {
  TestRoom room(120, 120);
  const char* rule = "light-each-basin";
  Fixture& counter = room.add("v", FixtureKind::vanity, "n", 60, 72, 21);  // middles of the basins at 42 and 78
  counter.basins = 1;
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable);
  room.option().fixtures[0].basins = 2;
  EXPECT_EQ(room.findings(kBook, rule)[0].detail, "no-lamp");
  const auto lit = [&](std::vector<std::pair<double, double>> lamps) {  // middle and width of each
    room.option().on_walls.clear();
    int n = 0;
    for (const auto& [along, wide] : lamps)
      hang(room, ("l" + std::to_string(++n)).c_str(), "light", "n", along, 76, wide, 5);
    return met(room.outcome(kBook, rule));
  };
  EXPECT_FALSE(lit({{60, 12}})) << "one lamp between two";
  EXPECT_TRUE(lit({{60, 36}})) << "it reaches from middle to middle";
  EXPECT_FALSE(lit({{60, 35}}));
  EXPECT_TRUE(lit({{42, 12}, {78, 12}}));
  EXPECT_TRUE(lit({{24, 5}, {96, 5}})) << "one beside each";
  EXPECT_FALSE(lit({{24, 5}, {36, 5}})) << "both are at the left basin; the right one's middle is 42 in off";
  EXPECT_TRUE(lit({{24, 5}, {60, 5}})) << "and one between them then serves the right one";
  EXPECT_FALSE(lit({{4, 5}, {78, 12}})) << "too far to the side";
}

TEST(ComfortRoom, ATowelHangsDownToWhatStandsUnderIt) {
  TestRoom room(96, 96);
  const char* rule = "towel-hangs-free";
  hang(room, "bar", "towel-bar", "n", 48, 45.5, 24, 1);
  EXPECT_DOUBLE_EQ(room.measured(kBook, rule), 46) << "to the floor";
  Fixture& bath = room.add("t", FixtureKind::bath, "n", 48, 60, 30);
  bath.height = 15_in;
  EXPECT_DOUBLE_EQ(room.measured(kBook, rule), 31);
  room.option().fixtures[0].status = Status::remove;
  EXPECT_DOUBLE_EQ(room.measured(kBook, rule), 46);
  hang(room, "low", "towel-bar", "n", 65, 25.5, 12, 1);  // from 59 to 71: under the last inch of the upper bar
  const auto under = [&] {  // what the upper bar hangs over, and how far down
    for (const Finding& f : room.findings(kBook, rule))
      if (f.subjects.front() == ElementId{"bar"})
        return std::pair{std::get<Length>(*f.measured).inches(), f.subjects.back().text};
    return std::pair{0.0, std::string()};
  };
  EXPECT_EQ(under(), (std::pair{46 - 26.5, std::string("low")}));
  room.option().on_walls[1].along = 66_in;
  EXPECT_EQ(under(), (std::pair{46.0, std::string("bar")})) << "beside it";
}

TEST(ComfortRoom, HeatIsWhatIsDrawnOrStated) {
  TestRoom room(96, 96);
  const char* rule = "heat-there";
  EXPECT_EQ(factOf(room, rule), "floor_heat");
  room.option().room.facts["floor_heat"] = false;
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::shortfall);
  hang(room, "r", "towel-heater", "n", 48, 30, 20, 30);
  EXPECT_TRUE(met(room.outcome(kBook, rule)));
  room.option().on_walls[0].status = Status::remove;
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::shortfall);
  room.option().room.facts["floor_heat"] = true;
  EXPECT_TRUE(met(room.outcome(kBook, rule)));
}

TEST(ComfortRoom, GlassBesideADoorIsMeasured) {
  TestRoom room(96, 96);
  const char* rule = "shower-glass-panel";
  Fixture& shower = room.add("sh", FixtureKind::shower, "n", 18, 36, 36);
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable);
  shower.glass.resize(1);
  EXPECT_DOUBLE_EQ(room.measured(kBook, rule), 36);
  room.option().fixtures[0].glass[0].door = 32_in;
  EXPECT_DOUBLE_EQ(room.measured(kBook, rule), 4);
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::shortfall);
  room.option().fixtures[0].glass[0].door = 35.5_in;
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable) << "gaps, no glass";
}

TEST(ComfortRoom, AnOpenFloorHasNoGlassAndTwoOpenSides) {
  TestRoom room(144, 144);
  const char* rule = "shower-open-floor";
  Fixture& shower = room.add("sh", FixtureKind::shower, "n", 30, 60, 40);  // in the corner
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable) << "its curb is not stated";
  shower.curb = Length{};
  EXPECT_EQ(factOf(room, rule), "curtain");
  room.option().fixtures[0].facts["curtain"] = true;
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable);
  room.option().fixtures[0].facts["curtain"] = false;
  EXPECT_DOUBLE_EQ(room.measured(kBook, rule), 40);
  room.option().fixtures[0].width = 144_in;
  std::get<OnWall>(room.option().fixtures[0].placement).along = 72_in;
  EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable) << "walls on three sides: the water stays in";
}

TEST(ComfortRoom, DaylightCountsGlassAndNotTheTube) {
  TestRoom room(120, 120);
  EXPECT_EQ(room.outcome(kBook, "daylight"), Outcome::notApplicable);
  Opening& window = room.door("n", 60, 24, Hand::right);
  window.kind = OpeningKind::window;
  window.height = 24_in;
  window.sill = 48_in;
  EXPECT_DOUBLE_EQ(room.measured(kBook, "daylight"), 576) << "no more glass than opening";
  room.option().openings[0].facts = {{"glass_width", 18_in}, {"glass_height", 20_in}};
  EXPECT_DOUBLE_EQ(room.measured(kBook, "daylight"), 360);
  EXPECT_EQ(room.outcome(kBook, "daylight"), Outcome::shortfall);
  hangUp(room, "t", "light-tube", 60, 60);
  EXPECT_EQ(room.outcome(kBook, "daylight"), Outcome::notApplicable);
}

TEST(ComfortRoom, AFanThatRunsAllTheTimeIsHeldToOneSone) {
  TestRoom room(96, 96);
  hangUp(room, "f", "fan", 48, 48);
  EXPECT_EQ(factOf(room, "fan-sound"), "sones");
  EXPECT_EQ(factOf(room, "fan-run-on"), "run_on");
  auto& facts = room.option().on_ceiling[0].facts;
  facts["sones"] = Amount{1500};
  EXPECT_EQ(factOf(room, "fan-sound"), "continuous") << "between 1 and 3 that decides";
  facts["continuous"] = false;
  EXPECT_TRUE(met(room.outcome(kBook, "fan-sound")));
  facts["continuous"] = true;
  EXPECT_EQ(room.outcome(kBook, "fan-sound"), Outcome::shortfall);
  EXPECT_EQ(room.outcome(kBook, "fan-run-on"), Outcome::notApplicable);
  facts["sones"] = Amount{900};
  facts.erase("continuous");
  EXPECT_TRUE(met(room.outcome(kBook, "fan-sound"))) << "quiet enough either way";
}

TEST(ComfortRoom, TwoFansMoveAirTogether) {
  TestRoom room(96, 120);  // 80 sq ft
  hangUp(room, "f", "fan", 48, 48).facts["flow_cfm"] = Amount::of(50);
  EXPECT_EQ(room.outcome(kBook, "fan-flow-area"), Outcome::shortfall);
  hang(room, "x", "exhaust", "e", 40, 82, 10, 10);
  EXPECT_EQ(factOf(room, "fan-flow-area"), "flow_cfm");
  EXPECT_EQ(room.findings(kBook, "fan-flow-area")[0].subjects.at(0).text, "x");
  room.option().on_walls[0].facts["flow_cfm"] = Amount::of(30);
  EXPECT_TRUE(met(room.outcome(kBook, "fan-flow-area")));
  EXPECT_EQ(room.findings("us-residential", "fan-flow").size(), 2u) << "the code sees the wall fan too";
}

TEST(ComfortRoom, ATallRoomNeedsAirByItsVolume) {
  TestRoom room(96, 120);
  hangUp(room, "f", "fan", 48, 48).facts["flow_cfm"] = Amount::of(80);
  EXPECT_EQ(room.outcome(kBook, "fan-flow-volume"), Outcome::notApplicable) << "8 ft is the usual height";
  room.option().room.ceiling.height = 108_in;  // 80 x 9 x 8 / 60 = 96 cfm
  EXPECT_EQ(*room.findings(kBook, "fan-flow-volume").at(0).short_by, Quantity{Amount::of(16)});
  room.option().room.ceiling.height.reset();
  EXPECT_EQ(room.outcome(kBook, "fan-flow-volume"), Outcome::notApplicable);
}

TEST(ComfortRoom, ACompartmentHasRulesOfItsOwn) {
  TestRoom room(36, 66);
  room.toilet(18);
  for (const char* rule : {"toilet-compartment-air", "toilet-compartment-width", "toilet-compartment-depth"})
    EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable) << rule;
  EXPECT_EQ(room.outcome(kBook, "dressing-circle"), Outcome::shortfall);
  room.option().room.facts["compartment"] = true;
  EXPECT_EQ(room.outcome(kBook, "dressing-circle"), Outcome::notApplicable) << "nobody dresses in there";
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-compartment-width")));
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-compartment-depth")));
  EXPECT_EQ(room.outcome(kBook, "toilet-compartment-air"), Outcome::shortfall);
  Opening& window = room.door("e", 33, 20, Hand::right);
  window.kind = OpeningKind::window;
  window.sill = 48_in;
  EXPECT_EQ(factOf(room, "toilet-compartment-air"), "openable_share");
  room.option().openings[0].facts["openable_share"] = Amount{};
  EXPECT_EQ(room.outcome(kBook, "toilet-compartment-air"), Outcome::shortfall) << "it does not open";
  hangUp(room, "f", "fan", 18, 20);
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-compartment-air")));
}

TEST(ComfortRoom, StepsToABathWantABarWithinReach) {
  TestRoom room(120, 120);
  Fixture& bath = room.add("bath", FixtureKind::freestandingBath, "n", 60, 60, 30);
  bath.placement = Standing{{60_in, 101_in}, {}};
  EXPECT_EQ(factOf(room, "bath-steps"), "steps_outside");
  room.option().fixtures[0].facts["steps_outside"] = true;
  EXPECT_EQ(room.outcome(kBook, "bath-steps"), Outcome::shortfall);
  hang(room, "bar", "grab-bar", "n", 60, 33, 36, 1.5);  // 4 in behind the bath
  EXPECT_TRUE(met(room.outcome(kBook, "bath-steps")));
  room.option().on_walls[0].wall = {"w"};
  room.option().on_walls[0].along = 100_in;  // 30 in from its end
  EXPECT_EQ(room.outcome(kBook, "bath-steps"), Outcome::shortfall) << "farther than an arm";
  EXPECT_NEAR(room.measured(kBook, "bath-clean-gap"), 4, 0.001);
}

TEST(ComfortRoom, OverACounterTheHandReachesLess) {
  TestRoom room(120, 96);
  hang(room, "m", "medicine-cabinet", "n", 30, 46, 16, 24);
  EXPECT_TRUE(met(room.outcome(kBook, "storage-reach"))) << "its lowest shelf counts";
  room.add("v", FixtureKind::vanity, "n", 30, 36, 21);
  EXPECT_EQ(room.outcome(kBook, "storage-reach"), Outcome::shortfall);
  EXPECT_NEAR(room.shortBy(kBook, "storage-reach"), 2, 0.001);
  room.option().fixtures[0].depth = 18_in;
  EXPECT_TRUE(met(room.outcome(kBook, "storage-reach"))) << "a shallow counter is no hindrance";
}

TEST(ComfortRoom, APanelIsStatedOrOnTheWall) {
  TestRoom room(96, 96);
  room.add("bath", FixtureKind::bath, "n", 30, 60, 30);
  EXPECT_EQ(factOf(room, "access-panel-there"), "access_panel");
  room.option().fixtures[0].facts["access_panel"] = Length{};
  EXPECT_EQ(room.outcome(kBook, "access-panel-there"), Outcome::shortfall);
  hang(room, "p", "access-panel", "n", 30, 10, 14, 14);
  EXPECT_TRUE(met(room.outcome(kBook, "access-panel-there")));
  room.option().on_walls[0].wall = {"s"};
  EXPECT_EQ(room.outcome(kBook, "access-panel-there"), Outcome::shortfall)
      << "on another wall it helps nobody";
}

TEST(ComfortRoom, AnOpenShowerIsMeasuredFromItsHead) {
  TestRoom room(96, 96);
  Fixture& shower = room.add("sh", FixtureKind::shower, "n", 30, 60, 36);
  EXPECT_EQ(room.outcome(kBook, "shower-open-side"), Outcome::notApplicable)
      << "no glass stated: a curtain may hang";
  shower.glass.resize(1);  // fixed, across its front
  EXPECT_EQ(room.findings(kBook, "shower-open-side").at(0).detail, "head-not-placed");
  hangUp(room, "h", "shower-head", 20, 78);
  EXPECT_NEAR(room.measured(kBook, "shower-open-side"), 40, 0.001);
  EXPECT_EQ(room.outcome(kBook, "shower-open-side"), Outcome::shortfall);
  EXPECT_TRUE(met(room.outcome("us-uniform", "shower-head-entry"))) << "a head on the ceiling sprays down";
  room.option().fixtures[0].glass.resize(2);
  room.option().fixtures[0].glass[1].side = Side::right;
  room.option().fixtures[0].glass[1].door = 28_in;
  EXPECT_EQ(room.outcome(kBook, "shower-open-side"), Outcome::notApplicable);
}

TEST(ComfortRoom, CurblessForAChair) {
  TestRoom room(120, 120);
  room.add("sh", FixtureKind::shower, "n", 30, 60, 36).curb = Length{};
  const std::vector<const char*> rules{"shower-linear-drain", "shower-fall-for-chair",
                                       "shower-roll-in-length"};
  for (const char* rule : rules) EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable) << rule;
  seat(room);
  EXPECT_EQ(factOf(room, "shower-linear-drain"), "drain_type");
  EXPECT_EQ(factOf(room, "shower-fall-for-chair"), "floor_slope");
  EXPECT_TRUE(met(room.outcome(kBook, "shower-roll-in-length")));
  room.option().fixtures[0].curb = 4_in;
  for (const char* rule : rules) EXPECT_EQ(room.outcome(kBook, rule), Outcome::notApplicable) << rule;
}

TEST(ComfortRoom, ToeSpaceIsAskedOfWhatStandsOnTheFloor) {
  TestRoom room(120, 96);
  room.add("v", FixtureKind::vanity, "n", 60, 60, 21);
  EXPECT_EQ(factOf(room, "toe-space-depth"), "toe_depth");
  EXPECT_EQ(factOf(room, "toe-space-height"), "toe_height");
  EXPECT_EQ(factOf(room, "basin-wall-per-user"), "basins") << "wide enough for two, and not said";
  room.option().fixtures[0].facts["wall_hung"] = true;
  EXPECT_EQ(room.outcome(kBook, "toe-space-depth"), Outcome::notApplicable);
  room.option().fixtures[0].basins = 2;
  EXPECT_NEAR(room.measured(kBook, "basin-wall-per-user"), 60, 0.001);
}

TEST(ComfortRoom, RoundedCornersMatterWhereACornerIsFree) {
  TestRoom room(36, 96);
  room.add("v", FixtureKind::vanity, "n", 18, 36, 21);
  EXPECT_EQ(room.outcome(kBook, "vanity-corners"), Outcome::notApplicable) << "from wall to wall";
  room.option().fixtures[0].width = 30_in;
  EXPECT_EQ(factOf(room, "vanity-corners"), "rounded_corners");
}

// Guideline 23 and A117.1 604.7, worked example T36: 8 to 12 in for comfort and 7 to 9 by the standard leave
// 8 to 9.
TEST(ComfortRoom, PaperAheadOfTheBowl) {
  TestRoom room(96, 96);
  room.toilet(18);  // its front is 68 in up the plan
  EXPECT_EQ(room.outcome(kBook, "paper-holder-ahead"), Outcome::notApplicable);
  hang(room, "p", "paper-holder", "w", 60, 23, 6, 6);
  EXPECT_NEAR(room.measured(kBook, "paper-holder-ahead"), 8, 0.001);
  for (const auto& [ahead, good] :
       {std::pair{7.5, false}, {8.0, true}, {9.0, true}, {12.0, true}, {12.5, false}}) {
    room.option().on_walls[0].along = in(68 - ahead);
    EXPECT_EQ(met(room.outcome(kBook, "paper-holder-ahead")), good) << ahead;
  }
}

}  // namespace
}  // namespace elbowroom
