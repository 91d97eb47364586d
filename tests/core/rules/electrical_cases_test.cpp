// Electrical set-ups whose verdict was published or follows by arithmetic from the text, numbered as in our table of
// US figures (T19 to T24, T33), the page beside each; and how the editions differ.
#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::met;
using testing_room::TestRoom;

const char* const kBook = "us-electrical";

// The centre of the box `along` the wall and `up` above the floor.
WallItem& receptacle(TestRoom& room, const char* wall, double along, double up, const char* kind = "receptacle") {
  WallItem item;
  item.id = {"r"};
  item.kind = kind;
  item.wall = {wall};
  item.along = in(along);
  item.width = 2.75_in;
  item.height = 4.5_in;
  item.bottom = in(up) - item.height / 2;
  room.option().on_walls.push_back(item);
  return room.option().on_walls.back();
}

std::vector<Finding> findings(TestRoom& room, const char* edition, const char* rule) {
  BookChoice choice;
  choice.books = {kBook};
  choice.settings[kBook]["edition"] = edition;
  std::vector<Finding> found;
  for (const Finding& f : check(deriveLayout(room.plan(), 0), choice).findings)
    if (f.rule == rule) found.push_back(f);
  return found;
}

// notApplicable: no such finding; failed: several.
Outcome outcome(TestRoom& room, const char* edition, const char* rule) {
  const auto found = findings(room, edition, rule);
  return found.empty() ? Outcome::notApplicable : found.size() > 1 ? Outcome::failed : found[0].outcome;
}

double measured(TestRoom& room, const char* edition, const char* rule) {
  const auto found = findings(room, edition, rule);
  return found.size() == 1 && found[0].measured ? std::get<Length>(*found[0].measured).inches() : std::nan("");
}

// ---- T19 and T20: electricallicenserenewal.com section 1494; forums.mikeholt.com 2565642. A receptacle 12 in above
// the floor, 20 in from the side of a bath: 2017 lets it pass, 2020 is disputed, 2023 fails it.
struct BesideBath {
  TestRoom room{140, 90};
  BesideBath() {
    room.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;  // x 0 to 60
    receptacle(room, "n", 60 + 20 + 1.375, 12);
  }
};

TEST(ElectricalCases, T19ReceptacleBelowTheRim) {
  BesideBath at;
  EXPECT_EQ(outcome(at.room, "2017", "receptacle-not-over-water"), Outcome::clear);
  EXPECT_EQ(outcome(at.room, "2017", "receptacle-off-water"), Outcome::notApplicable);

  EXPECT_EQ(outcome(at.room, "2020", "receptacle-off-water-2020"), Outcome::notApplicable) << "below the rim";
  const auto disputed = findings(at.room, "2020", "receptacle-below-rim");
  ASSERT_EQ(disputed.size(), 1u);
  EXPECT_EQ(disputed[0].outcome, Outcome::shortfall);
  EXPECT_EQ(disputed[0].level, Level::advised) << "disputed, not required";

  const auto of2023 = findings(at.room, "2023", "receptacle-off-water");
  ASSERT_EQ(of2023.size(), 1u);
  EXPECT_EQ(of2023[0].outcome, Outcome::shortfall);
  EXPECT_EQ(of2023[0].level, Level::required);
  EXPECT_NEAR(measured(at.room, "2023", "receptacle-off-water"), 20, 1e-6);
  EXPECT_NEAR(std::get<Length>(*of2023[0].short_by).inches(), 16, 1e-6);
}

TEST(ElectricalCases, AboveTheRimBothEditionsAgree) {
  BesideBath at;
  at.room.option().on_walls[0].bottom = 40_in;
  EXPECT_EQ(outcome(at.room, "2020", "receptacle-off-water-2020"), Outcome::shortfall);
  EXPECT_EQ(outcome(at.room, "2020", "receptacle-below-rim"), Outcome::notApplicable);
  EXPECT_EQ(outcome(at.room, "2023", "receptacle-off-water"), Outcome::shortfall);
  EXPECT_EQ(outcome(at.room, "2023", "receptacle-off-water-2020"), Outcome::notApplicable);
  EXPECT_EQ(outcome(at.room, "2017", "receptacle-not-over-water"), Outcome::clear);
}

