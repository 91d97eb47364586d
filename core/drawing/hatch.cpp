#include <algorithm>
#include <cmath>

#include "core/drawing/display_list.h"

namespace elbowroom {

std::vector<Segment> hatchLines(const HatchPrim& hatch) {
  std::vector<Segment> lines;
  if (hatch.outline.size() < 3 || hatch.spacing <= Length{}) return lines;
  const double step = hatch.spacing.millimetres() * std::sqrt(2.0);
  const auto key = [](Point p) { return p.x.millimetres() - p.y.millimetres(); };
  double low = 1e18, high = -1e18;
  for (const Point p : hatch.outline) low = std::min(low, key(p)), high = std::max(high, key(p));
  for (double k = std::ceil(low / step) * step; k < high; k += step) {
    std::vector<Point> cuts;
    for (std::size_t i = 0; i < hatch.outline.size(); ++i) {
      const Point a = hatch.outline[i], b = hatch.outline[(i + 1) % hatch.outline.size()];
      const double ka = key(a) - k, kb = key(b) - k;
      if ((ka < 0) == (kb < 0)) continue;
      const double part = ka / (ka - kb);
      cuts.push_back({a.x + (b.x - a.x).scaled(part), a.y + (b.y - a.y).scaled(part)});
    }
    std::sort(cuts.begin(), cuts.end(), [](Point a, Point b) { return a.x < b.x; });
    for (std::size_t i = 0; i + 1 < cuts.size(); i += 2) lines.push_back({cuts[i], cuts[i + 1]});
  }
  return lines;
}

}  // namespace elbowroom
