#include "core/plan/catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/plan/integrity.h"
#include "tests/core/plan/hall_bath.h"

namespace elbowroom {
namespace {

using namespace literals;

TEST(Catalogue, EveryKindHasItsOwnKeyAndLabelAndIsFoundByKind) {
  std::set<std::string_view> keys, labels;
  for (const KindInfo& info : fixtureKinds()) {
    EXPECT_EQ(infoOf(info.kind).key, info.key);
    EXPECT_TRUE(keys.insert(info.key).second) << info.key;
    EXPECT_TRUE(labels.insert(info.label).second) << info.label;
    EXPECT_FALSE(info.short_label.empty());
    EXPECT_FALSE(info.id_stem.empty());
  }
  // The plan file's list of fixture kinds, version 1.
  EXPECT_EQ(keys,
            (std::set<std::string_view>{"toilet", "bidet", "basin", "vanity", "bath", "freestanding-bath",
                                        "shower", "cabinet", "linen-closet", "bench", "washer", "heater"}));
}

TEST(Catalogue, DoorActionsAndStatusesAreSpeltAsInPlanFiles) {
  const std::pair<DoorAction, const char*> actions[] = {
      {DoorAction::hinged, "hinged"}, {DoorAction::doubleLeaf, "double"},
      {DoorAction::pocket, "pocket"}, {DoorAction::surfaceSliding, "surface-sliding"},
      {DoorAction::bifold, "bifold"}, {DoorAction::cased, "cased"}};
  for (const auto& [action, key] : actions) {
    EXPECT_EQ(keyOf(action), key);
    EXPECT_FALSE(labelOf(action).empty());
  }
  EXPECT_EQ(keyOf(Status::fresh), "new");
  EXPECT_EQ(keyOf(Status::keep), "keep");
  EXPECT_EQ(labelOf(Status::remove), "Remove");
}

TEST(Catalogue, SizesLieWithinThePublishedRanges) {
  const Option none;
  // engineerfix.com, "What are the dimensions of a standard toilet": 20 wide, 28-30 deep, 27-32 high.
  const Fixture toilet = typicalFixture(FixtureKind::toilet, none);
  EXPECT_EQ(toilet.width, 20_in);
  EXPECT_TRUE(toilet.depth >= 28_in && toilet.depth <= 30_in);
  EXPECT_TRUE(*toilet.height >= 27_in && *toilet.height <= 32_in);
  // engineerfix.com, "What are the standard bathtub sizes": alcove 60 x 30-32 x 14-16; free-standing 20-24
  // high.
  const Fixture bath = typicalFixture(FixtureKind::bath, none);
  EXPECT_EQ(bath.width, 60_in);
  EXPECT_TRUE(bath.depth >= 30_in && bath.depth <= 32_in);
  EXPECT_TRUE(*bath.height >= 14_in && *bath.height <= 16_in);
  const Fixture free = typicalFixture(FixtureKind::freestandingBath, none);
  EXPECT_TRUE(*free.height >= 20_in && *free.height <= 24_in);
  // creativejamie.com, vanity depths 18, 21, 24 in; planning booklet p 48, lav height 32-43 in.
  const Fixture vanity = typicalFixture(FixtureKind::vanity, none);
  EXPECT_EQ(vanity.depth, 21_in);
  EXPECT_TRUE(*vanity.height >= 32_in && *vanity.height <= 43_in);
  // looacademy.com, rectangular basins 19-24 x 16-23.
  const Fixture basin = typicalFixture(FixtureKind::basin, none);
  EXPECT_TRUE(basin.width >= 19_in && basin.width <= 24_in);
  EXPECT_TRUE(basin.depth >= 16_in && basin.depth <= 23_in);
  // Planning booklet p 49: a shower of 36 x 36 inside.
  EXPECT_EQ(typicalFixture(FixtureKind::shower, none).width, 36_in);
}

TEST(Catalogue, StockLeavesAreAscendingAndHoldTheUsualSizes) {
  const auto widths = stockLeafWidths();
  EXPECT_TRUE(std::is_sorted(widths.begin(), widths.end()));
  for (const Length w : {24_in, 28_in, 30_in, 32_in, 36_in})
    EXPECT_EQ(std::count(widths.begin(), widths.end(), w), 1);
}

TEST(Catalogue, WhatTheTrayOffersCanBePlaced) {
  Plan plan = testing::hallBath();
  Option& o = plan.options[0];
  for (const KindInfo& info : fixtureKinds())
    for (int twice = 0; twice < 2; ++twice) o.fixtures.push_back(typicalFixture(info.kind, o));
  EXPECT_EQ(integrity(plan), std::nullopt);
}

TEST(PlanValue, FreshIdsCountUpAndSkipEveryKindOfElement) {
  Plan plan = testing::hallBath();
  Option& o = plan.options[0];
  EXPECT_EQ(freshId(o, "shower").text, "shower");
  EXPECT_EQ(freshId(o, "wc").text, "wc2");
  EXPECT_EQ(freshId(o, "n").text, "n2");  // a wall
  EXPECT_EQ(freshId(o, "m").text, "m2");  // on a wall
  EXPECT_EQ(freshId(o, "f").text, "f2");  // on the ceiling
  EXPECT_EQ(freshId(o, "d1").text, "d12");
  o.on_ceiling[0].id = {"wc2"};
  EXPECT_EQ(freshId(o, "wc").text, "wc3");
  EXPECT_FALSE(freshId(o, "").empty());
}

TEST(PlanValue, EmptyPlanIsWholeAndHasOneOption) {
  const Plan plan = emptyPlan(Unit::millimetres);
  EXPECT_EQ(integrity(plan), std::nullopt);
  EXPECT_EQ(plan.unit, Unit::millimetres);
  ASSERT_EQ(plan.options.size(), 1u);
  EXPECT_EQ(plan.options[0].name, "As found");
  EXPECT_TRUE(plan.options[0].room.walls.empty());
  EXPECT_EQ(plan.books, (std::vector<std::string>{"us-residential", "us-electrical", "comfort", "craft"}));
  EXPECT_TRUE(plan.people.empty()) << "nobody uses the room until somebody says so";
}

TEST(PlanValue, LookUpsFindByIdAndSayWhenThereIsNone) {
  const Option o = testing::hallBath().options[0];
  ASSERT_NE(findWall(o, {"s"}), nullptr);
  EXPECT_TRUE(findWall(o, {"s"})->plumbing);
  EXPECT_EQ(findFixture(o, {"wc"})->kind, FixtureKind::toilet);
  EXPECT_EQ(findOpening(o, {"win"})->kind, OpeningKind::window);
  EXPECT_EQ(findWallItem(o, {"m"})->kind, "mirror");
  EXPECT_EQ(findWall(o, {"wc"}), nullptr);
  EXPECT_EQ(findFixture(o, {"nobody"}), nullptr);
  EXPECT_TRUE(hasElement(o, {"f"}));
  EXPECT_FALSE(hasElement(o, {"nobody"}));
}

}  // namespace
}  // namespace elbowroom
