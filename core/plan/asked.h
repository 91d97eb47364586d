// The question that a missing figure asks of the person, whether it is a fact (core/plan/facts.h) or a plain field of the plan
// ("ceiling.height", "basins", "curb", ...).
#pragma once

#include <optional>
#include <string_view>

#include "core/plan/facts.h"
#include "core/plan/plan.h"

namespace elbowroom {

struct Asked {
  std::string_view label;     // in forms: "Ceiling height"
  std::string_view question;  // "How high is the ceiling above the finished floor?"
};

// What the element is facts are stated about; the room for an empty or unknown id.
FactOn factOn(const Option&, const ElementId&);
// nullopt: no such fact or field of such a thing.
std::optional<Asked> askedOf(FactOn, std::string_view key);

}  // namespace elbowroom
