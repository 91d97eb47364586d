#include <algorithm>
#include <cmath>
#include <optional>

#include "core/plan/layout_parts.h"
#include "core/plan/wall_line.h"

namespace elbowroom::layout_parts {
namespace {

// Beyond this many wall thicknesses a sharp corner is cut off, as a carpenter would, instead of mitred.
constexpr double kLongestMitre = 4;

// Where p + s * along and q + t * along2 cross; nullopt for (nearly) parallel lines.
std::optional<Point> crossing(Point p, Direction a, Point q, Direction b) {
  const double det = a.x * b.y - a.y * b.x;
  if (std::abs(det) < 1e-9) return std::nullopt;
  const double dx = static_cast<double>((q.x - p.x).nm()), dy = static_cast<double>((q.y - p.y).nm());
  const double s = (dx * b.y - dy * b.x) / det;
  if (std::abs(s) > 1e13) return std::nullopt;
  return p + Length::nanometres(std::llround(s)) * a;
}

// Outer points of the corner between two walls, seen from each: one shared point for a mitre.
struct OuterCorner {
  Outline of_before, of_after;  // from the corner's outside towards the wall's own outer face
};

OuterCorner outerCorner(const WallFrame& before, const WallFrame& after) {
  const Point corner = after.from;
  const Point square_before = corner - before.thickness * before.inward;
  const Point square_after = corner - after.thickness * after.inward;
  const std::optional<Point> mitre = crossing(square_before, before.along, square_after, after.along);
  const Length longest = std::max(before.thickness, after.thickness).scaled(kLongestMitre);
  if (mitre && distance(corner, *mitre) <= longest) return {{*mitre}, {*mitre}};
  // In line with each other: each wall ends square.
  if (before.along.x * after.along.x + before.along.y * after.along.y > 0)
    return {{square_before}, {square_after}};
  const Point cut = midpoint(square_before, square_after);
  return {{cut, square_before}, {cut, square_after}};
}

}  // namespace

std::vector<WallFrame> wallFrames(const Option& option) {
  const std::vector<Wall>& walls = option.room.walls;
  std::vector<WallFrame> frames(walls.size());
  for (std::size_t i = 0; i < walls.size(); ++i) {
    const WallLine line = wallLine(option, i);
    WallFrame& frame = frames[i];
    frame.id = walls[i].id;
    frame.from = line.from;
    frame.to = line.to;
    frame.length = line.length;
    frame.along = line.along;
    frame.inward = line.inward;
    frame.thickness = walls[i].thickness;
    frame.exterior = walls[i].exterior;
    frame.plumbing = walls[i].plumbing;
  }
  std::vector<OuterCorner> corners;  // at the left end of each wall
  for (std::size_t i = 0; i < frames.size(); ++i)
    corners.push_back(outerCorner(frames[(i + frames.size() - 1) % frames.size()], frames[i]));
  for (std::size_t i = 0; i < frames.size(); ++i) {
    WallFrame& frame = frames[i];
    Outline left = corners[i].of_after, right = corners[(i + 1) % frames.size()].of_before;
    frame.body = {frame.from};
    if (dot(right.back() - left.back(), frame.along) > Length{}) {
      frame.body.insert(frame.body.end(), left.begin(), left.end());
      frame.body.insert(frame.body.end(), right.rbegin(), right.rend());
    } else if (const auto tip = crossing(frame.from, Direction::between(frame.from, left.back()), frame.to,
                                         Direction::between(frame.to, right.back()))) {
      // A pier narrower than its walls are thick: the two mitres meet before the outer face.
      frame.body.push_back(*tip);
    }
    frame.body.push_back(frame.to);
  }
  return frames;
}

}  // namespace elbowroom::layout_parts
