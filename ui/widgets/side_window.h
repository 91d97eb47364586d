// What windows beside the main one share: they follow the plan after a pause and undo like it.
#pragma once

#include <QTimer>
#include <QWidget>
#include <functional>

#include "ui/session/session.h"

namespace elbowroom::ui {

// Undo and redo by the main window's keys, whose menu does not reach into another window.
void undoByKeys(QWidget& window, Session&);

// A timer, owned by `window`, that calls `refresh` a short pause after its last start, and never during a drag.
QTimer* pauseBefore(QWidget& window, Session&, std::function<void()> refresh);

void bringForward(QWidget& window);

}  // namespace elbowroom::ui
