// Plan file version 1: read, write, atomically save. design.md section 3; resources/plan.schema.json.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/plan/plan.h"

namespace elbowroom {

// Whole or nothing. Errors (code; `place` = line:column or JSON pointer): json, format, version, missing-key, type,
// number (NaN, infinite, beyond +-100 m), value (unknown word), and all of core/plan/integrity.h.
Result<Plan> readPlan(std::string_view text);
// Stable key order, one element per line, LF, lengths in the plan's unit with as many decimals as exactness needs
// (nanometre), unknown keys after the known ones in their alphabetical order.
std::string writePlan(const Plan&);

// Error messages begin with the file's name.
Result<Plan> loadPlan(const std::string& path);
// Writes beside and renames, so a failure leaves the old file whole.
Result<bool> savePlan(const Plan&, const std::string& path);

}  // namespace elbowroom
