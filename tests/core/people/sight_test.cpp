// Worked examples T14 to T20 of the comfort figures.
#include "core/people/sight.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

using namespace literals;

Person person(Length stature, bool child = false) { return {"P", stature, child, {}, {}}; }

TEST(Sight, MirrorEdges) {
  EXPECT_NEAR(mirrorFaceBottomFor(person(40.1_in, true)).inches(), 33.8, 0.05);  // T19
  EXPECT_NEAR(mirrorTopFor(person(74_in)).inches(), 71.6, 0.06);                 // T20
  EXPECT_NEAR(mirrorTopFor(person(64_in)).inches(), 61.9, 0.08);                 // T20
  // (59.84 + 39.49) / 2
  EXPECT_NEAR(mirrorWaistBottomFor(person(64_in)).inches(), 49.66, 0.01);
}

TEST(Sight, OneLightForTwoPairsOfEyes) {
  const Person tall = person(74_in), small = person(64_in);  // eyes 69.19 and 59.84
  EXPECT_EQ(eyesWithin({}, 12_in), std::nullopt);
  const auto band = eyesWithin({&tall, &small}, 12_in);
  ASSERT_TRUE(band);
  EXPECT_NEAR(band->low.inches(), 63.19, 0.01);
  EXPECT_NEAR(band->high.inches(), 65.84, 0.01);
  EXPECT_LT(band->low, 64.5_in);  // T16: the common height
  EXPECT_GT(band->high, 64.5_in);
  EXPECT_EQ(eyesWithin({&tall, &small}, 9_in), std::nullopt)
      << "9 in is less than the 9.35 in between the eyes";
}

}  // namespace
}  // namespace elbowroom