// T20, reprint of NFPA 70, 2023: "separated by a floor, wall, ceiling, ... or fixed barrier". 2020 has no such words.
TEST(ElectricalCases, T20BehindAWall) {
  TestRoom room = testing_room::besideWing(140, 36);
  Option& o = room.option();
  receptacle(room, "n2", 16 + 1.375, 12);  // 20 in from the bath, through the wing
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::clear);
  EXPECT_EQ(outcome(room, "2020", "receptacle-below-rim"), Outcome::shortfall);
  // Lower the wing's reach to 12 in and one sees the bath past it: straight to the place beside the wing's end.
  o.room.walls[2].from.y = o.room.walls[3].from.y = 78_in;
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::shortfall);
  // From (80, 90), the plate's near edge, past the wing's corner (64, 78) to x = 60: 15 in down, 20 in across.
  EXPECT_NEAR(measured(room, "2023", "receptacle-off-water"), 25, 1e-6);
}

// The same behind the fixed glass of a shower; glass of unknown height is asked for where it decides.
TEST(ElectricalCases, T20BehindFixedGlass) {
  TestRoom room(140, 90);
  Fixture& shower = room.add("sh", FixtureKind::shower, "n", 18, 36, 36);
  receptacle(room, "n", 36 + 20 + 1.375, 45);
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::shortfall);
  shower.glass.push_back({Side::right, 78_in, {}, {}, {}, {}});
  EXPECT_TRUE(met(outcome(room, "2023", "receptacle-off-water")));
  // Round the glass to its front end: 36 in down, 20 in across.
  EXPECT_NEAR(measured(room, "2023", "receptacle-off-water"), std::hypot(36, 20), 1e-6);
  room.option().fixtures[0].glass[0].height = 40_in;  // lower than the receptacle
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::shortfall);
  room.option().fixtures[0].glass[0].height.reset();
  const auto asked = findings(room, "2023", "receptacle-off-water");
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_EQ(asked[0].outcome, Outcome::unknown);
  EXPECT_EQ(asked[0].fact, "glass.height");
  room.option().fixtures[0].glass[0].door = 24_in;  // a door is no fixed barrier
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::shortfall);
}

// T21, arithmetic and 406.9(C) exception 2: 60 in wide, bath of 30 in along one side; the opposite wall is 30 in off,
// no place is 36 in off, so the basin's receptacle may be on the farthest wall, and only there.
TEST(ElectricalCases, T21RoomSmallerThanTheZone) {
  TestRoom room(60, 60);
  room.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;  // y 30 to 60
  room.add("v", FixtureKind::basin, "s", 20, 18, 14).height = 34_in;
  receptacle(room, "s", 40, 44);
  const auto far = findings(room, "2023", "receptacle-off-water");
  ASSERT_EQ(far.size(), 1u);
  EXPECT_TRUE(met(far[0].outcome));
  EXPECT_NEAR(measured(room, "2023", "receptacle-off-water"), 30, 1e-6);
  EXPECT_EQ(far[0].detail, "farthest-wall");
  EXPECT_TRUE(met(outcome(room, "2020", "receptacle-off-water-2020")));
  EXPECT_TRUE(met(outcome(room, "2023", "basin-receptacle-distance")));
  room.option().on_walls[0].wall = {"w"};
  room.option().on_walls[0].along = 10_in;  // 18 5/8 in from the bath
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::shortfall);
  // With a slanted wall opposite, the side wall is still not the farthest one.
  TestRoom slanted(60, 60);
  slanted.option().room.walls[2].from.y = 25_in;
  slanted.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;
  slanted.add("v", FixtureKind::basin, "s", 45, 12, 8).height = 34_in;
  receptacle(slanted, "w", 5, 44);
  EXPECT_EQ(outcome(slanted, "2023", "receptacle-off-water"), Outcome::shortfall);
  // With 7 in more of room there is a legal place, and 30 in is too near.
  TestRoom larger(60, 67);
  larger.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;
  larger.add("v", FixtureKind::basin, "s", 20, 18, 14).height = 34_in;
  receptacle(larger, "w", 6, 44);
  EXPECT_EQ(outcome(larger, "2023", "receptacle-off-water"), Outcome::shortfall);
}

