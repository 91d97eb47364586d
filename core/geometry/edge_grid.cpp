#include "core/geometry/edge_grid.h"

#include <limits>

#include "core/geometry/free_floor_kernel.h"

namespace elbowroom::floor_kernel {
namespace {

constexpr double kEdgesOfSquare = 8;  // about so many on average, where there are many
constexpr std::size_t kFew = 400;     // so few edges are looked through faster than the grid

}  // namespace

EdgeGrid::EdgeGrid(const Kernel& kernel) {
  const Ring& room = kernel.rings[0];
  const Vec size = room.high - room.low;
  const double edges = static_cast<double>(kernel.edges.size());
  side_ = std::min(std::max(size.x, size.y) / 4, std::sqrt(size.x * size.y * kEdgesOfSquare / edges));
  const auto count = [&](double along) { return std::max(1.0, std::ceil(along / side_ - 1e-9)); };
  // A narrow room has fewer squares across, so they may be larger than its shape alone allows.
  while (count(size.x) * count(size.y) > edges / 4 + 32) side_ *= 1.25;
  columns_ = static_cast<int>(count(size.x));
  rows_ = static_cast<int>(count(size.y));
  start_ = 0.5 * (room.low + room.high) - Vec{side_ * columns_ / 2, side_ * rows_ / 2};

  first_.assign(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_) + 1, 0);
  for (const Edge& e : kernel.edges) squaresOf(e.a, e.d, [&](std::size_t s) { ++first_[s + 1]; });
  for (std::size_t s = 1; s < first_.size(); ++s) first_[s] += first_[s - 1];
  listed_.resize(first_.back());
  // Filled from behind: afterwards each start stands where it must.
  for (std::size_t s = first_.size() - 1; s > 0; --s) first_[s] = first_[s - 1];
  for (std::uint32_t i = 0; i < kernel.edges.size(); ++i)
    squaresOf(kernel.edges[i].a, kernel.edges[i].d, [&](std::size_t s) { listed_[first_[s + 1]++] = i; });
  setStarts(kernel);
}

void EdgeGrid::setStarts(const Kernel& kernel) {
  starts_.resize(first_.size() - 1);
  for (int row = 0; row < rows_; ++row)
    for (int column = 0; column < columns_; ++column) setNearest(kernel, column, row);
  for (std::size_t r = 0; r < kernel.rings.size(); ++r) {
    const Ring& ring = kernel.rings[r];
    if (ring.first == ring.last) continue;
    const Part part = middlesIn(ring.low, ring.high);
    for (int row = part.bottom; row <= part.top; ++row)
      for (int column = part.left; column <= part.right; ++column)
        if (kernel.inside(ring, middleOf(column, row)))
          starts_[squareAt(column, row)].covers += r == 0 ? -1 : 1;
  }
}

int EdgeGrid::columnOf(double x) const {
  return static_cast<int>(std::clamp((x - start_.x) / side_, 0.0, columns_ - 1.0));
}
int EdgeGrid::rowOf(double y) const {
  return static_cast<int>(std::clamp((y - start_.y) / side_, 0.0, rows_ - 1.0));
}

Vec EdgeGrid::middleOf(int column, int row) const {
  return start_ + Vec{side_ * (column + 0.5), side_ * (row + 0.5)};
}

