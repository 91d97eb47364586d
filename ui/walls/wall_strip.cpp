#include "ui/walls/wall_strip.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>

#include "core/rules/text.h"
#include "ui/look/look.h"
#include "ui/session/session.h"

namespace elbowroom::ui {
namespace {

constexpr int kPad = 6;
constexpr double kPxPerMm = 3.78;

bool within(const elbowroom::Box& box, Point p) {
  return p.x >= box.low.x && p.x <= box.high.x && p.y >= box.low.y && p.y <= box.high.y;
}

Area areaOfBox(const elbowroom::Box& box) { return (box.high.x - box.low.x) * (box.high.y - box.low.y); }

}  // namespace

WallStrip::WallStrip(Session& session, QWidget* parent) : QAbstractScrollArea(parent), session_(session) {
  setAccessibleName(tr("Wall strip"));
  setFrameShape(QFrame::NoFrame);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::StrongFocus);
  setMinimumHeight(90);
  viewport()->setBackgroundRole(QPalette::Base);
  viewport()->setAutoFillBackground(true);
  connect(&session_, &Session::changed, this, &WallStrip::redraw);
  connect(&session_, &Session::selectionChanged, this, &WallStrip::showSelected);
  redraw();
}

ViewMap WallStrip::map() const {
  ViewMap map;
  map.px_per_inch = px_per_inch_;
  const double width = drawing_.bounds.high.x.inches() * px_per_inch_;
  const double spare = std::max(0.0, (viewport()->width() - 2 * kPad - width) / 2);
  map.origin = QPointF(kPad + spare - horizontalScrollBar()->value(),
                       kPad + drawing_.bounds.high.y.inches() * px_per_inch_);
  return map;
}

void WallStrip::redraw() {
  const Length ceiling = session_.option().room.ceiling.height.value_or(Length::fromInches(96));
  // Text keeps its size on screen, so the walls get the height that two lines of it leave.
  const double text_px = 9.0 * kPxPerMm;
  px_per_inch_ =
      std::max(0.3, (viewport()->height() - 2 * kPad - text_px) / std::max(12.0, ceiling.inches()));
  DrawStyle style;
  style.mm = Length::fromInches(kPxPerMm / px_per_inch_);
  style.unit = session_.plan().unit;
  drawing_ = drawWallStrip(session_.layout(), style);
  boxes_.clear();
  for (std::size_t i = 0; i < drawing_.list.size();) {
    DisplayList one;
    const ElementId id = drawing_.list[i].source;
    for (; i < drawing_.list.size() && drawing_.list[i].source == id; ++i) one.push_back(drawing_.list[i]);
    if (!id.empty() && !findWall(session_.option(), id)) boxes_.emplace_back(id, boundsOf(one));
  }
  arrange();
  viewport()->update();
}

void WallStrip::arrange() {
  const int width = static_cast<int>(drawing_.bounds.high.x.inches() * px_per_inch_) + 2 * kPad + 1;
  horizontalScrollBar()->setPageStep(viewport()->width());
  horizontalScrollBar()->setSingleStep(40);
  horizontalScrollBar()->setRange(0, std::max(0, width - viewport()->width()));
}

void WallStrip::resizeEvent(QResizeEvent*) { redraw(); }

