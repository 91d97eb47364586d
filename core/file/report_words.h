// Figures as reports write them, in one way for all of them. Private to core/file.
#pragma once

#include <string>

#include "core/rules/check.h"

namespace elbowroom {

std::string turningText(const TurningFigures&, Unit unit);
bool tellsWishes(const Report&);
std::string wishesInBrief(const Report&);

}  // namespace elbowroom
