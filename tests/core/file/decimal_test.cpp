#include "core/file/decimal.h"

#include <gtest/gtest.h>

#include <random>

namespace elbowroom {
namespace {

// 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
TEST(Decimal, ReadsInchesAndMillimetresToTheNanometre) {
  EXPECT_EQ(fineUnitsOf("1", kInchInNanometres), 25'400'000);
  EXPECT_EQ(fineUnitsOf("0.015625", kInchInNanometres), 396'875);
  EXPECT_EQ(fineUnitsOf("-62.5", kInchInNanometres), -1'587'500'000);
  EXPECT_EQ(fineUnitsOf("0.1", kMillimetreInNanometres), 100'000);
  EXPECT_EQ(fineUnitsOf("1587.5", kMillimetreInNanometres), 1'587'500'000);
  EXPECT_EQ(fineUnitsOf("6.25e1", kInchInNanometres), 1'587'500'000);
  EXPECT_EQ(fineUnitsOf("625E-1", kInchInNanometres), 1'587'500'000);
  EXPECT_EQ(fineUnitsOf("0", kInchInNanometres), 0);
  EXPECT_EQ(fineUnitsOf("-0.0e99", kInchInNanometres), 0);
}

TEST(Decimal, RoundsHalvesAwayFromZero) {
  EXPECT_EQ(fineUnitsOf("0.0000005", kMillimetreInNanometres), 1);
  EXPECT_EQ(fineUnitsOf("0.00000049999999999999999999999999", kMillimetreInNanometres), 0);
  EXPECT_EQ(fineUnitsOf("-0.0000005", kMillimetreInNanometres), -1);
  EXPECT_EQ(fineUnitsOf("1e-400", kMillimetreInNanometres), 0);
}

// A double holds about 15.95 digits; this one needs 17 and a double's neighbour would round elsewhere.
TEST(Decimal, DoesNotGoThroughADouble) {
  EXPECT_EQ(fineUnitsOf("99999999999.9999995", kMillimetreInNanometres), 100'000'000'000'000'000);
  EXPECT_EQ(fineUnitsOf("99999999999.9999994", kMillimetreInNanometres), 99'999'999'999'999'999);
}

TEST(Decimal, RefusesWhatIsTooLarge) {
  EXPECT_FALSE(fineUnitsOf("1e300", kInchInNanometres));
  EXPECT_FALSE(fineUnitsOf("-1e99999999999999999999", kInchInNanometres));
  EXPECT_FALSE(fineUnitsOf("1000000000000", kMillimetreInNanometres));
}

TEST(Decimal, WritesAsFewDecimalsAsExactnessNeeds) {
  EXPECT_EQ(decimalText(0, kInchInNanometres), "0");
  EXPECT_EQ(decimalText(25'400'000, kInchInNanometres), "1");
  EXPECT_EQ(decimalText(1'587'500'000, kInchInNanometres), "62.5");
  EXPECT_EQ(decimalText(396'875, kInchInNanometres), "0.015625");
  EXPECT_EQ(decimalText(-396'875, kInchInNanometres), "-0.015625");
  EXPECT_EQ(decimalText(1'587'500'000, kMillimetreInNanometres), "1587.5");
  EXPECT_EQ(decimalText(-1, kMillimetreInNanometres), "-0.000001");
  EXPECT_EQ(decimalText(90'000'000, kDegreeInMicrodegrees), "90");
}

TEST(Decimal, EveryNanometreComesBack) {
  std::mt19937_64 random(1);
  for (int i = 0; i < 200'000; ++i) {
    // Small, room-sized and far lengths alike.
    const std::int64_t most = i % 3 == 0 ? 1'000 : i % 3 == 1 ? 10'000'000'000 : 100'000'000'000;
    const std::int64_t nm = std::uniform_int_distribution<std::int64_t>(-most, most)(random);
    const std::string inches = decimalText(nm, kInchInNanometres);
    ASSERT_EQ(fineUnitsOf(inches, kInchInNanometres), nm) << inches;
    ASSERT_LE(inches.size() - std::min(inches.size(), inches.find('.') + 1), 9u) << inches;
    ASSERT_EQ(fineUnitsOf(decimalText(nm, kMillimetreInNanometres), kMillimetreInNanometres), nm);
  }
}

TEST(Decimal, KnowsWholeNumbers) {
  EXPECT_TRUE(isWhole("1"));
  EXPECT_TRUE(isWhole("1.0"));
  EXPECT_TRUE(isWhole("10e-1"));
  EXPECT_TRUE(isWhole("0.00"));
  EXPECT_FALSE(isWhole("1.5"));
  EXPECT_FALSE(isWhole("1e-1"));
}

}  // namespace
}  // namespace elbowroom
