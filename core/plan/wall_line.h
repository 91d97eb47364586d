// Where a wall of an option runs, from the corners alone.
#pragma once

#include <optional>

#include "core/plan/plan.h"

namespace elbowroom {

struct WallLine {
  Point from, to;  // left and right end on the inside face
  Direction along, inward;
  Length length;
  bool operator==(const WallLine&) const = default;
  Point at(Length along_wall) const { return from + along_wall * along; }
};

// Precondition: index < option.room.walls.size().
WallLine wallLine(const Option& option, std::size_t index);
// nullopt: no such wall.
std::optional<WallLine> wallLine(const Option& option, const ElementId& wall);
std::optional<std::size_t> wallIndex(const Option& option, const ElementId& wall);
Outline roomOutline(const Room& room);

// "door", "window", "toilet", "freestanding bath", "mirror": how a sentence names the element.
std::string wordFor(const Opening&);
std::string wordFor(const Fixture&);
std::string wordFor(const WallItem&);

}  // namespace elbowroom
