// Private to core/rules: the parts that a whole check (check.h) and one after a move (recheck.h) share.
#pragma once

#include <vector>

#include "core/rules/check_input.h"
#include "core/rules/in_force.h"

namespace elbowroom {

// What one rule finds, as it stands in a report.
std::vector<Finding> findingsOf(const RuleInForce& in, const CheckInput& input, Length site_tolerance);
// Place in a report: the least comes first.
int rankOf(const Finding&);

}  // namespace elbowroom
