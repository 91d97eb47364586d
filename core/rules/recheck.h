// A check of a plan of which only things were moved since another one: what the move cannot change is taken
// over, and the result is the same as that of check(). This is what runs at every mouse move.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "core/rules/check.h"
#include "core/rules/checks/around.h"
#include "core/rules/memo.h"

namespace elbowroom {

class RulesInForce;

// A report with what the next check may take over from it.
struct Checked {
  Report report;
  Memo memo;  // shared answers, for what is asked of the same layout afterwards; those of this check only

  // Private to recheck.cpp.
  BookChoice choice;
  std::shared_ptr<const RulesInForce> in_force;
  std::vector<checks::Around> around;
  struct Origin {
    std::uint32_t rule;   // index into the rules in force
    std::uint32_t place;  // among the findings of all rules, in registry order
  };
  std::vector<Origin> origins;  // of each finding of the report
};

// As check(): nothing is taken over.
Checked checkAnew(const Layout& now, const BookChoice& choice);
// The same report as checkAnew(now, choice) gives. `before`: the check of `was`, made with the books as they
// are now. Takes over all that what has moved from `was` to `now` cannot change; all is checked anew where
// more has changed than places of fixtures and of things on walls.
Checked recheck(Checked before, const Layout& was, const Layout& now, const BookChoice& choice);

}  // namespace elbowroom
