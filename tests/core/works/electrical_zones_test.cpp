// Zones on the walls, computed by hand from the figures of the rules: 3 ft and 8 ft at the water, 3 ft at a basin
// (NEC 406.9(C), 410.10(D), 210.52(D) as the rules quote them).
#include "core/works/electrical_zones.h"

#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using testing_room::in;
using testing_room::TestRoom;
using namespace literals;

std::vector<ElectricalZone> zonesOf(TestRoom& room, const char* edition = "2023") {
  room.plan().books = {"us-electrical", "craft"};
  room.plan().book_settings["us-electrical"]["edition"] = edition;
  return electricalZones(deriveLayout(room.plan(), 0), choiceOf(room.plan()));
}

std::vector<ElectricalZone> on(const std::vector<ElectricalZone>& zones, const char* wall, ElectricalZoneKind kind) {
  std::vector<ElectricalZone> found;
  for (const ElectricalZone& z : zones)
    if (z.wall.text == wall && z.kind == kind) found.push_back(z);
  return found;
}

void expectBox(const ElectricalZone& z, double from, double to, double bottom, double top, double off = 0.001) {
  EXPECT_NEAR(z.from.inches(), from, off);
  EXPECT_NEAR(z.to.inches(), to, off);
  EXPECT_NEAR(z.bottom.inches(), bottom, off);
  EXPECT_NEAR(z.top.inches(), top, off);
}

// A bath of 30 x 60 in the north-west corner: x 0 to 30, y 60 to 120 of a room of 120 x 120.
TestRoom bathInCorner() {
  TestRoom room(120, 120);
  Fixture& bath = room.add("bath", FixtureKind::bath, "w", 90, 60, 30);
  bath.height = 20_in;
  return room;
}

// CSA C22.1 26-720 and 30-320(3): 1 m (39.37 in) from the same bath, to the ceiling.
TEST(ElectricalZones, ACanadianBath) {
  TestRoom room = bathInCorner();
  room.plan().books = {"ca-electrical"};
  const auto zones = electricalZones(deriveLayout(room.plan(), 0), choiceOf(room.plan()));
  const double metre = 1000 / 25.4;
  // 26-720 f): 500 mm in any case, 1 m where practicable.
  expectBox(on(zones, "n", ElectricalZoneKind::noReceptacle).at(0), 0, 30 + metre / 2, 0, 96);
  expectBox(on(zones, "w", ElectricalZoneKind::noReceptacle).at(0), 60 - metre / 2, 120, 0, 96);
  for (const auto kind : {ElectricalZoneKind::lastReceptacle, ElectricalZoneKind::noSwitch}) {
    ASSERT_EQ(on(zones, "n", kind).size(), 1u);
    expectBox(on(zones, "n", kind)[0], 0, 30 + metre, 0, 96);
    ASSERT_EQ(on(zones, "w", kind).size(), 1u);
    expectBox(on(zones, "w", kind)[0], 60 - metre, 120, 0, 96);
    EXPECT_TRUE(on(zones, "s", kind).empty());
  }
  EXPECT_EQ(on(zones, "n", ElectricalZoneKind::noReceptacle)[0].book, "ca-electrical");
}

TEST(ElectricalZones, ReceptaclesAtABath) {
  TestRoom room = bathInCorner();
  const auto zones = zonesOf(room);
  const auto kind = ElectricalZoneKind::noReceptacle;
  // n runs from x = 0: the bath ends at 30, 3 ft on at 66. The ceiling of 96 in is lower than 20 + 96.
  ASSERT_EQ(on(zones, "n", kind).size(), 1u);
  expectBox(on(zones, "n", kind)[0], 0, 66, 0, 96);
  // w runs from y = 0 up: the bath begins at 60, 3 ft before it at 24.
  ASSERT_EQ(on(zones, "w", kind).size(), 1u);
  expectBox(on(zones, "w", kind)[0], 24, 120, 0, 96);
  EXPECT_TRUE(on(zones, "e", kind).empty());
  EXPECT_TRUE(on(zones, "s", kind).empty());
  const ElectricalZone z = on(zones, "n", kind)[0];
  EXPECT_EQ(z.of, std::vector<ElementId>{{"bath"}});
  EXPECT_EQ(z.rule, "receptacle-off-water");
  EXPECT_EQ(z.source.section, "406.9(C)");
  EXPECT_EQ(z.grade, Grade::verified);
}

