// Helpers for the files of this folder: a pen that fills a display list in a local frame, and shapes as
// chords.
#pragma once

#include <array>

#include "core/drawing/display_list.h"

namespace elbowroom {

// Vertical extent of the drawing font as fractions of the em: the box that text is kept clear with.
inline constexpr double kAscent = 0.78, kDescent = 0.24, kCapHeight = 0.729;
Length baselineDrop(AnchorV v, Length height);  // from the anchor down to the baseline
std::array<Point, 4> textCorners(const TextPrim&);

std::vector<Point> arcChords(const ArcPrim&, int steps = 24);
std::vector<Point> ellipseChords(const EllipsePrim&, int steps = 48);

// The sheet angle of a text along a direction such that it reads from below or from the right.
Angle readableTurn(Direction along);

// Right-handed or not: x along `u`, y along `v`, both from `origin`. Numbers are inches.
struct LocalFrame {
  Point origin;
  Direction u, v;
  Point at(double x, double y) const {
    return origin + Length::fromInches(x) * u + Length::fromInches(y) * v;
  }
};

class Pen {
 public:
  Pen(LocalFrame frame, ElementId source) : frame_(frame), source_(std::move(source)) {}

  void line(Role role, double x0, double y0, double x1, double y1);
  void poly(Role role, const std::vector<std::array<double, 2>>& points, bool closed, bool filled = false);
  void rectangle(Role role, double x0, double y0, double x1, double y1, double corner_radius = 0,
                 bool filled = false);
  void ellipse(Role role, double x, double y, double rx, double ry, bool filled = false);
  void circle(Role role, double x, double y, double r, bool filled = false) {
    ellipse(role, x, y, r, r, filled);
  }
  // Part of an ellipse from angle a to b (degrees in the local frame), as chords.
  void arc(Role role, double x, double y, double rx, double ry, double a, double b);
  void add(Role role, Prim prim) { list_.push_back({std::move(prim), role, source_}); }

  const LocalFrame& frame() const { return frame_; }
  DisplayList take() { return std::move(list_); }

 private:
  LocalFrame frame_;
  ElementId source_;
  DisplayList list_;
};

// Two waves in a circle: pipes run in this wall.
DisplayList drawPlumbingMark(Point middle, Length radius);

inline void append(DisplayList& to, DisplayList more) {
  to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

}  // namespace elbowroom
