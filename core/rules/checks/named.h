// The names of the measures: how books that are added as files say what they measure.
#pragma once

#include <span>
#include <string_view>

#include "core/rules/rule.h"

namespace elbowroom::checks {

// What a measure gives, and so what its limit is; in the order of Quantity.
enum class Gives { length, area, angle, count, yesNo, amount };
Gives kindOf(const Quantity&);
std::string_view wordsOf(Gives);  // "a length", "a yes or no", ...

struct NamedMeasure {
  std::string_view name;        // kebab-case, never changed once it is there: "toilet-sides"
  Measure measure;
  Gives gives = Gives::length;
  std::string_view unit = {};   // of an amount: "cfm"
  std::string_view sizes = {};  // its parameters (Rule::sizes) in order, separated by commas; a "?" ends those
                                // that may be left out: "width, depth, height?"
};

// Every measure that a rule of the program uses is here (tests/core/rules/completeness_test.cpp).
std::span<const NamedMeasure> namedMeasures();
const NamedMeasure* findMeasure(std::string_view name);
const NamedMeasure* nameOf(Measure);
// How many sizes the measure needs, and takes at most.
struct SizeCount { std::size_t least = 0, most = 0; };
SizeCount sizesOf(const NamedMeasure&);

}  // namespace elbowroom::checks
