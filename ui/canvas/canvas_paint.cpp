// What the canvas shows, layer by layer.
#include <QPaintEvent>
#include <cmath>

#include "ui/canvas/north_arrow.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/canvas/tag.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

using namespace literals;

void PlanCanvas::paintEvent(QPaintEvent* event) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(event->rect());
  painter.fillRect(event->rect(), palette().color(QPalette::Base));
  if (stale_) rebuild();
  paintPlan(painter);
  paintSelection(painter);
  paintLit(painter);
  paintStandIn(painter);
  // The figures about the chosen thing are those of the plan as it is; beside the ghost they would mislead.
  if (tool_ != &select_ || !session_.preview()) tool_->paint(painter);
  paintPreview(painter);
  if (const auto north = session_.plan().north) paintNorthArrow(painter, size(), *north, palette());
}

void PlanCanvas::paintPlan(QPainter& painter) {
  // A faint square of one foot, or a quarter metre, gives the eye a measure.
  const Length step = unit() == Unit::inches ? 12_in : 250_mm;
  if (map_.px(step) > 14) {
    QColor grid = palette().color(QPalette::Mid);
    grid.setAlphaF(0.22F);
    painter.setPen(QPen(grid, 1));
    const Point low = map_.toPlan({0, double(height())}), high = map_.toPlan({double(width()), 0});
    const auto floor_step = [&](Length l) {
      return Length::nanometres(static_cast<std::int64_t>(std::floor(l / step)) * step.nm());
    };
    for (Length x = floor_step(low.x); x <= high.x; x += step)
      painter.drawLine(map_.toPx({x, low.y}), map_.toPx({x, high.y}));
    for (Length y = floor_step(low.y); y <= high.y; y += step)
      painter.drawLine(map_.toPx({low.x, y}), map_.toPx({high.x, y}));
  }
  draw(painter, plan_list_);
  draw(painter, zone_list_);
  draw(painter, turning_list_);
  draw(painter, finding_list_);
  for (const DoorFigures& door : session_.report().figures.doors) {
    if (!door.hits_at) continue;
    painter.setPen(QPen(palette().color(QPalette::Text), 1.5));
    painter.setBrush(palette().color(QPalette::Base));
    painter.drawEllipse(map_.toPx(*door.hits_at), 5, 5);
    painter.setBrush(palette().color(QPalette::Text));
    painter.drawEllipse(map_.toPx(*door.hits_at), 2, 2);
  }
}

void PlanCanvas::paintSelection(QPainter& painter) {
  for (const ElementId& id : session_.selection()) {
    const Outline outline = outlineOf(session_.layout(), id);
    if (!outline.empty()) draw(painter, {{PolyPrim{outline, true, false}, Role::selection, {}}});
  }
  const bool wall_chosen = session_.selection().size() == 1 &&
                           findWall(session_.option(), *session_.selection().begin()) != nullptr;
  if (!wall_chosen) return;
  painter.setPen(QPen(palette().color(QPalette::Highlight), 1.5));
  painter.setBrush(palette().color(QPalette::Base));
  for (const WallFrame& wall : session_.layout().walls) painter.drawEllipse(map_.toPx(wall.from), 4.5, 4.5);
}

void PlanCanvas::paintLit(QPainter& painter) {
  const int lit = session_.litFinding();
  if (lit < 0) return;
  const Finding& finding = session_.report().findings[static_cast<std::size_t>(lit)];
  painter.setPen(QPen(palette().color(QPalette::Highlight), 3));
  painter.setBrush(Qt::NoBrush);
  for (const Place& place : finding.places) {
    QPolygonF polygon;
    for (Point p : place.points) polygon << map_.toPx(p);
    if (place.kind == Place::Kind::point && !polygon.isEmpty()) painter.drawEllipse(polygon.front(), 12, 12);
    if (place.kind == Place::Kind::line) painter.drawPolyline(polygon);
    if (place.kind == Place::Kind::zone) painter.drawPolygon(polygon);
  }
  for (const ElementId& id : finding.subjects) {
    const Outline outline = outlineOf(session_.layout(), id);
    if (!outline.empty()) draw(painter, {{PolyPrim{outline, true, false}, Role::guide, {}}});
  }
}

void PlanCanvas::paintStandIn(QPainter& painter) {
  if (!stand_in_.shown()) return;
  const bool has_room = !session_.layout().room.empty();
  const Fit fit = has_room ? stand_in_.fit(session_.layout()) : Fit{};
  QColor ink = palette().color(QPalette::Highlight);
  QColor wash = ink;
  wash.setAlphaF(fit.fits ? 0.12F : 0.05F);
  QPolygonF polygon;
  for (Point p : stand_in_.outline()) polygon << map_.toPx(p);
  painter.setBrush(wash);
  painter.setPen(QPen(ink, fit.fits ? 2.5 : 1.8, fit.fits ? Qt::SolidLine : Qt::DashLine));
  painter.drawPolygon(polygon);
  const QPointF hub = map_.toPx(stand_in_.center);
  painter.setBrush(palette().color(QPalette::Base));
  painter.setPen(QPen(ink, 1.5));
  painter.drawEllipse(hub, 7, 7);
  painter.drawLine(hub - QPointF(4, 0), hub + QPointF(4, 0));
  painter.drawLine(hub - QPointF(0, 4), hub + QPointF(0, 4));
  if (has_room && !fit.fits) {
    const QPointF at = map_.toPx(fit.at);
    painter.setPen(QPen(palette().color(QPalette::Text), 2));
    painter.drawLine(at - QPointF(5, 5), at + QPointF(5, 5));
    painter.drawLine(at - QPointF(5, -5), at + QPointF(5, -5));
  }
  const QString words = fit.fits   ? tr("fits")
                        : has_room ? tr("misses by %1").arg(lengthWords(fit.misses_by, unit()))
                                   : QString();
  if (words.isEmpty()) return;
  paintTag(painter, hub + QPointF(0, 22), words, QPalette::Highlight);
}

}  // namespace elbowroom::ui
