// Shapes that tell findings apart without colour: short = filled diamond, close = open triangle, unknown (in lists only)
// = square with a question mark.
#pragma once

#include "core/drawing/clutter.h"
#include "core/drawing/draw_plan.h"

namespace elbowroom {

inline constexpr double kMarkMm = 3.6;
inline constexpr double kMarkTextMm = 2.9;

// Findings that are drawn and numbered, from 1 in the order of the report, alike on plan, strip and sheets and in Advice:
// what is short or close. What the plan does not say has no place to point at.
bool isMarked(const Finding&);
Role markRole(Outcome);
// Quiet: only its outline, for a finding that the person has accepted.
DisplayList drawMark(Outcome, Point middle, const DrawStyle&, const ElementId& source, bool quiet = false);
// As drawFindings, keeping marks off what is drawn already.
DisplayList drawFindingsAmid(const Report&, Clutter drawn, const DrawStyle&);

}  // namespace elbowroom
