// The frozen input that every measure reads: the layout, the figures shared by several rules, and the rule
// that asks (its limit says how much of a zone is missing).
#pragma once

#include "core/rules/checks/around.h"
#include "core/rules/measures.h"
#include "core/rules/rule.h"

namespace elbowroom {

struct CheckInput {
  const Layout& layout;
  const Figures& figures;
  const std::vector<checks::Around>& around;  // one per fixture of the layout, same order
  const Rule* rule = nullptr;
};

}  // namespace elbowroom
