#include "core/plan/ceiling.h"

#include <algorithm>
#include <cmath>

namespace elbowroom {
namespace {

// One slope as a function of the distance from its wall's line.
struct Plane {
  Point on_wall;
  Direction inward;
  Length low, high, run;
  Length distanceTo(Point p) const { return dot(p - on_wall, inward); }
  Length heightAt(Length away) const {
    if (away <= Length{}) return low;
    return away >= run ? high : low + (high - low).scaled(away / run);
  }
  Length heightAt(Point p) const { return heightAt(distanceTo(p)); }
};

std::vector<Plane> planesOf(const Layout& layout) {
  const Ceiling& ceiling = layout.option.room.ceiling;
  std::vector<Plane> planes;
  for (const CeilingSlope& slope : ceiling.slopes) {
    const auto wall = std::find_if(layout.walls.begin(), layout.walls.end(),
                                   [&](const WallFrame& w) { return w.id == slope.wall; });
    if (wall == layout.walls.end() || slope.run <= Length{}) continue;
    planes.push_back({wall->from, wall->inward, slope.low, *ceiling.height, slope.run});
  }
  return planes;
}

Length lowestOf(const std::vector<Plane>& planes, Length level, Point p) {
  for (const Plane& plane : planes) level = std::min(level, plane.heightAt(p));
  return level;
}

// The part of a ring on the far side of a line. A ring that is not convex may come out with edges that run
// forth and back along the line; they enclose nothing.
Outline beyond(const Outline& ring, const Plane& plane, Length away) {
  Outline kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point p = ring[i], q = ring[(i + 1) % ring.size()];
    const Length dp = plane.distanceTo(p) - away, dq = plane.distanceTo(q) - away;
    if (dp >= Length{}) kept.push_back(p);
    if ((dp >= Length{}) == (dq >= Length{})) continue;
    const double share = dp / (dp - dq);
    kept.push_back(p + Vector{(q.x - p.x).scaled(share), (q.y - p.y).scaled(share)});
  }
  return kept;
}

}  // namespace

std::optional<Length> ceilingHeightAt(const Layout& layout, Point p) {
  const auto& height = layout.option.room.ceiling.height;
  if (!height) return std::nullopt;
  return lowestOf(planesOf(layout), *height, p);
}

std::optional<LowCeiling> lowestCeilingOver(const Layout& layout, const Outline& area) {
  const auto& height = layout.option.room.ceiling.height;
  if (!height) return std::nullopt;
  const std::vector<Plane> planes = planesOf(layout);
  LowCeiling low{*height, area.front()};
  for (const Point& p : area) {
    const Length here = lowestOf(planes, *height, p);
    if (here < low.height) low = {here, p};
  }
  return low;
}

std::optional<Outline> partWithCeiling(const Layout& layout, const Outline& area, Length at_least) {
  const auto& height = layout.option.room.ceiling.height;
  if (!height) return std::nullopt;
  if (*height < at_least) return Outline{};
  Outline left = area;
  for (const Plane& plane : planesOf(layout)) {
    if (plane.low >= at_least) continue;
    left = beyond(left, plane, plane.run.scaled((at_least - plane.low) / (plane.high - plane.low)));
  }
  return left;
}

std::optional<Area> areaWithCeiling(const Layout& layout, const Outline& area, Length at_least) {
  const auto part = partWithCeiling(layout, area, at_least);
  return part ? std::optional(part->empty() ? Area{} : areaOf(*part)) : std::nullopt;
}

std::optional<std::vector<CeilingPoint>> ceilingAlong(const Layout& layout, Segment s) {
  const auto& height = layout.option.room.ceiling.height;
  if (!height) return std::nullopt;
  const std::vector<Plane> planes = planesOf(layout);
  const Length whole = distance(s.a, s.b);
  const Direction way = Direction::between(s.a, s.b);
  std::vector<Length> bends{Length{}, whole};
  const auto bendAt = [&](Length t) {
    if (t > Length{} && t < whole) bends.push_back(t);
  };
  for (const Plane& plane : planes) {
    const Length from = plane.distanceTo(s.a), to = plane.distanceTo(s.b);
    if (from == to) continue;
    for (const Length away : {Length{}, plane.run}) bendAt(whole.scaled((away - from) / (to - from)));
  }
  std::sort(bends.begin(), bends.end());
  // Between those bends every plane is straight, so two of them cross at most once.
  const std::size_t straight = bends.size();
  for (std::size_t k = 1; k < straight; ++k) {
    const Length t0 = bends[k - 1], t1 = bends[k];
    const Point p0 = s.a + t0 * way, p1 = s.a + t1 * way;
    for (std::size_t i = 0; i < planes.size(); ++i)
      for (std::size_t j = i + 1; j < planes.size(); ++j) {
        const Length d0 = planes[i].heightAt(p0) - planes[j].heightAt(p0);
        const Length d1 = planes[i].heightAt(p1) - planes[j].heightAt(p1);
        if ((d0 < Length{}) == (d1 < Length{}) || d0 == d1) continue;
        bendAt(t0 + (t1 - t0).scaled(d0 / (d0 - d1)));
      }
  }
  std::sort(bends.begin(), bends.end());
  bends.erase(std::unique(bends.begin(), bends.end()), bends.end());
  std::vector<CeilingPoint> line;
  for (const Length t : bends) {
    const CeilingPoint here{t, lowestOf(planes, *height, t == whole ? s.b : s.a + t * way)};
    // A plane may bend where another one is lower: no bend to be seen.
    if (line.size() >= 2) {
      const CeilingPoint& a = line[line.size() - 2];
      const CeilingPoint& b = line.back();
      const Length straight_on =
          a.height + (here.height - a.height).scaled((b.along - a.along) / (here.along - a.along));
      if (abs(straight_on - b.height) <= Length::nanometres(2)) line.pop_back();
    }
    line.push_back(here);
  }
  return line;
}

}  // namespace elbowroom
