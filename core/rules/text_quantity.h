// Figures as words with the rounding a verdict needs. Also used by the text reports, so that both say the same.
#pragma once

#include "core/rules/text.h"

namespace elbowroom::words {

enum class Toward { nearest, lower, higher };
// The figure rounded to what its text can show: 1/16 in or 1 mm, whole square inches or thousandths of a
// square metre, whole degrees.
Quantity rounded(const Quantity&, Unit, Toward);
std::string flooredText(Length measured, Unit);       // as findings print it: never flattering
Quantity difference(const Quantity& larger, const Quantity& smaller);  // precondition: same kind

}  // namespace elbowroom::words
