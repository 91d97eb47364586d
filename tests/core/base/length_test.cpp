#include "core/base/length.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

using namespace literals;

TEST(Length, HoldsSixtyFourthsAndTenthsOfAMillimetreExactly) {
  EXPECT_EQ((1_in).nm(), 25'400'000);
  EXPECT_EQ(Length::fromInches(1.0 / 64).nm() * 64, (1_in).nm());
  EXPECT_EQ(Length::fromMillimetres(0.1).nm() * 10, (1_mm).nm());
  EXPECT_EQ(25.4_mm, 1_in);
}

TEST(Length, RatiosAndScaling) {
  EXPECT_DOUBLE_EQ(30_in / 60_in, 0.5);
  EXPECT_EQ(60_in / 2, 30_in);
  EXPECT_EQ((3_in).scaled(1.0 / 3), 1_in);
  EXPECT_EQ(abs(-(3_in)), 3_in);
}

TEST(Area, ProductOfLengths) {
  // A square foot is 0.09290304 m2 exactly.
  EXPECT_EQ((12_in * 12_in).squareMicrometres(), 92'903'040'000);
  EXPECT_DOUBLE_EQ((60_in * 96_in).squareFeet(), 40.0);
  // 100 m by 100 m does not overflow on the way.
  EXPECT_DOUBLE_EQ((100'000_mm * 100'000_mm).squareMetres(), 1e4);
  EXPECT_EQ((-(12_in) * 12_in).squareMicrometres(), -92'903'040'000);
}

TEST(Angle, NormalisedIsWithinOneTurn) {
  EXPECT_EQ((-90_deg).normalised(), 270_deg);
  EXPECT_EQ((720_deg).normalised(), 0_deg);
  EXPECT_NEAR((180_deg).radians(), 3.141592653589793, 1e-12);
  EXPECT_EQ(Angle::fromRadians(3.141592653589793 / 6), 30_deg);
}

}  // namespace
}  // namespace elbowroom
