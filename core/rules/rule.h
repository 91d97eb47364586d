// A rule is data: what is measured on whom, against which limit, from which text, checked how well.
#pragma once

#include <functional>
#include <span>
#include <string_view>
#include <vector>

#include "core/plan/layout.h"
#include "core/rules/finding.h"

namespace elbowroom {

// partial: only part of the wording, or only a fragment of it, was read.
enum class Grade { verified, verifiedSecondHand, partial, derived, computed, commonPractice, memory };

struct Source {
  std::string_view document;  // "IRC"; "common practice, no source"
  std::string_view edition;   // "2009 (unchanged through 2021 from memory)"
  std::string_view section;   // "P2705.1(5)"; empty rather than invented
  std::string_view read_at;   // where the value was read, as standards/*.md gives it
};

// One measurement on one subject. `measured` unset: the plan does not say (outcome unknown).
struct Measurement {
  std::vector<ElementId> subjects;
  std::optional<Quantity> measured = {};
  std::vector<Place> places = {};
  std::string detail = {};
  std::optional<Quantity> limit = {};  // overrides the rule's when it depends on the subject
};

struct CheckInput;  // core/rules/check_input.h: layout + shared measures, computed once, and the rule that asks

using Measure = std::vector<Measurement> (*)(const CheckInput&);

struct Rule {
  std::string_view id, book, title;
  Level level;
  Compare compare;
  Quantity limit;
  std::optional<Quantity> limit_high = {};
  Measure measure;           // empty result: not applicable to this plan
  Source source;
  Grade grade;
  std::string_view why;      // one plain sentence
  std::string_view limit_words = {};  // when the limit depends on the subject ("twice the leaf plus 1 in")
};

struct Book {
  std::string_view id, title, authority, note;
};

std::span<const Book> allBooks();
// The explicit registry: one line per rule (core/rules/registry.cpp).
std::span<const Rule> allRules();
const Rule* findRule(std::string_view book, std::string_view id);
const Book* findBook(std::string_view id);
std::string_view wordsOf(Grade);    // "read in the text quoted by ...", "from memory, not checked", ...
std::string_view keyOf(Grade);
std::string_view keyOf(Level);
std::string_view keyOf(Outcome);
std::string_view keyOf(Compare);    // ">=", "<=", "between", "is"

}  // namespace elbowroom
