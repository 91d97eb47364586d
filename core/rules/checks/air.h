// Arithmetic of bathroom air that needs no plan. Flows in cfm, times in minutes. Figures: Home Ventilating
// Institute, as checkthishouse.com and ahahome.org print them.
#pragma once

#include "core/base/amount.h"
#include "core/base/length.h"

namespace elbowroom::checks {

// Up to 100 sq ft: 1 cfm for each square foot, at least 50.
bool isSmallForAir(Area floor);
Amount airForFloor(Area floor);
// Above: 50 each for a toilet, a shower and a bath, 100 for a bath with a pump.
struct AirUsers {
  int toilets = 0, showers = 0, baths = 0, pumped_baths = 0;
};
Amount airForFixtures(const AirUsers&);
// Eight changes of the room's air in an hour.
Amount airForVolume(Area floor, Length height);

// How often an hour the flow changes the air. Precondition: floor and height are greater than 0.
double airChanges(Amount flow, Area floor, Length height);
// Share of the moisture that is left after so many minutes, the air taken as well mixed: e^(-changes t / 60).
double moistureLeft(double changes_per_hour, Amount minutes);
// Speed of the air in the gap under a door, in feet a minute. Precondition: gap and leaf are greater than 0.
double speedUnderDoor(Amount flow, Length gap, Length leaf);

}  // namespace elbowroom::checks
