// Private to core/geometry: raw edges on an integer grid, split so that they meet at common ends only.
#pragma once

#include <cstdint>
#include <vector>

#include "core/geometry/free_floor_kernel.h"

namespace elbowroom::floor_kernel {

inline constexpr double kGridPerInch = 65536;

struct GridPoint {
  std::int32_t x = 0, y = 0;
  auto operator<=>(const GridPoint&) const = default;
};
struct GridSegment {
  GridPoint a, b;
  auto operator<=>(const GridSegment&) const = default;
};

inline Vec toInches(GridPoint p) { return {p.x / kGridPerInch, p.y / kGridPerInch}; }

// Each segment once, none of zero length. Precondition: all coordinates within +-100 m.
std::vector<GridSegment> nodedSegments(const Kernel& kernel);

}  // namespace elbowroom::floor_kernel
