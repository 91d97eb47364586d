#include "core/people/growth.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

using namespace literals;

// CDC growth charts of 2000, stature for age, 50th percentile: mean of boys and girls (4 years: 40.36 and 39.78).
TEST(Growth, TheMedianOfBoysAndGirls) {
  const std::pair<int, double> lines[] = {{2, 33.7}, {3, 37.3}, {4, 40.1}, {5, 42.7},
                                          {6, 45.4}, {8, 50.4}, {10, 54.5}, {12, 59.2}};
  for (const auto& [years, stature] : lines) {
    ASSERT_TRUE(statureAtAge(years)) << years;
    EXPECT_NEAR(statureAtAge(years)->inches(), stature, 0.001) << years;
    EXPECT_TRUE(listedAge(years)) << years;
  }
  EXPECT_NEAR(statureAtAge(4)->inches(), (40.36 + 39.78) / 2, 0.05);
}

TEST(Growth, YearsBetweenTwoLinesLieHalfway) {
  EXPECT_EQ(*statureAtAge(7), (45.4_in + 50.4_in) / 2);
  EXPECT_EQ(*statureAtAge(11), (54.5_in + 59.2_in) / 2);
  EXPECT_FALSE(listedAge(7));
}

TEST(Growth, BeyondTheTableIsNoAnswer) {
  for (const int years : {-1, 0, 1, 13, 40}) EXPECT_FALSE(statureAtAge(years)) << years;
}

}  // namespace
}  // namespace elbowroom
