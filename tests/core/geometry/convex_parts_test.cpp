// Against areas by polyclipping (commonArea) and distances (gapFromPoint).
#include "core/geometry/convex_parts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "core/geometry/kernel.h"
#include "core/geometry/measure.h"

namespace elbowroom {
namespace {

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }

bool turnsOneWay(const Outline& part) {
  const std::size_t n = part.size();
  for (std::size_t i = 0; n > 2 && i < n; ++i)
    if (kernel::side(part[i], part[(i + 1) % n], part[(i + 2) % n]) < 0) return false;
  return true;
}

// Every piece is convex and within the solid, and every edge of the solid lies along an edge of one piece.
void expectGood(const Outline& solid) {
  const std::vector<Outline> parts = kernel::convexParts(solid);
  for (const Outline& part : parts) {
    EXPECT_GE(part.size(), 2u);
    EXPECT_TRUE(turnsOneWay(part));
    EXPECT_NEAR(commonArea(part, solid).squareInches(), areaOf(part).squareInches(), 0.01);
  }
  for (std::size_t i = 0; i < solid.size(); ++i) {
    const Point a = solid[i], b = solid[(i + 1) % solid.size()];
    const auto holds = [&](const Outline& part) {
      for (std::size_t k = 0; k < part.size(); ++k) {
        const Point p = part[k], q = part[(k + 1) % part.size()];
        if ((p == a && q == b) || (p == b && q == a)) return true;
      }
      return false;
    };
    EXPECT_TRUE(std::any_of(parts.begin(), parts.end(), holds)) << "edge " << i;
  }
}

TEST(ConvexParts, KeepsWhatIsConvexWhole) {
  const Outline box{at(0, 0), at(0, 20), at(30, 20), at(30, 0)};
  ASSERT_EQ(kernel::convexParts(box).size(), 1u);
  expectGood(box);
  const Outline with_three_in_line{at(0, 0), at(10, 0), at(30, 0), at(30, 20), at(0, 20)};
  EXPECT_EQ(kernel::convexParts(with_three_in_line).size(), 1u);
}

// A tank of 20 by 8 in and a bowl before it.
TEST(ConvexParts, SplitsATankFromItsBowl) {
  Outline toilet{at(-10, 0), at(10, 0), at(10, 8), at(7, 8)};
  for (int i = 0; i <= 24; ++i) {
    const double a = std::numbers::pi * i / 24;
    toilet.push_back(at(7 * std::cos(a), 18 + 10 * std::sin(a)));
  }
  toilet.push_back(at(-7, 8));
  toilet.push_back(at(-10, 8));
  EXPECT_EQ(kernel::convexParts(toilet).size(), 2u);
  expectGood(toilet);
}

TEST(ConvexParts, LeavesTheInsideOfABendFree) {
  const Outline ell{at(0, 0), at(60, 0), at(60, 20), at(20, 20), at(20, 50), at(0, 50)};
  expectGood(ell);
  const Outline u{at(0, 0), at(60, 0), at(60, 50), at(50, 50), at(50, 10), at(10, 10), at(10, 50), at(0, 50)};
  expectGood(u);
  // The mouth is closed by one line with nothing between: the chain round the outside must not be taken
  // whole.
  for (const Outline& part : kernel::convexParts(u)) EXPECT_LT(areaOf(part).squareInches(), 60 * 50 / 2.0);
}

// A block of 100 by 40 in but for a notch that comes in from above, between its shoulders.
TEST(ConvexParts, LeavesANotchFree) {
  expectGood({at(0, 0), at(100, 0), at(100, 40), at(70, 40), at(70, 60), at(60, 60), at(50, 10), at(40, 60),
              at(30, 60), at(30, 40), at(0, 40)});
}

// Edges that turn one way all along and yet go round twice: the lips of a mouth, and an inward winding.
TEST(ConvexParts, TakesNothingThatGoesRoundTwice) {
  const Outline lips{at(20, 100), at(38, 100), at(38, 110), at(25, 110), at(25, 160), at(75, 160),
                     at(75, 110), at(62, 110), at(62, 100), at(80, 100), at(80, 170), at(20, 170)};
  expectGood(lips);
  const Outline winding{at(10, 0),    at(10, 10),    at(-2, 10),    at(-2, 1),    at(8, 1),
                        at(8, 8),     at(0, 8),      at(0, 3),      at(6, 3),     at(6, 5),
                        at(5.5, 5),   at(5.5, 3.5),  at(0.5, 3.5),  at(0.5, 7.5), at(7.5, 7.5),
                        at(7.5, 1.5), at(-1.5, 1.5), at(-1.5, 9.5), at(9.5, 9.5), at(9.5, 0)};
  ASSERT_FALSE(selfCrossing(winding));
  expectGood(winding);
}

TEST(ConvexParts, AThousandStars) {
  std::mt19937 random(20);
  std::uniform_real_distribution<double> radius(2, 40);
  std::uniform_int_distribution<int> corners(3, 24);
  int whole = 0;
  for (int k = 0; k < 1000; ++k) {
    const int n = corners(random);
    Outline star;
    for (int i = 0; i < n; ++i) {
      const double a = 2 * std::numbers::pi * i / n, r = radius(random);
      star.push_back(at(r * std::cos(a), r * std::sin(a)));
    }
    if (k % 2 == 1) std::reverse(star.begin(), star.end());
    if (selfCrossing(star)) continue;
    ++whole;
    expectGood(star);
    if (HasFailure()) FAIL() << "star " << k;
  }
  EXPECT_GT(whole, 900);
}

}  // namespace
}  // namespace elbowroom
