// What both forms of a report need to know about its findings and rules. Private to core/file/report_*.cpp.
#pragma once

#include <array>
#include <string>

#include "core/rules/check.h"
#include "core/rules/text.h"
#include "core/rules/wishes.h"

namespace elbowroom {

struct Tally {
  std::array<int, 3> short_by_level{};
  int unknown = 0, close = 0, clear = 0, failed = 0;
  int shortOf(Level level) const { return short_by_level.at(static_cast<std::size_t>(level)); }
};
// Of the findings; the Wish list has counts of its own (core/rules/wishes.h).
Tally tallyOf(const Report&);

// The key of the grade of the finding's rule; empty when there is no such rule.
std::string_view gradeOf(const Finding&);

}  // namespace elbowroom
