// What must hold in every plan after loading and after every edit.
#pragma once

#include <optional>

#include "core/base/result.h"
#include "core/plan/plan.h"

namespace elbowroom {

// First violation, or nullopt. `place` is a JSON pointer into the plan file ("/options/0/room/walls/2").
// Codes: integrity/no-option, /option-name, /duplicate-id, /empty-id, /few-walls, /walls-cross, /wall-turns-wrong
// (counter-clockwise), /wall-too-short (< 1 in), /no-such-wall, /opening-too-long, /opening-off-wall,
// /openings-overlap, /size (a width, depth or height not positive), /too-far (outside +-100 m),
// /stature, /basins, /slope (a ceiling's), /reason (missing).
std::optional<Error> integrity(const Plan&);

}  // namespace elbowroom
