// Height of the ceiling where it matters. Not known where the plan does not state the ceiling's height.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Lowest ceiling over a square of `sizes[0]` at the head of each shower and bath with a head, a length. Where
// no head is placed: over the whole shower; not known where only a part of it is too low.
std::vector<Measurement> ceilingsOverShowers(const CheckInput&);
// Height over the middle of the `sizes[0]` deep floor before each toilet, basin and bath, a length.
std::vector<Measurement> ceilingsBeforeFixtures(const CheckInput&);
// Lowest ceiling over each toilet, basin and bath, a length.
std::vector<Measurement> ceilingsOverFixtures(const CheckInput&);
// Only rooms with a sloped ceiling: lowest over the floor of `sizes[0]` by `sizes[1]` (deep, wide) before
// each toilet and basin, and of `sizes[2]` by `sizes[3]` before and behind the front of each bath and shower;
// a length.
std::vector<Measurement> ceilingsBeforeAndIn(const CheckInput&);
// Floor under a ceiling of at least `sizes[0]`, an area; limit: half of the floor under a ceiling of at least
// `sizes[1]`. Only rooms with a sloped ceiling.
std::vector<Measurement> highHalf(const CheckInput&);
// The same; limit: a quarter of the whole floor.
std::vector<Measurement> highQuarter(const CheckInput&);

}  // namespace elbowroom::checks