// ---- T22 to T24: two bowls of 16 in at 15 and 45 in of a counter from wall to wall.
struct DoubleVanity {
  TestRoom room{60, 90};
  DoubleVanity() {
    Fixture& v = room.add("v", FixtureKind::vanity, "n", 30, 60, 21);
    v.height = 34_in;
    v.basins = 2;
    v.bowl_width = 16_in;
  }
  std::vector<double> distances(const char* edition) {
    std::vector<double> found;
    for (const Finding& f : findings(room, edition, "basin-receptacle-distance"))
      found.push_back(std::get<Length>(*f.measured).inches());
    std::sort(found.begin(), found.end());
    return found;
  }
};

// T22, arithmetic: 7 in to the left bowl, 37 in to the right one.
TEST(ElectricalCases, T22ReceptacleOnTheLeftSideWall) {
  DoubleVanity at;
  receptacle(at.room, "w", 80, 44);  // y = 80, within the counter's depth
  const auto both = at.distances("2023");
  ASSERT_EQ(both.size(), 2u);
  EXPECT_NEAR(both[0], 7, 1e-6);
  EXPECT_NEAR(both[1], 37, 1e-6);
  int short_ones = 0;
  for (const Finding& f : findings(at.room, "2023", "basin-receptacle-distance"))
    short_ones += f.outcome == Outcome::shortfall ? 1 : 0;
  EXPECT_EQ(short_ones, 1);
}

// T23, ecmweb.com code questions 81: between the bowls one receptacle serves both, 7 in from each.
TEST(ElectricalCases, T23ReceptacleBetweenTheBowls) {
  DoubleVanity at;
  receptacle(at.room, "n", 30, 44);
  const auto both = at.distances("2023");
  ASSERT_EQ(both.size(), 2u);
  EXPECT_NEAR(both[0], 7, 1e-6);
  EXPECT_NEAR(both[1], 7, 1e-6);
  for (const Finding& f : findings(at.room, "2023", "basin-receptacle-distance"))
    EXPECT_EQ(f.outcome, Outcome::clear);
}

// T24, forums.mikeholt.com 138381: 14 in below the basin's top on a side wall.
TEST(ElectricalCases, T24ReceptacleBelowTheCounter) {
  TestRoom room(60, 90);
  Fixture& v = room.add("v", FixtureKind::vanity, "n", 18, 36, 21);
  v.height = 34_in;
  v.bowl_width = 16_in;
  receptacle(room, "w", 80, 20);
  for (const char* edition : {"2023", "2020", "2017", "2011"}) {
    EXPECT_EQ(outcome(room, edition, "basin-receptacle-drop"), Outcome::shortfall) << edition;
    EXPECT_NEAR(measured(room, edition, "basin-receptacle-drop"), 14, 1e-6);
  }
  EXPECT_EQ(outcome(room, "2008", "basin-receptacle-drop"), Outcome::notApplicable);
  room.option().on_walls[0].bottom += 2_in;  // 12 in below
  EXPECT_EQ(outcome(room, "2023", "basin-receptacle-drop"), Outcome::close);
}

