// Private to core/geometry: a shape made of turned boxes that moves and turns as one, and what limits it.
//
// All in inches and radians. A piece shrunk by v on every side meets an edge exactly when the edge reaches
// deeper than v into it, so all tests ask whether an edge meets a piece whose sides were moved.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

#include "core/geometry/free_floor_kernel.h"
#include "core/geometry/sector.h"

namespace elbowroom::floor_kernel {

// Edges belong to one layer; a piece keeps clear of the layers in its mask. Layer 0 is the floor itself,
// layer 1 what blocks only some of the pieces.
using LayerMask = std::uint32_t;

struct Piece {
  Vec low, high;          // about the pattern's reference point, in the piece's own frame
  bool diagonal;          // that frame is turned by 45 degrees against the pattern's
  LayerMask layers;
  double farthest;  // from the reference point to its farthest corner

  Piece(Vec lower, Vec upper, bool turned = false, LayerMask on = 3)
      : low(lower),
        high(upper),
        diagonal(turned),
        layers(on),
        farthest(norm({std::max(std::fabs(low.x), std::fabs(high.x)),
                       std::max(std::fabs(low.y), std::fabs(high.y))})) {}
};

struct RigidPattern {
  std::vector<Piece> pieces;
  double inscribed = 0;  // a disc about the reference point inside the pieces of layer 0
  double reach = 0;      // a disc about it that holds all pieces
  double period = 0;     // it looks the same after this turn
};

struct Pose {
  Vec at;  // the reference point
  double turn = 0;
};

struct Blocker : floor_kernel::Span {
  Blocker(const Span& span, LayerMask on)
      : Span(span), layer(on), per_length(std::sqrt(span.inverse)) {}
  LayerMask layer;
  double per_length;  // 1 / |d|, 0 for a point
};

// What the pattern must keep clear of.
struct Surroundings {
  const Kernel* floor = nullptr;        // layer 0
  const Kernel* strict = nullptr;       // layer 1: its obstacles that differ from the floor's; may be absent
  std::vector<kernel::Sector> sectors;  // swings, for all pieces
  std::vector<Blocker> blockers;        // the edges of all of them, arcs as chords from within

  explicit Surroundings(const Kernel& floor);
  void addStrict(const Kernel& strict);
  void addSector(const Leaf& leaf);
  bool isFree(Vec p) const;
  // False when all points within `radius` lie inside a swing or a thing of layer 1.
  bool mayBeFree(Vec p, double radius) const;
};

// Unit axes of the two frames at a turn.
struct Axes {
  Vec u, v, du, dv;
  explicit Axes(double turn);
  Vec first(bool diagonal) const { return diagonal ? du : u; }
  Vec second(bool diagonal) const { return diagonal ? dv : v; }
};

// One limit at a pose: how far off, and how that changes with a small motion.
struct Contact {
  double gap;    // negative: overlap
  Vec away;      // unit; moving this way opens the gap
  double lever;  // change of the gap with the turn
};

// The separating axis of an edge and a piece, as the one or two contacts on it; returns how many.
int contactsOf(const Blocker& edge, const Piece& piece, const Axes& axes, Vec at, Contact out[2]);
// Deepest overlap of the pattern with anything, at most 0 when it only touches; sectors count when `exact`.
// Blockers farther than the pattern's reach are skipped.
double overlapAt(const Surroundings& around, const RigidPattern& pattern, const Pose& pose);
// Does the pattern lie clear here, so much overlap forgiven?
bool liesClear(const Surroundings& around, const RigidPattern& pattern, const Pose& pose,
               double forgiven);

}  // namespace elbowroom::floor_kernel
