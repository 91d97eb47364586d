#include "core/geometry/cell_queue.h"

#include <limits>

namespace elbowroom::floor_kernel {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

bool lower(const Cell& a, const Cell& b) { return a.key < b.key; }

}  // namespace

CellQueue::Scratch& CellQueue::scratch() {
  thread_local Scratch s;
  return s;
}

CellQueue::CellQueue(const Kernel& kernel) : kernel_(kernel), grid_(kernel.grid()), s_(scratch()) {
  s_.heap.clear();
  s_.arena.clear();
  if (s_.squared.size() < kernel.edges.size()) s_.squared.resize(kernel.edges.size());
}

const Look& CellQueue::lookAtStart(int column, int row) {
  const EdgeGrid::Start& start = grid_.startAt(column, row);
  looked_ = {};
  looked_.look = {grid_.middleOf(column, row), grid_.half(), start.covers ? -start.distance : start.distance,
                  start.edge};
  looked_.nearest = start.distance;
  looked_.covers = start.covers;
  return looked_.look;
}

bool CellQueue::look(Vec at, double half, std::uint32_t first, std::uint32_t count) {
  double least = kInfinity, depth = -1, farthest_cover = -1;
  int nearest = -1;
  for (std::uint32_t i = 0; i < count;) {
    // The edges of one ring.
    const int r = kernel_.edges[s_.arena[first + i]].ring;
    double own = kInfinity;
    for (; i < count; ++i) {
      const std::uint32_t index = s_.arena[first + i];
      const Edge& edge = kernel_.edges[index];
      if (edge.ring != r) break;
      const double squared = edge.distanceSquared(at);
      s_.squared[i] = squared;
      own = squared < own ? squared : own;
      if (squared < least) least = squared, nearest = static_cast<int>(index);
    }
    if (kernel_.inside(kernel_.rings[static_cast<std::size_t>(r)], at) == (r == 0)) continue;
    depth = std::max(depth, own);
    farthest_cover = std::max(farthest_cover, own);
  }
  const double distance = std::sqrt(least), cut = distance + 2 * kRoot2 * half;
  // A ring none of whose edges can be nearest covers the whole square or nothing of it.
  if (farthest_cover > cut * cut) return false;
  looked_.look = {at, half, depth < 0 ? distance : -std::sqrt(depth), nearest};
  looked_.nearest = distance;
  looked_.first = first;
  looked_.count = count;
  looked_.covers = -1;
  return true;
}

void CellQueue::push(double key) {
  looked_.key = key;
  Cell cell = looked_;
  if (cell.covers < 0) {
    const double cut = cell.nearest + 2 * kRoot2 * cell.look.half, cut_squared = cut * cut;
    const std::size_t start = s_.arena.size();
    s_.arena.resize(start + cell.count);
    std::size_t end = start;
    for (std::uint32_t i = 0; i < cell.count; ++i) {
      s_.arena[end] = s_.arena[cell.first + i];
      end += s_.squared[i] <= cut_squared;
    }
    s_.arena.resize(end);
    cell.first = static_cast<std::uint32_t>(start);
    cell.count = static_cast<std::uint32_t>(end - start);
  }
  s_.heap.push_back(cell);
  std::push_heap(s_.heap.begin(), s_.heap.end(), lower);
}

bool CellQueue::empty() const { return s_.heap.empty(); }

bool CellQueue::pop(Cell& cell) {
  std::pop_heap(s_.heap.begin(), s_.heap.end(), lower);
  cell = s_.heap.back();
  s_.heap.pop_back();
  return cell.covers < 0 || list(cell);
}

bool CellQueue::list(Cell& cell) {
  cell.first = static_cast<std::uint32_t>(s_.arena.size());
  grid_.within(kernel_, cell.look.at, cell.nearest + 2 * kRoot2 * cell.look.half, s_.arena);
  cell.count = static_cast<std::uint32_t>(s_.arena.size()) - cell.first;
  int covers = 0, ring = -1;
  for (std::uint32_t i = 0; i < cell.count; ++i) {
    const int r = kernel_.edges[s_.arena[cell.first + i]].ring;
    if (r == ring) continue;
    ring = r;
    covers += kernel_.inside(kernel_.rings[static_cast<std::size_t>(r)], cell.look.at) != (r == 0);
  }
  // What covers the middle without an edge near covers all of it.
  const bool all = cell.covers > covers;
  cell.covers = -1;
  return !all;
}

Cell CellQueue::about(Vec at, double reach) {
  Cell cell;
  cell.look.at = at;
  cell.first = static_cast<std::uint32_t>(s_.arena.size());
  grid_.within(kernel_, at, reach, s_.arena);
  cell.count = static_cast<std::uint32_t>(s_.arena.size()) - cell.first;
  return cell;
}

double CellQueue::valueIn(const Cell& cell, Vec at) {
  return look(at, 0, cell.first, cell.count) ? looked_.look.f : -kInfinity;
}

Pulls CellQueue::pullsOf(const Cell& cell, Vec at) const {
  Pulls pulls;
  for (std::uint32_t i = 0; i < cell.count; ++i) {
    const auto index = s_.arena[cell.first + i];
    pulls.addFrom(kernel_.edges[index], static_cast<int>(index), at);
  }
  return pulls;
}

double CellQueue::most(const Look& look) const {
  const double by_distance = look.f + kRoot2 * look.half;
  if (look.f < 0) return by_distance;
  const Edge& edge = kernel_.edges[static_cast<std::size_t>(look.edge)];
  double squared = 0;
  for (int corner = 0; corner < 4; ++corner)
    squared = std::max(squared, edge.distanceSquared(look.at + Vec{corner & 1 ? look.half : -look.half,
                                                                   corner & 2 ? look.half : -look.half}));
  return std::min(by_distance, std::sqrt(squared));
}

}  // namespace elbowroom::floor_kernel
