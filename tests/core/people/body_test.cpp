#include "core/people/body.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

using namespace literals;

Person tall(double stature, bool child = false) {
  Person p;
  p.stature = Length::fromInches(stature);
  p.child = child;
  return p;
}

// ANSUR II, standing eye height 0.935 S.
TEST(Body, EyeHeightOfAdults) {
  EXPECT_NEAR(eyeHeight(tall(64)).inches(), 59.84, 0.005);
  EXPECT_NEAR(eyeHeight(tall(70)).inches(), 65.45, 0.005);
  EXPECT_NEAR(eyeHeight(tall(74)).inches(), 69.19, 0.005);
}

// CDC 2000 stature of a 4-year-old, 50th percentile: 40.1 in; eye 35.8 in, not 0.935 S.
TEST(Body, EyeHeightOfChildren) {
  EXPECT_NEAR(eyeHeight(tall(40.1, true)).inches(), 35.8, 0.005);
  EXPECT_LT(eyeHeight(tall(40.1, true)), eyeHeight(tall(40.1)));
}

// Standing elbow 0.617 S (ANSUR II); a work surface 2 to 4 in below it: 35.5-37.5 at 64 in, 41.7-43.7 at 74 in.
TEST(Body, ElbowHeightGivesTheVanityBand) {
  const std::tuple<double, double, double> table[] = {{64, 35.5, 37.5}, {74, 41.7, 43.7}};
  for (const auto& [stature, low, high] : table) {
    EXPECT_NEAR(elbowHeight(tall(stature)).inches() - 4, low, 0.05);
    EXPECT_NEAR(elbowHeight(tall(stature)).inches() - 2, high, 0.05);
  }
}

TEST(Body, StandingFloor) {
  EXPECT_EQ(standingDepth(), 18_in);
  EXPECT_EQ(standingWidth(), 26.3_in);
}

}  // namespace
}  // namespace elbowroom
