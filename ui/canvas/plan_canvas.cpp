#include "ui/canvas/plan_canvas.h"

#include <QApplication>
#include <QMimeData>
#include <cmath>

#include "core/base/length_text.h"
#include "core/drawing/marks.h"
#include "ui/widgets/length_entry.h"
#include "ui/canvas/place_tool.h"
#include "ui/canvas/room_tool.h"
#include "ui/session/selected.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

using namespace literals;

namespace {
constexpr const char* kKindMime = "application/x-elbowroom-kind";
constexpr double kPxPerMm = 96 / 25.4;

// Only what a text requires is hatched; advice keeps its mark and its measured line, or the floor would
// vanish under hatches. What the plan does not state is nothing to see: Advice asks for it. The lit finding
// shows its places whatever its level.
Report calmed(Report report) {
  for (Finding& finding : report.findings) {
    if (finding.outcome == Outcome::unknown) finding.places.clear();
    if (finding.level == Level::required && finding.outcome == Outcome::shortfall) continue;
    for (Place& place : finding.places)
      if (place.kind == Place::Kind::zone && place.points.size() >= 3 && areaOf(place.points) > Area{})
        place = {Place::Kind::point, {centroidOf(place.points)}};
  }
  return report;
}
}  // namespace

PlanCanvas::PlanCanvas(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), select_(*this, stand_in_), tool_(&select_) {
  had_room_ = !session_.layout().room.empty();
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
  setAcceptDrops(true);
  setAccessibleName(tr("Plan"));
  setAccessibleDescription(
      tr("Tab goes from one element to the next, arrows move it, a number sets its distance."));
  entry_ = new LengthEntry(this);
  connect(entry_, &LengthEntry::closed, this, [this] {
    if (tool_ == &select_) session_.endDrag();
    followRoom();
  });
  connect(&session_, &Session::changed, this, [this] {
    stale_ = true;
    const bool had_room = had_room_;
    had_room_ = !session_.layout().room.empty();
    if (had_room_ && !had_room) zoomToFit();
    followRoom();
    update();
  });
  connect(&session_, &Session::optionChanged, this, [this] {
    if (tool_ != &select_) take(nullptr);
    stale_ = true;
    zoomToFit();
  });
  connect(&session_, &Session::selectionChanged, this, [this] {
    if (tool_ == &select_ && !session_.dragging()) say(select_.hint());
    stale_ = true;
    update();
  });
  connect(&session_, &Session::litChanged, this, qOverload<>(&QWidget::update));
  connect(&session_, &Session::previewChanged, this, qOverload<>(&QWidget::update));
}

PlanCanvas::~PlanCanvas() = default;

DrawStyle PlanCanvas::style() const {
  DrawStyle style;
  style.mm = map_.fromPx(kPxPerMm);
  style.unit = unit();
  style.clear_zones = clear_zones_;
  style.most_numbers = 3;
  return style;
}

void PlanCanvas::rebuild() {
  stale_ = false;
  const Layout& layout = session_.layout();
  plan_list_ = drawPlan(layout, style());
  // An opening's figures stand in the Particulars; on the plan they would cover the floor under discussion.
  std::erase_if(plan_list_, [&](const DrawItem& item) {
    return item.role == Role::label && findOpening(layout.option, item.source) &&
           !session_.selection().contains(item.source);
  });
  zone_list_ = clear_zones_ ? drawClearZones(layout, session_.report(), style()) : DisplayList{};
  Clutter drawn;
  drawn.add(plan_list_);
  finding_list_ = drawFindingsAmid(calmed(session_.report()), drawn, style());
  turning_list_ = turning_ ? turningList(drawn) : DisplayList{};
}

DisplayList PlanCanvas::turningList(Clutter drawn) const {
  const TurningFigures& turning = session_.report().figures.turning;
  const Circle circle = turning.knee_space_used ? turning.with_knees : turning.largest;
  if (circle.radius <= 6_in || stand_in_.kind == StandIn::Kind::circle) return {};
  DisplayList list = drawCircle(circle, "", style());
  drawn.add(finding_list_);
  TextPrim text;
  text.text = tr("turns %1").arg(roundedDown(circle.radius * 2, unit())).toStdString();
  text.height = style().mm.scaled(2.7);
  text.h = AnchorH::centre;
  text.v = AnchorV::middle;
  text.halo = true;
  // Just inside the rim, wherever it covers least.
  const Length in = circle.radius - style().mm * 4;
  std::vector<TextPlace> places;
  for (int i = 0; i < 24; ++i) {
    text.at = circle.center + in * Direction::fromAngle(Angle::fromDegrees(90 + 15 * i));
    places.push_back({text});
  }
  if (const auto best = quietestText(drawn, places, 1e18)) list.push_back({*best, Role::label, {}});
  return list;
}

Pointer PlanCanvas::pointerAt(QPointF px, Qt::KeyboardModifiers keys) const {
  return {map_.toPlan(px), px, keys};
}

