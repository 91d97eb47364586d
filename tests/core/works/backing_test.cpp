// Zones of backing and the thickness of backed walls by hand. Heights: Fair Housing Act Design Manual chapter 6 as
// safetyinplace.com gives it (30 to 38 in); thickness: worked example T33; glass: worked example T34.
#include "core/works/backing.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/check.h"
#include "core/works/backed_wall.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

WallItem& put(RoomMaker& room, const char* kind, const char* wall, double along) {
  WallItem item = typicalWallItem(kind, room.option());
  item.wall = {wall};
  item.along = in(along);
  room.option().on_walls.push_back(item);
  return room.option().on_walls.back();
}
std::vector<BackingZone> zonesOf(const RoomMaker& room, BackingFor use, bool later = false) {
  std::vector<BackingZone> found;
  for (const BackingZone& z : backingZones(room.layout()))
    if (z.use == use && z.later == later) found.push_back(z);
  return found;
}

TEST(Backing, ABarNeedsThirtyToThirtyEight) {
  RoomMaker room(96, 60);
  put(room, "grab-bar", "n", 40);  // 24 wide: 28 to 52
  const auto zones = zonesOf(room, BackingFor::bar);
  ASSERT_EQ(zones.size(), 1u);
  EXPECT_EQ(zones[0].from, 28_in);
  EXPECT_EQ(zones[0].to, 52_in);
  EXPECT_EQ(zones[0].bottom, 30_in);
  EXPECT_EQ(zones[0].top, 38_in);
  EXPECT_NE(zones[0].load.find("250 lbf"), std::string::npos);
  EXPECT_NE(zones[0].caution.find("No source"), std::string_view::npos);
}

TEST(Backing, ItReachesFromStudToStudWhereTheyAreStated) {
  RoomMaker room(96, 60);
  room.option().room.walls[0].studs = Studs{8_in, 16_in, {}};  // 8, 24, 40, 56, ...
  put(room, "grab-bar", "n", 40);
  const auto zones = zonesOf(room, BackingFor::bar);
  ASSERT_EQ(zones.size(), 1u);
  EXPECT_EQ(zones[0].from, 24_in);
  EXPECT_EQ(zones[0].to, 56_in);
}

TEST(Backing, AHighBarAndAnLBarAreCoveredWhole) {
  RoomMaker room(96, 60);
  put(room, "grab-bar-l", "n", 40);  // 33.5 to 65.5
  WallItem& high = put(room, "grab-bar", "s", 40);
  high.bottom = 48_in;
  const auto zones = zonesOf(room, BackingFor::bar);
  ASSERT_EQ(zones.size(), 2u);
  EXPECT_EQ(zones[0].bottom, 30_in);
  EXPECT_EQ(zones[0].top, 65.5_in);
  // 8 in, as high as the published zone, about its middle at 48 5/8 in: no sliver of the bar's own 1 1/4 in.
  EXPECT_EQ(zones[1].bottom, 44.625_in);
  EXPECT_EQ(zones[1].top, 52.625_in);
}

TEST(Backing, ABackedWallAnswersHoldersButABarOnlyWithThreeQuarterPlywood) {
  RoomMaker room(96, 60);
  put(room, "grab-bar", "n", 30);
  put(room, "towel-bar", "n", 70);
  EXPECT_FALSE(zonesOf(room, BackingFor::holder).at(0).answered);
  Wall& wall = room.option().room.walls[0];
  wall.facts["backed"] = true;
  EXPECT_TRUE(zonesOf(room, BackingFor::holder).at(0).answered);
  EXPECT_FALSE(zonesOf(room, BackingFor::bar).at(0).answered);
  wall.facts["backing_plywood"] = 0.5_in;
  EXPECT_FALSE(zonesOf(room, BackingFor::bar).at(0).answered);
  wall.facts["backing_plywood"] = 0.75_in;
  EXPECT_TRUE(zonesOf(room, BackingFor::bar).at(0).answered);
  wall.facts["backed"] = false;
  EXPECT_FALSE(zonesOf(room, BackingFor::bar).at(0).answered);
}

// What the rules of the book of craft say of the thing: nothing of them is short or not known.
bool rulesAreMet(const RoomMaker& room, const char* id) {
  BookChoice choice;
  choice.books = {"craft"};
  bool met = true;
  for (const Finding& f : check(room.layout(), choice).findings) {
    const bool of_backing = f.rule == "grab-bar-backed" || f.rule == "grab-bar-plywood" ||
                            f.rule == "holder-backed" || f.rule == "wall-hung-backed";
    const bool about = std::find(f.subjects.begin(), f.subjects.end(), ElementId{id}) != f.subjects.end();
    if (of_backing && about && f.outcome != Outcome::clear && f.outcome != Outcome::close) met = false;
  }
  return met;
}

