// The Canadian code: T25 of our table of US and Canadian figures (oncodes.ca, a reprint of CSA C22.1), and what else its
// rules say, by hand from their metric figures.
#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::item;
using testing_room::met;
using testing_room::TestRoom;

const char* const kBook = "ca-electrical";

double inches(double mm) { return Length::fromMillimetres(mm).inches(); }

// A shower of 36 x 36 in the north-west corner, open to the east and south; a box on the north wall whose near edge is
// so many millimetres from it.
struct BesideShower {
  TestRoom room{140, 90};
  explicit BesideShower(const char* kind, double off_mm) {
    room.add("sh", FixtureKind::shower, "n", 18, 36, 36);
    item(room, "box", kind, "n", 36 + inches(off_mm) + 2.75 / 2, 40, 2.75, 4.5);
  }
  Facts& box() { return room.option().on_walls[0].facts; }
  Finding only(const char* rule) const {
    const auto found = room.findings(kBook, rule);
    EXPECT_EQ(found.size(), 1u) << rule;
    return found.empty() ? Finding{} : found[0];
  }
};

// 0.8 m with a GFCI passes only if 1 m is not practicable; 0.45 m fails always.
TEST(ElectricalCanada, T25ReceptacleAtAShower) {
  BesideShower at("receptacle", 800);
  at.box()["gfci"] = true;
  EXPECT_EQ(at.only("receptacle-off-water").outcome, Outcome::unknown);
  EXPECT_EQ(at.only("receptacle-off-water").fact, "no_farther_place");
  EXPECT_EQ(at.only("receptacle-off-water").detail, "nearer-if-no-place");
  at.box()["no_farther_place"] = true;
  EXPECT_TRUE(met(at.only("receptacle-off-water").outcome));
  at.box()["no_farther_place"] = false;
  EXPECT_EQ(at.only("receptacle-off-water").outcome, Outcome::shortfall);
  EXPECT_NEAR(std::get<Length>(*at.only("receptacle-off-water").short_by).millimetres(), 200, 0.01);
  EXPECT_TRUE(met(at.only("receptacle-gfci").outcome));
  for (const std::optional<bool> no_farther : {std::optional<bool>(), {true}, {false}}) {
    BesideShower near("receptacle", 450);
    if (no_farther) near.box()["no_farther_place"] = *no_farther;
    EXPECT_EQ(near.only("receptacle-off-water").outcome, Outcome::shortfall);
  }
  // At the two limits and a sixteenth of an inch (1.6 mm) to either side.
  for (const auto& [mm, passes] : {std::pair{500.0, true}, {498.4, false}, {501.6, true}}) {
    BesideShower near("receptacle", mm);
    near.box()["no_farther_place"] = true;
    EXPECT_EQ(met(near.only("receptacle-off-water").outcome), passes) << mm;
  }
  EXPECT_TRUE(met(BesideShower("receptacle", 1000).only("receptacle-off-water").outcome));
}

// A switch at 0.6 m without GFCI fails, with it passes.
TEST(ElectricalCanada, T25SwitchAtAShower) {
  BesideShower at("switch", 600);
  EXPECT_EQ(at.only("switch-off-water").fact, "switch_gfci");
  at.box()["switch_gfci"] = false;
  EXPECT_EQ(at.only("switch-off-water").outcome, Outcome::shortfall);
  at.box()["switch_gfci"] = true;
  EXPECT_TRUE(met(at.only("switch-off-water").outcome));
  BesideShower near("switch", 498.4);
  near.box()["switch_gfci"] = true;
  EXPECT_EQ(near.only("switch-off-water").outcome, Outcome::shortfall);
  EXPECT_TRUE(met(BesideShower("switch", 1000).only("switch-off-water").outcome));
  // A timer is for a fan; the rule is about lights.
  EXPECT_TRUE(BesideShower("timer-switch", 600).room.findings(kBook, "switch-off-water").empty());
}

// "without piercing a wall, partition": fixed glass at the shower's side sends the measure round its end; a switch behind
// the same glass stays where it is.
TEST(ElectricalCanada, GlassScreensAReceptacleAndNoSwitch) {
  BesideShower receptacle("receptacle", 800), light("switch", 800);
  for (BesideShower* at : {&receptacle, &light})
    at->room.option().fixtures[0].glass.push_back({Side::right, 78_in, {}, {}, {}, {}});
  // 36 in down to the front and 800 mm across.
  const double round = std::hypot(36 * 25.4, 800);
  EXPECT_NEAR(std::get<Length>(*receptacle.only("receptacle-off-water").measured).millimetres(), round, 0.01);
  EXPECT_TRUE(met(receptacle.only("receptacle-off-water").outcome));
  EXPECT_EQ(light.only("switch-off-water").fact, "switch_gfci");
  receptacle.room.option().fixtures[0].glass[0].height.reset();
  EXPECT_EQ(receptacle.only("receptacle-off-water").fact, "glass.height");
}

// One receptacle within 1 m of any one basin; two basins do not ask for two.
TEST(ElectricalCanada, OneReceptacleForAllBasins) {
  TestRoom room(200, 90);
  for (const auto& [id, along] : {std::pair{"a", 20.0}, {"b", 150.0}}) {
    Fixture& basin = room.add(id, FixtureKind::basin, "n", along, 20, 18);
    basin.height = 34_in;
  }
  EXPECT_EQ(room.outcome(kBook, "basin-receptacle-distance"), Outcome::unknown) << "none is placed";
  item(room, "r", "receptacle", "n", 30 + inches(1000), 40, 2.75, 4.5);  // the first ends at 30 in
  EXPECT_TRUE(met(room.outcome(kBook, "basin-receptacle-distance")));
  room.option().on_walls[0].along = Length::fromInches(31 + inches(1000));
  EXPECT_EQ(room.outcome(kBook, "basin-receptacle-distance"), Outcome::shortfall);
}

// 26-704: up to 1.5 m of a basin, bath or shower.
TEST(ElectricalCanada, GfciWithinOneAndAHalfMetres) {
  EXPECT_EQ(BesideShower("receptacle", 1500).only("receptacle-gfci").fact, "gfci");
  EXPECT_TRUE(BesideShower("receptacle", 1502).room.findings(kBook, "receptacle-gfci").empty());
}

// Appendix B: on the wall behind the bowl, not beside it and not below the counter.
TEST(ElectricalCanada, BehindASink) {
  TestRoom room(120, 90);
  Fixture& vanity = room.add("v", FixtureKind::vanity, "n", 30, 40, 22);
  vanity.height = 34_in;
  vanity.basins = 1;
  vanity.bowl_width = 16_in;  // 22 to 38 in along
  item(room, "r", "receptacle", "n", 30, 40, 2.75, 4.5);
  EXPECT_EQ(room.findings(kBook, "receptacle-behind-basin").at(0).fact, "bowl_from_wall");
  room.option().fixtures[0].facts["bowl_from_wall"] = 4_in;
  EXPECT_EQ(room.outcome(kBook, "receptacle-behind-basin"), Outcome::shortfall);
  room.option().on_walls[0].along = 40_in;
  EXPECT_EQ(room.outcome(kBook, "receptacle-behind-basin"), Outcome::notApplicable) << "beside the bowl";
  room.option().on_walls[0].along = 30_in;
  room.option().on_walls[0].bottom = 20_in;
  EXPECT_EQ(room.outcome(kBook, "receptacle-behind-basin"), Outcome::notApplicable) << "below the counter";
}

}  // namespace
}  // namespace elbowroom
