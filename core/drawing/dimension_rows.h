// Which dimensions a plan needs: rows of stations per direction, before anything is drawn.
#pragma once

#include <vector>

#include "core/drawing/draw_plan.h"

namespace elbowroom {

// A chain of dimensions on one line. Stations are inches along the group's axis, ascending.
struct DimensionRow {
  std::vector<double> stations;
  std::vector<double> starts;    // where each extension line leaves the wall, inches outwards
  std::vector<bool> centreline;  // drawn as a centreline instead of an extension line
  int rank = 0;                  // 0 openings, 1 fixtures, 2 wall overall, 3 room overall
};

// Rows on one side of the plan: all walls that look the same way.
struct DimensionGroup {
  Direction along, outward;        // outward = along turned 90 degrees counter-clockwise
  bool square = false;             // parallel to the sheet
  double base = 0;                 // beyond everything drawn on this side, inches outwards
  std::vector<DimensionRow> rows;  // by rank
  Point at(double s, double t) const {
    return Point{} + Length::fromInches(s) * along + Length::fromInches(t) * outward;
  }
};

std::vector<DimensionGroup> dimensionGroups(const Layout&);
// Their strings, stacked outwards without overlap: extension lines first, so that texts lie over them.
DisplayList drawDimensionGroups(const std::vector<DimensionGroup>&, const DrawStyle&);

}  // namespace elbowroom
