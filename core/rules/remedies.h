// Computed ways out of a shortfall: each tried on the whole plan against every chosen book before it is offered.
// Pure and deterministic; meant for the moment a finding is opened, not for every mouse move.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/edit.h"
#include "core/rules/check.h"

namespace elbowroom {

// What is done to one thing; the words are made from it (core/rules/remedies_text.h).
struct Move {
  Mend way = Mend::slide;
  ElementId moved = {};
  ElementId other = {};   // slide: what it moves away from or toward; swap: the other fixture; turn: the wall it goes to
  bool away = false; // slide: away from `other`, else toward it
  Length by = {};         // slide, raise, lower: how far; turn, swap: how far its middle moves
  std::optional<Length> width = {}, depth = {};  // narrower, wider: the size then
  std::optional<Length> up = {};            // raise, lower: lower edge above the floor then
  std::optional<Opening> door = {};         // other hand, swing, action: the door then
  Angle turned = {};                        // turn of a thing that stands free
};

struct Remedy {
  Move move;
  Change change;                  // one undoable edit of the option
  bool kept = false;              // the thing was to stay as it is (status keep): said and offered last
  std::optional<Finding> then;    // the finding as it would be; unset when the rule no longer applies
  std::vector<Finding> brings;    // new shortfalls of a lower level
  std::vector<Finding> worsens;   // as they would be: shortfalls that are there already, made worse
};

// A way that was tried and does not do.
struct Conflict {
  Move move;
  std::vector<Finding> breaks;    // the limits it would miss instead, at the finding's level or a higher one
  std::vector<ElementId> meets;   // what it would stand in, hang over or block
  std::optional<Finding> reached; // as far as it goes the finding is still short, with this figure
};

struct Remedies {
  std::vector<Remedy> offered;      // at most three; the least change first, ways of different kinds before like ones
  std::vector<Conflict> conflicts;  // only when nothing is offered: at most three, the nearest to success first
  int checks = 0;                   // how often the plan was checked
};

inline constexpr int kMostRemedies = 3;
inline constexpr int kRemedyChecks = 150;

// Ways go by Rule::mends, else by what the subjects are. A remedy meets the finding, is accepted by the plan, puts
// nothing into or in the way of another thing, and brings no new shortfall at the finding's level or a higher one.
// What makes a shortfall worse that is there already is offered after those that do not, and says so: where one limit
// is out of reach the others can still be met. Shifts are the least that do, rounded up to 1/16 in or 1 mm where there is room for that.
// Precondition: the finding belongs to the plan's report under this choice. Not short: nothing is offered.
Remedies remediesFor(const Plan& plan, std::size_t option, const Finding& finding, const BookChoice& choice,
                     int most_checks = kRemedyChecks);

}  // namespace elbowroom
