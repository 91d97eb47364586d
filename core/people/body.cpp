#include "core/people/body.h"

namespace elbowroom {

namespace {
using namespace literals;

constexpr double kEyeOfStature = 0.935;    // ANSUR II
constexpr double kElbowOfStature = 0.617;  // ANSUR II
}  // namespace

Length eyeHeight(const Person& person) {
  // A child's head is nearly of adult size, so the adult ratio would put the eyes too high.
  return person.child ? person.stature - 4.3_in : person.stature.scaled(kEyeOfStature);
}

Length elbowHeight(const Person& person) { return person.stature.scaled(kElbowOfStature); }

Length standingDepth() { return 18_in; }
Length standingWidth() { return 26.3_in; }

}  // namespace elbowroom
