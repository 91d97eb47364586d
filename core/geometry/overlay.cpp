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

}  // namespace

Area freeArea(const Outline& room, const std::vector<Outline>& obstacles) {
  return total(overlay(ClipperLib::ctDifference, room, obstacles));
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
