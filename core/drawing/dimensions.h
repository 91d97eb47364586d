// Measures of dimension strings, in millimetres of paper.
#pragma once

#include "core/drawing/draw_plan.h"

namespace elbowroom {

inline constexpr double kDimensionTextMm = 3.0;  // em; capitals of 2.2 mm
inline constexpr double kTextRiseMm = 0.9;       // baseline above the line
inline constexpr double kTickMm = 2.6;
inline constexpr double kExtensionPastMm = 1.6;
inline constexpr double kRowMm = 6.2;       // from one string to the next
inline constexpr double kFirstRowMm = 7.2;  // from the wall to the first string

void drawTick(DisplayList&, Point at, Direction along, const DrawStyle&);

}  // namespace elbowroom
