#include <algorithm>

#include "core/plan/edit_parts.h"

namespace elbowroom::edit {
namespace {

template <typename Element>
void put(std::vector<Element>& all, const std::vector<Element>& given) {
  for (const Element& element : given) {
    const auto it =
        std::find_if(all.begin(), all.end(), [&](const Element& e) { return e.id == element.id; });
    if (it != all.end())
      *it = element;
    else
      all.push_back(element);
  }
}

}  // namespace

Refusal change(Option& option, const PutFixtures& c) {
  put(option.fixtures, c.fixtures);
  return {};
}

Refusal change(Option& option, const PutOpenings& c) {
  put(option.openings, c.openings);
  return {};
}

Refusal change(Option& option, const PutWallItems& c) {
  put(option.on_walls, c.items);
  return {};
}

Refusal change(Option& option, const PutCeilingItems& c) {
  put(option.on_ceiling, c.items);
  return {};
}

Refusal change(Option& option, const PutThings& c) {
  put(option.fixtures, c.fixtures);
  put(option.openings, c.openings);
  put(option.on_walls, c.on_walls);
  put(option.on_ceiling, c.on_ceiling);
  return {};
}

Refusal change(Option& option, const RemoveElements& c) {
  for (const ElementId& id : c.ids) {
    if (findWall(option, id))
      return refused("wall",
                     "A wall cannot be removed alone; remove its corner to join it to the next wall.");
    if (!hasElement(option, id))
      return refused("no-such-element", "There is nothing with the id \"" + id.text + "\" to remove.");
  }
  const auto listed = [&](const auto& e) {
    return std::find(c.ids.begin(), c.ids.end(), e.id) != c.ids.end();
  };
  std::erase_if(option.openings, listed);
  std::erase_if(option.fixtures, listed);
  std::erase_if(option.on_walls, listed);
  std::erase_if(option.on_ceiling, listed);
  return {};
}

}  // namespace elbowroom::edit