// T33, electricallicenserenewal.com section 16: in a bedroom with a bath, 5 ft off: the place is allowed (3 ft), the
// protection is asked for (6 ft); 6 ft 1 in off it is not.
TEST(ElectricalCases, T33ReceptacleInABedroomWithABath) {
  TestRoom room(200, 120);
  room.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;
  receptacle(room, "n", 60 + 60 + 1.375, 14);
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::clear);
  EXPECT_EQ(outcome(room, "2023", "receptacle-gfci"), Outcome::notApplicable) << "no bathroom without a basin";
  EXPECT_EQ(outcome(room, "2023", "receptacle-gfci-near-water"), Outcome::unknown);
  room.option().on_walls[0].facts["gfci"] = false;
  EXPECT_EQ(outcome(room, "2023", "receptacle-gfci-near-water"), Outcome::shortfall);
  EXPECT_EQ(outcome(room, "2017", "receptacle-gfci-near-water"), Outcome::shortfall);
  EXPECT_EQ(outcome(room, "2011", "receptacle-gfci-near-water"), Outcome::notApplicable) << "since 2014";
  for (const auto& [off, applies] : {std::pair{71.9375, true}, {72.0, true}, {72.0625, false}}) {
    room.option().on_walls[0].along = in(60 + off + 1.375);
    EXPECT_EQ(outcome(room, "2023", "receptacle-gfci-near-water"),
              applies ? Outcome::shortfall : Outcome::notApplicable)
        << off;
  }
}

// ---- heights: 8 ft above the rim (20 in), to both sides of it
TEST(ElectricalCases, EightFeetAboveTheRim) {
  for (const auto& [up, applies] : {std::pair{115.9375, true}, {116.0, true}, {116.0625, false}}) {
    TestRoom room(140, 90);
    room.option().room.ceiling.height = 140_in;
    room.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;
    receptacle(room, "n", 80, up);
    for (const auto& [edition, rule] : {std::pair{"2023", "receptacle-off-water"}, {"2020", "receptacle-off-water-2020"}})
      EXPECT_EQ(outcome(room, edition, rule), applies ? Outcome::shortfall : Outcome::notApplicable) << up;
  }
}

TEST(ElectricalCases, ARimThatIsNotStatedIsAskedForWhereItDecides) {
  TestRoom room(140, 90);
  room.add("b", FixtureKind::bath, "n", 30, 60, 30);
  receptacle(room, "n", 80, 12);
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::shortfall) << "in the zone whatever the rim";
  const auto asked = findings(room, "2020", "receptacle-off-water-2020");
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_EQ(asked[0].outcome, Outcome::unknown);
  EXPECT_EQ(asked[0].fact, "height");
  EXPECT_EQ(asked[0].subjects[0].text, "b");
}

// 410.10(D): a lamp that hangs. Under a ceiling of 96 in it is in the zone wherever it ends; under a high one its
// lower edge decides: 20 + 96 = 116 in.
TEST(ElectricalCases, HangingLight) {
  TestRoom room(140, 140);
  room.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;  // y 110 to 140
  CeilingItem light;
  light.id = {"l"};
  light.kind = "light";
  light.at = {in(30), in(87)};  // its edge at y = 90: 20 in before the bath
  light.width = light.depth = 6_in;
  room.option().on_ceiling.push_back(light);
  CeilingItem& lamp = room.option().on_ceiling[0];
  auto asked = findings(room, "2023", "light-off-water");
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_EQ(asked[0].fact, "hanging");
  lamp.facts["hanging"] = false;
  EXPECT_EQ(outcome(room, "2023", "light-off-water"), Outcome::notApplicable);
  lamp.facts["hanging"] = true;
  EXPECT_EQ(outcome(room, "2023", "light-off-water"), Outcome::shortfall);
  EXPECT_NEAR(measured(room, "2023", "light-off-water"), 20, 1e-6);
  room.option().room.ceiling.height = 140_in;
  asked = findings(room, "2023", "light-off-water");
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_EQ(asked[0].fact, "lower_edge");
  lamp.facts["lower_edge"] = 116_in;
  EXPECT_EQ(outcome(room, "2023", "light-off-water"), Outcome::shortfall);
  lamp.facts["lower_edge"] = 116.0625_in;
  EXPECT_EQ(outcome(room, "2023", "light-off-water"), Outcome::notApplicable);
}

