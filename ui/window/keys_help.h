// What the keys and the mouse do, on the plan and on the wall strip; F1.
#pragma once

class QWidget;

namespace elbowroom::ui {

enum class KeysOf { plan, strip };
// Opens the window, or brings it to the front, at the part that is asked for. It does not hold up the work.
void showKeys(QWidget* window, KeysOf part);

}  // namespace elbowroom::ui
