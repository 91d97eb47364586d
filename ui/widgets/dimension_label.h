// The label of a live dimension: where it stands beside its line and what it looks like. Pixels.
#pragma once

#include <QPainter>
#include <QRectF>
#include <QString>

namespace elbowroom::ui {

struct DimensionLabel {
  QPointF middle;
  QRectF box;  // where a click opens the entry field
};
// On the middle of the line a-b; beside it where the line is too short to carry it.
DimensionLabel dimensionLabel(QPointF a, QPointF b, const QString& text);
// `active`: the one that a typed figure sets.
void paintDimensionLabel(QPainter&, const QRectF& box, const QString& text, bool active);

}  // namespace elbowroom::ui
