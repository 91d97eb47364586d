// The frozen input that every measure reads: the layout, the figures shared by several rules, and the rule
// that asks (its limit says how much of a zone is missing). Searches that several rules ask for go through `memo`.
#pragma once

#include "core/rules/checks/around.h"
#include "core/rules/measures.h"
#include "core/rules/memo.h"
#include "core/rules/rule.h"

namespace elbowroom {

struct CheckInput {
  const Layout& layout;
  const Figures& figures;
  const std::vector<checks::Around>& around;  // one per fixture of the layout, same order
  const Rule* rule = nullptr;
  Memo& memo;  // of this check; what it answers depends on the layout alone
};

}  // namespace elbowroom
