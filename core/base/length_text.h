// Text to Length and back, independent of any locale.
#pragma once

#include <string>
#include <string_view>

#include "core/base/length.h"
#include "core/base/result.h"

namespace elbowroom {

enum class Unit { inches, millimetres };

// Reads a length as a person writes it. A plain number is taken in `plain`.
// Accepts: 5' 2 1/2"   5-2 1/2 (feet-inches)   5'   62.5   62 1/2 in   62-1/2"   1587.5 mm   158.75 cm   1.5875 m
// Curly and doubled-apostrophe marks count as ' and ". Leading and trailing spaces are ignored, a leading
// minus is allowed. Value is exact to the nearest nanometre.
// Error: code "length"; the message names the offending character and its 1-based position.
Result<Length> parseLength(std::string_view text, Unit plain);

// Feet, inches and sixteenths (rounded to nearest 1/16): 5'-2 1/2", 0'-6" is written 6". Negative: leading -.
std::string feetInches(Length value);
// Inches and sixteenths only: 62 1/2"
std::string inchesText(Length value);
// Whole millimetres: 1588 mm (with the unit when `withUnit`).
std::string millimetresText(Length value, bool withUnit = true);
// In the person's unit: feetInches or millimetresText.
std::string lengthText(Length value, Unit unit);
// Square feet with one decimal ("39.5 sq ft") or square metres with two ("3.67 m2" with the real sign).
std::string areaText(Area value, Unit unit);

}  // namespace elbowroom
