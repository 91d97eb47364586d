// How long one waits for hot water: what stands in the pipe has to run off first.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Water in each foot of a pipe, in fluid ounces (IPC 2009 Table E202.1 as bsesc.energy.gov prints it). Names
// as the fact hot_pipe has them; nullopt: not in the table.
std::optional<double> ouncesPerFoot(std::string_view pipe);

struct PipeRun {
  std::string_view pipe;
  Length length;
};
// Pipes that are not in the table count for nothing.
double ouncesIn(const std::vector<PipeRun>&);
// Until as much has run off, in seconds. Precondition: the flow, in gallons a minute, is greater than 0.
Amount waitFor(double ounces, Amount gallons_a_minute);

// Wait at each shower, an amount in seconds: twice what stands in its pipe (homeenergy.org: a cold pipe takes
// twice its volume) at the stated flow of the head, 2.5 gallons a minute where it is not stated. Only stated
// pipes.
std::vector<Measurement> hotWaterWaits(const CheckInput&);

}  // namespace elbowroom::checks
