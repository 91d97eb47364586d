#include "ui/canvas/tool_parts.h"

#include <algorithm>

namespace elbowroom::ui {

using namespace literals;

std::optional<Arrow> arrowOf(const QKeyEvent& event) {
  switch (event.key()) {
    case Qt::Key_Left: return Arrow{-1, 0};
    case Qt::Key_Right: return Arrow{1, 0};
    case Qt::Key_Up: return Arrow{0, 1};
    case Qt::Key_Down: return Arrow{0, -1};
    default: return std::nullopt;
  }
}

Length nudgeStep(const QKeyEvent& event, Unit unit) {
  const bool inches = unit == Unit::inches;
  if (event.modifiers().testFlag(Qt::ShiftModifier)) return inches ? 0.0625_in : 1_mm;
  if (event.modifiers().testFlag(Qt::ControlModifier)) return inches ? 6_in : 100_mm;
  return inches ? 0.5_in : 10_mm;
}

void nudge(Session& session, PutThings things) {
  if (!things.empty()) session.perform(std::move(things), QObject::tr("Nudge"), "nudge");
}

void paintBand(QPainter& painter, QPointF from, QPointF to) {
  painter.setPen(QPen(QGuiApplication::palette().color(QPalette::Highlight), 1, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(from, to).normalized());
}

Box bandOf(const ViewMap& map, QPointF from, QPointF to) {
  const Point a = map.toPlan(from), b = map.toPlan(to);
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

void CarryTool::press(const Pointer& pointer) {
  move(pointer, true);
  if (drop()) carrier_.toolDone();
}

bool CarryTool::drop() {
  if (!on_plan_ || !carrier_.session().dragging()) return false;
  on_plan_ = false;
  carrier_.session().endDrag();
  return true;
}

bool CarryTool::enter(QKeyEvent* event, std::optional<Point> at) {
  if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) return false;
  if (!on_plan_ && at) move({*at, carrier_.map().toPx(*at), Qt::NoModifier}, false);
  if (drop()) carrier_.toolDone();
  return true;
}

void CarryTool::carry(Change change, const ElementId& id, const QString& label) {
  Session& session = carrier_.session();
  on_plan_ |= session.dragTo(std::move(change), QObject::tr("Add %1").arg(label));
  if (on_plan_) session.select({id});
}

void CarryTool::sayWhere(const QString& why) {
  const QString refused = carrier_.session().lastError();
  carrier_.say(!refused.isEmpty() ? refused : why.isEmpty() ? hint() : why);
  carrier_.repaint();
}

bool CarryTool::undo() {
  cancel();
  return true;
}

void CarryTool::cancel() {
  on_plan_ = false;
  carrier_.session().cancelDrag();
  carrier_.toolDone();
}

}  // namespace elbowroom::ui
