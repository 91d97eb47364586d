#include "core/rules/remedies/trade_sizes.h"

#include <algorithm>

namespace elbowroom {
namespace {

using namespace literals;

constexpr std::string_view kToilet = "engineerfix.com, dimensions of a standard toilet: 20 wide, 28 to 30 deep";
constexpr std::string_view kBath = "engineerfix.com, standard bathtub sizes: 60 by 30 to 32, 54 to 72 long";
constexpr std::string_view kFree = "engineerfix.com, standard bathtub sizes: 60 to 72 long; 27 to 32 wide from memory";
constexpr std::string_view kPan = "usual shower pans, from memory";
constexpr std::string_view kVanity =
    "engineerfix.com, bathroom vanity widths (24 to 48 single, 60 to 84 double); creativejamie.com, depths";
constexpr std::string_view kBasin = "looacademy.com, standard bathroom sink sizes";

std::vector<TradeSize> allSizes() {
  std::vector<TradeSize> all;
  const auto add = [&](FixtureKind kind, Length width, Length depth, int basins, std::string_view source, Grade grade) {
    all.push_back({kind, width, depth, basins, source, grade});
  };
  for (const Length depth : {28_in, 30_in}) add(FixtureKind::toilet, 20_in, depth, 0, kToilet, Grade::verified);
  add(FixtureKind::basin, 15_in, 15_in, 1, kBasin, Grade::verified);
  add(FixtureKind::basin, 19_in, 16_in, 1, kBasin, Grade::verified);
  add(FixtureKind::basin, 24_in, 23_in, 1, kBasin, Grade::verified);
  for (const Length width : {24_in, 30_in, 36_in, 48_in, 60_in, 72_in, 84_in})
    for (const Length depth : {18_in, 21_in, 24_in})
      add(FixtureKind::vanity, width, depth, width < 60_in ? 1 : 2, kVanity, Grade::verified);
  for (const Length width : {54_in, 60_in, 72_in})
    for (const Length depth : {30_in, 32_in}) add(FixtureKind::bath, width, depth, 0, kBath, Grade::verified);
  add(FixtureKind::freestandingBath, 55_in, 27_in, 0, "shortest made, from memory", Grade::memory);
  for (const Length width : {60_in, 72_in})
    for (const Length depth : {27_in, 30_in, 32_in})
      add(FixtureKind::freestandingBath, width, depth, 0, kFree, Grade::memory);
  for (const Length side : {32_in, 36_in, 42_in, 48_in}) add(FixtureKind::shower, side, side, 0, kPan, Grade::memory);
  for (const Length side : {30_in, 32_in, 34_in, 36_in})
    for (const Length length : {48_in, 60_in}) {
      add(FixtureKind::shower, length, side, 0, kPan, Grade::memory);
      add(FixtureKind::shower, side, length, 0, kPan, Grade::memory);
    }
  return all;
}

}  // namespace

std::span<const TradeSize> tradeSizes() {
  static const std::vector<TradeSize> sizes = allSizes();
  return sizes;
}

}  // namespace elbowroom
