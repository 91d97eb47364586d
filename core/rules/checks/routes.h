// The ways from the door to the fixtures.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Length: the width of the way to each toilet, bidet, basin, bath and shower that stands on the floor, from
// the first door. Exact where it is near the limit or short, else a width that is surely there. Where the way
// is narrower than the limit at one place only, and for at most sizes[1], the limit there is sizes[0].
std::vector<Measurement> routeWidths(const CheckInput&);

}  // namespace elbowroom::checks
