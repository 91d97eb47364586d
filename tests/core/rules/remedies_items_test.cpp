// Remedies for what hangs on walls and on the ceiling, and what a fixture takes along when a remedy moves it.
// The least shift is known from the figures beside each check.
#include <gtest/gtest.h>

#include "core/rules/remedies_text.h"
#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing_room::in;
using testing_room::item;
using testing_room::TestRoom;

Remedies remediesOf(const Plan& plan, const std::string& book, const std::string& rule) {
  for (const Finding& f : check(deriveLayout(plan, 0), choiceOf(plan)).findings)
    if (f.outcome == Outcome::shortfall && f.book == book && f.rule == rule)
      return remediesFor(plan, 0, f, choiceOf(plan));
  ADD_FAILURE() << "nothing is short of " << book << "/" << rule;
  return {};
}

const WallItem& putItem(const Remedy& r) { return std::get<PutWallItems>(r.change).items.at(0); }

// Published band 42 to 48 in: the centreline of a bar at 60 in comes down by 12.
TEST(RemediesOfItems, ABarTooHighComesDownByWhatIsTooMuch) {
  TestRoom room(96, 96);
  room.plan().books = {"comfort"};
  item(room, "t", "towel-bar", "n", 48, 59.5, 24, 1);
  const Remedies r = remediesOf(room.plan(), "comfort", "towel-bar-height");
  ASSERT_FALSE(r.offered.empty());
  EXPECT_EQ(r.offered[0].move.way, Mend::lower);
  EXPECT_EQ(r.offered[0].move.by, 12_in);
  EXPECT_EQ(putItem(r.offered[0]).bottom, 47.5_in);
  EXPECT_EQ(textOf(r.offered[0], room.option(), Unit::inches).label,
            "Lower Towel bar by 12\", to 47 1/2\" above the floor");
}

// Hooks: 55 to 70 in.
TEST(RemediesOfItems, AHookTooLowGoesUpAndOneToBeKeptIsMarked) {
  TestRoom room(96, 96);
  room.plan().books = {"comfort"};
  item(room, "h", "hook", "n", 48, 48, 2, 4).status = Status::keep;  // centre at 50
  const Remedies r = remediesOf(room.plan(), "comfort", "hook-height");
  ASSERT_FALSE(r.offered.empty());
  EXPECT_EQ(r.offered[0].move.way, Mend::raise);
  EXPECT_EQ(r.offered[0].move.by, 5_in);
  EXPECT_TRUE(r.offered[0].kept);
  EXPECT_EQ(putItem(r.offered[0]).status, Status::move);
}

// Two hooks 1 in into each other: the later one goes aside by 1 in, or up or down by its 4 in.
TEST(RemediesOfItems, WhatHangsIntoAnotherThingGoesAside) {
  TestRoom room(96, 96);
  room.plan().books = {"craft"};
  room.option().room.walls[0].facts["backed"] = true;
  item(room, "h1", "hook", "n", 48, 60, 2, 4);
  item(room, "h2", "hook", "n", 49, 60, 2, 4);
  const Remedies r = remediesOf(room.plan(), "craft", "wall-items-apart");
  ASSERT_FALSE(r.offered.empty());
  EXPECT_EQ(r.offered[0].move.way, Mend::slide);
  EXPECT_GE(r.offered[0].move.by, 1_in);
  EXPECT_LE(r.offered[0].move.by, 1.0625_in);
  const Result<Plan> next = apply(room.plan(), {0, r.offered[0].change, "", ""});
  ASSERT_TRUE(next.ok());
  for (const Finding& f : check(deriveLayout(*next, 0), choiceOf(*next)).findings)
    if (f.rule == "wall-items-apart") {
      EXPECT_EQ(f.outcome, Outcome::clear);
    }
}

