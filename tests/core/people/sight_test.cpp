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

// 1991 ADA Standards A4.2.4 and Figure A3: eyes of somebody in a wheelchair at 43 to 51 in.
TEST(Sight, ALightReachesTheEyesOfSomebodyInAWheelchair) {
  Person seated = person(66_in);
  seated.chair = Chair{26_in, 48_in, {}};
  const Person small = person(64_in);  // eyes 59.84
  EXPECT_EQ(eyesOf(seated).low, 43_in);
  EXPECT_EQ(eyesOf(seated).high, 51_in);
  const auto alone = eyesWithin({&seated}, 12_in);
  ASSERT_TRUE(alone);
  EXPECT_EQ(alone->low, 37_in);
  EXPECT_EQ(alone->high, 57_in);
  const auto both = eyesWithin({&small, &seated}, 12_in);  // 59.84 - 6 to 51 + 6
  ASSERT_TRUE(both);
  EXPECT_NEAR(both->low.inches(), 53.84, 0.01);
  EXPECT_EQ(both->high, 57_in);
  EXPECT_EQ(eyesWithin({&small, &seated}, 8_in), std::nullopt);
}

TEST(Sight, AMirrorForAllOrForNone) {
  const Person tall = person(74_in), child = person(40.1_in, true);
  const auto edges = mirrorEdgesFor({&tall, &child});
  ASSERT_TRUE(edges);
  EXPECT_NEAR(edges->top_at_least.inches(), 71.6, 0.06);    // T20
  EXPECT_NEAR(edges->bottom_at_most.inches(), 33.8, 0.05);  // T19
  const auto band = mirrorBottomsFor({&tall, &child}, 40_in);
  ASSERT_TRUE(band);
  EXPECT_NEAR(band->low.inches(), 31.6, 0.06);
  EXPECT_NEAR(band->high.inches(), 33.8, 0.05);
  EXPECT_EQ(mirrorBottomsFor({&tall, &child}, 36_in), std::nullopt);
  EXPECT_EQ(mirrorBottomsFor({}, 36_in), std::nullopt);
}

}  // namespace
}  // namespace elbowroom
