#include "core/plan/plan.h"

#include <algorithm>

namespace elbowroom {
namespace {

template <typename Element>
const Element* find(const std::vector<Element>& elements, const ElementId& id) {
  const auto it = std::find_if(elements.begin(), elements.end(), [&](const auto& e) { return e.id == id; });
  return it == elements.end() ? nullptr : &*it;
}

}  // namespace

const Wall* findWall(const Option& option, const ElementId& id) { return find(option.room.walls, id); }
const Opening* findOpening(const Option& option, const ElementId& id) { return find(option.openings, id); }
const Fixture* findFixture(const Option& option, const ElementId& id) { return find(option.fixtures, id); }
const WallItem* findWallItem(const Option& option, const ElementId& id) { return find(option.on_walls, id); }
const CeilingItem* findCeilingItem(const Option& option, const ElementId& id) { return find(option.on_ceiling, id); }

bool hasElement(const Option& option, const ElementId& id) {
  return findWall(option, id) || findOpening(option, id) || findFixture(option, id) ||
         findWallItem(option, id) || findCeilingItem(option, id);
}

ElementId freshId(const Option& option, const std::string& stem) {
  ElementId id{stem};
  for (int n = 2; id.empty() || hasElement(option, id); ++n) id.text = stem + std::to_string(n);
  return id;
}

Plan emptyPlan(Unit unit) {
  Plan plan;
  plan.unit = unit;
  plan.books = {"us-residential", "us-electrical", "comfort", "craft"};
  plan.options.emplace_back();
  plan.options[0].name = "As found";
  return plan;
}

}  // namespace elbowroom
