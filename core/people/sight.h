// What a mirror or a light has to be at for somebody's eyes.
#pragma once

#include <optional>

#include "core/people/body.h"

namespace elbowroom {

// Edges of a mirror that show a person, whatever the distance (optics, worked examples T19 and T20): the top
// at least halfway from eye to crown, the bottom at most halfway from eye to the lowest point wanted.
// These three are for people who stand.
Length mirrorTopFor(const Person&);          // head: (eye + stature) / 2
Length mirrorFaceBottomFor(const Person&);   // face: (eye + chin) / 2, chin 4 in below the eye (T19's child)
Length mirrorWaistBottomFor(const Person&);  // to the waist, taken at the elbow: (eye + elbow) / 2, derived

// What a mirror has to reach to show everybody: the top the tallest one's head, the lower edge the waist of those who
// stand and the face of children and of people in wheelchairs.
struct MirrorEdges {
  Length top_at_least, bottom_at_most;
};
std::optional<MirrorEdges> mirrorEdgesFor(const std::vector<const Person*>& people);  // nullopt: nobody
// The heights of the lower edge at which a mirror this high shows everybody so; none: nullopt.
std::optional<HeightBand> mirrorBottomsFor(const std::vector<const Person*>& people, Length height);
// The heights of a centreline at which a thing this high has everybody's eyes within it; none: nullopt.
std::optional<HeightBand> eyesWithin(const std::vector<const Person*>& people, Length height);

}  // namespace elbowroom
