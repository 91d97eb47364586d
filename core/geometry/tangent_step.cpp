#include "core/geometry/tangent_step.h"

#include <cmath>
#include <limits>

namespace elbowroom::floor_kernel {

// The optimum of a quadratic programme in the plane rests on at most two of its constraints.
std::optional<Vec> nearestStep(const Pulls& pulls, double radius, Vec wanted) {
  const auto lacks = [&](int i) { return radius - pulls.item[i].distance; };
  const auto holds = [&](Vec step) {
    for (int i = 0; i < pulls.count; ++i)
      if (dot(pulls.item[i].away, step) < lacks(i) - 1e-9) return false;
    return true;
  };
  if (holds(wanted)) return wanted;
  std::optional<Vec> best;
  double least = std::numeric_limits<double>::infinity();
  const auto offer = [&](Vec step) {
    const Vec miss = step - wanted;
    if (dot(miss, miss) < least && holds(step)) least = dot(miss, miss), best = step;
  };
  for (int i = 0; i < pulls.count; ++i) {
    const Vec a = pulls.item[i].away;
    offer(wanted + (lacks(i) - dot(a, wanted)) * a);
    for (int j = i + 1; j < pulls.count; ++j) {
      const Vec b = pulls.item[j].away;
      const double det = cross(a, b);
      if (std::fabs(det) < 1e-9) continue;
      const double p = lacks(i), q = lacks(j);
      offer({(p * b.y - q * a.y) / det, (q * a.x - p * b.x) / det});
    }
  }
  return best;
}

}  // namespace elbowroom::floor_kernel
