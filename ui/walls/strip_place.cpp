#include "ui/walls/strip_place.h"

#include "core/plan/wall_catalogue.h"
#include "core/plan/wall_defaults.h"
#include "ui/walls/strip_dimensions.h"

namespace elbowroom::ui {

StripPlace::StripPlace(StripContext& context, const QString& payload)
    : CarryTool(context), context_(context) {
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
  carry(PutWallItems{{item}}, item_.id, label_);
  answer_ = stripAnswer(session.layout(), session.report(), item_.id);
  sayWhere(withAnswer(answer_, snapWords(snapped_)));
}

bool StripPlace::key(QKeyEvent* event) {
  if (context_.scene().empty()) return enter(event, std::nullopt);
  // On the middle of the selected wall, at its usual height, ready for arrows and typed figures.
  const StripWall* wall = &context_.scene().drawing().walls.front();
  for (const StripWall& each : context_.scene().drawing().walls)
    if (context_.session().selection().contains(each.id)) wall = &each;
  return enter(event, Point{wall->x + wall->length / 2, item_.bottom + item_.height / 2});
}

void StripPlace::paint(QPainter& painter) {
  if (!carrying()) return;
  if (answer_) paintAnswer(painter, context_, *answer_);
  paintGuides(painter, context_, snapped_);
  paintStripDimensions(painter, context_, stripDimensions(context_), -1);
}

QString StripPlace::hint() const {
  return QObject::tr("Click a wall to put the %1 there · Shift: no snapping · Esc takes it away").arg(label_);
}

}  // namespace elbowroom::ui
