// Private to core/rules: the least shift of a family that meets the finding.
#pragma once

#include "core/rules/remedies/ways.h"

namespace elbowroom::remedies {

struct Least {
  std::optional<Length> by;    // the least shift that meets the finding; unset: none up to Family::most does
  std::optional<Length> best;  // where it comes nearest, when that is better than as it stands
};
// Brackets the first shift that meets the finding and closes in on it (secant, then halves), to 1/64 in; the
// answer is rounded up to 1/16 in or 1 mm unless that is more than `most`.
Least leastShift(Trials&, const Family&);
// Rounds up to 1/16 in or 1 mm; `most` when that would be more.
Length roundedUp(Length, Unit, Length most);

}  // namespace elbowroom::remedies
