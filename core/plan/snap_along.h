// Private to core/plan: where along a wall a thing of some width may stand and wants to stand.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/snap.h"

namespace elbowroom::snap_parts {

struct Span {
  Length low, high;  // along the wall
  ElementId id;
};
struct Centre {
  Length along;
  SnapReason reason;
  ElementId id;
  Point from;  // where the guide begins
};

struct AlongProblem {
  Length wall_length, half;     // half the width of the thing
  std::vector<Span> blocked;    // it cannot stand there
  std::vector<Span> neighbours; // it likes to stand beside these
  std::vector<Centre> centres;  // it likes to be centred here
};
struct AlongAnswer {
  Length along;
  SnapReason reason = SnapReason::none;
  std::optional<ElementId> other;
  std::optional<Point> guide_from;
};

// The nearest place to `wanted` where the thing may stand; nullopt when there is none.
std::optional<Length> nearestAllowed(const AlongProblem&, Length wanted);
// The place it takes: flush within reach first, then centred within reach, else the nearest step.
std::optional<AlongAnswer> settle(const AlongProblem&, Length wanted, const SnapRules&);

Length roundTo(Length value, Length step);

}  // namespace elbowroom::snap_parts
