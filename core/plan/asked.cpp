#include "core/plan/asked.h"

namespace elbowroom {
namespace {

struct PlainField {
  FactOn on;
  std::string_view key;
  Asked asked;
};

constexpr PlainField kPlain[] = {
    {FactOn::room, "ceiling.height", {"Ceiling height", "How high is the ceiling above the finished floor?"}},
    {FactOn::wall, "exterior", {"Exterior wall", "Is this an exterior wall?"}},
    {FactOn::wall, "plumbing", {"Pipes in the wall", "Do pipes run in this wall?"}},
    {FactOn::wall, "studs", {"Studs", "Where is its first stud, and how far apart are they?"}},
    {FactOn::opening, "sill", {"Sill", "How high is the sill above the finished floor?"}},
    {FactOn::opening, "thickness", {"Leaf thickness", "How thick is the leaf?"}},
    {FactOn::opening, "leaf_thickness", {"Leaf thickness", "How thick is the leaf?"}},
    {FactOn::opening, "closer", {"Closer", "Does a closer shut this door?"}},
    {FactOn::opening, "latch", {"Latch", "Does this door have a latch?"}},
    {FactOn::fixture, "basins", {"Basins", "How many basins does it have?"}},
    {FactOn::fixture, "height", {"Height", "How high does it stand above the floor?"}},
    {FactOn::fixture, "curb", {"Curb", "How high is its curb? 0 when there is none."}},
    {FactOn::fixture, "bowl_width", {"Bowl width", "How wide is its bowl?"}},
    {FactOn::fixture, "tank_width", {"Tank width", "How wide is its tank?"}},
    {FactOn::fixture, "tank_depth", {"Tank depth", "How deep is its tank?"}},
    {FactOn::fixture, "control", {"Control", "At which of its ends is the control? Put it on its wall."}},
    {FactOn::fixture, "knee_space", {"Knee space", "How high and how deep is the free space for knees under it?"}},
    {FactOn::fixture, "glass.height", {"Height of the glass", "How high above the floor does its glass go?"}},
    {FactOn::fixture, "glass.door_swing", {"Glass door", "Does its glass door swing out or in?"}},
    {FactOn::wallItem, "depth", {"Depth", "How deep is it?"}},
    {FactOn::wallItem, "shower", {"Belongs to", "Which shower or bath does it belong to?"}},
    {FactOn::wallItem, "for", {"For", "Whom is its height set to?"}},
    {FactOn::wallItem, "person", {"For", "Whom is its height set to?"}},
};

}  // namespace

FactOn factOn(const Option& option, const ElementId& id) {
  if (id.empty()) return FactOn::room;
  if (findWall(option, id) != nullptr) return FactOn::wall;
  if (findOpening(option, id) != nullptr) return FactOn::opening;
  if (findFixture(option, id) != nullptr) return FactOn::fixture;
  if (findWallItem(option, id) != nullptr) return FactOn::wallItem;
  if (findCeilingItem(option, id) != nullptr) return FactOn::ceilingItem;
  return FactOn::room;
}

std::optional<Asked> askedOf(FactOn on, std::string_view key) {
  // Whatever hangs under it asks for the same ceiling.
  if (key == "ceiling.height") return kPlain[0].asked;
  for (const PlainField& field : kPlain)
    if (field.on == on && field.key == key) return field.asked;
  if (const FactInfo* fact = findFact(on, key)) return Asked{fact->label, fact->question};
  return std::nullopt;
}

}  // namespace elbowroom
