#include <fmt/format.h>

#include <algorithm>
#include <cctype>

#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/text.h"

namespace elbowroom {

namespace {

bool onlyOneOfItsKind(const Option& option, const Fixture& fixture) {
  int alike = 0;
  for (const Fixture& other : option.fixtures) alike += other.kind == fixture.kind ? 1 : 0;
  return alike == 1;
}

bool isNumbered(const std::string& id, const std::string& stem) {
  return id.size() > stem.size() && id.compare(0, stem.size(), stem) == 0 &&
         id.find_first_not_of("0123456789", stem.size()) == std::string::npos;
}

// "Vanity" and "vanity2" are "Vanity 2", not "Vanity vanity2", "Side light" and "light2" are "Side light 2"; an id of
// another kind stands as it is.
std::string labelled(const std::string& label, const std::string& id) {
  std::string low = label;
  std::transform(low.begin(), low.end(), low.begin(), [](unsigned char c) { return std::tolower(c); });
  std::replace(low.begin(), low.end(), ' ', '-');
  if (id == low) return label;
  for (const std::string& stem : {low, low.substr(low.rfind('-') + 1)}) {
    if (isNumbered(id, stem)) return fmt::format("{} {}", label, id.substr(stem.size()));
    if (id == stem) return label;
  }
  return fmt::format("{} {}", label, id);
}

template <typename Item>
std::string itemName(const std::vector<Item>& all, const Item& item) {
  if (!item.name.empty()) return item.name;
  const auto alike = std::count_if(all.begin(), all.end(), [&](const Item& i) { return i.kind == item.kind; });
  return alike == 1 ? labelOf(item) : labelled(labelOf(item), item.id.text);
}

}  // namespace

std::string subjectName(const Option& option, const ElementId& id) {
  if (const Fixture* f = findFixture(option, id)) {
    if (!f->name.empty()) return f->name;
    const std::string label(infoOf(f->kind).label);
    return onlyOneOfItsKind(option, *f) ? label : labelled(label, id.text);
  }
  if (const Opening* o = findOpening(option, id))
    return labelled(o->kind == OpeningKind::door ? "Door" : "Window", id.text);
  if (findWall(option, id) != nullptr) return fmt::format("Wall {}", id.text);
  if (const WallItem* item = findWallItem(option, id)) return itemName(option.on_walls, *item);
  if (const CeilingItem* item = findCeilingItem(option, id)) return itemName(option.on_ceiling, *item);
  return id.text;
}

std::string troubleText(const Trouble& trouble, const Option& option, Unit unit) {
  const std::string other = subjectName(option, trouble.other);
  const std::string by = quantityText(trouble.short_by, unit);
  switch (trouble.kind) {
    case DoorTrouble::pocketMeetsCorner:
      return fmt::format("The pocket runs past the end of its wall by {}.", by);
    case DoorTrouble::pocketMeetsOpening:
      return fmt::format("The pocket meets {}: {} of wall is missing.", other, by);
    case DoorTrouble::pocketMeetsPipes:
      return fmt::format("{} carries pipes, and nothing may run through a pocket.", other);
    case DoorTrouble::noWallToSlideOn:
      return fmt::format("The wall beside the opening is too short to slide on: {} is missing.", by);
    case DoorTrouble::slideMeetsOpening:
      return fmt::format("The sliding leaf would cover {}: {} of free wall is missing.", other, by);
    case DoorTrouble::slideMeetsFixture:
      return fmt::format("The sliding leaf meets {}: {} of free wall is missing.", other, by);
  }
  return {};
}

std::vector<std::string> cautionLines() {
  return {
      "Measured against the texts named beside each finding; advisory only.",
      "Local code, permits and licensed trades decide.",
      "Structure (joists, load-bearing walls), wiring, gas and pressure piping are for licensed people.",
  };
}

}  // namespace elbowroom
