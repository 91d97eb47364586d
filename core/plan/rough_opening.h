// What the framer leaves open for a door, and what a leaf that slides along the wall takes: published rules
// of the trade, over the sizes of the leaf.
#pragma once

#include <optional>

#include "core/plan/plan.h"

namespace elbowroom {

inline constexpr Length kHingedWider = Length::nanometres(50'800'000),
                        kHingedTaller = Length::nanometres(63'500'000);
inline constexpr Length kPocketWider = Length::nanometres(25'400'000),
                        kPocketTaller = Length::nanometres(114'300'000);

struct RoughOpening {
  Length width, height;
};
// Hinged: the leaf and 2 in, 2 1/2 in higher (wackerhardware.com on door jambs). Pocket: twice the leaf and 1
// in, 4 1/2 in higher (engineerfix.com on framing a pocket door). nullopt: no published rule, the maker says.
std::optional<RoughOpening> roughOpeningOf(const Opening&);

// A leaf that slides along the wall over an opening and covers it by `overlap` on both sides (engineerfix.com
// on barn doors).
struct SliderSizes {
  Length leaf;
  Length track;        // twice the leaf
  Length least_track;  // as far as the leaf really travels: twice the opening and three overlaps
  Length wall;         // free wall beside the opening
};
inline constexpr Length kUsualOverlap = Length::nanometres(50'800'000);  // 2 in
SliderSizes sliderFor(Length opening, Length overlap);

}  // namespace elbowroom
