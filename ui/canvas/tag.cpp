#include "ui/canvas/tag.h"

#include <QFontMetricsF>
#include <QGuiApplication>

namespace elbowroom::ui {

void paintTag(QPainter& painter, QPointF middle, const QString& text, QPalette::ColorRole frame) {
  const QPalette palette = QGuiApplication::palette();
  QRectF box = QFontMetricsF(painter.font()).boundingRect(text).adjusted(-6, -3, 6, 3);
  box.moveCenter(middle);
  painter.setBrush(palette.color(QPalette::Base));
  painter.setPen(QPen(palette.color(frame), 1));
  painter.drawRoundedRect(box, 3, 3);
  painter.setPen(palette.color(QPalette::Text));
  painter.drawText(box, Qt::AlignCenter, text);
}

}  // namespace elbowroom::ui
