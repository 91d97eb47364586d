#include "ui/walls/strip_place.h"

#include "core/plan/wall_catalogue.h"
#include "core/plan/wall_defaults.h"
#include "ui/walls/strip_dimensions.h"

namespace elbowroom::ui {

StripPlace::StripPlace(StripContext& context, const QString& payload) : context_(context) {
  const Session& session = context_.session();
  item_ = typicalWallItem(payload.mid(5).toStdString(), session.option());
  // The first option is the room as found: what is put into it is there already.
  if (session.optionIndex() == 0) item_.status = Status::keep;
  label_ = QString::fromStdString(labelOf(item_)).toLower();
}

void StripPlace::move(const Pointer& pointer, bool) {
  Session& session = context_.session();
  if (context_.scene().empty()) {
    context_.say(QObject::tr("Draw the room first."));
    return;
  }
  // The plan may carry the same thing meanwhile: both put it where the pointer is, in one drag.
  if (!session.dragging()) {
    on_plan_ = false;
    item_.id = typicalWallItem(item_.kind, session.option()).id;
    session.beginDrag();
  }
  const StripScene::Spot spot = context_.scene().spotAt(pointer.plan.x);
  const Layout& base = session.dragBaseLayout();
  WallItem item = item_;
  item.wall = spot.wall;
  const WallBox box{item.id, spot.wall, spot.along - item.width / 2, spot.along + item.width / 2, item.bottom,
                    item.bottom + item.height};
  std::vector<HeightLine> lines = context_.eyes();
  lines.push_back({"", item_.bottom + item_.height / 2});
  snapped_ = snapOnWall(base, box, {spot.along, pointer.plan.y}, context_.snapRules(pointer), lines);
  item.wall = snapped_.wall;
  item.along = snapped_.middle;
  item.bottom = snapped_.bottom;
  if (pointer.snaps()) item = withDefaults(base, std::move(item));
  on_plan_ |= session.dragTo(PutWallItems{{item}}, QObject::tr("Add %1").arg(label_));
  if (on_plan_) session.select({item_.id});
  const QString refused = session.lastError(), why = snapWords(snapped_);
  context_.say(!refused.isEmpty() ? refused : why.isEmpty() ? hint() : why);
  context_.repaint();
}

void StripPlace::press(const Pointer& pointer) {
  move(pointer, true);
  if (drop()) context_.toolDone();
}

bool StripPlace::drop() {
  if (!on_plan_ || !context_.session().dragging()) return false;
  on_plan_ = false;
  context_.session().endDrag();
  return true;
}

bool StripPlace::key(QKeyEvent* event) {
  if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) return false;
  if (!on_plan_ && !context_.scene().empty()) {
    // Without a mouse: on the middle of the selected wall, at its usual height, ready for arrows and typed figures.
    const Session& session = context_.session();
    const StripWall* wall = &context_.scene().drawing().walls.front();
    for (const StripWall& each : context_.scene().drawing().walls)
      if (session.selection().contains(each.id)) wall = &each;
    const Point at{wall->x + wall->length / 2, item_.bottom + item_.height / 2};
    move({at, context_.map().toPx(at), Qt::NoModifier}, false);
  }
  if (drop()) context_.toolDone();
  return true;
}

bool StripPlace::undo() {
  cancel();
  return true;
}

void StripPlace::cancel() {
  on_plan_ = false;
  context_.session().cancelDrag();
  context_.toolDone();
}

void StripPlace::paint(QPainter& painter) {
  if (!on_plan_) return;
  paintGuides(painter, context_, snapped_);
  paintStripDimensions(painter, context_, stripDimensions(context_), -1);
}

QString StripPlace::hint() const {
  return QObject::tr("Click a wall to put the %1 there · Shift: no snapping · Esc takes it away").arg(label_);
}

}  // namespace elbowroom::ui
