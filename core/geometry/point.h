// Points and directions on the plan: x to the right, y up (away from the reader), seen from above.
#pragma once

#include <cmath>
#include <vector>

#include "core/base/length.h"

namespace elbowroom {

struct Vector {
  Length dx, dy;
  bool operator==(const Vector&) const = default;
  friend Vector operator+(Vector a, Vector b) { return {a.dx + b.dx, a.dy + b.dy}; }
  friend Vector operator-(Vector a, Vector b) { return {a.dx - b.dx, a.dy - b.dy}; }
  Vector operator-() const { return {-dx, -dy}; }
};

struct Point {
  Length x, y;
  bool operator==(const Point&) const = default;
  friend Point operator+(Point p, Vector v) { return {p.x + v.dx, p.y + v.dy}; }
  friend Point operator-(Point p, Vector v) { return {p.x - v.dx, p.y - v.dy}; }
  friend Vector operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
};

// A unit direction (dimensionless; x*x + y*y == 1 up to rounding).
struct Direction {
  double x = 1, y = 0;
  bool operator==(const Direction&) const = default;
  static Direction fromAngle(Angle a) { return {std::cos(a.radians()), std::sin(a.radians())}; }
  // Direction from a to b; {1,0} when the points coincide.
  static Direction between(Point a, Point b) {
    const double dx = (b.x - a.x).inches(), dy = (b.y - a.y).inches(), n = std::hypot(dx, dy);
    return n > 0 ? Direction{dx / n, dy / n} : Direction{};
  }
  Angle angle() const { return Angle::fromRadians(std::atan2(y, x)); }
  Direction opposite() const { return {-x, -y}; }
  Direction left() const { return {-y, x}; }   // turned 90 degrees counter-clockwise
  Direction right() const { return {y, -x}; }  // turned 90 degrees clockwise
  Direction turned(Angle a) const {
    const double c = std::cos(a.radians()), s = std::sin(a.radians());
    return {x * c - y * s, x * s + y * c};
  }
  friend Vector operator*(Length l, Direction d) { return {l.scaled(d.x), l.scaled(d.y)}; }
};

inline Length dot(Vector v, Direction d) {
  return Length::nanometres(std::llround(static_cast<double>(v.dx.nm()) * d.x + static_cast<double>(v.dy.nm()) * d.y));
}
inline Length length(Vector v) {
  return Length::nanometres(std::llround(std::hypot(static_cast<double>(v.dx.nm()), static_cast<double>(v.dy.nm()))));
}
inline Length distance(Point a, Point b) { return length(b - a); }
inline Point midpoint(Point a, Point b) { return {(a.x + b.x) / 2, (a.y + b.y) / 2}; }

struct Segment {
  Point a, b;
  bool operator==(const Segment&) const = default;
};

struct Circle {
  Point center;
  Length radius;
  bool operator==(const Circle&) const = default;
};

// A closed ring without a repeated last point; either orientation; at least three points to enclose anything.
using Outline = std::vector<Point>;

struct Box {
  Point low, high;  // low.x <= high.x, low.y <= high.y
  bool operator==(const Box&) const = default;
};
inline Box grown(const Box& b, Length by) {
  return {{b.low.x - by, b.low.y - by}, {b.high.x + by, b.high.y + by}};
}
// Do they share an area?
inline bool overlap(const Box& a, const Box& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}
// The same; an edge or a corner is enough.
inline bool touch(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}

}  // namespace elbowroom
