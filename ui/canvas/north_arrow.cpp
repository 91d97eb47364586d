#include "ui/canvas/north_arrow.h"

#include <cmath>

namespace elbowroom::ui {
namespace {
constexpr double kSide = 52, kMargin = 10;  // px
constexpr double kTip = 15, kTail = 11, kHalf = 6.5, kNotch = 6, kLetter = 21;
}  // namespace

QRectF northArrowBox(QSizeF view) { return {view.width() - kMargin - kSide, kMargin, kSide, kSide}; }

void paintNorthArrow(QPainter& painter, QSizeF view, Angle north, const QPalette& palette) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF middle = northArrowBox(view).center();
  const double turn = north.radians();
  const QPointF ahead(-std::sin(turn), -std::cos(turn)), right(-ahead.y(), ahead.x());
  const QPointF tip = middle + kTip * ahead, notch = middle - kNotch * ahead;
  const QPointF left_tail = middle - kTail * ahead - kHalf * right;
  const QPointF right_tail = middle - kTail * ahead + kHalf * right;
  const QColor ink = palette.color(QPalette::Text), sheet = palette.color(QPalette::Base);
  painter.setPen(QPen(ink, 1.2));
  painter.setBrush(sheet);
  painter.drawPolygon(QPolygonF{tip, right_tail, notch});
  painter.setBrush(ink);
  painter.drawPolygon(QPolygonF{tip, left_tail, notch});
  QFont font = painter.font();
  font.setPixelSize(11);
  font.setBold(true);
  painter.setFont(font);
  const QPointF letter = middle + kLetter * ahead;
  painter.drawText(QRectF(letter - QPointF(8, 8), QSizeF(16, 16)), Qt::AlignCenter, QObject::tr("N", "north"));
  painter.restore();
}

}  // namespace elbowroom::ui
