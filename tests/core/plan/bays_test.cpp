// Stud bays by hand arithmetic. Bay = spacing - 1 1/2 in; n bays with the studs between them cut: 16n - 1.5
// (engineerfix.com, framing of a shower niche; worked example T32). Wall thickness: T33.
#include "core/plan/bays.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/hall_bath.h"

namespace elbowroom {
namespace {

using namespace literals;

// Wall s of the hall bath: 96 in, no opening, studs at 8, 24, 40, 56, 72, 88.
Layout withItem(Length along, Length width, Length first = 8_in, Length spacing = 16_in,
                const char* wall = "s") {
  Plan plan = testing::hallBath();
  Option& o = plan.options[0];
  for (Wall& w : o.room.walls) w.studs = Studs{first, spacing, {}};
  WallItem niche = typicalWallItem("niche", o);
  niche.wall = {wall};
  niche.along = along;
  niche.width = width;
  o.on_walls = {niche};
  return deriveLayout(plan, 0);
}
BayFit fitOf(const Layout& layout) { return bayFit(layout, layout.on_walls.at(0)).value(); }

TEST(Bays, ABayAtSixteenInchesIsFourteenAndAHalfClear) {
  const auto bays = baysOf(withItem(32_in, 12_in), 2).value();
  ASSERT_EQ(bays.size(), 7u);
  EXPECT_EQ(bays[0], (WallSpan{0_in, 7.25_in}));
  EXPECT_EQ(bays[1], (WallSpan{8.75_in, 23.25_in}));
  EXPECT_EQ(bays[1].width(), 14.5_in);
  EXPECT_EQ(bays[6], (WallSpan{88.75_in, 96_in}));
}

TEST(Bays, TwentyFourInchesAndMetricSpacing) {
  EXPECT_EQ(baysOf(withItem(32_in, 12_in, 10_in, 24_in), 2).value()[1].width(), 22.5_in);
  EXPECT_EQ(baysOf(withItem(32_in, 12_in, 200_mm, 600_mm), 2).value()[1].width(), 600_mm - 1.5_in);
}

TEST(Bays, ATwelveInchNicheFitsOneBayAndSaysHowFarToMove) {
  EXPECT_TRUE(fitOf(withItem(32_in, 12_in)).fits);
  const BayFit off = fitOf(withItem(38_in, 12_in));  // 32 to 44: the stud at 40
  EXPECT_FALSE(off.fits);
  ASSERT_EQ(off.cut.size(), 1u);
  EXPECT_EQ(off.cut[0].at, 40_in);
  EXPECT_EQ(off.move, -4.75_in);  // its right side from 44 to 39 1/4
  EXPECT_EQ(off.bay, 14.5_in);
  EXPECT_EQ(fitOf(withItem(42_in, 12_in)).move, 4.75_in);  // 36 to 48: its left side to 40 3/4
}

TEST(Bays, AFourteenAndAHalfInchOneFitsExactly) {
  EXPECT_TRUE(fitOf(withItem(32_in, 14.5_in)).fits);
  EXPECT_FALSE(fitOf(withItem(32_in, 14.5625_in)).fits);
}

TEST(Bays, ATwentyFourInchNicheFitsNoBayAndCutsAStud) {
  const BayFit fit = fitOf(withItem(40_in, 24_in));
  EXPECT_FALSE(fit.fits);
  EXPECT_EQ(fit.move, std::nullopt);
  EXPECT_EQ(fit.cut.size(), 1u);
  EXPECT_EQ(fitOf(withItem(32_in, 30.5_in)).cut.size(), 2u);  // 16.75 to 47.25: studs at 24 and 40
}

// Window in wall n: 36 to 60; trimmers 34.5 to 36 and 60 to 61.5, kings 33 to 34.5 and 61.5 to 63.
TEST(Bays, TrimmersAndKingStudsStandBesideAnOpening) {
  const Layout layout = withItem(26_in, 12_in, 8_in, 16_in, "n");
  const auto bays = baysOf(layout, 0).value();
  const auto has = [&](WallSpan s) { return std::count(bays.begin(), bays.end(), s) == 1; };
  EXPECT_TRUE(has({24.75_in, 33_in}));  // stud at 24 to the king
  EXPECT_TRUE(has({63_in, 71.25_in}));  // king to the stud at 72
  EXPECT_TRUE(std::none_of(bays.begin(), bays.end(),
                           [](const WallSpan& b) { return b.from > 33_in && b.to < 63_in; }));
}

TEST(Bays, NothingIsSaidWithoutStuds) {
  const Layout layout = deriveLayout(testing::hallBath(), 0);
  EXPECT_EQ(baysOf(layout, 1), std::nullopt);
}

TEST(Bays, StudDepthFromTheThickness) {
  Wall wall = testing::wall("w", {}, 4.5_in);
  EXPECT_EQ(studDepth(wall), 3.5_in);
  wall.thickness = 6.5_in;
  EXPECT_EQ(studDepth(wall), 5.5_in);
  wall.thickness = 4.875_in;  // T33: 1/2 in plywood under 3/8 in board on one face
  wall.facts["backed"] = true;
  EXPECT_EQ(studDepth(wall), 3.5_in);
  wall.facts["stud_depth"] = 4_in;
  EXPECT_EQ(studDepth(wall), 4_in);
}

}  // namespace
}  // namespace elbowroom
