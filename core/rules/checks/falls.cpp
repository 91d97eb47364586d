#include "core/rules/checks/falls.h"

#include <algorithm>
#include <cmath>

namespace elbowroom::checks {

namespace {
using namespace literals;
constexpr Length kFoot = 12_in, kUpright = Length::nanometres(6'350'000);  // 1/4 in
constexpr double kBevel = 2, kRamp = 12;
}  // namespace

double fallOf(Length per_foot) { return per_foot.inches() / kFoot.inches(); }
double leastFall() { return fallOf(kUpright); }
double steepestFall() { return fallOf(2 * kUpright); }
Amount percentOf(double fall) { return {std::llround(fall * 100'000)}; }
double runPerRise(double fall) { return 1 / fall; }

Length dropOver(Length run) { return run.scaled(leastFall()); }
Length runFor(Length drop) { return drop.scaled(1 / leastFall()); }

CentreFall centreFall(Length width, Length depth) {
  const Length corner = Length::fromInches(std::hypot(width.inches(), depth.inches()) / 2);
  const Length drop = dropOver(corner);
  return {corner, drop, drop.inches() / (std::min(width, depth) / 2).inches()};
}

Length bevelRun(Length step) { return std::max(Length{}, step - kUpright).scaled(kBevel); }
Length rampRun(Length step) { return step.scaled(kRamp); }

}  // namespace elbowroom::checks
