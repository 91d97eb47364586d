// Identity of a wall, opening, fixture or anything else placed in an option. Unique within the option.
#pragma once

#include <algorithm>
#include <compare>
#include <string>
#include <vector>

namespace elbowroom {

struct ElementId {
  std::string text;
  auto operator<=>(const ElementId&) const = default;
  bool empty() const { return text.empty(); }
};

// Adds it where it is not among them yet.
inline void addOnce(std::vector<ElementId>& ids, const ElementId& id) {
  if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
}

}  // namespace elbowroom
