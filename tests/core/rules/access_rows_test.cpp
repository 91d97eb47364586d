// Exceptions and allowances of the access texts that its rows name, by hand from their figures; the section beside each.
#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::item;
using testing_room::met;
using testing_room::TestRoom;

const char* const kAda = "us-access";

std::vector<Finding> findings(TestRoom& room, const char* book, const char* rule,
                              std::map<std::string, std::string> settings = {}) {
  BookChoice choice;
  choice.books = {book};
  choice.settings[book] = std::move(settings);
  std::vector<Finding> found;
  for (const Finding& f : check(deriveLayout(room.plan(), 0), choice).findings)
    if (f.rule == rule) found.push_back(f);
  return found;
}
Outcome outcome(TestRoom& room, const char* book, const char* rule, std::map<std::string, std::string> settings = {}) {
  const auto found = findings(room, book, rule, std::move(settings));
  return found.empty() ? Outcome::notApplicable : found.size() > 1 ? Outcome::failed : found[0].outcome;
}

// 606.2 exception 3: in a dwelling a cabinet may stand under the basin that can be taken out. 21 in of vanity and 32 in
// before it: 17 in of toes below (306.2.3) make 49.
TEST(AccessRows, ACabinetThatCanBeTakenOut) {
  TestRoom room(120, 21 + 32);
  Fixture& vanity = room.add("v", FixtureKind::vanity, "n", 60, 36, 21);
  vanity.basins = 1;
  EXPECT_EQ(outcome(room, kAda, "basin-clear-floor"), Outcome::shortfall);
  vanity.facts["cabinet_removable"] = true;
  const auto found = findings(room, kAda, "basin-clear-floor");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_TRUE(met(found[0].outcome));
  EXPECT_NEAR(std::get<Length>(*found[0].measured).inches(), 49, 1e-6);
  EXPECT_EQ(found[0].detail, "cabinet-taken-out");
  EXPECT_EQ(outcome(room, kAda, "basin-clear-floor", {{"unit", "other"}}), Outcome::notApplicable);
  EXPECT_EQ(outcome(room, kAda, "basin-clear-floor-strict", {{"unit", "other"}}), Outcome::shortfall);
  vanity.facts["cabinet_removable"] = false;
  EXPECT_EQ(outcome(room, kAda, "basin-clear-floor"), Outcome::shortfall);
}

// A117.1 1103.11.2.5.1: such a cabinet may stand at one end of the floor before a bath; the 2010 text has no such words.
TEST(AccessRows, ACabinetThatCanBeTakenOutBeforeABath) {
  TestRoom room(60, 90);
  room.add("ba", FixtureKind::bath, "n", 30, 60, 30).height = 18_in;
  Fixture& vanity = room.add("v", FixtureKind::vanity, "w", 45, 24, 21);  // 33 to 57 in from the south wall
  EXPECT_EQ(outcome(room, "us-access-2017", "bath-clear-floor"), Outcome::shortfall);
  vanity.facts["cabinet_removable"] = true;
  EXPECT_TRUE(met(outcome(room, "us-access-2017", "bath-clear-floor")));
  EXPECT_EQ(outcome(room, kAda, "bath-clear-floor"), Outcome::shortfall);
}

// 1991 figure 32: at most 19 in under the basin. 24 in of basin, all of it free below: 2010 counts its 24 in.
TEST(AccessRows, UnderABasin1991) {
  TestRoom room(140, 24 + 27);
  Fixture& basin = room.add("b", FixtureKind::basin, "n", 70, 20, 24);
  basin.knee_space = KneeSpace{27_in, 18_in, 24_in};
  EXPECT_TRUE(met(outcome(room, kAda, "basin-clear-floor")));
  EXPECT_EQ(outcome(room, kAda, "basin-clear-floor-1991", {{"edition", "1991"}}), Outcome::shortfall);
  EXPECT_NEAR(
      std::get<Length>(*findings(room, kAda, "basin-clear-floor-1991", {{"edition", "1991"}})[0].measured).inches(),
      27 + 19, 1e-6);
}