void WallStrip::paintEvent(QPaintEvent*) {
  const Look& l = lookOf(*this);
  QPainter painter(viewport());
  painter.setRenderHint(QPainter::Antialiasing);
  if (drawing_.walls.empty()) {
    painter.setPen(l.soft);
    painter.drawText(viewport()->rect(), Qt::AlignCenter | Qt::TextWordWrap,
                     tr("The walls appear here, unrolled, once a room is drawn."));
  } else {
    const ViewMap view = map();
    for (const StripWall& wall : drawing_.walls)
      if (session_.selection().contains(wall.id))
        painter.fillRect(
            QRectF(view.toPx({wall.x, drawing_.ceiling}), view.toPx({wall.x + wall.length, Length{}})),
            l.chosen);
    PaintOptions options;
    options.dark = isDark(palette());
    options.px_per_mm = kPxPerMm;
    paint(painter, drawing_.list, view, options);
    painter.setPen(QPen(l.accent, 2));
    painter.setBrush(Qt::NoBrush);
    for (const auto& [id, box] : boxes_)
      if (session_.selection().contains(id))
        painter.drawRect(QRectF(view.toPx(box.low), view.toPx(box.high)).normalized().adjusted(-2, -2, 2, 2));
  }
  if (hasFocus()) {
    painter.setPen(QPen(l.accent, 1));
    painter.drawRect(QRectF(viewport()->rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
}

ElementId WallStrip::thingAt(QPointF at) const {
  const Point p = map().toPlan(at);
  const std::pair<ElementId, elbowroom::Box>* best = nullptr;
  for (const auto& each : boxes_)
    if (within(each.second, p) && (!best || areaOfBox(each.second) < areaOfBox(best->second))) best = &each;
  if (best) return best->first;
  for (const StripWall& wall : drawing_.walls)
    if (p.x >= wall.x && p.x < wall.x + wall.length && p.y >= Length{} && p.y <= drawing_.ceiling)
      return wall.id;
  return {};
}

QRectF WallStrip::placeOf(const ElementId& id) const {
  const ViewMap view = map();
  for (const auto& [thing, box] : boxes_)
    if (thing == id) return QRectF(view.toPx(box.low), view.toPx(box.high)).normalized();
  for (const StripWall& wall : drawing_.walls)
    if (wall.id == id)
      return QRectF(view.toPx({wall.x, drawing_.ceiling}), view.toPx({wall.x + wall.length, Length{}}))
          .normalized();
  return {};
}

void WallStrip::showSelected() {
  QStringList names;
  for (const ElementId& id : session_.selection())
    names << QString::fromStdString(subjectName(session_.option(), id));
  setAccessibleDescription(names.isEmpty() ? tr("Nothing selected")
                                           : tr("Selected: %1").arg(names.join(u", ")));
  if (!session_.selection().empty()) {
    const QRectF place = placeOf(*session_.selection().begin());
    const int now = horizontalScrollBar()->value();
    const bool in_view = place.left() >= 0 && place.right() <= viewport()->width();
    if (!place.isNull() && !in_view)
      horizontalScrollBar()->setValue(now + static_cast<int>(place.center().x() - viewport()->width() / 2.0));
  }
  viewport()->update();
}

void WallStrip::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const ElementId id = thingAt(event->position());
  std::set<ElementId> wanted;
  if (event->modifiers() & (Qt::ShiftModifier | Qt::ControlModifier)) {
    wanted = session_.selection();
    if (!id.empty() && wanted.erase(id) == 0) wanted.insert(id);
  } else if (!id.empty()) {
    wanted.insert(id);
  }
  session_.select(std::move(wanted));
}

void WallStrip::mouseReleaseEvent(QMouseEvent* event) { event->accept(); }

void WallStrip::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return session_.select({});
  const bool on = event->key() == Qt::Key_Right, back = event->key() == Qt::Key_Left;
  if (!on && !back) return QAbstractScrollArea::keyPressEvent(event);
  std::vector<ElementId> order;
  for (const StripWall& wall : drawing_.walls) {
    order.push_back(wall.id);
    for (const auto& [id, box] : boxes_)
      if (box.low.x >= wall.x && box.low.x < wall.x + wall.length &&
          std::find(order.begin(), order.end(), id) == order.end())
        order.push_back(id);
  }
  if (order.empty()) return;
  std::size_t next = on ? 0 : order.size() - 1;
  if (!session_.selection().empty()) {
    const auto at = std::find(order.begin(), order.end(), *session_.selection().begin());
    if (at != order.end())
      next = (static_cast<std::size_t>(at - order.begin()) + (on ? 1 : order.size() - 1)) % order.size();
  }
  session_.select({order[next]});
}

bool WallStrip::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const ElementId id = thingAt(help->pos());
    if (id.empty())
      QToolTip::hideText();
    else
      QToolTip::showText(help->globalPos(), QString::fromStdString(subjectName(session_.option(), id)),
                         viewport());
    return true;
  }
  return QAbstractScrollArea::viewportEvent(event);
}

}  // namespace elbowroom::ui
