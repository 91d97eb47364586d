#include "core/geometry/near_things.h"

#include <gtest/gtest.h>

#include <random>

namespace elbowroom {
namespace {

using namespace literals;

TEST(NearThings, AreThoseThatTryingAllFinds) {
  std::mt19937 random(5);
  const auto inches = [&](double low, double high) {
    return Length::fromInches(std::uniform_real_distribution<double>(low, high)(random));
  };
  std::size_t all = 0;
  for (int round = 0; round < 400; ++round) {
    const double wide = round % 3 == 0 ? 60 : round % 3 == 1 ? 400 : 9000;
    const auto box = [&] {
      const Point low{inches(-wide, wide), inches(-wide, wide)};
      return Box{low, low + Vector{inches(0, 60), inches(0, round % 2 == 0 ? 20 : 300)}};
    };
    std::vector<Box> boxes;
    for (int i = 0; i < round; ++i) boxes.push_back(box());
    const NearThings near(boxes);
    std::vector<int> found;
    for (int k = 0; k < 5; ++k) {
      const Box asked = k == 0 && round > 0 ? boxes[0] : box();
      const Length reach = k == 0 ? Length{} : inches(0, 100);
      near.within(asked, reach, found);
      std::vector<int> expected;
      for (int i = 0; i < round; ++i) {
        const Box& b = boxes[static_cast<std::size_t>(i)];
        if (b.low.x - asked.high.x <= reach && asked.low.x - b.high.x <= reach &&
            b.low.y - asked.high.y <= reach && asked.low.y - b.high.y <= reach)
          expected.push_back(i);
      }
      ASSERT_EQ(found, expected) << "round " << round;
      all += found.size();
    }
  }
  EXPECT_GT(all, 3000u);
}

TEST(NearThings, TouchingCounts) {
  const NearThings near({Box{{0_in, 0_in}, {10_in, 10_in}}, Box{{30_in, 0_in}, {40_in, 10_in}}});
  std::vector<int> found;
  near.within({{10_in, 0_in}, {20_in, 10_in}}, {}, found);
  EXPECT_EQ(found, std::vector<int>({0}));
  near.within({{10_in, 0_in}, {20_in, 10_in}}, 10_in, found);
  EXPECT_EQ(found, std::vector<int>({0, 1}));
}

}  // namespace
}  // namespace elbowroom
