// Identity of a wall, opening, fixture or anything else placed in an option. Unique within the option.
#pragma once

#include <compare>
#include <string>

namespace elbowroom {

struct ElementId {
  std::string text;
  auto operator<=>(const ElementId&) const = default;
  bool empty() const { return text.empty(); }
};

}  // namespace elbowroom
