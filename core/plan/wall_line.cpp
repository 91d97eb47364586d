#include "core/plan/wall_line.h"

#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {

WallLine wallLine(const Option& option, std::size_t index) {
  const std::vector<Wall>& walls = option.room.walls;
  WallLine line;
  line.from = walls[index].from;
  line.to = walls[(index + 1) % walls.size()].from;
  line.along = Direction::between(line.from, line.to);
  line.inward = line.along.right();
  line.length = distance(line.from, line.to);
  return line;
}

std::optional<std::size_t> wallIndex(const Option& option, const ElementId& wall) {
  for (std::size_t i = 0; i < option.room.walls.size(); ++i)
    if (option.room.walls[i].id == wall) return i;
  return std::nullopt;
}

std::optional<WallLine> wallLine(const Option& option, const ElementId& wall) {
  const std::optional<std::size_t> index = wallIndex(option, wall);
  if (!index) return std::nullopt;
  return wallLine(option, *index);
}

Outline roomOutline(const Room& room) {
  Outline out;
  out.reserve(room.walls.size());
  for (const Wall& wall : room.walls) out.push_back(wall.from);
  return out;
}

std::string wordFor(const Opening& opening) { return opening.kind == OpeningKind::door ? "door" : "window"; }

namespace {
std::string uncapitalised(std::string word) {
  if (!word.empty() && word[0] >= 'A' && word[0] <= 'Z') word[0] = static_cast<char>(word[0] - 'A' + 'a');
  return word;
}
}  // namespace

std::string wordFor(const Fixture& fixture) { return uncapitalised(std::string(infoOf(fixture.kind).label)); }
// "L grab bar": a letter that stands for a shape stays a capital.
std::string wordFor(const WallItem& item) {
  const std::string label = labelOf(item);
  return label.size() > 1 && label[1] == ' ' ? label : uncapitalised(label);
}

}  // namespace elbowroom
