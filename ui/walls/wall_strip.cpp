#include "ui/walls/wall_strip.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>
#include <algorithm>
#include <cmath>

#include "core/people/body.h"
#include "core/rules/text.h"
#include "ui/look/look.h"
#include "ui/session/selected.h"
#include "ui/tray/tray.h"
#include "ui/walls/strip_layers.h"
#include "ui/walls/strip_menu.h"
#include "ui/walls/strip_place.h"
#include "ui/widgets/length_entry.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

constexpr int kPad = 6;
constexpr double kPxPerMm = 3.78;
constexpr double kMostZoom = 12;
constexpr int kAround = 90;  // what a selection shows beyond its wall: dimension labels, marks

}  // namespace

WallStrip::WallStrip(Session& session, QWidget* parent)
    : QAbstractScrollArea(parent), session_(session), select_(*this), tool_(&select_) {
  setAccessibleName(tr("Wall strip"));
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::StrongFocus);
  layers_ = new StripLayersBar(this);
  setMinimumHeight(130 + layers_->sizeHint().height());
  setViewportMargins(0, layers_->sizeHint().height(), 0, 0);
  connect(layers_, &StripLayersBar::changed, this, &WallStrip::redraw);
  connect(layers_, &StripLayersBar::peopleWanted, this, &WallStrip::peopleWanted);
  viewport()->setBackgroundRole(QPalette::Base);
  viewport()->setAutoFillBackground(true);
  viewport()->setMouseTracking(true);
  setAcceptDrops(true);
  entry_ = new LengthEntry(viewport());
  connect(entry_, &LengthEntry::closed, this, [this] {
    if (tool_ == &select_) session_.endDrag();
  });
  connect(&session_, &Session::changed, this, &WallStrip::redraw);
  connect(&session_, &Session::selectionChanged, this, &WallStrip::showSelected);
  connect(&session_, &Session::changed, this, [this] {
    // What was said of a niche or a mirror is no longer true when it has moved, by undo too.
    if (hasFocus() && tool_ == &select_ && !session_.dragging() && select_.answers()) say(select_.hint());
  });
  connect(&session_, &Session::optionChanged, this, &WallStrip::stopPlacing);
  connect(&session_, &Session::litChanged, viewport(), qOverload<>(&QWidget::update));
  connect(&session_, &Session::previewChanged, viewport(), qOverload<>(&QWidget::update));
  redraw();
}

WallStrip::~WallStrip() = default;

void WallStrip::placeMap() {
  const double width = scene_.drawing().bounds.high.x.inches() * map_.px_per_inch;
  const double spare = std::max(0.0, (viewport()->width() - 2 * kPad - width) / 2);
  map_.origin = QPointF(
      kPad + spare - horizontalScrollBar()->value(),
      kPad + scene_.drawing().bounds.high.y.inches() * map_.px_per_inch - verticalScrollBar()->value());
}

void WallStrip::redraw() {
  const Length ceiling = session_.option().room.ceiling.height.value_or(96_in);
  // Text keeps its size on screen, so the walls get the height that two lines of it leave.
  const double text_px = stripTextMm(layers_->layers()) * kPxPerMm;
  const double fit =
      std::max(0.3, (viewport()->height() - 2 * kPad - text_px) / std::max(12.0, ceiling.inches()));
  const double px_before = map_.px_per_inch;
  map_.px_per_inch = fit * zoom_;
  style_.mm = Length::fromInches(kPxPerMm / map_.px_per_inch);
  style_.unit = session_.plan().unit;
  first_ = labelledFirst();
  layers_->setNobodyNamed(session_.plan().people.empty());
  const std::vector<std::size_t> changed =
      scene_.rebuild(session_.layout(), session_.report(), style_, layers_->layers(), first_);
  const QPointF origin_before = map_.origin;
  arrange();
  placeMap();
  if (px_before != map_.px_per_inch || origin_before != map_.origin || scene_.empty())
    return viewport()->update();
  for (std::size_t wall : changed) viewport()->update(rectOfWall(wall));
  updateChosen();
}

