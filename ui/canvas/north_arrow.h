// The arrow to north in the corner of the plan's view; it stays there while the plan is moved and zoomed.
#pragma once

#include <QPainter>
#include <QPalette>

#include "core/base/length.h"

namespace elbowroom::ui {

// The square it takes in a view of this size.
QRectF northArrowBox(QSizeF view);
// `north`: counter-clockwise from up, as the plan states it.
void paintNorthArrow(QPainter&, QSizeF view, Angle north, const QPalette&);

}  // namespace elbowroom::ui
