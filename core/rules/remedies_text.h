// Words of remedies and of the limits that conflict. English; beside core/rules/text.h, by whose figures it goes.
#pragma once

#include <string>

#include "core/rules/remedies.h"

namespace elbowroom {

struct RemedyText {
  std::string label;   // "Move Toilet 1" away from Vanity"
  std::string then;    // "then 15", needs at least 15""; empty when the rule no longer applies
  std::string means;   // what it asks for besides: "means moving the drain, Mirror goes along"; may be empty
  std::string brings;  // "then short: ..." for each new shortfall of a lower level; may be empty
  std::string worsens; // "short already, then worse: ..."; may be empty
};
RemedyText textOf(const Remedy&, const Option& option, Unit unit);

// "Moving Toilet 1" away from Vanity would leave: Toilet: ... is 14", needs at least 15" (IRC 2009, P2705.1(5))"
std::string textOf(const Conflict&, const Option& option, Unit unit);

}  // namespace elbowroom