// 304.2: 1:48 is 2.083 %.
TEST(AccessRows, FallOfTheFloor) {
  TestRoom room(120, 120);
  EXPECT_EQ(findings(room, kAda, "floor-fall").at(0).fact, "floor_fall");
  for (const auto& [thousandths, passes] : {std::pair{2083, true}, {2084, false}, {2000, true}, {0, true}, {2500, false}}) {
    room.option().room.facts["floor_fall"] = Amount{thousandths};
    EXPECT_EQ(met(outcome(room, kAda, "floor-fall")), passes) << thousandths;
  }
}

// 404.2.3 exception 1 and 404.2.5: 5/8 in of stop, 3/4 in of threshold where what is there is altered.
TEST(AccessRows, Alterations) {
  for (const auto& [clear, as_new, altered] :
       {std::tuple{32.0, true, true}, {31.9375, false, true}, {31.375, false, true}, {31.3125, false, false}}) {
    TestRoom room(120, 120);
    room.door("s", 60, clear + 1.875, Hand::right, Swing::out);
    EXPECT_EQ(met(outcome(room, kAda, "door-clear-opening")), as_new) << clear;
    EXPECT_EQ(met(outcome(room, kAda, "door-clear-opening", {{"work", "alteration"}})), altered) << clear;
  }
  TestRoom room(120, 120);
  room.door("s", 60, 36, Hand::right, Swing::out).facts["threshold"] = in(0.75);
  EXPECT_EQ(outcome(room, kAda, "door-threshold"), Outcome::shortfall);
  EXPECT_TRUE(met(outcome(room, kAda, "door-threshold", {{"work", "alteration"}})));
}

// 608.3.2: three walls of a roll-in shower, none at the seat; where a side is open there is no wall to ask of.
TEST(AccessRows, BarsOfARollInShower) {
  TestRoom room(60, 120);
  room.add("sh", FixtureKind::shower, "n", 30, 60, 30);
  EXPECT_EQ(outcome(room, kAda, "shower-roll-in-bars"), Outcome::notApplicable) << "backing may do in a home";
  item(room, "back", "grab-bar", "n", 30, 33.5, 56, 1.25);
  item(room, "left", "grab-bar", "w", 105, 33.5, 24, 1.25);
  EXPECT_EQ(outcome(room, kAda, "shower-roll-in-bars"), Outcome::shortfall);
  room.option().fixtures[0].facts["seat_side"] = std::string("right");
  EXPECT_TRUE(met(outcome(room, kAda, "shower-roll-in-bars")));
  room.option().fixtures[0].facts.clear();
  item(room, "right", "grab-bar", "e", 15, 33.5, 24, 1.25);
  EXPECT_TRUE(met(outcome(room, kAda, "shower-roll-in-bars")));
}

// Diagram 2.5 and the answer on it: a basin may reach 200 mm into the zone before the toilet, one beside the toilet on
// its wall 300 mm. The zone is 1100 mm deep, from 350 mm to one side of the centreline to 1000 mm to the other.
TEST(AccessRows, ABasinInTheZoneBeforeAToilet) {
  const auto passes = [](double gap_mm) {
    TestRoom room(2000 / 25.4, 3000 / 25.4);
    room.add("wc", FixtureKind::toilet, "n", 400 / 25.4, 400 / 25.4, 700 / 25.4);
    // Opposite, its front so far from the bowl's.
    room.add("b", FixtureKind::basin, "s", 1500 / 25.4, 600 / 25.4, (3000 - 700 - gap_mm) / 25.4);
    return met(outcome(room, "uk-access", "toilet-access-zone", {{"dwelling", "m4-2"}}));
  };
  EXPECT_TRUE(passes(1100));
  EXPECT_TRUE(passes(900));
  EXPECT_FALSE(passes(898));
}

}  // namespace
}  // namespace elbowroom
