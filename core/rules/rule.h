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
  std::string fact = {};               // what the plan would have to state (Finding::fact)
  std::optional<Quantity> limit_high = {};  // likewise
};

struct CheckInput;  // core/rules/check_input.h: layout + shared measures, computed once, and the rule that asks

using Measure = std::vector<Measurement> (*)(const CheckInput&);

// The rule as another edition or local setting of its book has it. What is unset stays as in the rule.
struct Variant {
  std::string_view setting, value;  // the book's setting and the value that brings this in: "edition", "2017"
  std::optional<Quantity> limit = {}, limit_high = {};
  std::optional<Source> source = {};
  std::optional<Grade> grade = {};
  bool off = false;                 // that edition has no such rule
};

// Ways to mend a shortfall that make sense for the rule (core/rules/remedies.h tries them).
enum class Mend { slide, turn, otherHand, otherSwing, otherAction, narrower, wider, swap, raise, lower, state };

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
  std::vector<Length> sizes = {};     // parameters of the measure, as its header lists them (30 in, 48 in)
  std::string_view unit = {};         // of an Amount: "cfm", "%", "\u00b0F"
  std::vector<Variant> variants = {};
  std::vector<Mend> mends = {};
  std::string_view met = {}, missed = {};  // sentences of a yes/no rule; empty: core/rules/text_words.cpp has them
};

// A choice within a book: its edition, an option the text itself gives, a local amendment.
struct SettingValue { std::string_view value, title; };
struct Setting {
  std::string_view key, title;
  std::vector<SettingValue> values;  // the first is the default
};

struct Book {
  std::string_view id, title, authority, note;
  std::vector<Setting> settings = {};
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
std::string_view keyOf(Mend);       // "slide", "other-hand", ...

}  // namespace elbowroom
