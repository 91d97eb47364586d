// What both forms of a report need to know about its findings and rules. Private to core/file/report_*.cpp.
#pragma once

#include <string>

#include "core/rules/check.h"
#include "core/rules/tally.h"
#include "core/rules/text.h"
#include "core/rules/wishes.h"

namespace elbowroom {

// The key of the grade of the finding's rule; empty when there is no such rule.
std::string_view gradeOf(const Finding&);

}  // namespace elbowroom
