// Private to core/geometry: the edges of a kernel on a grid of squares over its room, so that what lies near
// a place is found without looking at every edge.
//
// Edges that lie wholly beyond the grid are left out: a place in the room has the room's own edge nearer.
#pragma once

#include <cstdint>
#include <vector>

#include "core/geometry/vec.h"

namespace elbowroom::floor_kernel {

struct Kernel;

class EdgeGrid {
 public:
  explicit EdgeGrid(const Kernel& kernel);

  int columns() const { return columns_; }
  int rows() const { return rows_; }
  double half() const { return side_ / 2; }  // of a square's side
  kernel::Vec middleOf(int column, int row) const;

  // What every search of circles starts from: the nearest edge to the middle of a square, and how many
  // outlines cover the middle (the room covers what lies outside it).
  struct Start {
    double distance = 0;
    int edge = -1;
    int covers = 1;
  };
  const Start& startAt(int column, int row) const { return starts_[squareAt(column, row)]; }
  // Adds the edges within `reach` of a place to the list, each once, in order.
  void within(const Kernel& kernel, kernel::Vec at, double reach, std::vector<std::uint32_t>& found) const;

 private:
  // Squares whose middle lies between two corners.
  struct Part {
    int left, right, bottom, top;  // both included; empty when left > right or bottom > top
  };
  Part middlesIn(kernel::Vec low, kernel::Vec high) const;
  std::size_t squareAt(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
           static_cast<std::size_t>(column);
  }
  void setStarts(const Kernel& kernel);
  void setNearest(const Kernel& kernel, int column, int row);
  int columnOf(double x) const;
  int rowOf(double y) const;
  template <class Use>
  void squaresOf(kernel::Vec a, kernel::Vec d, Use use) const;

  kernel::Vec start_;
  double side_ = 1;
  int columns_ = 1, rows_ = 1;
  std::vector<Start> starts_;
  std::vector<std::uint32_t> first_, listed_;  // of each square, and the end: into listed_
};

}  // namespace elbowroom::floor_kernel
