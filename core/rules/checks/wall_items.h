// Heights and places of things on walls. One measurement per thing; what is to be removed is left out. Lengths
// above the finished floor unless a line says otherwise.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Centrelines of towel bars, hooks, shower heads; of the controls of showers.
std::vector<Measurement> towelBarHeights(const CheckInput&);
// From each towel bar down to what it hangs over: the floor, a fixture against that wall, a thing on the wall
// that stands out of it.
std::vector<Measurement> towelFalls(const CheckInput&);
std::vector<Measurement> hookHeights(const CheckInput&);
std::vector<Measurement> showerHeadHeights(const CheckInput&);
std::vector<Measurement> showerControlHeights(const CheckInput&);
// Centrelines of upright wall lights, and of those wider than high.
std::vector<Measurement> sideLightHeights(const CheckInput&);
std::vector<Measurement> lightOverMirrorHeights(const CheckInput&);
// Lower edges of niches.
std::vector<Measurement> nicheHeights(const CheckInput&);
// Lengths of hoses; unknown when not stated.
std::vector<Measurement> hoses(const CheckInput&);
// Tops of mirrors against the tallest adult's head, lower edges against the shortest adult's waist. Limit: that
// person's; only with adults who stand.
std::vector<Measurement> mirrorTops(const CheckInput&);
std::vector<Measurement> mirrorBottoms(const CheckInput&);
// Lower edges of mirrors; only with a wheelchair user.
std::vector<Measurement> mirrorBottomsForChair(const CheckInput&);
// Depth of niches and recessed cabinets; limit: the depth of the wall's studs.
std::vector<Measurement> recessDepths(const CheckInput&);
// Yes: it stands in one stud bay. A header stated for a cut stud answers it too.
std::vector<Measurement> recessBays(const CheckInput&);
// Yes: it is not in an exterior wall.
std::vector<Measurement> recessesInside(const CheckInput&);
// Yes: there is backing behind each grab bar (a folding one: blocking); behind each towel bar, paper holder, hook and
// shelf.
std::vector<Measurement> grabBarsBacked(const CheckInput&);
std::vector<Measurement> holdersBacked(const CheckInput&);
// Yes: heads, controls, sprays and spouts in an exterior wall are protected from frost; only such.
std::vector<Measurement> waterFrost(const CheckInput&);
// Yes: it does not reach past an end of its wall. Each thing that does; on each wall one that does not.
std::vector<Measurement> itemsWithinWalls(const CheckInput&);
// Yes: no other thing on the wall where it is (what a mirror is cut for may be there); no opening there.
std::vector<Measurement> itemsApart(const CheckInput&);
std::vector<Measurement> itemsOffOpenings(const CheckInput&);

}  // namespace elbowroom::checks
