// The order of works: what has to be done before what, for what this plan has. Edges are the trade's (two builders'
// process pages and trade articles, comfort table of works; no standard gives one).
#pragma once

#include <string_view>
#include <vector>

#include "core/plan/layout.h"
#include "core/rules/rule.h"

namespace elbowroom {

struct WorkStep {
  std::string_view id;     // "boxes", "mirror-measure"
  std::string_view title;  // "Boxes for lights, receptacles and switches set in the walls"
  std::string_view why;    // why it comes before what follows it
  Grade grade = Grade::verifiedSecondHand;
  std::vector<std::string_view> after = {};  // ids of steps in this list that must be done, nearest ones only
  std::vector<ElementId> elements = {};      // what of the plan it is about; empty: the room
};

// Only the steps that the plan gives a reason for, each after everything that it needs.
std::vector<WorkStep> orderOfWorks(const Layout&);

// Every step there is, in an order that holds, with all direct edges; no elements.
const std::vector<WorkStep>& allWorkSteps();

}  // namespace elbowroom
