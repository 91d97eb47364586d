#include "ui/canvas/select_tool.h"

#include <QApplication>
#include <algorithm>

#include "core/plan/move_things.h"
#include "ui/canvas/tool_parts.h"

namespace elbowroom::ui {

using namespace literals;

SelectTool::SelectTool(CanvasContext& context, StandIn& stand_in) : context_(context), stand_in_(stand_in) {}

void SelectTool::press(const Pointer& pointer) {
  pressed_on_.reset();
  pressed_at_ = pointer;
  for (const auto dims = liveDimensions(context_); const LiveDimension& dim : dims)
    if (dim.label_box.contains(pointer.px)) {
      pressed_at_.reset();
      openDimension(static_cast<int>(&dim - dims.data()), dim.text);
      return;
    }
  if (stand_in_.grabs(pointer.plan)) {
    stand_in_grabbed_ = true;
    stand_in_grip_ = stand_in_.center - pointer.plan;
    return;
  }
  Session& session = context_.session();
  const Length reach = context_.snapRules(pointer).reach;
  if (const auto handle = turner(); handle && distance(*handle, pointer.plan) <= reach) {
    pressed_on_ = Hit{Hit::Kind::turner, *session.selection().begin()};
    return;
  }
  const Hit hit = hitAt(session.layout(), pointer.plan, reach, true);
  const bool add = pointer.keys.testFlag(Qt::ControlModifier);
  if (hit.kind == Hit::Kind::none && stand_in_.shown() && contains(stand_in_.outline(), pointer.plan)) {
    stand_in_grabbed_ = true;
    stand_in_grip_ = stand_in_.center - pointer.plan;
    return;
  }
  if (hit.kind == Hit::Kind::none) {
    if (!add) session.select({});
    banding_ = true;
    band_from_ = band_to_ = pointer.px;
    return;
  }
  pressed_on_ = hit;
  auto chosen = session.selection();
  if (add) {
    if (!chosen.erase(hit.id)) chosen.insert(hit.id);
    session.select(chosen);
    pressed_on_.reset();
  } else if (!chosen.contains(hit.id)) {
    session.select({hit.id});
  }
  active_dimension_ = 0;
}

void SelectTool::move(const Pointer& pointer, bool down) {
  Session& session = context_.session();
  if (!down) {
    hover_ = hitAt(session.layout(), pointer.plan, context_.snapRules(pointer).reach, true);
    bool over_label = false;
    for (const LiveDimension& dim : liveDimensions(context_))
      over_label |= dim.label_box.contains(pointer.px);
    const auto handle = turner();
    cursor_ = over_label ? Qt::IBeamCursor
              : handle && distance(*handle, pointer.plan) <= context_.snapRules(pointer).reach
                  ? Qt::PointingHandCursor
              : stand_in_.grabs(pointer.plan)    ? Qt::OpenHandCursor
              : hover_.kind == Hit::Kind::none   ? Qt::ArrowCursor
              : hover_.kind == Hit::Kind::corner ? Qt::CrossCursor
                                                 : Qt::SizeAllCursor;
    session.lightFinding(findingAt(session.report(), pointer.plan, context_.snapRules(pointer).reach));
    context_.repaint();
    return;
  }
  if (stand_in_grabbed_) {
    stand_in_.center = pointer.plan + stand_in_grip_;
    context_.say(stand_in_.verdict(session, context_.unit()));
    context_.repaint();
    return;
  }
  if (banding_) {
    band_to_ = pointer.px;
    context_.repaint();
    return;
  }
  if (!pressed_on_ || !pressed_at_) return;
  if (!drag_) {
    if ((pointer.px - pressed_at_->px).manhattanLength() < QApplication::startDragDistance() / 2.0) return;
    drag_ = startDrag(context_, *pressed_on_, *pressed_at_);
    if (!drag_) return;
    session.beginDrag();
  }
  drag_->to(pointer);
  const QString refused = session.lastError();
  context_.say(refused.isEmpty() ? drag_->words() : refused);
  context_.repaint();
}

void SelectTool::release(const Pointer& pointer) {
  Session& session = context_.session();
  if (banding_) {
    banding_ = false;
    if ((band_to_ - band_from_).manhattanLength() > 6) {
      const Box box = bandOf(context_.map(), band_from_, band_to_);
      auto chosen = pointer.keys.testFlag(Qt::ControlModifier) ? session.selection() : std::set<ElementId>{};
      for (const ElementId& id : elementsWithin(session.layout(), box)) chosen.insert(id);
      session.select(chosen);
    }
  }
  if (drag_) {
    drag_.reset();
    session.endDrag();
  } else if (pressed_on_ && !pointer.keys.testFlag(Qt::ControlModifier) && session.selection().size() > 1) {
    session.select({pressed_on_->id});
  }
  stand_in_grabbed_ = false;
  pressed_on_.reset();
  pressed_at_.reset();
  context_.say(hint());
  context_.repaint();
}

void SelectTool::doublePress(const Pointer& pointer) {
  // A double click on a wall makes a corner there, so that a straight wall can become a jog.
  Session& session = context_.session();
  const Hit hit = hitAt(session.layout(), pointer.plan, context_.snapRules(pointer).reach, true);
  if (hit.kind != Hit::Kind::wall) return;
  for (const WallFrame& wall : session.layout().walls) {
    if (wall.id != hit.id) continue;
    std::string stem = "w";
    session.perform(
        SplitWall{wall.id, dot(pointer.plan - wall.from, wall.along), freshId(session.option(), stem)},
        QObject::tr("Add corner"));
    return;
  }
}

bool SelectTool::undo() {
  if (!drag_) return false;
  cancel();
  return true;
}

void SelectTool::cancel() {
  if (drag_) {
    drag_.reset();
    context_.session().cancelDrag();
  } else if (banding_) {
    banding_ = false;
  } else if (!context_.session().selection().empty()) {
    context_.session().select({});
  } else {
    stand_in_.kind = StandIn::Kind::none;
  }
  pressed_on_.reset();
  stand_in_grabbed_ = false;
  context_.repaint();
}

void SelectTool::openDimension(int index, const QString& initial) {
  const auto dims = liveDimensions(context_);
  if (index < 0 || index >= static_cast<int>(dims.size())) return;
  const LiveDimension dim = dims[static_cast<std::size_t>(index)];
  active_dimension_ = index;
  // From here on the mouse no longer drags; the session's drag stays open so that the typed figure becomes
  // its one step (the canvas ends it when the entry closes).
  drag_.reset();
  pressed_on_.reset();
  auto take = [this, dim](Length wanted) {
    const QString why = applyDimension(context_.session(), dim, wanted);
    context_.repaint();
    return why;
  };
  context_.askLength(dim.label_px, initial, take, QObject::tr("Distance"));
}

bool SelectTool::nudgeBy(QKeyEvent* event) {
  const auto arrow = arrowOf(*event);
  if (!arrow) return false;
  Session& session = context_.session();
  const Length step = nudgeStep(*event, context_.unit());
  const Vector by{step * arrow->dx, step * arrow->dy};
  if (session.selection().empty()) {
    if (!stand_in_.shown()) return false;
    stand_in_.center = stand_in_.center + by;
    context_.say(stand_in_.verdict(session, context_.unit()));
    context_.repaint();
    return true;
  }
  nudge(session, movedBy(session.layout(), session.selection(), by, step));
  return true;
}

bool SelectTool::key(QKeyEvent* event) {
  const auto dims = liveDimensions(context_);
  const QString typed = event->text();
  const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
  if (plain && !typed.isEmpty() && typed[0].isDigit() && !dims.empty()) {
    openDimension(std::min<int>(active_dimension_, static_cast<int>(dims.size()) - 1), typed);
    return true;
  }
  if (plain && event->key() == Qt::Key_D && dims.size() > 1) {
    active_dimension_ = (active_dimension_ + 1) % static_cast<int>(dims.size());
    context_.repaint();
    return true;
  }
  if (plain && (event->key() == Qt::Key_BracketLeft || event->key() == Qt::Key_BracketRight)) {
    const Angle by = event->key() == Qt::Key_BracketLeft ? 15_deg : -15_deg;
    if (context_.session().selection().empty() && stand_in_.shown()) {
      stand_in_.turn = (stand_in_.turn + by).normalised();
      context_.say(stand_in_.verdict(context_.session(), context_.unit()));
      context_.repaint();
    } else {
      turnSelected(by);
    }
    return true;
  }
  return nudgeBy(event);
}

std::optional<Point> SelectTool::turner() const {
  const Session& session = context_.session();
  if (session.selection().size() != 1) return std::nullopt;
  return turnerOf(session.layout(), *session.selection().begin(), context_.map().fromPx(22));
}

void SelectTool::turnSelected(Angle by) {
  Session& session = context_.session();
  std::vector<Fixture> turned;
  for (const Fixture& fixture : session.option().fixtures) {
    if (!session.selection().contains(fixture.id)) continue;
    if (const auto* standing = std::get_if<Standing>(&fixture.placement)) {
      Fixture copy = fixture;
      copy.placement = Standing{standing->at, (standing->turn + by).normalised()};
      turned.push_back(std::move(copy));
    }
  }
  if (turned.empty())
    emit session.refused(
        QObject::tr("Only things that stand free can be turned; drag it off its wall first."));
  else
    session.perform(PutFixtures{turned}, QObject::tr("Turn"), "turn");
}

void SelectTool::flipSelected() {
  Session& session = context_.session();
  std::vector<Opening> flipped;
  for (const Opening& opening : session.option().openings) {
    if (!session.selection().contains(opening.id) || opening.kind != OpeningKind::door) continue;
    Opening copy = opening;
    copy.hinge = copy.hinge == Hand::left ? Hand::right : Hand::left;
    if (copy.toward) copy.toward = *copy.toward == Hand::left ? Hand::right : Hand::left;
    flipped.push_back(std::move(copy));
  }
  if (!flipped.empty()) session.perform(PutOpenings{flipped}, QObject::tr("Change hand of door"));
}

void SelectTool::paint(QPainter& painter) {
  const Layout& layout = context_.session().layout();
  if (hover_.kind != Hit::Kind::none && !drag_) {
    if (hover_.kind == Hit::Kind::corner) {
      for (const WallFrame& wall : layout.walls)
        if (wall.id == hover_.id) {
          painter.setPen(QPen(QGuiApplication::palette().color(QPalette::Highlight), 2));
          painter.setBrush(QGuiApplication::palette().color(QPalette::Base));
          painter.drawEllipse(context_.map().toPx(wall.from), 6, 6);
        }
    } else if (const Outline outline = outlineOf(layout, hover_.id); !outline.empty()) {
      context_.draw(painter, {{PolyPrim{outline, true, false}, Role::guide, {}}});
    }
  }
  if (const auto handle = turner()) {
    const QPointF at = context_.map().toPx(*handle);
    painter.setPen(QPen(QGuiApplication::palette().color(QPalette::Highlight), 1.5));
    painter.setBrush(QGuiApplication::palette().color(QPalette::Base));
    painter.drawEllipse(at, 7, 7);
    painter.drawArc(QRectF(at.x() - 3.5, at.y() - 3.5, 7, 7), 40 * 16, 280 * 16);
  }
  if (drag_) drag_->paint(painter);
  paintLiveDimensions(painter, context_, liveDimensions(context_), active_dimension_);
  if (banding_) paintBand(painter, band_from_, band_to_);
}

QString SelectTool::hint() const {
  const Session& session = context_.session();
  if (session.layout().room.empty())
    return QObject::tr("Nothing is drawn yet: start with the room as found.");
  if (session.selection().empty())
    return QObject::tr(
        "Drag to move · double-click a wall to add a corner · wheel to zoom · middle button to pan");
  return QObject::tr(
      "Type a number to set the marked distance (D: next one) · arrows nudge · Shift: no snapping · "
      "Del removes");
}

}  // namespace elbowroom::ui
