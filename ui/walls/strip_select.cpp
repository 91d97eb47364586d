#include "ui/walls/strip_select.h"

#include <QApplication>
#include <algorithm>

#include "ui/canvas/tool_parts.h"
#include "ui/session/selected.h"

namespace elbowroom::ui {

using namespace literals;

namespace {

constexpr double kHandlePx = 7;
constexpr double kPickPx = 5;

bool adds(const Pointer& pointer) { return pointer.keys & (Qt::ControlModifier | Qt::ShiftModifier); }

}  // namespace

std::optional<Handle> StripSelect::handleAt(const Pointer& pointer) const {
  for (const Handle& handle : handlesOf(context_)) {
    const QPointF off = context_.map().toPx(handle.at) - pointer.px;
    if (std::max(std::abs(off.x()), std::abs(off.y())) <= kHandlePx / 2 + 1) return handle;
  }
  return std::nullopt;
}

void StripSelect::press(const Pointer& pointer) {
  Session& session = context_.session();
  pressed_at_ = pointer;
  pressed_on_ = {};
  pressed_handle_.reset();
  const auto dims = stripDimensions(context_);
  for (int i : visibleDimensions(dims, active_dimension_))
    if (dims[static_cast<std::size_t>(i)].label_box.contains(pointer.px)) {
      pressed_at_.reset();
      QString text = dims[static_cast<std::size_t>(i)].text;
      openDimension(i, text.remove(QStringLiteral("\u2104 ")));
      return;
    }
  pressed_handle_ = handleAt(pointer);
  if (pressed_handle_) {
    pressed_on_ = *session.selection().begin();
    return;
  }
  const ElementId id = context_.scene().thingAt(pointer.plan, context_.map().fromPx(kPickPx));
  const bool wall = findWall(session.option(), id) != nullptr;
  if (adds(pointer)) {
    auto chosen = session.selection();
    if (!id.empty() && !wall) {
      if (!chosen.erase(id)) chosen.insert(id);
      session.select(chosen);
      pressed_at_.reset();
      return;
    }
  }
  pressed_on_ = id;
  if (id.empty() || wall) {
    // The wall itself is taken on release: a band may begin on it.
    band_from_ = band_to_ = pointer.px;
    return;
  }
  if (!session.selection().contains(id)) session.select({id});
  active_dimension_ = 0;
}

void StripSelect::move(const Pointer& pointer, bool down) {
  Session& session = context_.session();
  if (!down) {
    const ElementId before = hover_;
    hover_ = context_.scene().thingAt(pointer.plan, context_.map().fromPx(kPickPx));
    cursor_ = cursorAt(pointer);
    session.lightFinding(context_.scene().findingAt(pointer.plan));
    if (hover_ != before) context_.repaint();
    return;
  }
  if (!pressed_at_) return;
  if (!drag_ && !banding_) {
    if ((pointer.px - pressed_at_->px).manhattanLength() < QApplication::startDragDistance() / 2.0) return;
    if (pressed_on_.empty() || findWall(session.option(), pressed_on_)) {
      banding_ = true;
    } else {
      session.beginDrag();
      drag_ = pressed_handle_ ? dragHandle(context_, pressed_on_, *pressed_handle_, *pressed_at_)
                              : dragThing(context_, pressed_on_, *pressed_at_);
      if (!drag_) {
        session.cancelDrag();
        pressed_at_.reset();
        context_.say(QObject::tr("It stands free: move it on the plan."));
        return;
      }
    }
  }
  if (banding_) {
    band_to_ = pointer.px;
    context_.repaint();
    return;
  }
  drag_->to(pointer);
  const QString refused = session.lastError();
  context_.say(refused.isEmpty() ? drag_->words() : refused);
  context_.repaint();
}

void StripSelect::release(const Pointer& pointer) {
  Session& session = context_.session();
  if (banding_) {
    banding_ = false;
    const Box box = bandOf(context_.map(), band_from_, band_to_);
    auto chosen = adds(pointer) ? session.selection() : std::set<ElementId>{};
    for (const ElementId& id : context_.scene().within(box)) chosen.insert(id);
    session.select(chosen);
  } else if (drag_) {
    drag_.reset();
    session.endDrag();
  } else if (pressed_at_ && !pressed_handle_) {
    const bool thing = !pressed_on_.empty() && !findWall(session.option(), pressed_on_);
    if (!thing && !adds(pointer))
      session.select(pressed_on_.empty() ? std::set<ElementId>{} : std::set<ElementId>{pressed_on_});
    else if (thing && session.selection().size() > 1)
      session.select({pressed_on_});
  }
  pressed_at_.reset();
  pressed_handle_.reset();
  context_.say(hint());
  context_.repaint();
}

bool StripSelect::undo() {
  if (!drag_) return false;
  cancel();
  return true;
}

void StripSelect::cancel() {
  if (drag_) {
    drag_.reset();
    context_.session().cancelDrag();
  } else if (banding_) {
    banding_ = false;
  } else {
    context_.session().select({});
  }
  pressed_at_.reset();
  pressed_handle_.reset();
  context_.repaint();
}

void StripSelect::leave() {
  hover_ = {};
  context_.session().lightFinding(-1);
  context_.repaint();
}

void StripSelect::openDimension(int index, const QString& initial) {
  const auto dims = stripDimensions(context_);
  if (index < 0 || index >= static_cast<int>(dims.size())) return;
  const StripDimension dim = dims[static_cast<std::size_t>(index)];
  active_dimension_ = index;
  // The session's drag stays open, so that the typed figure becomes its one step; the strip ends it when the
  // entry closes.
  drag_.reset();
  pressed_at_.reset();
  auto take = [this, dim](Length wanted) {
    const QString why = applyStripDimension(context_.session(), dim, wanted);
    context_.repaint();
    return why;
  };
  context_.askLength(dim.label_px, initial, take, dim.purpose());
}

bool StripSelect::nudgeBy(QKeyEvent* event) {
  const auto arrow = arrowOf(*event);
  if (!arrow) return false;
  const auto [dx, dy] = *arrow;
  Session& session = context_.session();
  const Length step = nudgeStep(*event, context_.unit());
  PutThings put;
  const Layout& layout = session.layout();
  for (const ElementId& id : session.selection()) {
    std::optional<WallBox> box = wallBoxOf(layout, id);
    if (!box) continue;
    const Fixture* fixture = findFixture(layout.option, id);
    const Opening* opening = findOpening(layout.option, id);
    if (dy != 0 && (fixture || (opening && opening->kind == OpeningKind::door))) continue;
    // Never off its wall, into the floor or the ceiling; what is out there already may come back.
    const SnapRules exact{false, {}, {}};
    const WallSnapped place =
        snapOnWall(layout, *box, {box->middle() + step * dx, box->centreHeight() + step * dy}, exact);
    const bool over = place.wall != box->wall;
    const Length by = over ? Length{} : place.middle - box->middle(),
                 up = dy == 0 ? Length{} : place.bottom - box->low;
    box->left += by, box->right += by, box->low += up, box->high += up;
    putBox(put, layout, *box);
  }
  nudge(session, std::move(put));
  return !session.selection().empty();
}

bool StripSelect::key(QKeyEvent* event) {
  const bool plain = !(event->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
  const auto dims = stripDimensions(context_);
  const QString typed = event->text();
  if (plain && !typed.isEmpty() && typed[0].isDigit() && !dims.empty()) {
    openDimension(std::min<int>(active_dimension_, static_cast<int>(dims.size()) - 1), typed);
    return true;
  }
  if (plain && event->key() == Qt::Key_D && dims.size() > 1) {
    active_dimension_ = (active_dimension_ + 1) % static_cast<int>(dims.size());
    context_.say(dims[static_cast<std::size_t>(active_dimension_)].purpose());
    context_.repaint();
    return true;
  }
  if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
    removeSelected(context_.session());
    return true;
  }
  return nudgeBy(event);
}

Qt::CursorShape StripSelect::cursorAt(const Pointer& pointer) const {
  const auto dims = stripDimensions(context_);
  for (int i : visibleDimensions(dims, active_dimension_))
    if (dims[static_cast<std::size_t>(i)].label_box.contains(pointer.px)) return Qt::IBeamCursor;
  if (const auto handle = handleAt(pointer))
    return handle->across == 0   ? Qt::SizeVerCursor
           : handle->up == 0     ? Qt::SizeHorCursor
           : handle->across == handle->up ? Qt::SizeBDiagCursor
                                          : Qt::SizeFDiagCursor;
  if (hover_.empty() || findWall(context_.session().option(), hover_)) return Qt::ArrowCursor;
  const Opening* opening = findOpening(context_.session().option(), hover_);
  const bool sideways = findFixture(context_.session().option(), hover_) != nullptr ||
                        (opening && opening->kind == OpeningKind::door);
  return sideways ? Qt::SizeHorCursor : Qt::SizeAllCursor;
}

void StripSelect::paint(QPainter& painter) {
  const QPalette palette = QGuiApplication::palette();
  if (!drag_ && !hover_.empty() && !context_.session().selection().contains(hover_))
    if (const auto box = context_.scene().boxOf(hover_)) {
      const Outline outline{box->low, {box->high.x, box->low.y}, box->high, {box->low.x, box->high.y}};
      context_.draw(painter, {{PolyPrim{outline, true, false}, Role::guide, {}}});
    }
  if (drag_) drag_->paint(painter);
  paintStripDimensions(painter, context_, stripDimensions(context_), active_dimension_);
  if (!drag_)
    for (const Handle& handle : handlesOf(context_)) {
      QRectF box(0, 0, kHandlePx, kHandlePx);
      box.moveCenter(context_.map().toPx(handle.at));
      painter.setPen(QPen(palette.color(QPalette::Highlight), 1.5));
      painter.setBrush(palette.color(QPalette::Base));
      painter.drawRect(box);
    }
  if (banding_) paintBand(painter, band_from_, band_to_);
}

bool StripSelect::answers() const { return answer().has_value(); }

std::optional<StripAnswer> StripSelect::answer() const {
  const Session& session = context_.session();
  if (session.selection().size() != 1) return std::nullopt;
  return stripAnswer(session.layout(), session.report(), *session.selection().begin());
}

QString StripSelect::hint() const {
  const Session& session = context_.session();
  if (context_.scene().empty()) return {};
  if (session.selection().empty())
    return QObject::tr(
        "Drag to move · Tab goes from thing to thing · Ctrl and wheel zoom · middle button moves the strip");
  return withAnswer(answer(), QObject::tr(
      "Type a number to set the marked distance (D: next one) · arrows nudge · Shift: no snapping · "
      "Del removes"));
}

}  // namespace elbowroom::ui
