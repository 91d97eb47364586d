// Sizes of a shower. Its drawn outline is taken as finished inside, to the middle of the threshold.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

constexpr double kLargeSquareInches = 1300;  // IRC P2708.1 exception 2: a narrower shower will do from there on

// Diameter of the largest disc within the outline. For a rectangle its smaller side.
Length largestDisc(const Outline&);

// Disc, length. sizes, if any: shorter and longer side overall of a receptor that takes the place of a bath
// (facts instead_of_bath, receptor_short, receptor_long); where the disc, or the area, is too small and it is
// so large, its own sides are the limit instead (UPC 408.7 exception 2).
std::vector<Measurement> showerDiscs(const CheckInput&);
// Disc, with a limit of 25 in instead of the rule's for a shower of at least 1300 sq in.
std::vector<Measurement> showerDiscsOrLarge(const CheckInput&);
// Area; sizes as of the disc.
std::vector<Measurement> showerAreas(const CheckInput&);
// Shorter side and area overall: of the receptor as stated, else of the inside where that is enough already;
// otherwise asked for.
std::vector<Measurement> showerOutsideSides(const CheckInput&);
std::vector<Measurement> showerOutsideAreas(const CheckInput&);

}  // namespace elbowroom::checks