void WallStrip::arrange() {
  const elbowroom::Box& bounds = scene_.drawing().bounds;
  const int width = static_cast<int>(bounds.high.x.inches() * map_.px_per_inch) + 2 * kPad + 1;
  const int height = static_cast<int>((bounds.high.y - bounds.low.y).inches() * map_.px_per_inch) + 2 * kPad;
  const QSignalBlocker quiet_across(horizontalScrollBar()), quiet_up(verticalScrollBar());
  horizontalScrollBar()->setPageStep(viewport()->width());
  horizontalScrollBar()->setSingleStep(40);
  horizontalScrollBar()->setRange(0, std::max(0, width - viewport()->width()));
  verticalScrollBar()->setPageStep(viewport()->height());
  verticalScrollBar()->setSingleStep(40);
  // At the fitting height nothing is hidden; rounding must not bring a bar up.
  verticalScrollBar()->setRange(0, zoom_ > 1.001 ? std::max(0, height - viewport()->height()) : 0);
}

void WallStrip::resizeEvent(QResizeEvent*) {
  layers_->setGeometry(0, 0, width(), layers_->sizeHint().height());
  redraw();
}

void WallStrip::scrollContentsBy(int, int) {
  placeMap();
  viewport()->update();
}

QRect WallStrip::rectOfWall(std::size_t index) const {
  const StripWall& wall = scene_.drawing().walls[index];
  const double left = map_.toPx({wall.x, {}}).x(), right = map_.toPx({wall.x + wall.length, {}}).x();
  return QRect(static_cast<int>(left) - kAround, 0, static_cast<int>(right - left) + 2 * kAround,
               viewport()->height());
}

void WallStrip::updateChosen() {
  QRect chosen;
  const auto& walls = scene_.drawing().walls;
  for (const ElementId& id : session_.selection()) {
    const auto box = scene_.boxOf(id);
    if (!box) continue;
    for (std::size_t i = 0; i < walls.size(); ++i)
      if (box->low.x < walls[i].x + walls[i].length && box->high.x > walls[i].x) chosen |= rectOfWall(i);
  }
  viewport()->update(chosen | chosen_before_);
  chosen_before_ = chosen;
}

// What is pointed at or chosen shows its labels whatever else there is no room for.
std::set<ElementId> WallStrip::labelledFirst() const {
  std::set<ElementId> first = session_.selection();
  if (!session_.dragging() && !select_.hovered().empty()) first.insert(select_.hovered());
  return first;
}

void WallStrip::repaint() {
  if (layers_->layers() != StripLayers{} && labelledFirst() != first_) redraw();
  if (session_.dragging())
    updateChosen();
  else
    viewport()->update();  // hover and bands know no walls
}

SnapRules WallStrip::snapRules(const Pointer& pointer) const {
  return {pointer.snaps(), map_.fromPx(6), unit() == Unit::inches ? 0.5_in : 10_mm};
}

std::vector<HeightLine> WallStrip::eyes() const {
  std::vector<HeightLine> lines;
  for (const Person& person : session_.plan().people)
    if (!person.chair) lines.push_back({person.name, eyesOf(person).high});
  return lines;
}

void WallStrip::askLength(QPointF px, const QString& initial, std::function<QString(Length)> take,
                          const QString& purpose) {
  entry_->open(px, initial, unit(), std::move(take), purpose);
}

void WallStrip::startPlacing(const QString& payload) {
  if (!StripPlace::knows(payload)) return stopPlacing();
  entry_->hide();
  if (select_.busy()) select_.cancel();
  stopPlacing();
  placing_ = std::make_unique<StripPlace>(*this, payload);
  tool_ = placing_.get();
  viewport()->setCursor(tool_->cursor());
  say(tool_->hint());
}

void WallStrip::stopPlacing() {
  if (tool_ == &select_) return;
  tool_ = &select_;
  // The tool that says so may still be on the stack.
  auto* done = placing_.release();
  QMetaObject::invokeMethod(this, [done] { delete done; }, Qt::QueuedConnection);
  viewport()->setCursor(tool_->cursor());
  viewport()->update();
}

