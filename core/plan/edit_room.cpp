#include <algorithm>
#include <cmath>

#include "core/plan/edit_parts.h"
#include "core/plan/wall_line.h"

namespace elbowroom::edit {
namespace {

Error noSuchWall() { return refused("no-such-wall", "The wall to change does not exist."); }

// Every figure below must stay within what a Length can hold before integrity() looks at it.
constexpr Length kFarthest = Length::nanometres(100'000'000'000);
bool tooFar(Length v) { return abs(v) > kFarthest; }
Error farAway() { return refused("too-far", "That would be more than 100 m away."); }

// The corner `at` moved along `neighbour` so that the wall through it stands `inward` further in; nullopt
// when the neighbour runs on in the same line and no sliding along it moves the wall.
std::optional<Point> slid(Point at, const WallLine& neighbour, const WallLine& wall, Length inward) {
  const double across = neighbour.along.x * wall.inward.x + neighbour.along.y * wall.inward.y;
  constexpr double kSameLine = 1e-6;
  if (std::abs(across) < kSameLine) return std::nullopt;
  const double run = static_cast<double>(inward.nm()) / across;
  if (std::abs(run) > static_cast<double>(kFarthest.nm())) return Point{kFarthest * 2, {}};
  return at + Length::nanometres(std::llround(run)) * neighbour.along;
}

// A short wall that leads from a wall left in place to one that moved away from its line.
Wall returnWall(const Option& option, const Wall& moved, Point from) {
  Wall wall;
  wall.id = freshId(option, "wall");
  wall.from = from;
  wall.thickness = moved.thickness;
  wall.exterior = moved.exterior;
  return wall;
}

template <typename Each>
void eachOnWall(Option& option, const ElementId& wall, Each each) {
  for (Opening& o : option.openings)
    if (o.wall == wall) each(o.wall, o.along);
  for (Fixture& f : option.fixtures)
    if (auto* on = std::get_if<OnWall>(&f.placement); on && on->wall == wall) each(on->wall, on->along);
  for (WallItem& item : option.on_walls)
    if (item.wall == wall) each(item.wall, item.along);
}

}  // namespace

Refusal change(Option& option, const SetRoom& c) {
  Option after = option;
  after.room = c.room;
  const auto vanished = [&](const ElementId& wall, const std::string& word) -> Refusal {
    if (findWall(after, wall)) return {};
    return refused("wall-in-use",
                   "The wall of the " + word + " would vanish; remove the " + word + " first.");
  };
  for (const Opening& o : option.openings)
    if (Refusal r = vanished(o.wall, wordFor(o))) return r;
  for (const Fixture& f : option.fixtures)
    if (const auto* on = std::get_if<OnWall>(&f.placement))
      if (Refusal r = vanished(on->wall, wordFor(f))) return r;
  for (const WallItem& item : option.on_walls)
    if (Refusal r = vanished(item.wall, wordFor(item))) return r;
  option = std::move(after);
  return {};
}

Refusal change(Option& option, const PutWall& c) {
  const std::optional<std::size_t> index = wallIndex(option, c.wall.id);
  if (!index) return noSuchWall();
  Wall& wall = option.room.walls[*index];
  const Point from = wall.from;
  wall = c.wall;
  wall.from = from;
  return {};
}

Refusal change(Option& option, const SetCeiling& c) {
  option.room.ceiling = c.ceiling;
  return {};
}

Refusal change(Option& option, const MoveCorner& c) {
  const std::optional<std::size_t> index = wallIndex(option, c.wall);
  if (!index) return noSuchWall();
  if (tooFar(c.to.x) || tooFar(c.to.y)) return farAway();
  const Option before = option;
  option.room.walls[*index].from = c.to;
  return keepInPlace(before, option);
}

Refusal change(Option& option, const MoveWall& c) {
  const std::optional<std::size_t> index = wallIndex(option, c.wall);
  if (!index) return noSuchWall();
  if (tooFar(c.inward)) return farAway();
  if (c.inward == Length{}) return {};
  const Option before = option;
  std::vector<Wall>& walls = option.room.walls;
  const std::size_t count = walls.size(), next = (*index + 1) % count;
  const WallLine line = wallLine(before, *index);
  const std::optional<Point> left =
      slid(line.from, wallLine(before, (*index + count - 1) % count), line, c.inward);
  const std::optional<Point> right = slid(line.to, wallLine(before, next), line, c.inward);
  const Vector straight = c.inward * line.inward;

  walls[*index].from = left.value_or(line.from + straight);
  // A neighbour in the same line stays where it is, and a return wall closes the step between them.
  if (right) {
    walls[next].from = *right;
  } else {
    walls.insert(walls.begin() + static_cast<std::ptrdiff_t>(*index) + 1,
                 returnWall(option, walls[*index], line.to + straight));
  }
  if (!left) {
    const Wall closing = returnWall(option, walls[*index], line.from);
    walls.insert(walls.begin() + static_cast<std::ptrdiff_t>(*index), closing);
  }
  return keepInPlace(before, option);
}

Refusal change(Option& option, const SplitWall& c) {
  const std::optional<std::size_t> index = wallIndex(option, c.wall);
  if (!index) return noSuchWall();
  const WallLine line = wallLine(option, *index);
  if (c.along <= Length{} || c.along >= line.length)
    return refused("corner-off-wall", "The new corner must be on the wall.");
  for (const Opening& o : option.openings)
    if (o.wall == c.wall && abs(o.along - c.along) * 2 < o.width)
      return refused("corner-in-opening", "The new corner would be in the " + wordFor(o) + ".");
  Wall right = option.room.walls[*index];
  right.id = c.new_wall;
  right.from = line.at(c.along);
  if (right.studs && right.studs->spacing > Length{}) {
    const std::int64_t step = right.studs->spacing.nm();
    const std::int64_t first = (right.studs->first - c.along).nm() % step;
    right.studs->first = Length::nanometres(first < 0 ? first + step : first);
  }
  eachOnWall(option, c.wall, [&](ElementId& wall, Length& along) {
    if (along < c.along) return;
    wall = c.new_wall;
    along -= c.along;
  });
  option.room.walls.insert(option.room.walls.begin() + static_cast<std::ptrdiff_t>(*index) + 1, right);
  return {};
}

Refusal change(Option& option, const RemoveCorner& c) {
  const std::optional<std::size_t> index = wallIndex(option, c.wall);
  if (!index) return noSuchWall();
  std::vector<Wall>& walls = option.room.walls;
  if (walls.size() <= 3) return refused("few-walls", "A room needs at least three walls.");
  const Option before = option;
  const ElementId joined = walls[(*index + walls.size() - 1) % walls.size()].id;
  std::erase_if(option.room.ceiling.slopes, [&](const CeilingSlope& slope) { return slope.wall == c.wall; });
  walls.erase(walls.begin() + static_cast<std::ptrdiff_t>(*index));
  return keepInPlace(before, option, {{c.wall, joined}});
}

}  // namespace elbowroom::edit
