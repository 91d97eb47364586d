// What a glazier needs to cut a mirror: its size, and each hole from its left and lower edge, computed from what
// hangs on it. Pure; the boxes are where the plan has them, so they have to be in the wall before this is ordered.
#pragma once

#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

// As seen from the room. A round hole of this diameter (4 in for a light's box: common practice, a 4 in round box
// being the usual size from memory); for a receptacle, a switch or a cabinet set into the wall diameter is 0 and
// the cut-out is width x height about the same centre: the cover less 1/4 in all round, so that the cover hides
// it (usual, no source), or the cabinet's own size.
struct MirrorHole {
  ElementId item;
  Length from_left, from_bottom;  // of its centre, from the mirror's left and lower edge
  Length diameter;
  Length width, height;  // of the hole's extent, also of a round one
  bool operator==(const MirrorHole&) const = default;
};

enum class MirrorTroubleKind {
  nearEdge,    // less than `needed` of glass between the hole and an edge
  nearCorner,  // likewise to the tip of a corner
  nearHole,    // likewise to the hole of `other`
  holeOverEdge,  // the hole runs past the mirror's edge
  itemOverEdge,  // the thing hangs half on the mirror, half on the wall; its box is not behind the mirror
  holeTooLarge,  // the hole is wider than `needed`, a third of the mirror's smaller side
};
struct MirrorTrouble {
  MirrorTroubleKind kind;
  ElementId item, other;  // other: empty unless nearHole
  Length measured, needed;
  bool operator==(const MirrorTrouble&) const = default;
};

struct MirrorOrder {
  ElementId mirror, wall;
  Length width, height, thickness;
  std::vector<MirrorHole> holes;  // from the left, then from below
  std::vector<MirrorTrouble> troubles;
};

// One order per new mirror that is cut to measure (kind "mirror"; a lit or make-up mirror is bought whole), in the
// option's order.
std::vector<MirrorOrder> mirrorOrders(const Layout&);

// Glass between a hole and what is next to it, by a fabricator's table for toughened glass (wagnercompanies.com,
// drilling tempered glass, read): to an edge the greater of 1/4 in and twice the thickness, to another hole the
// greater of 3/8 in and twice the thickness, to the tip of a corner 6 1/2 times the thickness; a hole at most a
// third of the smaller side. No text found gives less for mirrors.
Length glassToEdge(Length thickness);
Length glassBetweenHoles(Length thickness);
Length glassToCorner(Length thickness);

// Glass between the rims of two holes (below 0: they run into each other) and from a hole's rim to the mirror's
// nearest edge (below 0: over the edge).
Length rimToRim(const MirrorHole&, const MirrorHole&);
Length rimToEdge(const MirrorHole&, const MirrorOrder&);

}  // namespace elbowroom
