#include "core/geometry/free_floor.h"

#include <limits>
#include <utility>

#include "core/geometry/free_floor_kernel.h"

namespace elbowroom {

namespace floor_kernel {

Kernel::Kernel(Outline room_ring, std::vector<Outline> obstacle_rings)
    : room(std::move(room_ring)), obstacles(std::move(obstacle_rings)) {
  std::size_t count = room.size();
  for (const Outline& o : obstacles) count += o.size();
  edges.reserve(count);
  rings.reserve(obstacles.size() + 1);
  const auto add = [&](const Outline& outline) {
    Ring ring;
    ring.first = static_cast<int>(edges.size());
    const double inf = std::numeric_limits<double>::infinity();
    ring.low = {inf, inf};
    ring.high = {-inf, -inf};
    if (!outline.empty()) {
      Vec from = toInches(outline.back());
      for (const Point& p : outline) {
        const Vec to = toInches(p);
        Edge edge;
        edge.a = from;
        edge.d = to - from;
        const double squared = dot(edge.d, edge.d);
        edge.inverse = squared > 0 ? 1.0 / squared : 0.0;
        edge.ring = static_cast<int>(rings.size());
        edges.push_back(edge);
        ring.low = {std::min(ring.low.x, to.x), std::min(ring.low.y, to.y)};
        ring.high = {std::max(ring.high.x, to.x), std::max(ring.high.y, to.y)};
        from = to;
      }
    }
    ring.last = static_cast<int>(edges.size());
    rings.push_back(ring);
  };
  add(room);
  for (const Outline& o : obstacles) add(o);
  double twice_area = 0;
  for (int i = rings[0].first; i < rings[0].last; ++i)
    twice_area += cross(edges[i].a - edges[0].a, edges[i].d);
  has_floor = twice_area != 0;
}

bool Kernel::inside(const Ring& ring, Vec p) const {
  if (p.x < ring.low.x || p.x > ring.high.x || p.y < ring.low.y || p.y > ring.high.y) return false;
  bool in = false;
  for (int i = ring.first; i < ring.last; ++i) {
    const Edge& e = edges[i];
    const bool above = e.a.y > p.y, end_above = e.a.y + e.d.y > p.y;
    if (above != end_above && ((cross(e.d, p - e.a) > 0) == end_above)) in = !in;
  }
  return in;
}

bool Kernel::isFree(Vec p) const {
  if (!has_floor || !inside(rings[0], p)) return false;
  for (std::size_t i = 1; i < rings.size(); ++i)
    if (inside(rings[i], p)) return false;
  return true;
}

Value Kernel::valueAt(Vec p) const {
  double least = std::numeric_limits<double>::infinity();
  Value value{-least, -1};
  bool free = true;
  double depth = -1;
  for (std::size_t r = 0; r < rings.size(); ++r) {
    const Ring& ring = rings[r];
    // A thing beyond the nearest so far decides nothing.
    if (r > 0 && ring.squareTo(p) > (free ? least : 0)) continue;
    double nearest = std::numeric_limits<double>::infinity();
    int edge = -1;
    for (int i = ring.first; i < ring.last; ++i) {
      const double squared = edges[i].distanceSquared(p);
      if (squared < nearest) nearest = squared, edge = i;
    }
    if (edge < 0) continue;
    if (inside(ring, p) == (r == 0)) {
      if (free && nearest < least) least = nearest, value.edge = edge;
    } else if (nearest > depth) {
      free = false;
      depth = nearest;
      value.edge = edge;
    }
  }
  if (value.edge >= 0) value.f = free ? std::sqrt(least) : -std::sqrt(depth);
  return value;
}

const Circle& Kernel::largest() const {
  std::call_once(largest_once_, [this] { largest_ = searchLargestCircle(*this); });
  return largest_;
}

const Squares& Kernel::squares() const {
  std::call_once(squares_once_, [this] { squares_ = searchSquares(*this, kSquaresFor); });
  return squares_;
}

const EdgeGrid& Kernel::grid() const {
  std::call_once(grid_once_, [this] { grid_.emplace(*this); });
  return *grid_;
}

}  // namespace floor_kernel

using floor_kernel::toInches;
using floor_kernel::toPoint;
using floor_kernel::Value;

FreeFloor::FreeFloor() : FreeFloor(Outline{}, {}) {}
FreeFloor::FreeFloor(Outline room, std::vector<Outline> obstacles)
    : kernel_(std::make_shared<const Kernel>(std::move(room), std::move(obstacles))) {}
FreeFloor::~FreeFloor() = default;
FreeFloor::FreeFloor(FreeFloor&&) noexcept = default;
FreeFloor& FreeFloor::operator=(FreeFloor&&) noexcept = default;
FreeFloor::FreeFloor(const FreeFloor&) = default;
FreeFloor& FreeFloor::operator=(const FreeFloor&) = default;

const Outline& FreeFloor::room() const { return kernel_->room; }
const std::vector<Outline>& FreeFloor::obstacles() const { return kernel_->obstacles; }

Clearance FreeFloor::clearanceAt(Point p) const {
  const floor_kernel::Vec at = toInches(p);
  const Value value = kernel_->valueAt(at);
  // Without any room there is no nearest boundary; a large negative number says that nothing fits.
  if (value.edge < 0 || !kernel_->has_floor) return {Length::fromInches(-1e6), p, -1};
  const floor_kernel::Edge& edge = kernel_->edges[value.edge];
  return {Length::fromInches(value.f), toPoint(edge.nearest(at)), edge.ring - 1};
}

Circle FreeFloor::largestCircle() const { return kernel_->largest(); }

std::optional<Circle> FreeFloor::nearestCircle(Length diameter, Point near) const {
  return floor_kernel::searchNearestCircle(*kernel_, diameter.inches() / 2, toInches(near));
}

Fit FreeFloor::circleFit(Circle c) const {
  const Clearance clearance = clearanceAt(c.center);
  const Length missing = c.radius - clearance.distance;
  Fit fit;
  fit.fits = missing <= kContact;
  if (!fit.fits) fit.misses_by = missing;
  fit.at = clearance.nearest;
  fit.obstacle = clearance.obstacle;
  return fit;
}

}  // namespace elbowroom