void WallStrip::toolDone() {
  stopPlacing();
  say(select_.hint());
  emit placingEnded();
}

void WallStrip::dragEnterEvent(QDragEnterEvent* event) {
  const QString payload = QString::fromUtf8(event->mimeData()->data(kKindMime));
  if (!StripPlace::knows(payload)) return;
  startPlacing(payload);
  event->acceptProposedAction();
}

void WallStrip::dragMoveEvent(QDragMoveEvent* event) {
  tool_->move(pointerAt(event->position(), event->modifiers()), true);
  event->acceptProposedAction();
}

void WallStrip::dragLeaveEvent(QDragLeaveEvent*) {
  if (tool_ != &select_) tool_->cancel();
}

void WallStrip::dropEvent(QDropEvent* event) {
  if (tool_ == &select_) return;
  tool_->press(pointerAt(event->position(), event->modifiers()));
  if (tool_ != &select_) tool_->cancel();
  setFocus();
  event->acceptProposedAction();
}

void WallStrip::draw(QPainter& painter, const DisplayList& list) {
  PaintOptions options;
  options.dark = isDark(palette());
  options.px_per_mm = kPxPerMm;
  elbowroom::ui::paint(painter, list, map_, options);
}

void WallStrip::paintEvent(QPaintEvent* event) {
  const Look& l = lookOf(*this);
  QPainter painter(viewport());
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(event->rect());
  if (scene_.empty()) {
    painter.setPen(l.soft);
    painter.drawText(viewport()->rect(), Qt::AlignCenter | Qt::TextWordWrap,
                     tr("The walls appear here, unrolled, once a room is drawn."));
  } else {
    const auto& walls = scene_.drawing().walls;
    for (const StripWall& wall : walls)
      if (session_.selection().contains(wall.id))
        painter.fillRect(
            QRectF(map_.toPx({wall.x, scene_.drawing().ceiling}), map_.toPx({wall.x + wall.length, {}})),
            l.chosen);
    draw(painter, scene_.common());
    for (std::size_t i = 0; i < walls.size(); ++i)
      if (rectOfWall(i).intersects(event->rect())) draw(painter, scene_.listOf(i));
    draw(painter, scene_.markList());
    paintSelection(painter);
    paintLit(painter);
    tool_->paint(painter);
    paintPreview(painter);
  }
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(l.accent, 1));
    painter.drawRect(QRectF(viewport()->rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
}

void WallStrip::paintSelection(QPainter& painter) {
  const auto rectangle = [&](const elbowroom::Box& box) {
    return QRectF(map_.toPx(box.low), map_.toPx(box.high)).normalized();
  };
  // One box where it is; what else is seen of it, on a neighbouring wall, has its tint.
  for (const StripScene::Shown& each : scene_.shown())
    if (session_.selection().contains(each.id) && scene_.boxOf(each.id) != each.box)
      painter.fillRect(rectangle(each.box), lookOf(*this).chosen);
  painter.setPen(QPen(lookOf(*this).accent, 2));
  painter.setBrush(Qt::NoBrush);
  for (const ElementId& id : session_.selection())
    if (const auto box = scene_.boxOf(id); box && !scene_.leftOf(id))
      painter.drawRect(rectangle(*box).adjusted(-1, -1, 1, 1));
}

void WallStrip::paintLit(QPainter& painter) {
  const int lit = session_.litFinding();
  if (lit < 0 || lit >= static_cast<int>(session_.report().findings.size())) return;
  painter.setPen(QPen(lookOf(*this).accent, 3));
  painter.setBrush(Qt::NoBrush);
  for (const ElementId& id : session_.report().findings[static_cast<std::size_t>(lit)].subjects)
    if (const auto box = scene_.boxOf(id))
      painter.drawRect(QRectF(map_.toPx(box->low), map_.toPx(box->high)).normalized().adjusted(-3, -3, 3, 3));
  for (const StripScene::Mark& mark : scene_.marks())
    if (mark.finding == lit)
      painter.drawEllipse(
          QRectF(map_.toPx(mark.box.low), map_.toPx(mark.box.high)).normalized().adjusted(-4, -4, 4, 4));
}

// Where a remedy would put a thing on its wall.
void WallStrip::paintPreview(QPainter& painter) {
  if (!session_.preview()) return;
  QColor wash = lookOf(*this).accent;
  wash.setAlphaF(0.16F);
  painter.setBrush(wash);
  painter.setPen(QPen(lookOf(*this).accent, 2.2, Qt::DashLine));
  for (const ElementId& id : session_.preview()->moved) {
    const WallItem* item = findWallItem(session_.preview()->layout.option, id);
    if (item == nullptr) continue;
    for (const auto& wall : scene_.drawing().walls) {
      if (wall.id != item->wall) continue;
      const Point low{wall.x + item->along - item->width / 2, item->bottom};
      painter.drawRect(
          QRectF(map_.toPx(low), map_.toPx(low + Vector{item->width, item->height})).normalized());
    }
  }
}

ElementId WallStrip::thingAt(QPointF at) const { return scene_.thingAt(map_.toPlan(at), map_.fromPx(5)); }

QRectF WallStrip::placeOf(const ElementId& id) const {
  const auto box = scene_.boxOf(id);
  return box ? QRectF(map_.toPx(box->low), map_.toPx(box->high)).normalized() : QRectF();
}

void WallStrip::showSelected() {
  QStringList names;
  for (const ElementId& id : session_.selection())
    names << QString::fromStdString(subjectName(session_.option(), id));
  setAccessibleDescription(names.isEmpty() ? tr("Nothing selected. Tab goes from thing to thing.")
                                           : tr("Selected: %1").arg(names.join(u", ")));
  if (!session_.selection().empty() && !select_.busy() && !session_.dragging()) {
    const QRectF place = placeOf(*session_.selection().begin());
    const bool in_view = place.left() >= 0 && place.right() <= viewport()->width();
    if (!place.isNull() && !in_view)
      horizontalScrollBar()->setValue(horizontalScrollBar()->value() +
                                      static_cast<int>(place.center().x() - viewport()->width() / 2.0));
    const bool level = place.top() >= 0 && place.bottom() <= viewport()->height();
    if (!place.isNull() && !level)
      verticalScrollBar()->setValue(verticalScrollBar()->value() +
                                    static_cast<int>(place.center().y() - viewport()->height() / 2.0));
  }
  if (hasFocus() && tool_ == &select_ && !session_.dragging()) say(select_.hint());
  if (layers_->layers() != StripLayers{} && labelledFirst() != first_) redraw();
  viewport()->update();
}

Pointer WallStrip::pointerAt(QPointF px, Qt::KeyboardModifiers keys) const {
  return {map_.toPlan(px), px, keys};
}

bool WallStrip::undoOwnStep() { return tool_->undo(); }

void WallStrip::zoomToFit() {
  zoom_ = 1;
  redraw();
}

void WallStrip::zoomBy(double factor, QPointF about) {
  const Point fixed = map_.toPlan(about);
  zoom_ = std::clamp(zoom_ * factor, 1.0, kMostZoom);
  redraw();
  const QPointF off = map_.toPx(fixed) - about;
  horizontalScrollBar()->setValue(horizontalScrollBar()->value() + static_cast<int>(std::lround(off.x())));
  verticalScrollBar()->setValue(verticalScrollBar()->value() + static_cast<int>(std::lround(off.y())));
  placeMap();
  viewport()->update();
}

// Near the ends of the viewport a drag takes the strip along.
void WallStrip::autoScroll(QPointF at) {
  constexpr double kEdge = 24;
  const double over = at.x() < kEdge ? at.x() - kEdge : std::max(0.0, at.x() - (viewport()->width() - kEdge));
  if (over != 0)
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() +
                                    static_cast<int>(std::clamp(over, -24.0, 24.0)));
}

