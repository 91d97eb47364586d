// The frozen input that every measure reads: the layout and the figures shared by several rules.
#pragma once

#include "core/rules/measures.h"

namespace elbowroom {

struct CheckInput {
  const Layout& layout;
  const Figures& figures;
};

}  // namespace elbowroom