TEST(ElectricalZones, EightFeetAboveTheRim) {
  TestRoom room = bathInCorner();
  room.option().room.ceiling.height = in(130);
  expectBox(on(zonesOf(room), "n", ElectricalZoneKind::noReceptacle)[0], 0, 66, 0, 116);
  room.option().room.ceiling.height.reset();
  expectBox(on(zonesOf(room), "n", ElectricalZoneKind::noReceptacle)[0], 0, 66, 0, 116);
}

TEST(ElectricalZones, FollowTheEdition) {
  TestRoom room = bathInCorner();
  const auto kind = ElectricalZoneKind::noReceptacle;
  // 2020: from the rim up, and below it what is disputed.
  const auto of2020 = on(zonesOf(room, "2020"), "n", kind);
  ASSERT_EQ(of2020.size(), 2u);
  expectBox(of2020[0], 0, 66, 20, 96);
  EXPECT_EQ(of2020[0].rule, "receptacle-off-water-2020");
  expectBox(of2020[1], 0, 66, 0, 20);
  EXPECT_EQ(of2020[1].rule, "receptacle-below-rim");
  // 2017: only in and over the bath.
  const auto of2017 = on(zonesOf(room, "2017"), "n", kind);
  ASSERT_EQ(of2017.size(), 1u);
  expectBox(of2017[0], 0, 30, 0, 96);
  EXPECT_EQ(of2017[0].rule, "receptacle-not-over-water");
  expectBox(on(zonesOf(room, "2017"), "w", kind)[0], 60, 120, 0, 96);
}

TEST(ElectricalZones, FollowAChangedLimit) {
  TestRoom room = bathInCorner();
  room.plan().rule_changes.push_back(
      {"us-electrical", "receptacle-off-water", false, in(48), "Asked for by the town", {}});
  expectBox(on(zonesOf(room), "n", ElectricalZoneKind::noReceptacle)[0], 0, 78, 0, 96);
  room.plan().rule_changes[0].off = true;
  EXPECT_TRUE(on(zonesOf(room), "n", ElectricalZoneKind::noReceptacle).empty());
}

TEST(ElectricalZones, NothingOfABookThatIsNotChosen) {
  TestRoom room = bathInCorner();
  room.plan().books = {"comfort"};
  EXPECT_TRUE(electricalZones(deriveLayout(room.plan(), 0), choiceOf(room.plan())).empty());
}

TEST(ElectricalZones, HangingLightsAndSwitches) {
  TestRoom room = bathInCorner();
  const auto zones = zonesOf(room);
  expectBox(on(zones, "n", ElectricalZoneKind::noHangingLight)[0], 0, 66, 20, 96);
  expectBox(on(zones, "n", ElectricalZoneKind::noSwitch)[0], 0, 30, 0, 96);
  expectBox(on(zones, "w", ElectricalZoneKind::noSwitch)[0], 60, 120, 0, 96);
  expectBox(on(zones, "n", ElectricalZoneKind::listedLight)[0], 0, 30, 0, 96);
  // 2005 asked for listed lights in the whole zone of 3 ft.
  expectBox(on(zonesOf(room, "2008"), "n", ElectricalZoneKind::listedLight)[0], 0, 66, 0, 96);
}

// Round the corner of what stands out: a point of the east wall is nearest to the bath's corner.
TEST(ElectricalZones, RoundACorner) {
  TestRoom room(50, 120);
  room.add("bath", FixtureKind::bath, "w", 90, 60, 30).height = 20_in;  // corner (30, 60)
  // e runs from the north; 20 in off the bath's side: all of its 60 in, then sqrt(36^2 - 20^2) = 29.933.
  expectBox(on(zonesOf(room), "e", ElectricalZoneKind::noReceptacle)[0], 0, 89.933, 0, 96);
}

// Fixed glass on the right side of a shower: what is beyond it is reached round the glass only.
TEST(ElectricalZones, FixedGlassEndsTheZone) {
  TestRoom room(120, 90);
  Fixture& shower = room.add("sh", FixtureKind::shower, "n", 18, 36, 36);  // x 0 to 36, y 54 to 90
  const auto kind = ElectricalZoneKind::noReceptacle;
  expectBox(on(zonesOf(room), "n", kind)[0], 0, 72, 0, 96);
  shower.glass.push_back({Side::right, 78_in, {}, {}, {}, {}});
  const auto zones = on(zonesOf(room), "n", kind);
  ASSERT_EQ(zones.size(), 2u);
  // Up to the top of the glass the corner at its front end counts: 36 in straight out from the wall, so right
  // beside the glass the wall is 36 in off and beyond it more.
  expectBox(zones[0], 0, 36, 0, 78, 0.2);
  expectBox(zones[1], 0, 72, 78, 96);
  // An edition that says nothing of barriers goes through.
  expectBox(on(zonesOf(room, "2020"), "n", kind)[0], 0, 72, 0, 96);
}

