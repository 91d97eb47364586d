// Who does not fit where: floor and heights held against the sizes of the people the plan names
// (core/people/body.h). One answer per fixture, for the person who needs most of it; Measurement::limit is that
// person's, the detail names everybody who does not fit. Lengths.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// How far the knees of one who sits there stand before the toilet; 8 in of tank where it is not stated.
Length kneesAhead(const PlacedFixture& toilet, const Person&);

// Ahead of each toilet against the knees of those who sit there; the 95 % man where nobody is named, because
// the floor has to serve guests too.
std::vector<Measurement> kneesAtToilets(const CheckInput&);
// Free width at each toilet, from the thing at its left to the thing at its right, against elbows; a child's are
// not known and never wider. The 95 % man where nobody is named.
std::vector<Measurement> elbowsAtToilets(const CheckInput&);
// Ahead of each basin against bending to wash the face; a wheelchair counts with the knee space under the basin.
// Not without people: the clear floor in front asks more of a basin for everybody else.
std::vector<Measurement> bendingAtBasins(const CheckInput&);
// Ahead of each bath over its clearest 30 in against kneeling there; the median woman where nobody is named,
// because somebody cleans it.
std::vector<Measurement> kneelingAtBaths(const CheckInput&);
// Rim of each bath, at most the hip of an adult who kneels; only with a child in the plan, or with nobody.
std::vector<Measurement> rimsOfBaths(const CheckInput&);
// Ahead of each basin, for one to stand and one to pass; only with two people or more.
std::vector<Measurement> passingAtBasins(const CheckInput&);
// Ahead of each basin, for a child and an adult behind; only with both.
std::vector<Measurement> helpingAtBasins(const CheckInput&);
// Beside each toilet, from its edge to what stands on the roomier side; only with a wheelchair user.
std::vector<Measurement> helperBesideToilets(const CheckInput&);
// Height of each basin's rim: against adults' elbows; at most what the smallest child works at; at most what a
// wheelchair user works at. Only with such people.
std::vector<Measurement> basinHeightsForAdults(const CheckInput&);
std::vector<Measurement> basinHeightsForChildren(const CheckInput&);
std::vector<Measurement> basinHeightsForChairs(const CheckInput&);
// Height of each basin's rim; only where the plan names nobody.
std::vector<Measurement> basinHeightsForAnybody(const CheckInput&);
// Top of each linen closet and cabinet above a counter's height (48 in), at most the reach of the tallest: one
// of the house can then reach it. Only with people.
std::vector<Measurement> topShelves(const CheckInput&);

}  // namespace elbowroom::checks
