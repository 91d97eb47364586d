#include <fmt/format.h>

#include "core/plan/catalogue.h"
#include "core/rules/text.h"

namespace elbowroom {

namespace {

bool onlyOneOfItsKind(const Option& option, const Fixture& fixture) {
  int alike = 0;
  for (const Fixture& other : option.fixtures) alike += other.kind == fixture.kind ? 1 : 0;
  return alike == 1;
}

}  // namespace

std::string subjectName(const Option& option, const ElementId& id) {
  if (const Fixture* f = findFixture(option, id)) {
    if (!f->name.empty()) return f->name;
    const std::string label(infoOf(f->kind).label);
    return onlyOneOfItsKind(option, *f) ? label : fmt::format("{} {}", label, id.text);
  }
  if (const Opening* o = findOpening(option, id))
    return fmt::format("{} {}", o->kind == OpeningKind::door ? "Door" : "Window", id.text);
  if (findWall(option, id) != nullptr) return fmt::format("Wall {}", id.text);
  if (const WallItem* item = findWallItem(option, id)) return fmt::format("{} {}", item->kind, id.text);
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