// A hanging light 13 in from the bath's rim; 3 ft across are kept free of it: 23 in farther.
TEST(RemediesOfItems, AHangingLightMovesOverTheCeiling) {
  TestRoom room(96, 120);
  room.plan().books = {"us-electrical"};
  room.add("b", FixtureKind::bath, "n", 48, 60, 30).height = 15_in;  // y 90 to 120
  CeilingItem light;
  light.id = {"l"};
  light.kind = "light";
  light.at = {48_in, 74_in};  // 6 in across: its edge at 77
  light.facts["hanging"] = true;
  light.facts["lower_edge"] = 84_in;
  room.option().on_ceiling.push_back(light);
  const Remedies r = remediesOf(room.plan(), "us-electrical", "light-off-water");
  ASSERT_FALSE(r.offered.empty());
  EXPECT_EQ(r.offered[0].move.way, Mend::slide);
  EXPECT_NEAR(r.offered[0].move.by.inches(), 23, 0.0626);
  EXPECT_EQ(r.offered[0].move.other, ElementId{"s"});
  const CeilingItem& put = std::get<PutCeilingItems>(r.offered[0].change).items.at(0);
  EXPECT_EQ(put.at.x, 48_in);
  EXPECT_NEAR(put.at.y.inches(), 74 - 23, 0.0626);
}

// IRC P2705.1(5): a basin's centreline 15 in from the side. It stands at 14, its mirror centred over it.
TEST(RemediesOfItems, AMirrorCentredOverABasinGoesWithIt) {
  TestRoom room(96, 96);
  room.plan().books = {"us-residential"};
  room.add("lav", FixtureKind::basin, "n", 13, 18, 18).height = 34_in;
  item(room, "m", "mirror", "n", 13, 40, 16, 30);
  item(room, "h", "hook", "n", 60, 60, 2, 4);
  const Remedies r = remediesOf(room.plan(), "us-residential", "basin-centreline-side");
  ASSERT_FALSE(r.offered.empty());
  ASSERT_EQ(r.offered[0].move.way, Mend::slide);
  EXPECT_EQ(r.offered[0].move.by, 2_in);
  const auto& put = std::get<PutThings>(r.offered[0].change);
  ASSERT_EQ(put.on_walls.size(), 1U) << "the hook belongs to nobody";
  EXPECT_EQ(put.on_walls[0].id, ElementId{"m"});
  EXPECT_EQ(put.on_walls[0].along, 15_in);
  EXPECT_EQ(textOf(r.offered[0], room.option(), Unit::inches).means, "Mirror goes along");
  EXPECT_EQ(std::get<OnWall>(put.fixtures.at(0).placement).along, 15_in);
}

// A mirror that is not centred over the basin was put where it is for its own sake.
TEST(RemediesOfItems, AMirrorBesideTheMiddleStays) {
  TestRoom room(96, 96);
  room.plan().books = {"us-residential"};
  room.add("lav", FixtureKind::basin, "n", 13, 18, 18).height = 34_in;
  item(room, "m", "mirror", "n", 20, 40, 16, 30);
  const Remedies r = remediesOf(room.plan(), "us-residential", "basin-centreline-side");
  ASSERT_FALSE(r.offered.empty());
  EXPECT_TRUE(std::holds_alternative<PutFixtures>(r.offered[0].change));
}

// IRC P2708.1: 24 in before a shower, over an entry of 22 in. A cabinet leaves 16 in of its front free, so it
// goes 6 in to the left.
TEST(RemediesOfItems, FittingsGoWithTheirShower) {
  TestRoom room(96, 96);
  room.plan().books = {"us-residential"};
  room.add("sh", FixtureKind::shower, "n", 60, 36, 36);  // x 42 to 78, y 60 to 96
  room.add("c", FixtureKind::cabinet, "s", 26, 24, 46);  // x 58 to 82, y 0 to 46
  item(room, "h", "shower-head", "n", 60, 76, 4, 4).shower = {"sh"};
  item(room, "v", "control", "n", 50, 40, 7, 7).shower = {"sh"};
  item(room, "o", "hook", "n", 20, 60, 2, 4);
  const Remedies r = remediesOf(room.plan(), "us-residential", "shower-clear-front");
  const Remedy* shower = nullptr;
  for (const Remedy& each : r.offered)
    if (each.move.moved == ElementId{"sh"} && each.move.way == Mend::slide) shower = &each;
  ASSERT_NE(shower, nullptr);
  EXPECT_NEAR(shower->move.by.inches(), 6, 0.0626);
  const auto& put = std::get<PutThings>(shower->change);
  ASSERT_EQ(put.on_walls.size(), 2U);
  for (const WallItem& i : put.on_walls)
    EXPECT_EQ(i.along, findWallItem(room.option(), i.id)->along - shower->move.by) << i.id.text;
  EXPECT_EQ(textOf(*shower, room.option(), Unit::inches).means, "Shower head and 1 more go along");
}

}  // namespace
}  // namespace elbowroom