void WallStrip::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::MiddleButton) {
    panning_from_ = event->position();
    viewport()->setCursor(Qt::ClosedHandCursor);
    return;
  }
  if (event->button() == Qt::RightButton && tool_ != &select_) return tool_->cancel();
  if (event->button() != Qt::LeftButton || scene_.empty()) return;
  tool_->press(pointerAt(event->position(), event->modifiers()));
}

void WallStrip::mouseMoveEvent(QMouseEvent* event) {
  if (panning_from_) {
    const QPointF by = event->position() - *panning_from_;
    panning_from_ = event->position();
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() - static_cast<int>(by.x()));
    verticalScrollBar()->setValue(verticalScrollBar()->value() - static_cast<int>(by.y()));
    return;
  }
  if (scene_.empty()) return;
  const bool down = event->buttons().testFlag(Qt::LeftButton);
  if (down && select_.busy()) autoScroll(event->position());
  tool_->move(pointerAt(event->position(), event->modifiers()), down);
  if (!down) viewport()->setCursor(tool_->cursor());
}

void WallStrip::mouseReleaseEvent(QMouseEvent* event) {
  if (panning_from_) {
    panning_from_.reset();
    viewport()->setCursor(tool_->cursor());
    return;
  }
  if (event->button() == Qt::LeftButton && !scene_.empty())
    tool_->release(pointerAt(event->position(), event->modifiers()));
}

