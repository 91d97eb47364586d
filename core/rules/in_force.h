// The rules that a choice of books puts in force: the variants of the chosen settings taken, the person's changes
// applied, what is switched off left out.
#pragma once

#include <deque>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom {

struct RuleInForce {
  const Rule* rule = nullptr;   // with the figures in force; owned by RulesInForce or the registry
  int variant = -1;             // index into the registered rule's variants
  bool changed = false;         // the person has changed the limit
  std::string reason;           // and why
};

class RulesInForce {
 public:
  explicit RulesInForce(const BookChoice& choice);
  RulesInForce(const RulesInForce&) = delete;
  RulesInForce& operator=(const RulesInForce&) = delete;
  const std::vector<RuleInForce>& rules() const { return rules_; }

 private:
  std::deque<Rule> own_;
  std::vector<RuleInForce> rules_;
};

// The value in force of a book's setting: the chosen one where the book has it, else the default; empty when the
// book has no such setting.
std::string_view settingOf(const BookChoice& choice, const Book& book, std::string_view key);
// Of several variants that are chosen, the last one counts. -1: none.
int variantInForce(const BookChoice& choice, const Rule& rule);
const RuleChange* changeOf(const BookChoice& choice, const Rule& rule);

}  // namespace elbowroom
