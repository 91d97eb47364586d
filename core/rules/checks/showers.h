// Sizes of a shower. Its drawn outline is taken as finished inside, to the middle of the threshold.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Diameter of the largest disc within the outline. For a rectangle its smaller side.
Length largestDisc(const Outline&);

// Disc, length.
std::vector<Measurement> showerDiscs(const CheckInput&);
// Disc, with a limit of 25 in instead of the rule's for a shower of at least 1300 sq in.
std::vector<Measurement> showerDiscsOrLarge(const CheckInput&);
// Area.
std::vector<Measurement> showerAreas(const CheckInput&);

}  // namespace elbowroom::checks
