// What a mirror or a light has to be at for somebody's eyes.
#pragma once

#include <optional>

#include "core/people/body.h"

namespace elbowroom {

// Edges of a mirror that show a person, whatever the distance (optics, worked examples T19 and T20): the top
// at least halfway from eye to crown, the bottom at most halfway from eye to the lowest point wanted.
Length mirrorTopFor(const Person&);          // head: (eye + stature) / 2
Length mirrorFaceBottomFor(const Person&);   // face: (eye + chin) / 2, chin 4 in below the eye (T19's child)
Length mirrorWaistBottomFor(const Person&);  // to the waist, taken at the elbow: (eye + elbow) / 2, derived

// The heights of a centreline at which a thing this high has everybody's eyes within it; none: nullopt.
std::optional<HeightBand> eyesWithin(const std::vector<const Person*>& people, Length height);

}  // namespace elbowroom
