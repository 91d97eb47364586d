// Private to core/geometry: squares of the plan in a queue, best first, each with the list of edges that can
// be nearest somewhere in it. What the searches for circles are made of.
//
// The squares a search starts from come off the grid of edges and get their list when they are taken out;
// a quarter's list is sifted from that of its square.
#pragma once

#include <cstdint>
#include <vector>

#include "core/geometry/edge_grid.h"
#include "core/geometry/free_floor_kernel.h"
#include "core/geometry/tangent_step.h"

namespace elbowroom::floor_kernel {

inline constexpr double kRoot2 = 1.4142135623730951;

// A square that has been looked at.
struct Look {
  Vec at;
  double half = 0;  // of the side
  double f = 0;     // at its middle; below 0 on no free floor, no less than what is true
  int edge = -1;    // the nearest to the middle
};

struct Cell {
  double key = 0;
  Look look;
  double nearest = 0;                  // how far `look.edge` is
  std::uint32_t first = 0, count = 0;  // edges in the arena
  int covers = -1;                     // not listed yet: how many outlines cover its middle
  int mark = -1;                       // of the search; its quarters have the same
};

class CellQueue {
 public:
  explicit CellQueue(const Kernel& kernel);

  // The squares every search starts from: four across the room's box, more where there is much.
  template <class Visit>
  void coverRoom(Visit visit) {
    for (int row = 0; row < grid_.rows(); ++row)
      for (int column = 0; column < grid_.columns(); ++column) visit(lookAtStart(column, row));
  }
  // The quarters of a square that may hold free floor.
  template <class Visit>
  void quarter(const Cell& cell, Visit visit) {
    const double q = cell.look.half / 2;
    for (const Vec d : {Vec{-q, -q}, Vec{q, -q}, Vec{-q, q}, Vec{q, q}})
      if (look(cell.look.at + d, q, cell.first, cell.count)) looked_.mark = cell.mark, visit(looked_.look);
  }
  // Queues the square just looked at; the greatest key comes first.
  void push(double key);

  bool empty() const;
  // False when no free floor is left in it.
  bool pop(Cell& cell);

  // A list of what is near a place, to climb from there; no square.
  Cell about(Vec at, double reach);
  // f at a place of the square; where that is not free, anything below 0.
  double valueIn(const Cell& cell, Vec at);
  // What keeps off a place of the square, or its middle, each corner once.
  Pulls pullsOf(const Cell& cell) const { return pullsOf(cell, cell.look.at); }
  Pulls pullsOf(const Cell& cell, Vec at) const;
  // No less than f at any place of the square.
  double most(const Look& look) const;

 private:
  struct Scratch {
    std::vector<std::uint32_t> arena;
    std::vector<double> squared;
    std::vector<Cell> heap;
  };
  static Scratch& scratch();
  const Look& lookAtStart(int column, int row);
  bool look(Vec at, double half, std::uint32_t first, std::uint32_t count);
  bool list(Cell& cell);

  const Kernel& kernel_;
  const EdgeGrid& grid_;
  Scratch& s_;
  Cell looked_;
};

}  // namespace elbowroom::floor_kernel
