// Private to core/geometry: a turned rectangle against raw edges.
//
// The depth of a point inside the rectangle is its distance to the nearest side; an edge reaches as deep as
// its deepest point. Depth above v is the same as meeting the rectangle shrunk by v on every side, which is
// the exact Minkowski test of the edge with the rectangle.
#pragma once

#include "core/geometry/free_floor_kernel.h"

namespace elbowroom::floor_kernel {

// Turned so that the rectangle's long side lies along +x.
struct Frame {
  double c = 1, s = 0;
  static Frame turnedBy(Angle turn) {
    const std::int64_t quarter = 90'000'000, degrees = turn.normalised().microdegrees();
    if (degrees % quarter == 0) {
      constexpr double kCos[] = {1, 0, -1, 0};
      const int i = static_cast<int>(degrees / quarter);
      return {kCos[i], kCos[(i + 3) % 4]};
    }
    return {std::cos(turn.radians()), std::sin(turn.radians())};
  }
  Vec into(Vec p) const { return {p.x * c + p.y * s, -p.x * s + p.y * c}; }
  Vec outOf(Vec p) const { return {p.x * c - p.y * s, p.x * s + p.y * c}; }
};

// An edge in the rectangle's frame.
struct Chord {
  Vec a, d;
};

struct BoxHalf {
  double x, y;
};

// Does the chord meet the open box of these half sizes around `at`? Separating axes x, y and the chord's
// normal.
inline bool meetsBox(const Chord& chord, Vec at, BoxHalf half) {
  if (half.x <= 0 || half.y <= 0) return false;
  const Vec a = chord.a - at, b = a + chord.d;
  if ((a.x >= half.x && b.x >= half.x) || (a.x <= -half.x && b.x <= -half.x)) return false;
  if ((a.y >= half.y && b.y >= half.y) || (a.y <= -half.y && b.y <= -half.y)) return false;
  return std::fabs(cross(chord.d, a)) < half.x * std::fabs(chord.d.y) + half.y * std::fabs(chord.d.x);
}

struct Reach {
  double depth;  // negative: how far outside, measured across the nearer sides
  Vec at;        // in the frame, where the chord reaches deepest
};
Reach deepest(const Chord& chord, Vec at, BoxHalf half);

}  // namespace elbowroom::floor_kernel