// A hair more than it crosses, so that rounding leaves none out.
template <class Use>
void EdgeGrid::squaresOf(Vec a, Vec d, Use use) const {
  constexpr double kHair = 1e-6;
  const Vec b = a + d;
  const double low_x = std::min(a.x, b.x) - kHair, high_x = std::max(a.x, b.x) + kHair;
  const double low_y = std::min(a.y, b.y) - kHair, high_y = std::max(a.y, b.y) + kHair;
  if (high_x < start_.x || low_x > start_.x + side_ * columns_ || high_y < start_.y ||
      low_y > start_.y + side_ * rows_)
    return;
  const int left = columnOf(low_x), right = columnOf(high_x), bottom = rowOf(low_y), top = rowOf(high_y);
  for (int row = bottom; row <= top; ++row) {
    int from = left, to = right;
    if (left < right && bottom < top) {
      // The part of the edge in this row.
      const double y0 = start_.y + side_ * row - kHair, y1 = start_.y + side_ * (row + 1) + kHair;
      const double t0 = std::clamp((y0 - a.y) / d.y, 0.0, 1.0), t1 = std::clamp((y1 - a.y) / d.y, 0.0, 1.0);
      const double x0 = a.x + t0 * d.x, x1 = a.x + t1 * d.x;
      from = std::max(from, columnOf(std::min(x0, x1) - kHair));
      to = std::min(to, columnOf(std::max(x0, x1) + kHair));
    }
    for (int column = from; column <= to; ++column) use(squareAt(column, row));
  }
}

void EdgeGrid::setNearest(const Kernel& kernel, int column, int row) {
  const Vec at = middleOf(column, row);
  double least = std::numeric_limits<double>::infinity();
  int edge = -1;
  const auto look = [&](int c, int r) {
    if (c < 0 || c >= columns_ || r < 0 || r >= rows_) return;
    const std::size_t s = squareAt(c, r);
    for (std::uint32_t k = first_[s]; k < first_[s + 1]; ++k) {
      const double squared = kernel.edges[listed_[k]].distanceSquared(at);
      if (squared < least) least = squared, edge = static_cast<int>(listed_[k]);
    }
  };
  look(column, row);
  // The squares around, ring by ring; all nearer than half a side beyond the last are seen then.
  const int last = std::max(columns_, rows_);
  for (int k = 1; k <= last; ++k) {
    const double seen = side_ * (k - 0.5);
    if (least <= seen * seen) break;
    for (int c = column - k; c <= column + k; ++c) look(c, row - k), look(c, row + k);
    for (int r = row - k + 1; r <= row + k - 1; ++r) look(column - k, r), look(column + k, r);
  }
  Start& start = starts_[squareAt(column, row)];
  start.distance = std::sqrt(least);
  start.edge = edge;
}

void EdgeGrid::within(const Kernel& kernel, Vec at, double reach, std::vector<std::uint32_t>& found) const {
  const double squared = reach * reach;
  if (kernel.edges.size() <= kFew) {
    for (const Ring& ring : kernel.rings) {
      if (ring.squareTo(at) > squared) continue;
      for (int i = ring.first; i < ring.last; ++i)
        if (kernel.edges[static_cast<std::size_t>(i)].distanceSquared(at) <= squared)
          found.push_back(static_cast<std::uint32_t>(i));
    }
    return;
  }
  const auto start = static_cast<std::ptrdiff_t>(found.size());
  const int left = columnOf(at.x - reach), right = columnOf(at.x + reach);
  const int bottom = rowOf(at.y - reach), top = rowOf(at.y + reach);
  for (int r = bottom; r <= top; ++r)
    for (int c = left; c <= right; ++c) {
      const std::size_t s = squareAt(c, r);
      for (std::uint32_t k = first_[s]; k < first_[s + 1]; ++k)
        if (kernel.edges[listed_[k]].distanceSquared(at) <= squared) found.push_back(listed_[k]);
    }
  std::sort(found.begin() + start, found.end());
  found.erase(std::unique(found.begin() + start, found.end()), found.end());
}

EdgeGrid::Part EdgeGrid::middlesIn(Vec low, Vec high) const {
  const auto firstAt = [&](double from, double start) {
    return static_cast<int>(std::max(0.0, std::ceil((from - start) / side_ - 0.5)));
  };
  const auto lastAt = [&](double to, double start, int count) {
    return static_cast<int>(std::min(count - 1.0, std::floor((to - start) / side_ - 0.5)));
  };
  return {firstAt(low.x, start_.x), lastAt(high.x, start_.x, columns_), firstAt(low.y, start_.y),
          lastAt(high.y, start_.y, rows_)};
}

}  // namespace elbowroom::floor_kernel
