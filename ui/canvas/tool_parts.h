// What the tools of the plan and of the wall strip have in common.
#pragma once

#include <optional>

#include "ui/canvas/tool.h"

namespace elbowroom::ui {

// Which way an arrow key points: x to the right, y up; nullopt: no arrow.
struct Arrow {
  int dx = 0, dy = 0;
};
std::optional<Arrow> arrowOf(const QKeyEvent&);
// How far one arrow key goes: 1/2 in or 10 mm, with Shift 1/16 in or 1 mm, with Control 6 in or 100 mm.
Length nudgeStep(const QKeyEvent&, Unit);
// What one press of an arrow moves, as one step of the history; presses that follow merge with it.
void nudge(Session&, PutThings);

void paintBand(QPainter&, QPointF from, QPointF to);
Box bandOf(const ViewMap&, QPointF from, QPointF to);

// A tool that carries one thing from the Tray as part of the plan until a click or Enter sets it down or
// Escape takes it away.
class CarryTool : public Tool {
 public:
  explicit CarryTool(CanvasContext& context) : carrier_(context) {}
  void press(const Pointer&) override;
  bool undo() override;
  void cancel() override;
  Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
  // Puts it down where it is now. False: there is nothing to put down.
  bool drop();

 protected:
  bool carrying() const { return on_plan_; }
  // Enter without a mouse: at this place first, when it is not in the plan yet.
  bool enter(QKeyEvent*, std::optional<Point> at);
  void carry(Change, const ElementId&, const QString& label);
  // Says why the last place was refused, else `why`, else the hint.
  void sayWhere(const QString& why);
  bool on_plan_ = false;

 private:
  CanvasContext& carrier_;
};

}  // namespace elbowroom::ui
