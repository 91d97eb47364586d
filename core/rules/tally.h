// How many findings of each kind a report has: one count for headers, sheets, reports and the comparison of options. The
// Wish list has counts of its own (core/rules/wishes.h).
#pragma once

#include <array>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom {

struct Tally {
  std::array<int, 3> short_by_level{};  // those that are accepted are not among them
  int unknown = 0;                      // findings to which the plan does not say enough, but those accepted
  int questions = 0;                    // what it does not say to them: several may ask the same
  int close = 0, clear = 0, accepted = 0, failed = 0;
  int shortOf(Level level) const { return short_by_level.at(static_cast<std::size_t>(level)); }
  int allShort() const { return short_by_level[0] + short_by_level[1] + short_by_level[2]; }
  bool operator==(const Tally&) const = default;
};
Tally tallyOf(const Report&);

// Two findings ask for the same when the same fact of the same thing is missing.
bool askTheSame(const Finding&, const Finding&);

// One group for each question, in the order in which it is first asked: all findings that ask it, none left out.
std::vector<std::vector<const Finding*>> questionsOf(const std::vector<const Finding*>&);

}  // namespace elbowroom
