// Mirrors: what is cut into them, and whose eyes they and the lights beside them are set to.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Glass between each hole of a new mirror and the nearest edge, a length (below 0: over the edge); between holes that
// are less than 6 in apart. Limit: what its thickness asks for (core/plan/mirror_order.h).
std::vector<Measurement> mirrorHolesToEdge(const CheckInput&);
std::vector<Measurement> mirrorHolesApart(const CheckInput&);
// Yes: what hangs on a new mirror has its box behind the glass. Mirrors with something on them.
std::vector<Measurement> mirrorItemsWhole(const CheckInput&);

// Lower edge of each mirror and medicine cabinet over a basin with a stated backsplash; at least as high as its top.
std::vector<Measurement> mirrorsOverBacksplash(const CheckInput&);

// Centre of each make-up mirror, and of each upright light, that is set to a named person; between half its height
// below and above that person's eyes. A length.
std::vector<Measurement> makeupMirrorEyes(const CheckInput&);
std::vector<Measurement> sideLightEyes(const CheckInput&);
// Lower edge of the lowest mirror, at most what shows the smallest child its face (worked example T19). Only with
// children who stand and a mirror.
std::vector<Measurement> mirrorsForChildren(const CheckInput&);

}  // namespace elbowroom::checks
