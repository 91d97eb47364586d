// Boost.Multiprecision's cpp_int counts the same.
#include "core/geometry/wide_int.h"

#include <gtest/gtest.h>

#include <boost/multiprecision/cpp_int.hpp>
#include <limits>
#include <random>

namespace elbowroom::floor_kernel {
namespace {

using Oracle = boost::multiprecision::cpp_int;

struct Both {
  WideInt ours = 0;
  Oracle oracle = 0;
};
Both operator+(const Both& a, const Both& b) { return {a.ours + b.ours, a.oracle + b.oracle}; }
Both operator-(const Both& a, const Both& b) { return {a.ours - b.ours, a.oracle - b.oracle}; }
Both operator*(const Both& a, const Both& b) { return {a.ours * b.ours, a.oracle * b.oracle}; }

// The value alone could hide an error in a low limb; the difference to a number of the same bits cannot.
WideInt rebuilt(Oracle n) {
  const bool negative = n < 0;
  if (negative) n = -n;
  WideInt r = 0, weight = 1;
  for (; n > 0; n >>= 32) {
    r = r + weight * static_cast<std::int64_t>(n & 0xffffffffu);
    weight = weight * (std::int64_t{1} << 32);
  }
  return negative ? -r : r;
}
void expectSame(const Both& n) {
  EXPECT_EQ(n.ours.sign(), n.oracle.sign());
  EXPECT_TRUE(is_zero(n.ours - rebuilt(n.oracle)));
  const long double value = n.oracle.convert_to<long double>();
  EXPECT_LE(std::fabs(n.ours.value() - value), std::fabs(value) * 1e-18L);
}

TEST(WideInt, CountsAsCppIntDoes) {
  std::mt19937_64 random(7);
  const auto drawn = [&] {
    const auto n = static_cast<std::int64_t>(random()) >> (random() % 64);
    return Both{n, n};
  };
  for (int i = 0; i < 3000; ++i) {
    Both n = drawn();
    while (abs(n.oracle) < (Oracle(1) << 600)) {
      const Both m = drawn();
      n = random() % 2 ? n * m + drawn() : n - m * m * m;
      expectSame(n);
      expectSame(n - n);
      if (::testing::Test::HasFailure()) return;
      if (n.oracle == 0) n = drawn();
      if (random() % 40 == 0) break;
    }
    expectSame(n * n * n);  // up to 2,000 bits
    expectSame(n * n - n * (n + Both{1, 1}));
  }
}

TEST(WideInt, CarriesAndBorrowsOverLimbs) {
  const Both ends{std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::min()};
  Both power = ends;
  for (int i = 0; i < 30; ++i) {
    expectSame(power - Both{1, 1});
    expectSame(power + Both{-1, -1} + Both{1, 1});
    expectSame((power - Both{1, 1}) * (power + Both{1, 1}) - power * power);
    if (i < 14) power = power * ends;
  }
  EXPECT_TRUE(is_zero(WideInt(0)));
  EXPECT_TRUE(is_zero(-WideInt(0)));
  EXPECT_TRUE(is_neg(WideInt(-1)) && is_pos(-WideInt(-1)));
}

}  // namespace
}  // namespace elbowroom::floor_kernel
