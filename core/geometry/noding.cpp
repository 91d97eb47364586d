#include "core/geometry/noding.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace elbowroom::floor_kernel {
namespace {

using Wide = __int128;

std::int64_t turn(GridPoint a, GridPoint b, GridPoint c) {
  return (std::int64_t{b.x} - a.x) * (std::int64_t{c.y} - a.y) -
         (std::int64_t{b.y} - a.y) * (std::int64_t{c.x} - a.x);
}

// p lies within one grid step of the segment, between its ends and not at one of them. Rounded nodes leave
// their line by less than a step, so this also catches touches that rounding has undone.
bool near(GridPoint p, const GridSegment& s) {
  if (p == s.a || p == s.b) return false;
  const std::int64_t dx = std::int64_t{s.b.x} - s.a.x, dy = std::int64_t{s.b.y} - s.a.y;
  const Wide along = Wide{dx} * (std::int64_t{p.x} - s.a.x) + Wide{dy} * (std::int64_t{p.y} - s.a.y);
  const Wide squared = Wide{dx} * dx + Wide{dy} * dy;
  if (along <= 0 || along >= squared) return false;
  const Wide off = turn(s.a, s.b, p);
  return off * off <= squared;
}

bool boxesMeet(const GridSegment& s, const GridSegment& t) {
  const auto apart = [](std::int32_t a, std::int32_t b, std::int32_t c, std::int32_t d) {
    return std::max(a, b) + 1 < std::min(c, d) || std::max(c, d) + 1 < std::min(a, b);
  };
  return !apart(s.a.x, s.b.x, t.a.x, t.b.x) && !apart(s.a.y, s.b.y, t.a.y, t.b.y);
}

bool cross(const GridSegment& s, const GridSegment& t) {
  const auto sign = [](std::int64_t v) { return v > 0 ? 1 : v < 0 ? -1 : 0; };
  return sign(turn(s.a, s.b, t.a)) * sign(turn(s.a, s.b, t.b)) < 0 &&
         sign(turn(t.a, t.b, s.a)) * sign(turn(t.a, t.b, s.b)) < 0;
}

GridPoint crossing(const GridSegment& s, const GridSegment& t) {
  const double from = static_cast<double>(turn(t.a, t.b, s.a)), to = static_cast<double>(turn(t.a, t.b, s.b));
  const double u = from / (from - to);
  return {static_cast<std::int32_t>(std::llround(s.a.x + u * (double(s.b.x) - s.a.x))),
          static_cast<std::int32_t>(std::llround(s.a.y + u * (double(s.b.y) - s.a.y)))};
}

void tidy(std::vector<GridSegment>& segments) {
  for (GridSegment& s : segments)
    if (s.b < s.a) std::swap(s.a, s.b);
  std::erase_if(segments, [](const GridSegment& s) { return s.a == s.b; });
  std::sort(segments.begin(), segments.end());
  segments.erase(std::unique(segments.begin(), segments.end()), segments.end());
}

// One pass; false when nothing had to be split.
bool splitOnce(std::vector<GridSegment>& segments) {
  std::vector<std::vector<GridPoint>> cuts(segments.size());
  bool any = false;
  const auto cut = [&](std::size_t i, GridPoint p) {
    if (p == segments[i].a || p == segments[i].b) return;
    cuts[i].push_back(p);
    any = true;
  };
  for (std::size_t i = 0; i < segments.size(); ++i) {
    const GridSegment s = segments[i];
    for (std::size_t j = i + 1; j < segments.size(); ++j) {
      const GridSegment t = segments[j];
      if (!boxesMeet(s, t)) continue;
      bool touches = false;
      for (const GridPoint p : {t.a, t.b})
        if (near(p, s)) cut(i, p), touches = true;
      for (const GridPoint p : {s.a, s.b})
        if (near(p, t)) cut(j, p), touches = true;
      if (!touches && cross(s, t)) {
        const GridPoint p = crossing(s, t);
        cut(i, p);
        cut(j, p);
      }
    }
  }
  if (!any) return false;
  std::vector<GridSegment> split;
  for (std::size_t i = 0; i < segments.size(); ++i) {
    const GridSegment s = segments[i];
    const auto along = [&](GridPoint p) {
      return Wide{std::int64_t{s.b.x} - s.a.x} * (std::int64_t{p.x} - s.a.x) +
             Wide{std::int64_t{s.b.y} - s.a.y} * (std::int64_t{p.y} - s.a.y);
    };
    std::sort(cuts[i].begin(), cuts[i].end(), [&](GridPoint p, GridPoint q) { return along(p) < along(q); });
    GridPoint from = s.a;
    for (const GridPoint p : cuts[i]) split.push_back({std::exchange(from, p), p});
    split.push_back({from, s.b});
  }
  segments = std::move(split);
  tidy(segments);
  return true;
}

}  // namespace

std::vector<GridSegment> nodedSegments(const Kernel& kernel) {
  const auto onGrid = [](Vec p) {
    return GridPoint{static_cast<std::int32_t>(std::llround(p.x * kGridPerInch)),
                     static_cast<std::int32_t>(std::llround(p.y * kGridPerInch))};
  };
  std::vector<GridSegment> segments;
  segments.reserve(kernel.edges.size());
  for (const Ring& ring : kernel.rings) {
    for (int i = ring.first; i < ring.last; ++i) {
      // Ends from the stored corners, so that neighbours share them to the last bit.
      const int next = i + 1 < ring.last ? i + 1 : ring.first;
      segments.push_back({onGrid(kernel.edges[i].a), onGrid(kernel.edges[next].a)});
    }
  }
  tidy(segments);
  for (int pass = 0; pass < 32 && splitOnce(segments); ++pass) {
  }
  return segments;
}

}  // namespace elbowroom::floor_kernel
