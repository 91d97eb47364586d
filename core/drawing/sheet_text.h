// How sheets write lengths: one way for sizes, places and heights. Findings keep to inches, as the texts do
// that they are held against (core/rules).
#pragma once

#include <string>

#include "core/base/length_text.h"

namespace elbowroom {

// Feet and inches, or millimetres without "mm": the title block names the unit.
std::string sheetText(Length, Unit);
// "2'-6" × 6'-8"".
std::string sheetText(Length, Length, Unit);

}  // namespace elbowroom