SnapRules PlanCanvas::snapRules(const Pointer& pointer) const {
  return {pointer.snaps(), map_.fromPx(9), unit() == Unit::inches ? 0.5_in : 10_mm};
}

void PlanCanvas::take(std::unique_ptr<Tool> tool) {
  if (tool_ != &select_) {
    session_.cancelDrag();
  } else {
    session_.endDrag();
  }
  entry_->hide();
  other_ = std::move(tool);
  tool_ = other_ ? other_.get() : &select_;
  setCursor(tool_->cursor());
  say(tool_->hint());
  emit toolChanged();
  update();
}

void PlanCanvas::undo() {
  if (!tool_->undo()) session_.undo();
}

void PlanCanvas::startRoom() {
  const Option& option = session_.option();
  if (!option.openings.empty() || !option.on_walls.empty() || !option.fixtures.empty()) {
    emit session_.refused(
        tr("This option has things in its room. Drag its walls and corners instead, double-click a "
           "wall for a new corner, or remove what stands in it to draw the walls anew."));
    return;
  }
  session_.select({});
  take(std::make_unique<RoomTool>(*this));
  setFocus();
}

void PlanCanvas::startPlacing(const QString& payload) {
  take(std::make_unique<PlaceTool>(*this, payload));
  setFocus();
}

void PlanCanvas::stopPlacing() {
  if (tool_ != &select_) take(nullptr);
}

void PlanCanvas::toolDone() {
  // The tool that says so is still on the stack.
  auto* done = other_.release();
  tool_ = &select_;
  if (done) QMetaObject::invokeMethod(this, [done] { delete done; }, Qt::QueuedConnection);
  setCursor(tool_->cursor());
  say(select_.hint());
  emit toolChanged();
  update();
}

void PlanCanvas::showStandIn(StandIn::Kind kind) {
  if (kind != StandIn::Kind::none && !stand_in_.shown())
    stand_in_.center = session_.layout().room.empty() ? map_.toPlan(rect().center())
                                                      : session_.report().figures.turning.with_knees.center;
  stand_in_.kind = kind;
  standInChanged();
}

void PlanCanvas::standInChanged() {
  stale_ = true;
  emit standInMoved();
  update();
}

void PlanCanvas::jumpStandIn() {
  if (!stand_in_.shown()) showStandIn(StandIn::Kind::circle);
  const bool found = stand_in_.jump(session_.layout());
  say(found ? stand_in_.verdict(session_, unit()) : tr("No place found for it in this room as it stands."));
  standInChanged();
}

void PlanCanvas::setShowsClearZones(bool on) {
  clear_zones_ = on;
  stale_ = true;
  update();
}

void PlanCanvas::setShowsTurning(bool on) {
  turning_ = on;
  stale_ = true;
  update();
}

void PlanCanvas::zoomToFit() {
  stale_ = true;
  const Layout& layout = session_.layout();
  if (width() < 40 || height() < 40) return;
  if (layout.room.empty()) {
    map_.px_per_inch = std::min(width(), height()) / 140.0;
    map_.origin = QPointF(width() / 2.0 - 48 * map_.px_per_inch, height() / 2.0 + 30 * map_.px_per_inch);
    update();
    return;
  }
  std::vector<Outline> all{layout.room};
  for (const WallFrame& wall : layout.walls)
    if (!wall.body.empty()) all.push_back(wall.body);
  for (const PlacedOpening& opening : layout.openings)
    for (const Leaf& leaf : opening.leaves) all.push_back(sectorOutline(leaf, 8));
  const Box box = boundsOf(all);
  const double margin = 44;
  const double w = (box.high.x - box.low.x).inches(), h = (box.high.y - box.low.y).inches();
  map_.px_per_inch = std::clamp(std::min((width() - 2 * margin) / w, (height() - 2 * margin) / h), 0.3, 60.0);
  const Point middle = midpoint(box.low, box.high);
  map_.origin = {};
  map_.origin = QPointF(width() / 2.0, height() / 2.0) - map_.toPx(middle);
  fitted_ = true;
  in_view_ = true;
  update();
}

bool PlanCanvas::roomInView() const {
  const Layout& layout = session_.layout();
  if (layout.room.empty()) return false;
  std::vector<Outline> all{layout.room};
  for (const WallFrame& wall : layout.walls)
    if (!wall.body.empty()) all.push_back(wall.body);
  const Box box = boundsOf(all);
  return QRectF(rect()).contains(QRectF(map_.toPx(box.low), map_.toPx(box.high)).normalized());
}

void PlanCanvas::followRoom() {
  // The sheet does not move under the hand that drags a wall.
  if (session_.dragging()) return;
  if (in_view_ && !roomInView() && !session_.layout().room.empty()) zoomToFit();
  in_view_ = roomInView();
}