TEST(Backing, RulesAndScheduleSayTheSame) {
  const std::vector<std::optional<bool>> answers{std::nullopt, false, true};
  for (const auto& backed : answers)
    for (const auto& plywood : std::vector<std::optional<Length>>{std::nullopt, 0.5_in, 0.75_in})
      for (const auto& blocking : answers) {
        RoomMaker room(240, 60);
        Wall& wall = room.option().room.walls[0];
        if (backed) wall.facts["backed"] = *backed;
        if (plywood) wall.facts["backing_plywood"] = *plywood;
        double along = 20;
        for (const char* kind : {"grab-bar", "grab-bar-fold", "towel-bar", "paper-holder", "hook", "shelf", "radiator"}) {
          WallItem& item = put(room, kind, "n", along);
          item.id = {kind};
          if (blocking) item.facts["blocking"] = *blocking;
          along += 28;
        }
        Fixture& basin = room.fixture("basin", FixtureKind::basin, "n", 220, 20, 18);
        basin.facts["wall_hung"] = true;
        if (blocking) basin.facts["blocking"] = *blocking;
        int seen = 0;
        for (const BackingZone& z : backingZones(room.layout())) {
          ASSERT_EQ(z.items.size(), 1u);
          SCOPED_TRACE(z.items[0].text);
          EXPECT_EQ(z.answered, rulesAreMet(room, z.items[0].text.c_str()));
          ++seen;
        }
        EXPECT_EQ(seen, 8);
      }
}

TEST(Backing, NoZoneIsASliver) {
  RoomMaker room(200, 60);
  double along = 20;
  for (const char* kind : {"grab-bar", "grab-bar-fold", "towel-bar", "paper-holder", "hook", "shelf"}) {
    put(room, kind, "n", along).bottom = 10_in;
    along += 28;
  }
  for (const BackingZone& z : backingZones(room.layout())) EXPECT_GE(z.top - z.bottom, 8_in) << z.items[0].text;
}

TEST(Backing, WhatGoesAsksForNothingAndNeighboursShareAZone) {
  RoomMaker room(96, 60);
  put(room, "hook", "n", 30);
  put(room, "hook", "n", 31);
  put(room, "hook", "n", 60).status = Status::remove;
  const auto zones = zonesOf(room, BackingFor::holder);
  ASSERT_EQ(zones.size(), 1u);
  EXPECT_EQ(zones[0].from, 29_in);
  EXPECT_EQ(zones[0].to, 32_in);
  EXPECT_EQ(zones[0].items.size(), 2u);
}

TEST(Backing, AWallHungBasinAndBench) {
  RoomMaker room(96, 60);
  Fixture& basin = room.fixture("b", FixtureKind::basin, "n", 30, 20, 18);
  basin.height = 34_in;
  EXPECT_TRUE(zonesOf(room, BackingFor::basin).empty());  // not stated to hang
  basin.facts["wall_hung"] = true;
  Fixture& bench = room.fixture("s", FixtureKind::bench, "n", 70, 24, 15);
  bench.facts["wall_hung"] = true;
  bench.facts["seat_height"] = 18_in;
  const auto basins = zonesOf(room, BackingFor::basin), benches = zonesOf(room, BackingFor::bench);
  ASSERT_EQ(basins.size(), 1u);
  EXPECT_EQ(basins[0].from, 20_in);
  EXPECT_EQ(basins[0].top, 34_in);
  ASSERT_EQ(benches.size(), 1u);
  EXPECT_EQ(benches[0].top, 18_in);
  EXPECT_EQ(benches[0].to, 82_in);
}

// Glass 3/8 in weighs 4.877 lb per square foot; 28 x 76 in: 72.1 lb.
TEST(Backing, GlassWeighsByItsSizeAndTheMirrorSaysSo) {
  EXPECT_NEAR(glassWeight(28_in * 76_in, 0.375_in).value(), 72.1, 0.05);
  EXPECT_NEAR(glassWeight(12_in * 12_in, 0.5_in).value(), 6.50, 0.005);
  RoomMaker room(96, 60);
  WallItem& mirror = put(room, "mirror", "n", 48);
  mirror.width = 48_in;
  mirror.height = 36_in;  // 12 sq ft of 1/4 in: 3.251 lb each, 39 lb, 17.7 kg
  const auto zones = zonesOf(room, BackingFor::mirror);
  ASSERT_EQ(zones.size(), 1u);
  EXPECT_EQ(zones[0].load, "its own weight, about 39 lb (18 kg)");
}

// A shower in the corner of n and w: its right glass runs from n; the door in its front hangs on w.
TEST(Backing, AGlassDoorHangsOnSolidWood) {
  RoomMaker room(96, 60);
  Fixture& shower = room.fixture("sh", FixtureKind::shower, "n", 18, 36, 36);
  Pane pane;
  pane.side = Side::front;
  pane.height = 78_in;
  pane.door = 28_in;
  pane.hinge = Hand::left;
  shower.glass = {pane};
  auto zones = zonesOf(room, BackingFor::glassHinge);
  ASSERT_EQ(zones.size(), 1u);
  EXPECT_EQ(zones[0].wall.text, "w");  // 60 long from the south; the glass is 36 from its right end
  EXPECT_EQ(zones[0].from, 22.25_in);
  EXPECT_EQ(zones[0].to, 25.75_in);
  EXPECT_EQ(zones[0].bottom, 0_in);
  EXPECT_EQ(zones[0].top, 78_in);
  shower.glass[0].hinge = Hand::right;  // hangs on the other glass, on no wall
  EXPECT_TRUE(zonesOf(room, BackingFor::glassHinge).empty());
}

