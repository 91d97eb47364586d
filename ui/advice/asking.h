// What a finding that is not known asks of the person: the question, how it is answered and the edit that states
// the answer.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/plan/edit.h"
#include "core/rules/finding.h"

namespace elbowroom::ui {

struct Asking {
  FactType type = FactType::yesNo;
  std::string label;      // "Safety glass"
  std::string question;   // "Is this glass safety glass?"
  std::string unit;       // of an amount
  std::vector<std::pair<std::string, std::string>> words;  // of a word: value and what the person reads
  std::function<Change(const FactValue&)> state;
};

// nullopt: nothing is missing, or it is nothing that one answer states.
std::optional<Asking> askingOf(const Plan&, const Option&, const Finding&);

}  // namespace elbowroom::ui
