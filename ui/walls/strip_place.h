// Places one thing of a wall from the Tray: it follows the pointer as part of the plan, checked live, until a click
// sets it down or Escape takes it away.
#pragma once

#include "ui/walls/strip_drag.h"

namespace elbowroom::ui {

class StripPlace : public Tool {
 public:
  // payload: "wall:mirror". Anything else places nothing.
  StripPlace(StripContext&, const QString& payload);
  static bool knows(const QString& payload) { return payload.startsWith(QStringLiteral("wall:")); }
  void press(const Pointer&) override;
  void move(const Pointer&, bool down) override;
  bool key(QKeyEvent*) override;
  bool undo() override;
  void cancel() override;
  QString hint() const override;
  Qt::CursorShape cursor() const override { return Qt::CrossCursor; }
  void paint(QPainter&) override;
  // Puts it down where it is now. False: there is nothing to put down.
  bool drop();

 private:
  StripContext& context_;
  WallItem item_;
  QString label_;
  WallSnapped snapped_;
  bool on_plan_ = false;
};

}  // namespace elbowroom::ui
