#include "core/rules/checks/air.h"

#include <algorithm>
#include <cmath>

namespace elbowroom::checks {

namespace {

constexpr Amount kLeast = Amount::of(50), kEach = Amount::of(50), kPumped = Amount::of(100);
constexpr double kSmallSquareFeet = 100, kChanges = 8;

double cubicFeet(Area floor, Length height) { return floor.squareFeet() * height.inches() / 12; }
Amount amount(double value) { return {std::llround(value * 1000)}; }

}  // namespace

bool isSmallForAir(Area floor) { return floor.squareFeet() <= kSmallSquareFeet; }

Amount airForFloor(Area floor) { return std::max(kLeast, amount(floor.squareFeet())); }

Amount airForFixtures(const AirUsers& users) {
  const int plain = users.toilets + users.showers + users.baths;
  return {plain * kEach.thousandths + users.pumped_baths * kPumped.thousandths};
}

Amount airForVolume(Area floor, Length height) { return amount(cubicFeet(floor, height) * kChanges / 60); }

double airChanges(Amount flow, Area floor, Length height) {
  return flow.value() * 60 / cubicFeet(floor, height);
}

double moistureLeft(double changes_per_hour, Amount minutes) {
  return std::exp(-changes_per_hour * minutes.value() / 60);
}

double speedUnderDoor(Amount flow, Length gap, Length leaf) {
  return flow.value() / (gap * leaf).squareFeet();
}

}  // namespace elbowroom::checks
