// Statures of children by age, where nobody has measured the child yet.
#pragma once

#include <optional>

#include "core/base/length.h"

namespace elbowroom {

inline constexpr int kYoungestListed = 2, kOldestListed = 12;  // years

// The median of boys and girls of this age in whole years: CDC growth charts of 2000, stature for age, 50th
// percentile, mean of both, computed for 2, 3, 4, 5, 6, 8, 10 and 12 years; 7, 9 and 11 lie halfway between their
// neighbours, derived. Half of all children are taller. nullopt: the table does not have the age.
std::optional<Length> statureAtAge(int years);
// Whether the table itself has this age; else statureAtAge lies between two of its lines.
bool listedAge(int years);

}  // namespace elbowroom
