// Sizes in which fixtures are sold, and where each was read.
#pragma once

#include <span>

#include "core/plan/plan.h"
#include "core/rules/rule.h"

namespace elbowroom {

struct TradeSize {
  FixtureKind kind;
  Length width, depth;
  int basins = 0;  // of a vanity: how many it takes; 0 elsewhere
  std::string_view source;
  Grade grade;
};
// Grouped by kind, ascending. Kinds without a source (cabinets, benches, appliances) have none.
std::span<const TradeSize> tradeSizes();

}  // namespace elbowroom