TEST(Backing, BarsThatMayComeLater) {
  RoomMaker room(96, 60);
  room.fixture("wc", FixtureKind::toilet, "n", 18, 20, 28);  // 18 from the wall w
  auto zones = zonesOf(room, BackingFor::bar, true);
  ASSERT_EQ(zones.size(), 2u);
  EXPECT_EQ(zones[0].wall.text, "n");
  EXPECT_EQ(zones[0].from, 6_in);
  EXPECT_EQ(zones[0].to, 30_in);
  EXPECT_EQ(zones[1].wall.text, "w");  // 12 to 54 from its right end, 60 long
  EXPECT_EQ(zones[1].from, 6_in);
  EXPECT_EQ(zones[1].to, 48_in);
  EXPECT_EQ(zones[1].bottom, 30_in);
  EXPECT_EQ(zones[1].top, 38_in);
  put(room, "grab-bar", "w", 26);  // is there already
  zones = zonesOf(room, BackingFor::bar, true);
  ASSERT_EQ(zones.size(), 1u);
  EXPECT_EQ(zones[0].wall.text, "n");
}

TEST(Backing, AToiletFarFromBothWallsHasNoBarBesideIt) {
  RoomMaker room(96, 60);
  room.fixture("wc", FixtureKind::toilet, "n", 24, 20, 28);
  EXPECT_EQ(zonesOf(room, BackingFor::bar, true).size(), 2u);
  room.option().fixtures[0].placement = OnWall{{"n"}, 24.0625_in, {}};
  EXPECT_EQ(zonesOf(room, BackingFor::bar, true).size(), 1u);
}

TEST(Backing, AnAlcoveBathHasThreeWallsLessItsWindow) {
  RoomMaker room(60, 96);
  room.fixture("b", FixtureKind::bath, "n", 30, 60, 30);
  auto zones = zonesOf(room, BackingFor::bar, true);
  ASSERT_EQ(zones.size(), 3u);
  EXPECT_EQ(zones[1].wall.text, "e");
  EXPECT_EQ(zones[1].to, 30_in);
  EXPECT_EQ(zones[2].wall.text, "w");
  EXPECT_EQ(zones[2].from, 66_in);
  Opening window;
  window.id = {"win"};
  window.kind = OpeningKind::window;
  window.wall = {"n"};
  window.along = 30_in;
  window.width = 24_in;
  window.height = 36_in;
  window.sill = 36_in;
  room.option().openings.push_back(window);
  zones = zonesOf(room, BackingFor::bar, true);
  ASSERT_EQ(zones.size(), 4u);  // 0 to 18 and 42 to 60
  EXPECT_EQ(zones[0].to, 18_in);
  EXPECT_EQ(zones[1].from, 42_in);
  room.option().openings[0].sill = 38_in;  // above the bars
  EXPECT_EQ(zonesOf(room, BackingFor::bar, true).size(), 3u);
}

TEST(BackedWall, ThicknessIsThatOfTheWorkedExample) {
  EXPECT_EQ(backedWallThickness(4.5_in, 1), 4.875_in);
  EXPECT_EQ(backedWallThickness(4.5_in, 2), 5.25_in);
  EXPECT_EQ(backedWallThickness(6.5_in, 1), 6.875_in);
  EXPECT_EQ(backedWallThickness(4.5_in, 1, 0.75_in, 0.5_in), 5.25_in);
  EXPECT_EQ(jambFor(4.5_in), 4.5625_in);
  EXPECT_EQ(jambFor(6.5_in), 6.5625_in);
}

TEST(BackedWall, NamesTheJambsAndBoxesThatChange) {
  RoomMaker room(96, 60);
  room.door("d", "n", 20, 30, Hand::left, Swing::in);
  room.door("d2", "s", 20, 30, Hand::left, Swing::in);
  put(room, "receptacle", "n", 60).id = {"r"};
  put(room, "control", "n", 70).id = {"c"};
  put(room, "niche", "n", 80).id = {"niche"};
  put(room, "hook", "n", 50).id = {"h"};
  auto found = backedWall(room.layout(), {"n"}).value();
  EXPECT_EQ(found.bare, 4.5_in);
  EXPECT_EQ(found.backed, 4.875_in);
  EXPECT_EQ(found.jambs, (std::vector<ElementId>{{"d"}}));
  EXPECT_EQ(found.boxes, (std::vector<ElementId>{{"r"}, {"c"}}));
  EXPECT_EQ(found.recesses, (std::vector<ElementId>{{"niche"}}));
  room.option().room.walls[0].thickness = 4.875_in;
  room.option().room.walls[0].facts["backed"] = true;
  found = backedWall(room.layout(), {"n"}).value();
  EXPECT_EQ(found.bare, 4.5_in);
  EXPECT_EQ(found.backed, 4.875_in);
  EXPECT_EQ(backedWall(room.layout(), {"none"}), std::nullopt);
}

}  // namespace
}  // namespace elbowroom
