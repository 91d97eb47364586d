// Which of many things stand near a place: boxes on a grid of squares, made once and asked often. What an
// answer costs hangs on how much stands there, not on how much there is.
#pragma once

#include <vector>

#include "core/geometry/point.h"

namespace elbowroom {

class NearThings {
 public:
  explicit NearThings(std::vector<Box> boxes);
  // Indices of the boxes that come within `reach` of this one along both axes, ascending; touching counts.
  // Replaces what is in `found`.
  void within(const Box& box, Length reach, std::vector<int>& found) const;

 private:
  int columnOf(Length x) const;
  int rowOf(Length y) const;
  std::vector<Box> boxes_;
  Point low_;
  Length side_ = Length::fromInches(48);
  int columns_ = 1, rows_ = 1;
  std::vector<int> first_;  // of each square, and the end: into listed_
  std::vector<int> listed_;
};

}  // namespace elbowroom
