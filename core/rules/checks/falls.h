// Arithmetic of floors that fall to a drain, and of steps, that needs no plan. A fall is rise over run.
#pragma once

#include "core/base/amount.h"
#include "core/base/length.h"

namespace elbowroom::checks {

// 1/4 in per foot (1:48), the least for water and the most for a wheelchair; 1/2 in per foot, the most for
// water (greenbuildingadvisor.com on lowered subfloors; tileletter.com, March 2016).
double leastFall();
double steepestFall();
double fallOf(Length per_foot);
// Per cent of a fall: 1/4 in per foot is 2.083 %.
Amount percentOf(double fall);
double runPerRise(double fall);  // 48 of 1:48; precondition: fall > 0

// How far a curbless floor drops over this run at the least fall, and the run that a drop allows.
Length dropOver(Length run);
Length runFor(Length drop);

// A floor with a level rim that falls to a drain in its middle: the drop that gives the corners the least
// fall, and how steep the short way to the middle is then. Precondition: both sides greater than 0.
struct CentreFall {
  Length corner, drop;
  double steepest;
};
CentreFall centreFall(Length width, Length depth);

// Run that a step takes as a bevel (1/4 in upright, the rest at 1:2; only up to 1/2 in) and as a ramp at 1:12
// (A117.1 303 as the trade guidelines quote it).
Length bevelRun(Length step);
Length rampRun(Length step);

}  // namespace elbowroom::checks
