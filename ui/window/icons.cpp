#include "ui/window/icons.h"

#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPalette>

namespace elbowroom::ui {
namespace {

// On a square of 20 units.
void drawGlyph(QPainter& p, Glyph glyph) {
  switch (glyph) {
    case Glyph::open:  // a folded sheet, half out of a tray
      p.drawPolyline(QPolygonF{{3, 9}, {3, 17}, {17, 17}, {17, 9}});
      p.drawLine(QPointF(10, 13), QPointF(10, 3));
      p.drawPolyline(QPolygonF{{6.5, 6.5}, {10, 3}, {13.5, 6.5}});
      break;
    case Glyph::save:
      p.drawPolyline(QPolygonF{{3, 9}, {3, 17}, {17, 17}, {17, 9}});
      p.drawLine(QPointF(10, 3), QPointF(10, 13));
      p.drawPolyline(QPolygonF{{6.5, 9.5}, {10, 13}, {13.5, 9.5}});
      break;
    case Glyph::undo:
    case Glyph::redo: {
      if (glyph == Glyph::redo) {
        p.translate(20, 0);
        p.scale(-1, 1);
      }
      QPainterPath path(QPointF(4, 7));
      path.lineTo(12, 7);
      path.arcTo(QRectF(7.5, 7, 9, 9), 90, -180);
      path.lineTo(6, 16);
      p.drawPath(path);
      p.drawPolyline(QPolygonF{{7.5, 3.5}, {4, 7}, {7.5, 10.5}});
      break;
    }
    case Glyph::walls:
      p.drawPolyline(QPolygonF{{17, 11}, {17, 3}, {3, 3}, {3, 17}, {10, 17}});
      p.drawEllipse(QPointF(10, 17), 1.6, 1.6);
      p.drawEllipse(QPointF(17, 11), 1.6, 1.6);
      break;
    case Glyph::circle:
      p.drawEllipse(QPointF(10, 10), 7.5, 7.5);
      p.drawLine(QPointF(10, 10), QPointF(15.3, 4.7));
      break;
    case Glyph::floorSpace:
      p.drawRect(QRectF(5, 2.5, 10, 15));
      p.drawLine(QPointF(10, 6), QPointF(10, 14));
      p.drawPolyline(QPolygonF{{7.5, 8.5}, {10, 6}, {12.5, 8.5}});
      break;
    case Glyph::fit:
      p.drawRect(QRectF(6, 6, 8, 8));
      for (const auto& [x, y] : {std::pair{-1, -1}, {1, -1}, {-1, 1}, {1, 1}})
        p.drawPolyline(QPolygonF{{10 + x * 4.5, 10 + y * 8.0}, {10 + x * 8.0, 10 + y * 8.0}, {10 + x * 8.0, 10 + y * 4.5}});
      break;
    case Glyph::sheets:
      p.drawRect(QRectF(3, 4, 14, 11));
      p.drawLine(QPointF(6, 7), QPointF(14, 7));
      p.drawLine(QPointF(6, 5.8), QPointF(6, 8.2));
      p.drawLine(QPointF(14, 5.8), QPointF(14, 8.2));
      p.drawRect(QRectF(11, 11, 6, 4));
      break;
  }
}

class GlyphEngine : public QIconEngine {
 public:
  explicit GlyphEngine(Glyph glyph) : glyph_(glyph) {}
  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->translate(rect.topLeft());
    painter->scale(rect.width() / 20.0, rect.height() / 20.0);
    painter->setPen(QPen(QGuiApplication::palette().color(group, QPalette::ButtonText), 1.5, Qt::SolidLine, Qt::RoundCap,
                         Qt::RoundJoin));
    painter->setBrush(Qt::NoBrush);
    drawGlyph(*painter, glyph_);
    painter->restore();
  }
  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint(&painter, QRect({}, size), mode, state);
    return pixmap;
  }
  QIconEngine* clone() const override { return new GlyphEngine(glyph_); }

 private:
  Glyph glyph_;
};

}  // namespace

QIcon glyphIcon(Glyph glyph) { return QIcon(new GlyphEngine(glyph)); }

}  // namespace elbowroom::ui
