// Figures that a plan states about a thing as such: heights, seats, thresholds, hot water. Where it states none,
// nothing is measured and the finding names the fact.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Lengths: top of each basin, its rim or counter; seat of each toilet; seat in each shower that has one.
std::vector<Measurement> basinHeights(const CheckInput&);
std::vector<Measurement> toiletSeatHeights(const CheckInput&);
std::vector<Measurement> showerSeatHeights(const CheckInput&);
// From that seat to the entry, and from its rear edge to the wall behind it; lengths.
std::vector<Measurement> showerSeatsFromEntry(const CheckInput&);
std::vector<Measurement> showerSeatsFromWall(const CheckInput&);
// Steepest fall of the floor outside showers (room's fact floor_fall), an amount in per cent.
std::vector<Measurement> floorFalls(const CheckInput&);
// Length: wall to the front of each basin.
std::vector<Measurement> basinProjections(const CheckInput&);
// Lengths under each basin: clear height, depth at knee level, depth at the floor (the toes; as counted when the
// plan does not state it).
std::vector<Measurement> kneeHeights(const CheckInput&);
std::vector<Measurement> kneeDepths(const CheckInput&);
std::vector<Measurement> toeDepths(const CheckInput&);
// Yes: the pipes under a basin with knee space are covered.
std::vector<Measurement> pipesCovered(const CheckInput&);
// Yes: the flush is on the side away from the nearer wall.
std::vector<Measurement> flushOnOpenSide(const CheckInput&);
// Length: curb of each shower.
std::vector<Measurement> showerCurbs(const CheckInput&);
// Amount in degrees Fahrenheit: what the hot water of each shower is limited to.
std::vector<Measurement> showerWaterLimits(const CheckInput&);
// Lengths: threshold of each door, height of its handle, its own height.
std::vector<Measurement> doorThresholds(const CheckInput&);
std::vector<Measurement> doorHandles(const CheckInput&);
std::vector<Measurement> doorHeights(const CheckInput&);
// Yes: no leaf swings into the room; every door unlocks from outside.
std::vector<Measurement> doorsSwingOut(const CheckInput&);
std::vector<Measurement> doorsUnlock(const CheckInput&);
// Nearest smoke alarm of each door of a room with a bath or shower, a length.
std::vector<Measurement> smokeAlarmsFromDoors(const CheckInput&);
// Yes: hot water is on the left; whatever has a tap.
std::vector<Measurement> hotOnTheLeft(const CheckInput&);

}  // namespace elbowroom::checks