void WallStrip::contextMenuEvent(QContextMenuEvent* event) {
  if (tool_ != &select_ || scene_.empty() || select_.busy()) return;
  QPointF at = event->pos();
  if (event->reason() == QContextMenuEvent::Keyboard) {
    // Where what is selected stands, not where the mouse happens to be.
    if (!session_.selection().empty()) at = placeOf(*session_.selection().begin()).center();
  } else if (const ElementId id = thingAt(at); !id.empty() && !session_.selection().contains(id)) {
    session_.select({id});
  }
  QMenu menu(this);
  fillStripMenu(menu, *this, scene_.spotAt(map_.toPlan(at).x));
  menu.addSeparator();
  menu.addAction(tr("Fit the height"), this, &WallStrip::zoomToFit)->setEnabled(zoom_ > 1);
  menu.exec(event->globalPos());
}

void WallStrip::wheelEvent(QWheelEvent* event) {
  const QPoint angle = event->angleDelta();
  const int turned = angle.y() != 0 ? angle.y() : angle.x();
  event->accept();
  if (event->modifiers() & Qt::ControlModifier)
    return zoomBy(std::pow(1.15, turned / 120.0), event->position());
  const bool up =
      verticalScrollBar()->maximum() > 0 && angle.y() != 0 && !(event->modifiers() & Qt::ShiftModifier);
  QScrollBar* bar = up ? verticalScrollBar() : horizontalScrollBar();
  bar->setValue(bar->value() - turned / 2);
}

void WallStrip::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return tool_->cancel();
  if (tool_->key(event)) return;
  // Not the scroll area's: its arrows would scroll where nothing is selected.
  QFrame::keyPressEvent(event);
}

bool WallStrip::focusNextPrevChild(bool next) {
  // Tab walks the things on the walls and leaves the strip after the last one.
  const bool in_header = QApplication::focusWidget() && layers_->isAncestorOf(QApplication::focusWidget());
  if (in_header || tool_ != &select_ || scene_.empty() || entry_->isVisible())
    return QAbstractScrollArea::focusNextPrevChild(next);
  const std::vector<ElementId> order = scene_.inOrder();
  if (session_.selection().size() == 1 &&
      *session_.selection().begin() == (next ? order.back() : order.front())) {
    session_.select({});
    return QAbstractScrollArea::focusNextPrevChild(next);
  }
  selectNext(session_, order, next);
  return true;
}

void WallStrip::focusInEvent(QFocusEvent* event) {
  QAbstractScrollArea::focusInEvent(event);
  if (tool_ == &select_ && !scene_.empty()) say(select_.hint());
  viewport()->update();
}

void WallStrip::focusOutEvent(QFocusEvent* event) {
  QAbstractScrollArea::focusOutEvent(event);
  viewport()->update();
}

bool WallStrip::viewportEvent(QEvent* event) {
  if (event->type() == QEvent::Leave) select_.leave();
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
