#include "core/drawing/sheet_text.h"

namespace elbowroom {

std::string sheetText(Length value, Unit unit) {
  return unit == Unit::inches ? feetInches(value) : millimetresText(value, false);
}

std::string sheetText(Length a, Length b, Unit unit) {
  return sheetText(a, unit) + " \u00d7 " + sheetText(b, unit);
}

}  // namespace elbowroom
