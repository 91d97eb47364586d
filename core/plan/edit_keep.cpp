#include <algorithm>

#include "core/plan/edit_parts.h"
#include "core/plan/wall_line.h"

namespace elbowroom::edit {
namespace {

// A wall before the change, and the wall that carries its elements after it.
struct Moved {
  WallLine before, after;
  ElementId wall;
};

Length projected(const Moved& m, Length along) {
  return dot(m.before.at(along) - m.after.from, m.after.along);
}

Length clamped(Length v, Length low, Length high) {
  return low > high ? (low + high) / 2 : std::clamp(v, low, high);
}

// What was wholly on its wall stays wholly on it if it fits; what hung over keeps at least its middle on it.
Length keptAlong(const Moved& m, Length along, Length width) {
  const Length half = width / 2;
  const bool was_on = along >= half && along + half <= m.before.length;
  const Length margin = was_on ? half : Length{};
  return clamped(projected(m, along), margin, m.after.length - margin);
}

std::optional<Moved> movedOf(const Option& before, const Option& after, const ElementId& wall,
                             const std::map<ElementId, ElementId>& joined) {
  const auto it = joined.find(wall);
  const ElementId& now = it == joined.end() ? wall : it->second;
  const std::optional<WallLine> old_line = wallLine(before, wall), new_line = wallLine(after, now);
  if (!old_line || !new_line || (*old_line == *new_line && now == wall)) return std::nullopt;
  return Moved{*old_line, *new_line, now};
}

void keepStuds(const WallLine& before, const WallLine& after, Wall& wall) {
  if (!wall.studs || wall.studs->spacing <= Length{}) return;
  const Length shift = dot(before.from - after.from, after.along);
  if (shift == Length{}) return;
  const std::int64_t step = wall.studs->spacing.nm();
  const std::int64_t first = (wall.studs->first + shift).nm() % step;
  wall.studs->first = Length::nanometres(first < 0 ? first + step : first);
}

}  // namespace

Refusal keepInPlace(const Option& before, Option& after, const std::map<ElementId, ElementId>& joined) {
  for (Opening& o : after.openings) {
    const std::optional<Moved> m = movedOf(before, after, o.wall, joined);
    if (!m) continue;
    if (m->after.length < o.width)
      return refused("wall-shorter-than-opening", "The wall would be shorter than its " + wordFor(o) + ".");
    o.along = keptAlong(*m, o.along, o.width);
    o.wall = m->wall;
  }
  for (Fixture& f : after.fixtures) {
    auto* on = std::get_if<OnWall>(&f.placement);
    if (!on) continue;
    const std::optional<Moved> m = movedOf(before, after, on->wall, joined);
    if (!m) continue;
    on->along = keptAlong(*m, on->along, f.width);
    on->wall = m->wall;
  }
  for (WallItem& item : after.on_walls) {
    const std::optional<Moved> m = movedOf(before, after, item.wall, joined);
    if (!m) continue;
    item.along = keptAlong(*m, item.along, item.width);
    item.wall = m->wall;
  }
  for (std::size_t i = 0; i < after.room.walls.size(); ++i) {
    Wall& wall = after.room.walls[i];
    const std::optional<WallLine> old_line = wallLine(before, wall.id);
    if (old_line) keepStuds(*old_line, wallLine(after, i), wall);
  }
  return {};
}

}  // namespace elbowroom::edit
