#include <polyclipping/clipper.hpp>

#include "core/geometry/measure.h"

namespace elbowroom {
namespace {

using ClipperLib::Path;
using ClipperLib::Paths;

constexpr double kPerInch = 65536;

// Counter-clockwise, so that overlapping obstacles of opposite orientation do not cancel each other.
Path onGrid(const Outline& ring) {
  Path path;
  path.reserve(ring.size());
  for (const Point& p : ring) {
    path.emplace_back(std::llround(p.x.inches() * kPerInch), std::llround(p.y.inches() * kPerInch));
  }
  if (!ClipperLib::Orientation(path)) ClipperLib::ReversePath(path);
  return path;
}

Paths overlay(ClipperLib::ClipType kind, const Outline& subject, const std::vector<Outline>& clips) {
  ClipperLib::Clipper clipper;
  // AddPath refuses rings without area; they cover nothing.
  if (!clipper.AddPath(onGrid(subject), ClipperLib::ptSubject, true)) return {};
  for (const Outline& ring : clips) clipper.AddPath(onGrid(ring), ClipperLib::ptClip, true);
  Paths result;
  clipper.Execute(kind, result, ClipperLib::pftNonZero, ClipperLib::pftNonZero);
  return result;
}

Area total(const Paths& paths) {
  double sum = 0;
  for (const Path& path : paths) sum += ClipperLib::Area(path);
  return Area::fromSquareInches(std::max(0.0, sum / (kPerInch * kPerInch)));
}

// Groups of rings of which none's box overlaps a box of another group: what they cover adds up.
std::vector<std::vector<Outline>> overlapping(const std::vector<Outline>& rings) {
  struct Group {
    std::vector<Outline> rings;
    std::vector<Box> boxes;
  };
  std::vector<Group> groups;
  for (const Outline& ring : rings) {
    if (ring.size() < 3) continue;
    const Box box = boundsOf(ring);
    Group own{{ring}, {box}};
    std::erase_if(groups, [&](Group& group) {
      const bool meets = std::any_of(group.boxes.begin(), group.boxes.end(),
                                     [&](const Box& other) { return overlap(box, other); });
      if (!meets) return false;
      own.rings.insert(own.rings.end(), group.rings.begin(), group.rings.end());
      own.boxes.insert(own.boxes.end(), group.boxes.begin(), group.boxes.end());
      return true;
    });
    groups.push_back(std::move(own));
  }
  std::vector<std::vector<Outline>> found;
  for (Group& group : groups) found.push_back(std::move(group.rings));
  return found;
}

// Sure only when true: no wall comes into the box round the ring.
bool liesWithin(const Outline& ring, const Outline& room) {
  const Box box = boundsOf(ring);
  for (std::size_t i = 0, j = room.size() - 1; i < room.size(); j = i++)
    if (overlap(box, boundsOf(Outline{room[j], room[i]}))) return false;
  return contains(room, midpoint(box.low, box.high));
}

}  // namespace

Area freeArea(const Outline& room, const std::vector<Outline>& obstacles) {
  if (room.size() < 3) return {};
  Area free = areaOf(room);
  for (const std::vector<Outline>& together : overlapping(obstacles)) {
    free = free - (together.size() == 1 && liesWithin(together.front(), room)
                       ? areaOf(together.front())
                       : total(overlay(ClipperLib::ctIntersection, room, together)));
  }
  return std::max(Area{}, free);
}

std::vector<Outline> freeRegions(const Outline& room, const std::vector<Outline>& obstacles) {
  std::vector<Outline> out;
  for (const Path& path : overlay(ClipperLib::ctDifference, room, obstacles)) {
    // Slivers of rounding between things that stand flush are not floor anybody can see.
    if (std::abs(ClipperLib::Area(path)) < 1e-3 * kPerInch * kPerInch) continue;
    Outline& ring = out.emplace_back();
    for (const auto& p : path) {
      ring.push_back({Length::fromInches(static_cast<double>(p.X) / kPerInch),
                      Length::fromInches(static_cast<double>(p.Y) / kPerInch)});
    }
  }
  return out;
}

Area commonArea(const Outline& a, const Outline& b) {
  return total(overlay(ClipperLib::ctIntersection, a, {b}));
}

}  // namespace elbowroom
