// Places one thing of a wall from the Tray: it follows the pointer as part of the plan, checked live, until a
// click sets it down or Escape takes it away.
#pragma once

#include "ui/canvas/tool_parts.h"
#include "ui/walls/strip_drag.h"

namespace elbowroom::ui {

class StripPlace : public CarryTool {
 public:
  // payload: "wall:mirror". Anything else places nothing.
  StripPlace(StripContext&, const QString& payload);
  static bool knows(const QString& payload) { return payload.startsWith(QStringLiteral("wall:")); }
  void move(const Pointer&, bool down) override;
  bool key(QKeyEvent*) override;
  QString hint() const override;
  void paint(QPainter&) override;

 private:
  StripContext& context_;
  WallItem item_;
  QString label_;
  WallSnapped snapped_;
  std::optional<StripAnswer> answer_;
};

}  // namespace elbowroom::ui
