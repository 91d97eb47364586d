// Draws the room wall by wall: click the corners along the inside finished faces, or point and type a length.
#pragma once

#include "ui/canvas/tool.h"

namespace elbowroom::ui {

class RoomTool : public Tool {
 public:
  explicit RoomTool(CanvasContext& context) : context_(context) {}
  void press(const Pointer&) override;
  void move(const Pointer&, bool down) override;
  void doublePress(const Pointer&) override;
  bool key(QKeyEvent*) override;
  bool undo() override;
  void cancel() override;
  void paint(QPainter&) override;
  QString hint() const override;
  Qt::CursorShape cursor() const override { return Qt::CrossCursor; }

 private:
  SnappedPoint snapped(const Pointer&) const;
  void placeCorner(Point);
  void finish();
  void askForLength(const QString& typed);
  CanvasContext& context_;
  std::vector<Point> corners_;
  SnappedPoint next_;
  bool pointed_ = false;
};

// 2x4 studs with 1/2 in board on both sides (comfort and trade figures): 4 1/2 in; 115 mm in metric plans.
Length usualWallThickness(Unit);
// Walls of the given thickness along these corners (either way round), ids w1, w2, ...
Room roomOf(std::vector<Point> corners, Length thickness, const Room& keep);

}  // namespace elbowroom::ui