// 410.10(D) today asks for a listed light over the bath, the text of 2005 within 3 ft of it.
TEST(ElectricalCases, ListedLightsByEdition) {
  TestRoom room(140, 140);
  room.add("b", FixtureKind::bath, "n", 30, 60, 30).height = 20_in;
  CeilingItem light;
  light.id = {"l"};
  light.kind = "light";
  light.at = {in(30), in(87)};
  light.width = light.depth = 6_in;
  light.facts["hanging"] = false;
  light.facts["damp_listed"] = false;
  room.option().on_ceiling.push_back(light);
  EXPECT_EQ(outcome(room, "2023", "light-listed"), Outcome::notApplicable);
  EXPECT_EQ(outcome(room, "2023", "light-listed-zone"), Outcome::notApplicable);
  EXPECT_EQ(outcome(room, "2008", "light-listed-zone"), Outcome::shortfall);
  room.option().on_ceiling[0].at.y = 120_in;
  EXPECT_EQ(outcome(room, "2023", "light-listed"), Outcome::shortfall);
  EXPECT_EQ(outcome(room, "2008", "light-listed"), Outcome::notApplicable);
  room.option().on_ceiling[0].facts["wet_listed"] = true;  // wet is more than damp
  EXPECT_EQ(outcome(room, "2023", "light-listed"), Outcome::clear);
}

// A switch beside the glass of a shower is allowed here: no distance is asked for outside it.
TEST(ElectricalCases, SwitchInAndBesideAShower) {
  TestRoom room(140, 90);
  room.add("sh", FixtureKind::shower, "n", 18, 36, 36);
  WallItem& item = receptacle(room, "n", 36 + 1.375 + 0.0625, 44, "switch");
  EXPECT_EQ(outcome(room, "2023", "switch-not-in-water"), Outcome::clear);
  item.along = in(36 + 1.375 - 0.0625);
  EXPECT_EQ(outcome(room, "2023", "switch-not-in-water"), Outcome::unknown);
  item.facts["shower_assembly"] = false;
  EXPECT_EQ(outcome(room, "2023", "switch-not-in-water"), Outcome::shortfall);
  item.facts["shower_assembly"] = true;
  EXPECT_EQ(outcome(room, "2023", "switch-not-in-water"), Outcome::clear);
}

// 406.9(C) exception 4 as first proposed: behind the toilet but not behind its tank, or at its other side.
TEST(ElectricalCases, ReceptacleOfAToiletSeat) {
  for (const auto& [along, allowed] : {std::pair{25.0, true}, {40.0, false}, {44.0, false}, {55.0, true}}) {
    TestRoom room(140, 90);
    room.add("b", FixtureKind::bath, "n", 110, 60, 30).height = 20_in;  // x 80 to 140
    room.toilet(40).tank_width = 18_in;                                // tank x 31 to 49
    receptacle(room, "n", along, 20).facts["for_toilet_seat"] = true;
    EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::notApplicable);
    const double off = 80 - along - 1.375;
    EXPECT_EQ(outcome(room, "2023", "toilet-seat-receptacle"),
              off >= 36 ? Outcome::notApplicable : allowed ? Outcome::clear : Outcome::shortfall)
        << along;
  }
  TestRoom room(140, 90);
  room.add("b", FixtureKind::bath, "n", 110, 60, 30).height = 20_in;
  room.add("wc", FixtureKind::toilet, "n", 60, 20, 28);
  WallItem& seat = receptacle(room, "n", 60, 20);
  EXPECT_EQ(outcome(room, "2023", "receptacle-off-water"), Outcome::shortfall) << "an ordinary receptacle";
  seat.facts["for_toilet_seat"] = true;
  EXPECT_EQ(outcome(room, "2023", "toilet-seat-receptacle"), Outcome::shortfall) << "behind the tank";
  seat.along = 47_in;
  EXPECT_EQ(outcome(room, "2023", "toilet-seat-receptacle"), Outcome::clear) << "at the other side";
  EXPECT_EQ(outcome(room, "2017", "toilet-seat-receptacle"), Outcome::notApplicable);
}

