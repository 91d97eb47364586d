// Worked examples of comfort for named people, numbered as in our table of comfort figures (T01 to T44) with the
// source of the figure.
#include <gtest/gtest.h>

#include "core/rules/text.h"
#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using testing_room::in;
using testing_room::met;
using testing_room::TestRoom;

const char* const kBook = "comfort";

void name(TestRoom& room, const char* who, double stature, bool child = false) {
  Person p;
  p.name = who;
  p.stature = in(stature);
  p.child = child;
  room.plan().people.push_back(p);
}
double limitOf(const TestRoom& room, const char* rule) {
  return std::get<Length>(*room.findings(kBook, rule).at(0).limit).inches();
}

// T17, 0.617 S less 2 to 4 in (ANSUR II; ergonomics course): 36 in suits 5 ft 4 in, is 5.7 in low for 6 ft 2 in.
TEST(ComfortPeople, T17OneCounterForTwoPeople) {
  TestRoom room(96, 96);
  room.add("b", FixtureKind::basin, "n", 48, 20, 18).height = in(36);
  name(room, "Ada", 64);
  EXPECT_EQ(room.outcome(kBook, "basin-height-adults"), Outcome::clear);
  name(room, "Ben", 74);
  EXPECT_EQ(room.outcome(kBook, "basin-height-adults"), Outcome::shortfall);
  EXPECT_NEAR(room.shortBy(kBook, "basin-height-adults"), 5.7, 0.05);
  EXPECT_EQ(room.findings(kBook, "basin-height-adults")[0].detail, "fits-not:Ben");
  room.option().fixtures[0].height = in(40);  // between the bands: neither is served
  EXPECT_EQ(room.findings(kBook, "basin-height-adults")[0].detail, "fits-not:Ada and Ben");
  room.option().fixtures[0].height.reset();
  EXPECT_EQ(room.outcome(kBook, "basin-height-adults"), Outcome::unknown);
  EXPECT_EQ(room.findings(kBook, "basin-height-adults")[0].fact, "height");
}

// T18, statures CDC 2000: the missing height is the step's.
TEST(ComfortPeople, T18StepAtTheBasin) {
  for (const auto& [stature, counter, step] :
       {std::tuple{40.1, 36.0, 13.3}, {50.4, 36.0, 6.9}, {40.1, 34.0, 11.3}}) {
    TestRoom room(96, 96);
    room.add("b", FixtureKind::basin, "n", 48, 20, 18).height = in(counter);
    name(room, "Mia", stature, true);
    EXPECT_EQ(room.outcome(kBook, "basin-height-children"), Outcome::shortfall);
    EXPECT_NEAR(room.shortBy(kBook, "basin-height-children"), step, 0.05) << stature;
    const Finding f = room.findings(kBook, "basin-height-children")[0];
    EXPECT_EQ(textOf(f, room.option(), Unit::inches).detail, "A step as high as what is missing lets Mia use it.");
    EXPECT_EQ(room.outcome(kBook, "basin-height-adults"), Outcome::notApplicable) << "a child is no adult";
  }
}

// T41, ANSUR II: 21 in clear is less than the median woman kneeling needs (22.4, feet flat); 27 and 30 serve.
TEST(ComfortPeople, T41KneelingBesideTheBath) {
  for (const auto& [clear, serves] : {std::pair{21.0, false}, {27.0, true}, {30.0, true}}) {
    TestRoom room(60, 30 + clear);
    room.add("bath", FixtureKind::bath, "n", 30, 60, 30);
    EXPECT_EQ(met(room.outcome(kBook, "bath-kneel")), serves) << clear;
    EXPECT_NEAR(limitOf(room, "bath-kneel"), 22.4, 0.15);
  }
}

// The table's pooled 95 % is 26.3 in: 27 in serve all but the tallest, who needs 0.352 * 78 = 27.5.
TEST(ComfortPeople, KneelingGoesByTheTallestAdult) {
  TestRoom room(60, 57);
  room.add("bath", FixtureKind::bath, "n", 30, 60, 30);
  name(room, "Ada", 64);
  EXPECT_TRUE(met(room.outcome(kBook, "bath-kneel")));
  name(room, "Ben", 78);
  EXPECT_EQ(room.outcome(kBook, "bath-kneel"), Outcome::shortfall);
  EXPECT_NEAR(room.shortBy(kBook, "bath-kneel"), 0.456, 0.001);
  room.plan().people.clear();
  name(room, "Mia", 40, true);
  EXPECT_EQ(room.outcome(kBook, "bath-kneel"), Outcome::notApplicable) << "a child does not kneel to bathe itself";
}

