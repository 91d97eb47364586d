#include "core/plan/rough_opening.h"

namespace elbowroom {

std::optional<RoughOpening> roughOpeningOf(const Opening& o) {
  if (o.action == DoorAction::hinged) return RoughOpening{o.width + kHingedWider, o.height + kHingedTaller};
  if (o.action == DoorAction::pocket)
    return RoughOpening{2 * o.width + kPocketWider, o.height + kPocketTaller};
  return std::nullopt;
}

SliderSizes sliderFor(Length opening, Length overlap) {
  const Length leaf = opening + 2 * overlap;
  return {leaf, 2 * leaf, 2 * opening + 3 * overlap, leaf};
}

}  // namespace elbowroom
