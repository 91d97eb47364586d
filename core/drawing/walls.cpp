#include <algorithm>
#include <limits>

#include "core/drawing/figures.h"

namespace elbowroom {
namespace {

constexpr double kFar = 1e6;

// The part of a convex outline where nx*s + ny*t <= limit, in the wall's frame.
using Ring = std::vector<std::array<double, 2>>;
Ring clip(const Ring& ring, double nx, double ny, double limit) {
  Ring kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const auto &a = ring[i], &b = ring[(i + 1) % ring.size()];
    const double da = nx * a[0] + ny * a[1] - limit, db = nx * b[0] + ny * b[1] - limit;
    if (da <= 0) kept.push_back(a);
    if ((da < 0 && db > 0) || (da > 0 && db < 0)) {
      const double k = da / (da - db);
      kept.push_back({a[0] + k * (b[0] - a[0]), a[1] + k * (b[1] - a[1])});
    }
  }
  return kept;
}

Ring inFrame(const WallFrame& wall, const Outline& outline) {
  const Direction out = wall.inward.opposite();
  Ring ring;
  for (const Point p : outline) {
    ring.push_back({dot(p - wall.from, wall.along).inches(), dot(p - wall.from, out).inches()});
  }
  return ring;
}

// Middle of the longest stretch of wall without an opening or pocket.
double quietPlace(const std::vector<WallRange>& cuts, double length) {
  std::vector<std::pair<double, double>> holes;
  for (const WallRange& cut : cuts) holes.emplace_back(cut.s0, cut.s1);
  std::sort(holes.begin(), holes.end());
  double best = -1, place = length / 2, at = 0;
  holes.emplace_back(length, length);
  for (const auto& [s0, s1] : holes) {
    if (s0 - at > best) best = s0 - at, place = (at + s0) / 2;
    at = std::max(at, s1);
  }
  return place;
}

}  // namespace

DisplayList drawPlumbingMark(Point middle, Length radius) {
  Pen pen({middle, {1, 0}, {0, 1}}, {});
  const double r = radius.inches();
  pen.circle(Role::opening, 0, 0, r, true);
  // Two waves of water.
  for (const double y : {-0.28 * r, 0.28 * r}) {
    pen.arc(Role::opening, -0.3 * r, y, 0.3 * r, 0.26 * r, 180, 0);
    pen.arc(Role::opening, 0.3 * r, y, 0.3 * r, 0.26 * r, 180, 360);
  }
  return pen.take();
}

LocalFrame frameOf(const WallFrame& wall) { return {wall.from, wall.along, wall.inward.opposite()}; }

WallRange rangeOn(const WallFrame& wall, const Outline& outline) {
  WallRange range{kFar, -kFar, kFar, -kFar};
  for (const auto& p : inFrame(wall, outline)) {
    range = {std::min(range.s0, p[0]), std::max(range.s1, p[0]), std::min(range.t0, p[1]),
             std::max(range.t1, p[1])};
  }
  return outline.empty() ? WallRange{} : range;
}

DisplayList drawWalls(const Layout& layout, const DrawStyle& style) {
  DisplayList list, marks;
  for (std::size_t w = 0; w < layout.walls.size(); ++w) {
    const WallFrame& wall = layout.walls[w];
    Pen pen(frameOf(wall), wall.id);
    const Ring body = inFrame(wall, wall.body);
    const double thickness = wall.thickness.inches();

    std::vector<WallRange> holes, cavities;
    std::vector<double> breaks{-kFar, kFar};
    for (const PlacedOpening& opening : layout.openings) {
      if (opening.wall != static_cast<int>(w)) continue;
      const double left = dot(opening.left - wall.from, wall.along).inches();
      const double right = dot(opening.right - wall.from, wall.along).inches();
      holes.push_back({std::min(left, right), std::max(left, right), 0, thickness});
      if (!opening.cavity.empty()) cavities.push_back(rangeOn(wall, opening.cavity));
    }
    for (const auto* set : {&holes, &cavities}) {
      for (const WallRange& r : *set) breaks.push_back(r.s0), breaks.push_back(r.s1);
    }
    std::sort(breaks.begin(), breaks.end());
    const auto covers = [](const std::vector<WallRange>& set, double s) {
      return std::find_if(set.begin(), set.end(), [s](const WallRange& r) { return r.s0 < s && s < r.s1; });
    };
    const auto fill = [&](Ring ring, double s0, double s1, double t0, double t1) {
      ring = clip(clip(ring, -1, 0, -s0), 1, 0, s1);
      ring = clip(clip(ring, 0, -1, -t0), 0, 1, t1);
      if (ring.size() >= 3) pen.poly(Role::wallCut, ring, true, true);
    };
    for (std::size_t i = 0; i + 1 < breaks.size(); ++i) {
      const double s0 = breaks[i], s1 = breaks[i + 1], middle = (s0 + s1) / 2;
      if (s1 - s0 < 1e-6 || covers(holes, middle) != holes.end()) continue;
      const auto cavity = covers(cavities, middle);
      if (cavity == cavities.end()) {
        fill(body, s0, s1, -kFar, kFar);
      } else {
        fill(body, s0, s1, -kFar, cavity->t0);
        fill(body, s0, s1, cavity->t1, kFar);
      }
    }
    if (wall.exterior && body.size() >= 4) {
      const double gap = 1.0 * style.mm.inches();
      const WallRange all = rangeOn(wall, wall.body);
      double at = all.s0;
      std::sort(holes.begin(), holes.end(),
                [](const WallRange& a, const WallRange& b) { return a.s0 < b.s0; });
      for (const WallRange& hole : holes) {
        pen.line(Role::wallCutExterior, at, all.t1 + gap, hole.s0, all.t1 + gap);
        at = hole.s1;
      }
      pen.line(Role::wallCutExterior, at, all.t1 + gap, all.s1, all.t1 + gap);
    }
    if (wall.plumbing) {
      std::vector<WallRange> cuts = holes;
      cuts.insert(cuts.end(), cavities.begin(), cavities.end());
      const double r = std::min(thickness * 0.42, 2.0 * style.mm.inches());
      append(marks, drawPlumbingMark(pen.frame().at(quietPlace(cuts, wall.length.inches()), thickness / 2),
                                     Length::fromInches(r)));
    }
    append(list, pen.take());
  }
  append(list, std::move(marks));
  return list;
}

}  // namespace elbowroom