// T42: a rim of 15 in can be leaned over, one of 23 in is 7 in above the kneeling hip.
TEST(ComfortPeople, T42RimOfTheBath) {
  TestRoom room(120, 120);
  Fixture& bath = room.add("bath", FixtureKind::freestandingBath, "n", 60, 60, 30);
  bath.height = in(15);
  EXPECT_TRUE(met(room.outcome(kBook, "bath-rim-height")));
  room.option().fixtures[0].height = in(23);
  EXPECT_NEAR(room.shortBy(kBook, "bath-rim-height"), 7, 1e-6);
  name(room, "Ada", 64);
  EXPECT_EQ(room.outcome(kBook, "bath-rim-height"), Outcome::notApplicable) << "nobody to be bathed";
  name(room, "Mia", 40, true);
  EXPECT_NEAR(limitOf(room, "bath-rim-height"), 0.238 * 64, 1e-6);
}

// T43: 18 + 30 = 48 in (article 92491): a 60 in room less a 21 in vanity leaves 39, one user only.
TEST(ComfortPeople, T43PassingBehind) {
  TestRoom room(96, 60);
  room.add("v", FixtureKind::vanity, "n", 48, 36, 21);
  EXPECT_EQ(room.outcome(kBook, "basin-pass-behind"), Outcome::notApplicable);
  name(room, "Ada", 64);
  EXPECT_EQ(room.outcome(kBook, "basin-pass-behind"), Outcome::notApplicable);
  name(room, "Ben", 70);
  EXPECT_NEAR(room.measured(kBook, "basin-pass-behind"), 39, 1e-6);
  EXPECT_NEAR(room.shortBy(kBook, "basin-pass-behind"), 9, 1e-6);
}

// Who does not fit: the tallest before the toilet, 0.352 S less the 20 in of seat before the tank.
TEST(ComfortPeople, KneesBeforeTheToilet) {
  TestRoom room(60, 28 + 4);
  room.toilet(30);
  name(room, "Ada", 64);
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-knees")));  // 22.5 - 20
  name(room, "Ben", 74);
  EXPECT_NEAR(room.shortBy(kBook, "toilet-knees"), 0.352 * 74 - 20 - 4, 1e-6);
  EXPECT_EQ(room.findings(kBook, "toilet-knees")[0].detail, "fits-not:Ben");
}

// 48 in of wheelchair, the 6 in of toes among them (1991 ADA Standards A4.2.4); what goes under the basin counts: the
// toes, 6 in before the knees, where they find as much space.
TEST(ComfortPeople, AWheelchairAtTheBasin) {
  TestRoom room(120, 18 + 40);
  Fixture& basin = room.add("b", FixtureKind::basin, "n", 60, 20, 18);
  name(room, "Cy", 66);
  EXPECT_TRUE(met(room.outcome(kBook, "basin-bend")));
  room.plan().people[0].chair = Chair{in(26), in(48), {}};
  EXPECT_NEAR(room.shortBy(kBook, "basin-bend"), 8, 1e-6);
  basin.knee_space = KneeSpace{in(27), in(11), {}};
  EXPECT_TRUE(met(room.outcome(kBook, "basin-bend")));
  const auto needed = [&] {
    return std::get<Length>(*room.findings(kBook, "basin-bend").at(0).limit).inches();
  };
  EXPECT_NEAR(needed(), 48 - 11 - 6, 1e-6);
  basin.knee_space->toe = in(14);
  EXPECT_NEAR(needed(), 48 - 14, 1e-6) << "the toes find less";
  basin.knee_space->toe = in(25);
  EXPECT_NEAR(needed(), 48 - 11 - 6, 1e-6) << "the knees find no more";
}

}  // namespace
}  // namespace elbowroom
