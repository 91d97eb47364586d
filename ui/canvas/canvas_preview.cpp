// A remedy under the mouse: what it moves where, and the figure it would give. The plan stays.
#include <cmath>

#include "core/rules/text.h"
#include "ui/canvas/hit.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/canvas/tag.h"

namespace elbowroom::ui {
namespace {

DisplayList figureOf(const Layout& layout, const ElementId& id, const DrawStyle& style) {
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.id == id) return drawFixture(f, style);
  for (const PlacedOpening& o : layout.openings)
    if (o.opening.id == id) return drawOpening(layout, o, style);
  return {};
}

void paintArrow(QPainter& painter, QPointF from, QPointF to) {
  const QPointF way = to - from;
  const double length = std::hypot(way.x(), way.y());
  if (length < 14) return;
  const QPointF u = way / length, n(-u.y(), u.x());
  painter.drawLine(from, to - u * 6);
  const QPolygonF head({to, to - u * 10 + n * 4.5, to - u * 10 - n * 4.5});
  painter.setBrush(painter.pen().color());
  painter.drawPolygon(head);
}

}  // namespace

void PlanCanvas::paintPreview(QPainter& painter) {
  const auto& preview = session_.preview();
  if (!preview) return;
  const QColor ink = palette().color(QPalette::Highlight);
  const auto polygonOf = [&](const Outline& outline) {
    QPolygonF polygon;
    for (Point p : outline) polygon << map_.toPx(p);
    return polygon;
  };
  struct Ghost {
    ElementId id;
    QPolygonF now, then;
  };
  std::vector<Ghost> ghosts;
  for (const ElementId& id : preview->moved)
    ghosts.push_back(
        {id, polygonOf(outlineOf(session_.layout(), id)), polygonOf(outlineOf(preview->layout, id))});
  // Where things stand fades, where they would stand is drawn on paper.
  QColor paper = palette().color(QPalette::Base);
  paper.setAlphaF(0.55F);
  for (const Ghost& ghost : ghosts) {
    painter.setBrush(paper);
    painter.setPen(QPen(ink, 1.2, Qt::DotLine));
    painter.drawPolygon(ghost.now);
  }
  for (const auto& [id, now, then] : ghosts) {
    painter.setBrush(palette().color(QPalette::Base));
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(then);
    draw(painter, figureOf(preview->layout, id, style()));
    QColor wash = ink;
    wash.setAlphaF(0.16F);
    painter.setBrush(wash);
    painter.setPen(QPen(ink, 2.2, Qt::DashLine));
    painter.drawPolygon(then);
  }
  for (const auto& [id, now, then] : ghosts) {
    painter.setPen(QPen(ink, 2));
    if (!now.isEmpty() && !then.isEmpty())
      paintArrow(painter, now.boundingRect().center(), then.boundingRect().center());
  }
  if (!preview->then) return;
  const Finding& finding = *preview->then;
  painter.setPen(QPen(ink, 2.5));
  painter.setBrush(Qt::NoBrush);
  std::optional<QPointF> middle;
  for (const Place& place : finding.places) {
    const QPolygonF polygon = polygonOf(place.points);
    if (polygon.isEmpty() || place.kind == Place::Kind::zone) continue;
    if (place.kind == Place::Kind::line) painter.drawPolyline(polygon);
    if (!middle) middle = polygon.boundingRect().center();
  }
  const QString figure =
      QString::fromStdString(textOf(finding, preview->layout.option, unit()).measured);
  if (middle && !figure.isEmpty() && !std::holds_alternative<bool>(finding.measured.value_or(true)))
    paintTag(painter, *middle, tr("then %1").arg(figure), QPalette::Highlight);
}

}  // namespace elbowroom::ui
