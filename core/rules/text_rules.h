// Words of a rule that nobody has measured yet: for lists of books and rules.
#pragma once

#include "core/rules/text.h"

namespace elbowroom {

// Source, grade, why and needed figure.
FindingText textOfRule(const Rule&, Unit);
// "IRC 2009, P2705.1(5)".
std::string sourceWords(const Source&);
// False: the limit depends on the subject and the rule's own figure stands for nothing.
bool hasOwnLimit(const Rule&);
// "at least 15\"", "16\" to 18\"", "twice the leaf plus 1 in", "must be so".
std::string limitWords(const Rule&, Unit);
// With another figure in its (lower) limit's place, as a person has set it.
std::string limitWords(const Rule&, const Quantity& instead, Unit);
// What the variant brings: "at least 24\"", "no such rule", "the same figure from UPC 2018, 402.5".
std::string variantWords(const Rule&, const Variant&, Unit);

}  // namespace elbowroom
