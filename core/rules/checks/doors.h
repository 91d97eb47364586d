// What doors leave, hit and need.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Clear opening of every door, a length.
std::vector<Measurement> doorClearOpenings(const CheckInput&);
// How far each leaf that swings into the room opens before it meets a fixture, an angle; reach of the leaf 1
// in more than its width for the stand-off of the hinges. Limit: the leaf's full swing.
std::vector<Measurement> doorSwings(const CheckInput&);
// Yes: two doors' leaves share no floor. One per pair of doors that swing into the room, glass doors of showers
// among them.
std::vector<Measurement> doorPairs(const CheckInput&);
// Yes: the leaf stays clear of a person who stands at a basin. One per door and basin.
std::vector<Measurement> doorsAndPeople(const CheckInput&);
// Yes: the leaf stays clear of the knees of one who sits on a toilet, the tallest person named, else a tall man.
// One per door and toilet.
std::vector<Measurement> doorsAndSitters(const CheckInput&);
// Floor straight ahead of a vanity, cabinet or linen closet up to what a leaf sweeps (the first), up to what
// stands opposite (the second), a length; limit: how far its drawers and doors come out (fact pull_out).
std::vector<Measurement> doorsAndPulls(const CheckInput&);
std::vector<Measurement> pullTravels(const CheckInput&);
// What an opening leaf leaves of the floor straight ahead of a toilet or basin, a length; only where it comes
// within 60 in at all.
std::vector<Measurement> doorsBeforeFixtures(const CheckInput&);
// Free wall for a pocket (twice the leaf and 1 in) and for a leaf that slides along the wall, a length.
std::vector<Measurement> pocketWalls(const CheckInput&);
std::vector<Measurement> slideWalls(const CheckInput&);
// Yes: no pipes in the wall of the pocket.
std::vector<Measurement> pocketPipes(const CheckInput&);

}  // namespace elbowroom::checks
