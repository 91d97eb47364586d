// What each rule says of each option of the plan at the moment.
#pragma once

#include <QString>
#include <map>
#include <utility>

#include "core/rules/check.h"

namespace elbowroom::ui {

struct RuleOutcome {
  Outcome outcome = Outcome::clear;  // the worst of the rule's findings
  int findings = 0;                  // with that outcome
  QString said;                      // the first of them
};

class RuleOutcomes {
 public:
  // Checks every option again unless the plan is the one of last time. True: something is new.
  bool refresh(const Plan&);
  // The books themselves have changed.
  void forget() { plan_.reset(); }
  // nullptr: the rule says nothing about this option.
  const RuleOutcome* of(std::size_t option, std::string_view book, std::string_view rule) const;

 private:
  using Key = std::pair<std::string, std::string>;
  std::optional<Plan> plan_;
  std::vector<std::map<Key, RuleOutcome>> options_;
};

// "Short", "Close", ...
QString outcomeWord(Outcome);

}  // namespace elbowroom::ui
