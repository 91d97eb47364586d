// How near a thing is in a straight line that no wall or screen cuts, and which part of a wall it reaches.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/measure.h"

namespace elbowroom {

// The nearest place of the targets to which one goes straight from the point without leaving the room and
// without crossing an opaque segment; nullopt: none. Not sampled: the nearest visible place of a segment is
// its nearest place, one of its ends, where the edge of a shadow falls on it or where an opaque segment cuts
// it. To run along a wall, to touch the free end of an opaque segment or to cut a corner by kContact is no
// crossing. Preconditions: the point is in the room or on its boundary; no target runs through a wall.
std::optional<Gap> gapInSight(Point from, const std::vector<Segment>& targets, const Outline& room,
                              const std::vector<Segment>& opaque);

// The stretches of a line, measured from its first end, that are no farther than `reach` from a solid
// outline; in order, apart from each other.
struct Stretch {
  Length from, to;
  bool operator==(const Stretch&) const = default;
};
std::vector<Stretch> stretchesWithin(Segment line, const Outline& thing, Length reach);

}  // namespace elbowroom