// A wing wall of 4 in between bath and receptacle, as deep as the bath.
TEST(ElectricalZones, AWallEndsTheZone) {
  TestRoom room = testing_room::besideWing(120, 40);  // the bath reaches from y = 60 to 90
  const auto kind = ElectricalZoneKind::noReceptacle;
  EXPECT_TRUE(on(zonesOf(room), "n2", kind).empty());
  expectBox(on(zonesOf(room, "2020"), "n2", kind)[0], 0, 32, 20, 96);  // 60 to 64 is 4 in, so 32 in more
}

// Basin of 16 in in the middle of a counter of 40 in whose middle is 60 in from the corner: 52 - 36 = 16 to
// 68 + 36 = 104; 12 in below the counter of 34 in up to the ceiling.
TEST(ElectricalZones, ReceptacleOfABasin) {
  TestRoom room(120, 90);
  Fixture& v = room.add("v", FixtureKind::vanity, "n", 60, 40, 21);
  v.height = 34_in;
  v.bowl_width = 16_in;
  const auto kind = ElectricalZoneKind::basinReceptacle;
  auto zones = on(zonesOf(room), "n", kind);
  ASSERT_EQ(zones.size(), 1u);
  expectBox(zones[0], 16, 104, 22, 96);
  EXPECT_EQ(zones[0].source.section, "210.52(D)");
  EXPECT_TRUE(on(zonesOf(room), "s", kind).empty());
  // The older text set no lower end for a wall; a plan review of today sets an upper one.
  expectBox(on(zonesOf(room, "2008"), "n", kind)[0], 16, 104, 0, 96);
  room.plan().book_settings["us-electrical"]["counter"] = "20";
  expectBox(on(zonesOf(room), "n", kind)[0], 16, 104, 22, 54);
}

// Two basins of 16 in at 15 and 45 in of a counter of 60 in: a zone for each; on the left side wall only what is
// within 36 in of the left one, whose edge is 7 in off: sqrt(36^2 - 7^2) = 35.313 before the counter's depth.
TEST(ElectricalZones, OneForEachBasinOfADouble) {
  TestRoom room(60, 90);
  Fixture& v = room.add("v", FixtureKind::vanity, "n", 30, 60, 21);
  v.height = 34_in;
  v.basins = 2;
  v.bowl_width = 16_in;
  const auto kind = ElectricalZoneKind::basinReceptacle;
  const auto zones = on(zonesOf(room), "n", kind);
  ASSERT_EQ(zones.size(), 2u);
  expectBox(zones[0], 0, 59, 22, 96);
  expectBox(zones[1], 1, 60, 22, 96);
  const auto side = on(zonesOf(room), "w", kind);  // from y = 0; the counter begins at y = 69
  ASSERT_EQ(side.size(), 1u);
  expectBox(side[0], 69 - 35.313, 90, 22, 96);
}

TEST(ElectricalZones, NearAToilet) {
  TestRoom room(100, 90);
  Fixture& wc = room.toilet(50);  // 20 in wide, tank as wide: x 40 to 60
  const auto kind = ElectricalZoneKind::seatReceptacle;
  auto zones = on(zonesOf(room), "n", kind);
  ASSERT_EQ(zones.size(), 1u);
  expectBox(zones[0], 4, 96, 0, 36);
  EXPECT_EQ(zones[0].book, "craft");
  wc.facts["electric_seat"] = false;
  EXPECT_TRUE(on(zonesOf(room), "n", kind).empty());
}

TEST(ElectricalZones, WhatIsRemovedHasNone) {
  TestRoom room = bathInCorner();
  room.option().fixtures[0].status = Status::remove;
  EXPECT_TRUE(zonesOf(room).empty());
  room.option().room.walls.clear();
  room.option().fixtures.clear();
  EXPECT_TRUE(zonesOf(room).empty());
}

TEST(ElectricalZones, WordsForEachKind) {
  for (int k = 0; k <= static_cast<int>(ElectricalZoneKind::seatReceptacle); ++k)
    EXPECT_FALSE(wordsOf(static_cast<ElectricalZoneKind>(k)).empty());
}

}  // namespace
}  // namespace elbowroom
