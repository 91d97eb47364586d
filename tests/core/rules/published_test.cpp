// Heights that texts publish for things on walls (comfort.md: lights beside a mirror 60 to 66 in, hooks 55 to 70 in, robe
// hooks and switches of the 2010 ADA Standards 15 to 48 in).
#include "core/rules/published.h"

#include <gtest/gtest.h>

#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {
using namespace literals;

Report reportOf(std::vector<std::string> books, const char* kind, Length bottom) {
  Plan plan = emptyPlan(Unit::inches);
  plan.books = std::move(books);
  Option& o = plan.options.front();
  const auto wall = [&](const char* id, Point from) {
    Wall w;
    w.id = {id};
    w.from = from;
    w.thickness = 4.5_in;
    o.room.walls.push_back(w);
  };
  wall("n", {0_in, 96_in}), wall("e", {96_in, 96_in}), wall("s", {96_in, 0_in}), wall("w", {0_in, 0_in});
  o.room.ceiling.height = 96_in;
  WallItem item = typicalWallItem(kind, o);
  item.id = {"x"};
  item.wall = {"n"};
  item.along = 40_in;
  item.bottom = bottom;
  o.on_walls.push_back(item);
  return check(deriveLayout(plan, 0), choiceOf(plan));
}

TEST(Published, AHookHasTheHeightsOfEachBookOnce) {
  const auto one = publishedBands(reportOf({"comfort"}, "hook", 60_in), {"x"});
  ASSERT_EQ(one.size(), 1u);
  EXPECT_EQ(one[0].low, 55_in);
  EXPECT_EQ(one[0].high, 70_in);
  EXPECT_EQ(wordsOf(one[0], Unit::inches), "height of its centreline 55\" to 70\"");
  EXPECT_FALSE(one[0].source.empty());
  const auto both = publishedBands(reportOf({"comfort", "us-access"}, "hook", 60_in), {"x"});
  ASSERT_EQ(both.size(), 2u);
  EXPECT_EQ(both[1].low, 15_in);
  EXPECT_EQ(both[1].high, 48_in);
}

TEST(Published, FollowsALimitOfOnesOwnAndKnowsOnlyItsThing) {
  const Report report = reportOf({"comfort"}, "hook", 60_in);
  EXPECT_TRUE(publishedBands(report, {"y"}).empty());
  EXPECT_TRUE(publishedBands(reportOf({"craft"}, "hook", 60_in), {"x"}).empty()) << "common practice publishes nothing";
}

}  // namespace
}  // namespace elbowroom
