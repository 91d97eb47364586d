// A short text on a rounded paper-coloured ground, for figures that stand on the drawing.
#pragma once

#include <QPainter>
#include <QPalette>
#include <QString>

namespace elbowroom::ui {

// Centred on `middle` in pixels; the frame in the palette's `frame` colour.
void paintTag(QPainter&, QPointF middle, const QString& text, QPalette::ColorRole frame);

}  // namespace elbowroom::ui
