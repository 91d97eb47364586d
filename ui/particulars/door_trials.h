// What each way of hanging or sliding a door would do to the whole plan. Pure: the plan is not changed.
#pragma once

#include <QString>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom::ui {

struct DoorTrial {
  Opening door;          // as it would be
  QString label;         // "Hinged left, in"
  bool present = false;  // this is how it is now
  bool possible = true;  // false: the plan refuses it, see troubles
  DoorFigures figures;
  int shorts = 0;        // shortfalls of the whole plan then
  QStringList troubles;  // in words
};

// The ways in a fixed order, labelled; figures not computed.
std::vector<DoorTrial> doorWays(const Opening& door);
// All of them measured and checked. An id that is no door of the option: empty.
std::vector<DoorTrial> tryDoor(const Plan& plan, std::size_t option, const ElementId& door);

}  // namespace elbowroom::ui
