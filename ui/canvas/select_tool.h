// The tool one has in hand when no other is: select, drag, nudge, turn, copy, type dimensions.
#pragma once

#include <memory>

#include "ui/canvas/drag.h"
#include "ui/canvas/live_dimensions.h"
#include "ui/canvas/stand_in.h"

namespace elbowroom::ui {

class SelectTool : public Tool {
 public:
  SelectTool(CanvasContext&, StandIn&);
  void press(const Pointer&) override;
  void move(const Pointer&, bool down) override;
  void release(const Pointer&) override;
  void doublePress(const Pointer&) override;
  bool key(QKeyEvent*) override;
  bool undo() override;
  void cancel() override;
  void paint(QPainter&) override;
  QString hint() const override;
  Qt::CursorShape cursor() const override { return cursor_; }

  // What Edit > Turn and Other hand do; also bound to keys by the window.
  void turnSelected(Angle by);
  void flipSelected();   // the other hand of a door

 private:
  bool nudgeBy(QKeyEvent*);
  std::optional<Point> turner() const;
  void openDimension(int index, const QString& initial);
  CanvasContext& context_;
  StandIn& stand_in_;
  std::unique_ptr<Drag> drag_;
  std::optional<Hit> pressed_on_;
  std::optional<Pointer> pressed_at_;
  bool stand_in_grabbed_ = false;
  Vector stand_in_grip_;
  bool banding_ = false;
  QPointF band_from_, band_to_;
  Hit hover_;
  int active_dimension_ = 0;
  Qt::CursorShape cursor_ = Qt::ArrowCursor;
};

}  // namespace elbowroom::ui
