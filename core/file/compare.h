// All options of a plan side by side: one answer for the headless verb and for the window.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom {

// What one option says to a line.
struct CompareCell {
  std::string text;                 // "28 1/8\"", "13\": short by 2\"", "not there"
  std::optional<Outcome> outcome;   // of a line about a rule, where the option has a finding to it
  std::vector<ElementId> subjects;  // the things it is about that stand in that option
};

struct CompareLine {
  std::string label;
  std::string why;                // of a line about a rule: why it matters and from which text; else empty
  std::optional<Level> level;     // of a line about a rule
  std::string book;               // id, of a line about a rule
  std::vector<CompareCell> cells; // one for each option, in order
  bool differs = false;           // not every option says the same
};

struct Comparison {
  std::vector<std::string> options;     // their names
  std::vector<CompareLine> figures;     // counts of findings, floor, turning, ways, each door, Wish list
  std::vector<CompareLine> shortfalls;  // each that is short in at least one option, by level; with what the others
                                        // say to the same rule of the same things
};

// Things are the same in two options when they have the same id, as they have after an option was copied.
Comparison compareOptions(const Plan&, const BookChoice&);

}  // namespace elbowroom
