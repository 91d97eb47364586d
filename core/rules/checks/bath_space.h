// Clear floor along baths. Lengths.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Floor before each bath over its whole length, or the length that is clear to the limit's depth where that lacks
// less. A basin with knee space may stand in the half at the control end (2010 ADA Standards 607.2); the control
// end is where the plan puts the bath's control, spout or head. A bath with a permanent seat at its head end
// needs the floor sizes[0] past that end.
// With a sizes[1], a cabinet under a basin that can be taken out (fact cabinet_removable) is no obstacle.
std::vector<Measurement> bathClearances(const CheckInput&);
// Floor before sizes[0] of its length from the control end, with nothing in it (A117.1 Type B option B).
// Unmeasured without a control.
std::vector<Measurement> bathStretches(const CheckInput&);
// Floor before some stretch of sizes[0] of its length.
std::vector<Measurement> bathAnyStretches(const CheckInput&);
// Type B option A: the whole length, by the limit for an approach alongside or by sizes[0] head on; a basin (head
// on also a toilet) may stand at one end when sizes[1] of length stays clear.
std::vector<Measurement> bathEitherWay(const CheckInput&);

}  // namespace elbowroom::checks
