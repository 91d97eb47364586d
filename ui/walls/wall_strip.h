// All walls unrolled left to right under the plan. Shares the plan's selection.
#pragma once

#include <QAbstractScrollArea>
#include <map>

#include "core/drawing/draw_elevation.h"
#include "ui/render/paint.h"

namespace elbowroom::ui {

class Session;

// Click selects (Shift or Ctrl adds), Left and Right go from thing to thing, Escape selects nothing.
// Selecting in the plan scrolls to it here.
class WallStrip : public QAbstractScrollArea {
  Q_OBJECT
 public:
  explicit WallStrip(Session& session, QWidget* parent = nullptr);

  // The thing at a place of the viewport: an opening, fixture, item, else the wall; empty outside.
  ElementId thingAt(QPointF at) const;
  // Where a thing is drawn in the viewport (its first showing); null rectangle when it is not.
  QRectF placeOf(const ElementId& id) const;
  QSize sizeHint() const override { return {600, 170}; }

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool viewportEvent(QEvent* event) override;
  void scrollContentsBy(int, int) override { viewport()->update(); }

 private:
  void redraw();
  void showSelected();
  void arrange();
  ViewMap map() const;

  Session& session_;
  WallStripDrawing drawing_;
  std::vector<std::pair<ElementId, elbowroom::Box>>
      boxes_;  // one per thing and wall it shows on, in reading order
  double px_per_inch_ = 1;
};

}  // namespace elbowroom::ui