// Disputed by inspectors (thebuildingcodeforum.com, place of the receptacle), so advised: across the left basin to the
// right one, but not from between them.
TEST(ElectricalCases, AcrossAnotherBasin) {
  for (const auto& [along, across] : {std::pair{30.0, 0}, {6.0, 1}, {54.0, 1}}) {
    DoubleVanity at;
    receptacle(at.room, "n", along, 44);
    int found = 0;
    for (const Finding& f : findings(at.room, "2023", "basin-receptacle-across")) {
      EXPECT_EQ(f.level, Level::advised);
      found += f.outcome == Outcome::shortfall ? 1 : 0;
    }
    EXPECT_EQ(found, across) << along;
  }
}

// Art. 100 (forum.nachi.org 24772): a basin and a toilet, bath or shower; a compartment of its own is part of it.
TEST(ElectricalCases, WhatABathroomIs) {
  TestRoom room(100, 90);
  room.toilet(30);
  receptacle(room, "n", 60, 20).facts["gfci"] = false;
  EXPECT_EQ(outcome(room, "2023", "receptacle-gfci"), Outcome::notApplicable) << "a toilet alone";
  room.option().room.facts["compartment"] = true;
  EXPECT_EQ(outcome(room, "2023", "receptacle-gfci"), Outcome::shortfall);
  room.option().room.facts.clear();
  room.add("b", FixtureKind::basin, "n", 80, 20, 18);
  EXPECT_EQ(outcome(room, "2023", "receptacle-gfci"), Outcome::shortfall);
}

// The limits that are sizes of a measure, at 36 in and 1/16 in to either side.
TEST(ElectricalCases, ThirtySixInchesOfASeatAndOfTheOldZone) {
  for (const auto& [off, applies] : {std::pair{35.9375, true}, {36.0, false}, {36.0625, false}}) {
    TestRoom room(200, 140);
    room.add("b", FixtureKind::bath, "n", 170, 60, 30).height = 20_in;  // x 140 to 200
    room.add("wc", FixtureKind::toilet, "n", 140 - 1.375 - off, 20, 28);
    receptacle(room, "n", 140 - 1.375 - off, 20).facts["for_toilet_seat"] = true;  // behind the tank
    EXPECT_EQ(outcome(room, "2023", "toilet-seat-receptacle"),
              applies ? Outcome::shortfall : Outcome::notApplicable)
        << off;
    CeilingItem light;
    light.id = {"l"};
    light.kind = "light";
    light.at = {in(140 - 3 - off), in(125)};
    light.width = light.depth = 6_in;
    light.facts["damp_listed"] = false;
    room.option().on_ceiling.push_back(light);
    EXPECT_EQ(outcome(room, "2008", "light-listed-zone"), applies ? Outcome::shortfall : Outcome::notApplicable)
        << off;
  }
}

