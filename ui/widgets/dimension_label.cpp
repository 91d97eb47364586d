#include "ui/widgets/dimension_label.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QPalette>
#include <cmath>

namespace elbowroom::ui {

DimensionLabel dimensionLabel(QPointF a, QPointF b, const QString& text) {
  const QFontMetricsF metrics(QGuiApplication::font());
  const double width = metrics.horizontalAdvance(text) + 12, height = metrics.height() + 4;
  const bool level = std::abs(b.x() - a.x()) >= std::abs(b.y() - a.y());
  const double room = level ? std::abs(b.x() - a.x()) - width : std::abs(b.y() - a.y()) - height;
  const QPointF aside = level ? QPointF(0, -height * 0.9) : QPointF(width / 2 + 6, 0);
  const QPointF middle = (a + b) / 2 + (room < 10 ? aside : QPointF());
  return {middle, QRectF(middle.x() - width / 2, middle.y() - height / 2, width, height)};
}

void paintDimensionLabel(QPainter& painter, const QRectF& box, const QString& text, bool active) {
  const QPalette palette = QGuiApplication::palette();
  painter.setPen(QPen(palette.color(active ? QPalette::Highlight : QPalette::Mid), active ? 2 : 1));
  painter.setBrush(palette.color(QPalette::Base));
  painter.drawRoundedRect(box, 3, 3);
  painter.setPen(palette.color(QPalette::Text));
  painter.drawText(box, Qt::AlignCenter, text);
}

}  // namespace elbowroom::ui
