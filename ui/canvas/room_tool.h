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
  // Why not there; empty: placed, or it is where the last corner is.
  QString placeCorner(Point);
  QString wordsOfCrossing(Point at) const;
  void finish();
  void askForLength(const QString& typed);
  CanvasContext& context_;
  std::vector<Point> corners_;
  SnappedPoint next_;
  std::optional<Point> crossed_;  // where the walls would have crossed that were refused last
  bool pointed_ = false;
};

// Where a wall from the last of these corners to `next` would meet the walls before it, other than at that corner and
// at the first, where the room closes.
std::optional<Point> crossingOf(const std::vector<Point>& corners, Point next);

// 2x4 studs with 1/2 in board on both sides (comfort and trade figures): 4 1/2 in; 115 mm in metric plans.
Length usualWallThickness(Unit);
// Walls of the given thickness along these corners (either way round), ids w1, w2, ...
Room roomOf(std::vector<Point> corners, Length thickness, const Room& keep);

}  // namespace elbowroom::ui
