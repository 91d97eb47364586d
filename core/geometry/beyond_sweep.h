// A clear floor space beyond the swing of doors.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/free_floor.h"
#include "core/geometry/sweep.h"

namespace elbowroom {

// A place where a rectangle of `along` by `across` lies on the free floor and clear of
// every position of these leaves, over all turns (2010 ADA Standards 603.2.3 exception 2; the floor says
// whether knee space counts): `near` when it lies clear there, else any, square to the plan or to a wall where
// that is possible. The leaves' sectors are exact. A returned place reaches nowhere deeper than kContact.
// nullopt: proved that a rectangle 0.02 in smaller each way has no place either.
std::optional<Placed> beyondSweep(const FreeFloor& floor, const std::vector<Leaf>& leaves, Length along,
                                  Length across, Placed near);

}  // namespace elbowroom
