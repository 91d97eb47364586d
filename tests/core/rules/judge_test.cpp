// Verdicts at, just beside and well away from a limit. Expected values follow from the definitions: a miss of
// less than 0.02 in counts as met; less than the site tolerance to spare is close.
#include <gtest/gtest.h>

#include "core/rules/check.h"

namespace elbowroom {
namespace {
using namespace literals;

constexpr Length kSite = Length::nanometres(12'700'000);  // 1/2 in

Outcome atLeast(Length measured, Length limit) { return judge(measured, Compare::atLeast, limit, {}, kSite); }
Outcome atMost(Length measured, Length limit) { return judge(measured, Compare::atMost, limit, {}, kSite); }
Outcome between(Length measured) { return judge(measured, Compare::between, 16_in, Quantity{18_in}, kSite); }

TEST(Judge, AtLeastAroundTheLimit) {
  EXPECT_EQ(atLeast(21_in, 21_in), Outcome::close);
  EXPECT_EQ(atLeast(21_in - 0.0625_in, 21_in), Outcome::shortfall);
  EXPECT_EQ(atLeast(21_in + 0.0625_in, 21_in), Outcome::close);
  EXPECT_EQ(atLeast(21.49_in, 21_in), Outcome::close);
  EXPECT_EQ(atLeast(21.5_in, 21_in), Outcome::clear);
  EXPECT_EQ(atLeast(60_in, 21_in), Outcome::clear);
}

TEST(Judge, AMissOfLessThanTwoHundredthsCountsAsMet) {
  EXPECT_EQ(atLeast(20.981_in, 21_in), Outcome::close);
  EXPECT_EQ(atLeast(20.98_in, 21_in), Outcome::shortfall) << "0.02 in is not less than 0.02 in";
  EXPECT_EQ(atMost(21.019_in, 21_in), Outcome::close);
  EXPECT_EQ(atMost(21.021_in, 21_in), Outcome::shortfall);
}

// 60 in is printed as 1525 mm; a plan drawn at 1524 mm is 60 in exactly and must pass.
TEST(Judge, MillimetrePlansMeetInchLimits) {
  EXPECT_EQ(atLeast(1524_mm, 60_in), Outcome::close);
  EXPECT_EQ(atLeast(533_mm, 21_in), Outcome::close) << "533 mm is 20.984 in";
  EXPECT_EQ(atLeast(532_mm, 21_in), Outcome::shortfall);
}

// Case F3, 2010 ADA Standards 604.2: 16, 17, 18 pass; 15.5 and 18.5 fail.
TEST(Judge, BetweenHasTwoEnds) {
  EXPECT_EQ(between(16_in), Outcome::close);
  EXPECT_EQ(between(17_in), Outcome::clear);
  EXPECT_EQ(between(18_in), Outcome::close);
  EXPECT_EQ(between(15.5_in), Outcome::shortfall);
  EXPECT_EQ(between(18.5_in), Outcome::shortfall);
  EXPECT_EQ(between(18_in + 0.0625_in), Outcome::shortfall);
}

TEST(Judge, SiteToleranceDecidesWhatIsClose) {
  EXPECT_EQ(judge(21.9_in, Compare::atLeast, 21_in, {}, 1_in), Outcome::close);
  EXPECT_EQ(judge(21.9_in, Compare::atLeast, 21_in, {}, 0.25_in), Outcome::clear);
  EXPECT_EQ(judge(21_in, Compare::atLeast, 21_in, {}, Length{}), Outcome::clear);
}

TEST(Judge, AreasAreAsTolerantAsTheirSides) {
  const auto area = [](double measured, double limit) {
    return judge(Area::fromSquareInches(measured), Compare::atLeast, Area::fromSquareInches(limit), {},
                 kSite);
  };
  EXPECT_EQ(area(900, 900), Outcome::close);
  EXPECT_EQ(area(29.99 * 29.99, 900), Outcome::close) << "each side misses by 0.01 in";
  EXPECT_EQ(area(29.97 * 29.97, 900), Outcome::shortfall) << "each side misses by 0.03 in";
  EXPECT_EQ(area(1020, 1024), Outcome::shortfall);
  EXPECT_EQ(area(30.6 * 30.6, 900), Outcome::clear);
}

TEST(Judge, YesAndNo) {
  EXPECT_EQ(judge(true, Compare::isTrue, true, {}, kSite), Outcome::clear);
  EXPECT_EQ(judge(false, Compare::isTrue, true, {}, kSite), Outcome::shortfall);
}

TEST(Judge, CountsHaveNoTolerance) {
  EXPECT_EQ(judge(Count{2}, Compare::atLeast, Count{2}, {}, kSite), Outcome::clear);
  EXPECT_EQ(judge(Count{1}, Compare::atLeast, Count{2}, {}, kSite), Outcome::shortfall);
}

TEST(Judge, AnglesOfASwing) {
  const auto angle = [](double opened) {
    return judge(Angle::fromDegrees(opened), Compare::atLeast, 90_deg, {}, kSite);
  };
  EXPECT_EQ(angle(90), Outcome::clear) << "a leaf cannot open further than its full swing";
  EXPECT_EQ(angle(89.97), Outcome::close);
  EXPECT_EQ(angle(89.9), Outcome::shortfall);
}

TEST(Judge, DifferentKindsAreOurOwnError) {
  EXPECT_EQ(judge(21_in, Compare::atLeast, 90_deg, {}, kSite), Outcome::failed);
  EXPECT_EQ(judge(true, Compare::atLeast, 21_in, {}, kSite), Outcome::failed);
}

}  // namespace
}  // namespace elbowroom
