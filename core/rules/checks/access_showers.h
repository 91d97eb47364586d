// Accessible showers: inside sizes by kind, ways in, floor before them. Lengths. Inside is the drawn outline, as
// in showers.h, taken at the middle of opposite sides.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// The side of a transfer shower that is farther from the limit (2010 ADA Standards 608.2.1: exactly 36 in).
std::vector<Measurement> transferSides(const CheckInput&);
// Roll-in kind: depth from the entry, with sizes[0] for the length instead where that lacks more.
std::vector<Measurement> rollInSizes(const CheckInput&);
// Alternate kind: its shorter side; its longer side.
std::vector<Measurement> alternateDepths(const CheckInput&);
std::vector<Measurement> alternateLengths(const CheckInput&);
// Width of the way in; limit sizes[0] instead for the roll-in kind.
std::vector<Measurement> showerEntries(const CheckInput&);
// Transfer kind: floor before the front, as deep as the limit, over sizes[0] from the control wall; where the
// plan does not say which wall that is, from the better one.
std::vector<Measurement> transferClearances(const CheckInput&);
// Roll-in kind: floor before the whole front. A basin with knee space may stand at the end that has neither
// control nor seat.
std::vector<Measurement> rollInClearances(const CheckInput&);
// The smaller side of every shower; only in a room without a bath.
std::vector<Measurement> showerShortSides(const CheckInput&);
std::vector<Measurement> soleShowerSides(const CheckInput&);
// Every shower: floor before the front over sizes[0] from the control wall (the better one when not stated).
std::vector<Measurement> showerFloorsBefore(const CheckInput&);

}  // namespace elbowroom::checks
