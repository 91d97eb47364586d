#include "ui/canvas/place_tool.h"

#include "core/plan/snap_wall_item.h"
#include "core/plan/wall_catalogue.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

PlaceTool::PlaceTool(CanvasContext& context, const QString& payload) : CarryTool(context), context_(context) {
  const Option& option = context_.session().option();
  if (payload == "window") {
    opening_ = typicalWindow(option);
    label_ = QObject::tr("window");
  } else if (payload.startsWith("door:")) {
    for (DoorAction action : {DoorAction::hinged, DoorAction::doubleLeaf, DoorAction::pocket,
                              DoorAction::surfaceSliding, DoorAction::bifold, DoorAction::cased})
      if (payload.mid(5) == words(keyOf(action))) {
        opening_ = typicalDoor(action, option);
        label_ = action == DoorAction::cased ? QObject::tr("cased opening")
                                             : QObject::tr("%1 door").arg(words(labelOf(action)).toLower());
      }
  } else if (payload.startsWith("wall:")) {
    wall_item_ = typicalWallItem(payload.mid(5).toStdString(), option);
    if (context_.session().optionIndex() == 0) wall_item_->status = Status::keep;
    label_ = QString::fromStdString(labelOf(*wall_item_)).toLower();
  } else if (payload.startsWith("ceiling:")) {
    ceiling_item_ = typicalCeilingItem(payload.mid(8).toStdString(), option);
    label_ = QString::fromStdString(labelOf(*ceiling_item_)).toLower();
  } else if (payload.startsWith("fixture:")) {
    for (const KindInfo& info : fixtureKinds())
      if (payload.mid(8) == words(info.key)) {
        fixture_ = typicalFixture(info.kind, option);
        // The first option is the room as found: what is put into it is there already.
        if (context_.session().optionIndex() == 0) fixture_->status = Status::keep;
        label_ = words(info.label).toLower();
      }
  }
}

// The option may have changed since the thing was picked up; its id must be free in this one.
void PlaceTool::begin() {
  Session& session = context_.session();
  on_plan_ = false;
  if (fixture_) fixture_->id = freshId(session.option(), std::string(infoOf(fixture_->kind).id_stem));
  if (opening_) opening_->id = typicalId();
  if (wall_item_) wall_item_->id = typicalWallItem(wall_item_->kind, session.option()).id;
  if (ceiling_item_) ceiling_item_->id = typicalCeilingItem(ceiling_item_->kind, session.option()).id;
  session.beginDrag();
}

ElementId PlaceTool::typicalId() const {
  const Option& option = context_.session().option();
  return opening_->kind == OpeningKind::window ? typicalWindow(option).id
                                               : typicalDoor(opening_->action, option).id;
}

void PlaceTool::move(const Pointer& pointer, bool) {
  Session& session = context_.session();
  if (session.layout().room.empty() && !on_plan_) {
    context_.say(QObject::tr("Draw the room first."));
    return;
  }
  if (!session.dragging()) begin();
  if (fixture_) {
    // Each time as fresh from the Tray: the walls it was carried past are no walls it stands at.
    Fixture fresh = *fixture_;
    fresh.placement = Standing{};
    snapped_ = snapFixture(session.dragBaseLayout(), fresh, pointer.plan, context_.snapRules(pointer));
    fixture_->placement = snapped_.placement;
    carry(PutFixtures{{*fixture_}}, fixture_->id, label_);
  } else if (opening_) {
    const auto snapped =
        snapOpening(session.dragBaseLayout(), *opening_, pointer.plan, context_.snapRules(pointer));
    if (!snapped) return;
    snapped_.reason = snapped->reason;
    opening_->wall = snapped->wall;
    opening_->along = snapped->along;
    carry(PutOpenings{{*opening_}}, opening_->id, label_);
  } else if (wall_item_) {
    moveWallItem(pointer);
  } else if (ceiling_item_) {
    moveCeilingItem(pointer);
  }
  sayWhere(words(wordsOf(snapped_.reason)));
}

// To the nearest wall, at the height that is usual for its kind.
void PlaceTool::moveWallItem(const Pointer& pointer) {
  Session& session = context_.session();
  const Layout& base = session.dragBaseLayout();
  const WallFrame* nearest = nullptr;
  Length least;
  for (const WallFrame& wall : base.walls) {
    const Length off = gapBetween(Segment{pointer.plan, pointer.plan}, Segment{wall.from, wall.to}).distance;
    if (!nearest || off < least) nearest = &wall, least = off;
  }
  if (!nearest) return;
  const Length along =
      std::clamp(dot(pointer.plan - nearest->from, nearest->along), Length{}, nearest->length);
  WallItem item = *wall_item_;
  const Length half = item.width / 2;
  const WallBox box{item.id, nearest->id, along - half, along + half, item.bottom, item.bottom + item.height};
  const WallSnapped place = snapOnWall(base, box, {along, box.centreHeight()}, context_.snapRules(pointer));
  item.wall = place.wall;
  item.along = place.middle;
  if (place.height.reason == WallSnapReason::ceiling) item.bottom = place.bottom;
  if (pointer.snaps()) item = withDefaults(base, std::move(item));
  snapped_ = {};
  carry(PutWallItems{{item}}, item.id, label_);
}

void PlaceTool::moveCeilingItem(const Pointer& pointer) {
  Session& session = context_.session();
  ceiling_snap_ =
      snapCeilingItem(session.dragBaseLayout(), *ceiling_item_, pointer.plan, context_.snapRules(pointer));
  ceiling_item_->at = ceiling_snap_.at;
  carry(PutCeilingItems{{*ceiling_item_}}, ceiling_item_->id, label_);
}

bool PlaceTool::key(QKeyEvent* event) {
  // Set down in the middle of the room, ready for arrows and typed distances.
  const Session& session = context_.session();
  if (session.layout().room.empty()) return enter(event, std::nullopt);
  return enter(event, session.report().figures.turning.largest.center);
}

void PlaceTool::paint(QPainter& painter) {
  for (const auto& guide : {ceiling_snap_.guide_x, ceiling_snap_.guide_y})
    if (ceiling_item_ && guide) context_.draw(painter, {{LinePrim{guide->a, guide->b}, Role::guide, {}}});
  if (snapped_.guide)
    context_.draw(painter, {{LinePrim{snapped_.guide->a, snapped_.guide->b}, Role::guide, {}}});
}

QString PlaceTool::hint() const {
  return QObject::tr("Click to put the %1 down · Shift: no snapping · Esc takes it away").arg(label_);
}

}  // namespace elbowroom::ui