void PlanCanvas::zoomBy(double factor, QPointF about) {
  const Point fixed = map_.toPlan(about);
  map_.px_per_inch = std::clamp(map_.px_per_inch * factor, 0.3, 120.0);
  map_.origin += about - map_.toPx(fixed);
  stale_ = true;
  fitted_ = false;
  in_view_ = roomInView();
  update();
}

void PlanCanvas::zoomToPlace(const Place& place) {
  if (place.points.empty()) return;
  const Box box = boundsOf(place.points);
  const QPointF at = map_.toPx(midpoint(box.low, box.high));
  if (!rect().adjusted(60, 60, -60, -60).contains(at.toPoint())) {
    map_.origin += QPointF(rect().center()) - at;
    stale_ = true;
    in_view_ = roomInView();
  }
  update();
}

void PlanCanvas::askLength(QPointF px, const QString& initial, std::function<QString(Length)> take,
                           const QString& purpose) {
  entry_->open(px, initial, unit(), std::move(take), purpose);
}

void PlanCanvas::draw(QPainter& painter, const DisplayList& list) {
  PaintOptions options;
  options.dark = palette().color(QPalette::Base).lightness() < 128;
  options.px_per_mm = kPxPerMm;
  elbowroom::ui::paint(painter, list, map_, options);
}

void PlanCanvas::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && space_)) {
    panning_from_ = event->position();
    setCursor(Qt::ClosedHandCursor);
    return;
  }
  if (event->button() == Qt::RightButton && tool_ != &select_) return tool_->cancel();
  if (event->button() != Qt::LeftButton) return;
  tool_->press(pointerAt(event->position(), event->modifiers()));
}

void PlanCanvas::mouseMoveEvent(QMouseEvent* event) {
  if (panning_from_) {
    map_.origin += event->position() - *panning_from_;
    panning_from_ = event->position();
    fitted_ = false;
    stale_ = true;
    in_view_ = roomInView();
    update();
    return;
  }
  tool_->move(pointerAt(event->position(), event->modifiers()), event->buttons().testFlag(Qt::LeftButton));
  if (stand_in_.shown()) emit standInMoved();
  setCursor(tool_->cursor());
}

void PlanCanvas::mouseReleaseEvent(QMouseEvent* event) {
  if (panning_from_) {
    panning_from_.reset();
    setCursor(tool_->cursor());
    return;
  }
  if (event->button() == Qt::LeftButton) tool_->release(pointerAt(event->position(), event->modifiers()));
}

void PlanCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) tool_->doublePress(pointerAt(event->position(), event->modifiers()));
}

void PlanCanvas::leaveEvent(QEvent*) { session_.lightFinding(-1); }

void PlanCanvas::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  if (notches != 0) zoomBy(std::pow(1.15, notches), event->position());
  event->accept();
}

void PlanCanvas::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_ = true;
    setCursor(Qt::OpenHandCursor);
    return;
  }
  if (event->key() == Qt::Key_Escape) {
    tool_->cancel();
    emit standInMoved();
    return;
  }
  if (tool_->key(event)) {
    if (stand_in_.shown()) emit standInMoved();
    return;
  }
  QWidget::keyPressEvent(event);
}

void PlanCanvas::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_ = false;
    setCursor(tool_->cursor());
    return;
  }
  QWidget::keyReleaseEvent(event);
}

bool PlanCanvas::focusNextPrevChild(bool next) {
  // Tab walks the elements and leaves the canvas after the last one.
  if (tool_ != &select_ || session_.layout().walls.empty()) return QWidget::focusNextPrevChild(next);
  const std::vector<ElementId> ends = elementsInOrder(session_.option());
  if (session_.selection().size() == 1 &&
      *session_.selection().begin() == (next ? ends.back() : ends.front())) {
    session_.select({});
    return QWidget::focusNextPrevChild(next);
  }
  selectNext(session_, ends, next);
  return true;
}

void PlanCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (fitted_ || !event->oldSize().isValid() || session_.layout().room.empty()) zoomToFit();
}

void PlanCanvas::dragEnterEvent(QDragEnterEvent* event) {
  if (!event->mimeData()->hasFormat(kKindMime)) return;
  startPlacing(QString::fromUtf8(event->mimeData()->data(kKindMime)));
  event->acceptProposedAction();
}

void PlanCanvas::dragMoveEvent(QDragMoveEvent* event) {
  tool_->move(pointerAt(event->position(), event->modifiers()), true);
  event->acceptProposedAction();
}

void PlanCanvas::dragLeaveEvent(QDragLeaveEvent*) {
  if (tool_ != &select_) tool_->cancel();
}

void PlanCanvas::dropEvent(QDropEvent* event) {
  if (tool_ == &select_) return;
  tool_->press(pointerAt(event->position(), event->modifiers()));
  if (tool_ != &select_) tool_->cancel();
  setFocus();
  event->acceptProposedAction();
}

}  // namespace elbowroom::ui
