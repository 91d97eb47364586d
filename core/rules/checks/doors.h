// What doors leave, hit and need.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Clear opening of every door, a length.
std::vector<Measurement> doorClearOpenings(const CheckInput&);
// How far each leaf that swings into the room opens before it meets a fixture, an angle; reach of the leaf 1
// in more than its width for the stand-off of the hinges. Limit: the leaf's full swing.
std::vector<Measurement> doorSwings(const CheckInput&);
// Yes: two doors' leaves share no floor. One per pair of doors that swing into the room.
std::vector<Measurement> doorPairs(const CheckInput&);
// Yes: the leaf stays clear of a person who stands at a basin. One per door and basin.
std::vector<Measurement> doorsAndPeople(const CheckInput&);
// What an opening leaf leaves of the floor straight ahead of a toilet or basin, a length; only where it comes
// within 60 in at all.
std::vector<Measurement> doorsBeforeFixtures(const CheckInput&);
// Free wall for a pocket (twice the leaf and 1 in) and for a leaf that slides along the wall, a length.
std::vector<Measurement> pocketWalls(const CheckInput&);
std::vector<Measurement> slideWalls(const CheckInput&);
// Yes: no pipes in the wall of the pocket.
std::vector<Measurement> pocketPipes(const CheckInput&);

}  // namespace elbowroom::checks
