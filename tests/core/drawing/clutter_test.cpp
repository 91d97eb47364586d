#include "core/drawing/clutter.h"

#include <gtest/gtest.h>

#include "core/geometry/measure.h"

namespace elbowroom {
namespace {

using namespace literals;

TextPrim at(Length x) {
  TextPrim text;
  text.text = "label";
  text.height = 1_in;
  text.at = {x, 0_in};
  return text;
}

TEST(Quietest, TheLeastTheFirstOfEqualsAndNoneFromTheLimitOn) {
  const std::vector<double> costs{7, 3, 5, 3};
  const auto cost = [&](std::size_t i, double) { return costs[i]; };
  EXPECT_EQ(quietest(4, 10, cost), 1u);
  EXPECT_EQ(quietest(4, 3, cost), std::nullopt);
  EXPECT_EQ(quietest(0, 10, cost), std::nullopt);
}

TEST(Quietest, ATextGoesWhereNothingIsUnlessThatCostsMore) {
  Clutter taken;
  taken.add({{LinePrim{{1_in, -5_in}, {1_in, 5_in}}, Role::fixture, {}}});  // weighs 8
  EXPECT_EQ(quietestText(taken, {{at(0_in)}, {at(40_in)}})->at.x, 40_in);
  EXPECT_EQ(quietestText(taken, {{at(0_in)}, {at(40_in), 9}})->at.x, 0_in);
  EXPECT_EQ(quietestText(taken, {{at(0_in)}, {at(40_in), 7}})->at.x, 40_in);
}

TEST(Quietest, NoTextLiesOverAnother) {
  Clutter taken;
  taken.addText(textBounds(at(0_in)));
  EXPECT_FALSE(quietestText(taken, {{at(0_in)}, {at(1_in)}}));
  EXPECT_EQ(quietestText(taken, {{at(0_in)}, {at(40_in), 900}})->at.x, 40_in);
  EXPECT_FALSE(quietestText(taken, {{at(40_in), kTextOverText}}));
}

}  // namespace
}  // namespace elbowroom
