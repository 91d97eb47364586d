// Fans of a room, on the ceiling or through a wall, and the air they move.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

struct FanThere {
  ElementId id;
  const Facts* facts;  // of the plan that the layout holds
  Place place;
};
// Fans on the ceiling, then exhausts in walls that are not to be removed.
std::vector<FanThere> fansOf(const Layout&);
// Floor and height of the whole room; nullopt without walls, without a stated ceiling, or under a slope.
struct AirSpace {
  Area floor;
  Length height;
};
std::optional<AirSpace> airSpaceOf(const Layout&);
// What all fans move together, cfm; nullopt: no fan, or one does not state it.
std::optional<Amount> flowOf(const Layout&);

// What all fans move together, an amount in cfm, against what core/rules/checks/air.h says the room needs: by
// its floor (rooms of at most 100 sq ft), by its fixtures (larger ones that have any), by its air (only under
// a ceiling higher than sizes[0], where more air is needed than by the floor). Not without a fan.
std::vector<Measurement> roomAirByFloor(const CheckInput&);
std::vector<Measurement> roomAirByFixtures(const CheckInput&);
std::vector<Measurement> roomAirByVolume(const CheckInput&);
// How long each fan runs on, an amount in minutes, and what moisture is left then; not one that runs always.
std::vector<Measurement> fanRunOns(const CheckInput&);
// How loud each fan is, an amount in sones. Limit: the rule's, 1 for one that runs all the time.
std::vector<Measurement> fanLoudness(const CheckInput&);
// Yes: a room that is stated to be a toilet compartment has a fan or a window that opens.
std::vector<Measurement> compartmentAir(const CheckInput&);

}  // namespace elbowroom::checks
