// Private to core/rules: what could be done to one thing of a plan, from the least change to the largest.
#pragma once

#include <functional>
#include <vector>

#include "core/rules/remedies/trials.h"

namespace elbowroom::remedies {

// How much a way asks of the person, in inches of shifting a fixture: only for the order of the offers.
struct Effort {
  double base = 0, per_inch = 0;
};

// A shift of one thing in one direction by any length up to `most`.
struct Family {
  Move move;           // toward move.other
  ElementId behind;    // what it moves away from
  std::function<Change(Length)> at;
  Length most;
  Effort effort;
  bool kept = false;
};

// One certain change.
struct Candidate {
  Move move;
  Change change;
  double effort = 0;
  bool kept = false;
};

struct Ways {
  std::vector<Family> families;
  std::vector<Candidate> candidates;
};

// Empty for a wall, an unknown id or a thing that is to be removed.
Ways waysFor(const Layout&, const ElementId&);
bool isKept(const Option&, const ElementId&);

void addFixtureWays(const Layout&, const PlacedFixture&, Ways&);
void addOpeningWays(const Layout&, const PlacedOpening&, Ways&);
void addWallItemWays(const Layout&, const WallItem&, Ways&);
void addCeilingItemWays(const Layout&, const CeilingItem&, Ways&);

}  // namespace elbowroom::remedies
