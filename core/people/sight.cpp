#include "core/people/sight.h"

#include <algorithm>

namespace elbowroom {

using namespace literals;

Length mirrorTopFor(const Person& p) { return (eyeHeight(p) + p.stature) / 2; }
Length mirrorFaceBottomFor(const Person& p) { return eyeHeight(p) - 2_in; }
Length mirrorWaistBottomFor(const Person& p) { return (eyeHeight(p) + elbowHeight(p)) / 2; }

std::optional<HeightBand> eyesWithin(const std::vector<const Person*>& people, Length height) {
  if (people.empty()) return std::nullopt;
  Length low = eyeHeight(*people[0]), high = low;
  for (const Person* p : people) {
    low = std::min(low, eyeHeight(*p));
    high = std::max(high, eyeHeight(*p));
  }
  const HeightBand band{high - height / 2, low + height / 2};
  if (band.low > band.high) return std::nullopt;
  return band;
}

}  // namespace elbowroom