// What a rule asks only in some editions (680.71 and 680.73 since 2011) or where a person chooses it.
TEST(ElectricalCases, RulesThatComeWithASetting) {
  TestRoom room(140, 90);
  Fixture& bath = room.add("b", FixtureKind::bath, "n", 30, 60, 30);
  bath.height = 20_in;
  bath.facts["pumped"] = true;
  bath.facts["own_circuit"] = false;
  bath.facts["pump_gfci"] = false;
  bath.facts["pump_receptacle"] = 20_in;
  for (const char* rule : {"bath-pump-circuit", "bath-pump-gfci", "bath-pump-receptacle"}) {
    EXPECT_EQ(outcome(room, "2023", rule), Outcome::shortfall) << rule;
    EXPECT_EQ(outcome(room, "2011", rule), Outcome::shortfall) << rule;
    EXPECT_EQ(outcome(room, "2008", rule), Outcome::notApplicable) << rule;
  }
  TestRoom counter(100, 90);
  counter.add("v", FixtureKind::basin, "n", 50, 20, 18).height = 34_in;
  receptacle(counter, "n", 64, 60);  // 26 in above
  EXPECT_EQ(outcome(counter, "2023", "basin-receptacle-rise"), Outcome::notApplicable);
  BookChoice choice;
  choice.books = {kBook};
  choice.settings[kBook]["counter"] = "20";
  for (const Finding& f : check(deriveLayout(counter.plan(), 0), choice).findings) {
    if (f.rule != "basin-receptacle-rise") continue;
    EXPECT_EQ(f.outcome, Outcome::shortfall);
    EXPECT_EQ(f.level, Level::advised);
    EXPECT_NEAR(std::get<Length>(*f.short_by).inches(), 6, 1e-6);
  }
}

// ---- the basin's width
TEST(ElectricalCases, AWidthOfTheBasinThatDecidesIsAskedFor) {
  TestRoom room(200, 90);
  Fixture& v = room.add("v", FixtureKind::vanity, "n", 100, 40, 21);  // at least 92.5 to 107.5, at most 80 to 120
  v.height = 34_in;
  receptacle(room, "n", 107.5 + 36, 44);
  EXPECT_TRUE(met(outcome(room, "2023", "basin-receptacle-distance")));
  room.option().on_walls[0].along = 150_in;
  const auto asked = findings(room, "2023", "basin-receptacle-distance");
  ASSERT_EQ(asked.size(), 1u);
  EXPECT_EQ(asked[0].outcome, Outcome::unknown);
  EXPECT_EQ(asked[0].fact, "bowl_width");
  room.option().on_walls[0].along = 157_in;
  EXPECT_EQ(outcome(room, "2023", "basin-receptacle-distance"), Outcome::shortfall);
  EXPECT_NEAR(measured(room, "2023", "basin-receptacle-distance"), 37, 1e-6);
}

TEST(ElectricalCases, WithoutAReceptacleItIsNotKnown) {
  TestRoom room(100, 90);
  room.add("b", FixtureKind::basin, "n", 50, 20, 18);
  const auto found = findings(room, "2023", "basin-receptacle-distance");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].outcome, Outcome::unknown);
  EXPECT_EQ(found[0].detail, "receptacle-not-placed");
  for (const char* once : {"basin-receptacle-wall", "basin-receptacle-drop"})
    EXPECT_EQ(outcome(room, "2023", once), Outcome::notApplicable) << "asked for once";
}

// A low receptacle beside the toilet on the same wall does not count before the one at the counter.
TEST(ElectricalCases, TheReceptacleAtTheCounterServesTheBasin) {
  for (const bool low_first : {true, false}) {
    TestRoom room(140, 90);
    Fixture& v = room.add("v", FixtureKind::vanity, "n", 30, 30, 21);
    v.height = 34_in;
    v.bowl_width = 16_in;
    if (low_first) receptacle(room, "n", 48, 12).id = {"low"};
    receptacle(room, "n", 58, 44).id = {"counter"};
    if (!low_first) receptacle(room, "n", 48, 12).id = {"low"};
    const auto found = findings(room, "2023", "basin-receptacle-distance");
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].subjects[0].text, "counter");
    EXPECT_EQ(outcome(room, "2023", "basin-receptacle-drop"), Outcome::clear);
  }
}

}  // namespace
}  // namespace elbowroom
