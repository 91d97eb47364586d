#include "core/plan/wall_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/plan/integrity.h"
#include "core/plan/layout.h"
#include "core/plan/wall_line.h"
#include "tests/core/plan/hall_bath.h"

namespace elbowroom {
namespace {

using namespace literals;

TEST(WallCatalogue, EveryKindHasItsOwnKeyAndLabel) {
  std::set<std::string_view> keys, labels;
  for (const WallKindInfo& info : wallKinds()) {
    EXPECT_TRUE(keys.insert(info.key).second) << info.key;
    EXPECT_TRUE(labels.insert(info.label).second) << info.label;
    EXPECT_EQ(findWallKind(info.key), &info);
    EXPECT_FALSE(info.short_label.empty());
    EXPECT_FALSE(info.id_stem.empty());
    EXPECT_GT(info.width, Length{});
    EXPECT_GT(info.height, Length{});
    EXPECT_GT(info.depth, Length{});
    EXPECT_TRUE(info.recessed || !info.in_bay) << info.key;
  }
  // The kinds that plan files already use (resources/plan.schema.json names them).
  for (const char* key : {"mirror", "light", "receptacle", "switch", "grab-bar", "towel-bar", "paper-holder",
                          "shower-head", "hand-spray", "control", "niche"})
    EXPECT_TRUE(keys.count(key)) << key;
  for (const char* key : {"fan", "light"}) EXPECT_NE(findCeilingKind(key), nullptr) << key;
  EXPECT_EQ(findWallKind("ladder"), nullptr);
}

// The facts of the catalogue of facts name kinds of this one.
TEST(WallCatalogue, FactsConcernKindsThatExist) {
  for (const FactInfo& fact : allFacts()) {
    if (fact.on != FactOn::wallItem && fact.on != FactOn::ceilingItem) continue;
    std::string_view kinds = fact.kinds;
    while (!kinds.empty()) {
      const std::size_t end = kinds.find(' ');
      const std::string_view kind = kinds.substr(0, end);
      EXPECT_TRUE(fact.on == FactOn::wallItem ? findWallKind(kind) != nullptr
                                              : findCeilingKind(kind) != nullptr)
          << fact.key << " " << kind;
      kinds.remove_prefix(end == std::string_view::npos ? kinds.size() : end + 1);
    }
  }
}

TEST(WallCatalogue, HeightsLieWithinThePublishedBands) {
  const Option none;
  const auto centre = [&](const char* kind) {
    const WallItem item = typicalWallItem(kind, none);
    return item.bottom + item.height / 2;
  };
  const auto within = [](Length v, Length low, Length high) { return v >= low && v <= high; };
  EXPECT_TRUE(within(centre("towel-bar"), 42_in, 48_in));    // kadvacorp.com
  EXPECT_TRUE(within(centre("hook"), 55_in, 70_in));         // kadvacorp.com
  EXPECT_TRUE(within(centre("shower-head"), 72_in, 80_in));  // bandddesign.com
  EXPECT_TRUE(within(centre("side-light"), 60_in, 66_in));   // papirmass.com
  EXPECT_TRUE(within(centre("light"), 75_in, 80_in));        // engineerfix.com
  EXPECT_TRUE(within(centre("control"), 38_in, 48_in));      // trade guideline 10
  EXPECT_EQ(centre("paper-holder"), 26_in);                  // trade guideline 23
  EXPECT_EQ(centre("makeup-mirror"), 59.8_in);               // 0.935 x 64 in, rounded
  EXPECT_LE(typicalWallItem("mirror", none).bottom, 40_in);  // A117.1 603.3 as quoted
  const WallItem bar = typicalWallItem("grab-bar", none);
  EXPECT_TRUE(within(bar.bottom + bar.height, 33_in, 36_in));
  const WallItem niche = typicalWallItem("niche", none);
  EXPECT_TRUE(within(niche.bottom, 48_in, 60_in));
}

TEST(WallCatalogue, WhatTheTrayOffersCanBePlaced) {
  Plan plan = testing::hallBath();
  Option& o = plan.options[0];
  std::vector<std::string_view> kinds{"ladder"};
  for (const WallKindInfo& info : wallKinds()) kinds.push_back(info.key);
  for (const std::string_view kind : kinds)
    for (int twice = 0; twice < 2; ++twice) {
      WallItem item = typicalWallItem(kind, o);
      item.wall = {"s"};
      item.along = 20_in;
      o.on_walls.push_back(item);
    }
  for (const CeilingKindInfo& info : ceilingKinds()) o.on_ceiling.push_back(typicalCeilingItem(info.key, o));
  EXPECT_EQ(integrity(plan), std::nullopt);
  EXPECT_EQ(deriveLayout(plan, 0).on_walls.size(), o.on_walls.size());
}

TEST(WallCatalogue, AKindOfThePersonsOwnKeepsItsWord) {
  WallItem ladder;
  ladder.kind = "ladder";
  EXPECT_EQ(labelOf(ladder), "ladder");
  EXPECT_EQ(depthOf(ladder), Length{});
  ladder.depth = 2_in;
  EXPECT_EQ(depthOf(ladder), 2_in);
  EXPECT_FALSE(isRecessed(ladder));
}

TEST(WallCatalogue, ACabinetOnTheFaceOfTheWallIsNotInIt) {
  WallItem cabinet = typicalWallItem("medicine-cabinet", Option{});
  EXPECT_TRUE(isRecessed(cabinet));
  cabinet.facts["surface_mounted"] = true;
  EXPECT_FALSE(isRecessed(cabinet));
}

TEST(WallCatalogue, ABoxIsInTheMiddleUnlessStated) {
  WallItem light = typicalWallItem("side-light", Option{});
  EXPECT_EQ(boxUp(light), 6_in);
  light.facts["box_up"] = 4_in;
  EXPECT_EQ(boxUp(light), 4_in);
}

TEST(WallCatalogue, SentencesNameTheThing) {
  const auto word = [](const char* kind) { return wordFor(typicalWallItem(kind, Option{})); };
  EXPECT_EQ(word("grab-bar"), "grab bar");
  EXPECT_EQ(word("grab-bar-l"), "L grab bar");
}

// Hand arithmetic on the hall bath: wall s runs from (96, 0) to (0, 0), the room lies at +y.
TEST(PlacedItems, StandOnTheirWallAsSeenFromInside) {
  Plan plan = testing::hallBath();
  Option& o = plan.options[0];
  WallItem niche = typicalWallItem("niche", o);  // 12 x 24, 3 1/4 deep
  niche.wall = {"s"};
  niche.along = 20_in;
  WallItem bar = typicalWallItem("grab-bar", o);  // 24 wide, 2 3/4 deep
  bar.wall = {"e"};
  bar.along = 30_in;
  o.on_walls = {niche, bar};
  const Layout layout = deriveLayout(plan, 0);
  const PlacedWallItem& n = layout.on_walls[0];
  EXPECT_EQ(n.wall, 2);
  EXPECT_EQ(n.left, (Point{82_in, 0_in}));
  EXPECT_EQ(n.right, (Point{70_in, 0_in}));
  EXPECT_EQ(n.from, 14_in);
  EXPECT_EQ(n.to, 26_in);
  EXPECT_EQ(n.bottom, 48_in);
  EXPECT_EQ(n.top, 72_in);
  EXPECT_TRUE(n.recessed);
  const PlacedWallItem& b = layout.on_walls[1];
  EXPECT_EQ(b.left, (Point{96_in, 42_in}));
  EXPECT_EQ(b.right, (Point{96_in, 18_in}));
  const auto has = [](const Outline& ring, Point p) { return std::count(ring.begin(), ring.end(), p) == 1; };
  EXPECT_TRUE(has(n.outline, {82_in, -3.25_in}));  // into the wall
  EXPECT_TRUE(has(b.outline, {93.25_in, 18_in}));  // into the room
  EXPECT_EQ(areaOf(n.outline).squareInches(), 39);
  EXPECT_EQ(areaOf(b.outline).squareInches(), 66);
}

TEST(PlacedItems, ACeilingItemIsCentredOnItsPlace) {
  Plan plan = testing::hallBath();
  plan.options[0].on_ceiling[0].width = 14_in;
  const PlacedCeilingItem fan = deriveLayout(plan, 0).on_ceiling.at(0);  // at 48, 30; 10 in deep by kind
  EXPECT_EQ(fan.outline.front(), (Point{41_in, 25_in}));
  EXPECT_EQ(fan.outline[2], (Point{55_in, 35_in}));
}

}  // namespace
}  // namespace elbowroom
