#include "ui/canvas/drag.h"

#include <cmath>

#include "core/plan/move_things.h"
#include "core/plan/snap_along.h"
#include "core/plan/wall_defaults.h"
#include "core/rules/text.h"
#include "ui/canvas/tag.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

QString nameOf(const Session& session, const ElementId& id) {
  return QString::fromStdString(subjectName(session.dragBaseLayout().option, id)).toLower();
}

void paintGuide(CanvasContext& context, QPainter& painter, const std::optional<Segment>& guide) {
  if (guide) context.draw(painter, {{LinePrim{guide->a, guide->b}, Role::guide, {}}});
}

QString reasonWords(SnapReason reason) {
  return reason == SnapReason::none ? QString() : words(wordsOf(reason));
}

class FixtureDrag : public Drag {
 public:
  FixtureDrag(CanvasContext& context, const PlacedFixture& placed, Point pressed)
      : context_(context), fixture_(placed.fixture), grip_(placed.center - pressed) {}

  void to(const Pointer& pointer) override {
    Session& session = context_.session();
    snapped_ =
        snapFixture(session.dragBaseLayout(), fixture_, pointer.plan + grip_, context_.snapRules(pointer));
    Fixture moved = fixture_;
    moved.placement = snapped_.placement;
    session.dragTo(PutFixtures{{moved}}, QObject::tr("Move %1").arg(nameOf(session, fixture_.id)));
  }
  void paint(QPainter& painter) override { paintGuide(context_, painter, snapped_.guide); }
  QString words() const override { return reasonWords(snapped_.reason); }

 private:
  CanvasContext& context_;
  Fixture fixture_;
  Vector grip_;
  Snapped snapped_;
};

class OpeningDrag : public Drag {
 public:
  OpeningDrag(CanvasContext& context, const PlacedOpening& placed, Point pressed)
      : context_(context), opening_(placed.opening), grip_(midpoint(placed.left, placed.right) - pressed) {}

  void to(const Pointer& pointer) override {
    Session& session = context_.session();
    const auto snapped =
        snapOpening(session.dragBaseLayout(), opening_, pointer.plan + grip_, context_.snapRules(pointer));
    if (!snapped) return;
    reason_ = snapped->reason;
    Opening moved = opening_;
    moved.wall = snapped->wall;
    moved.along = snapped->along;
    session.dragTo(PutOpenings{{moved}}, QObject::tr("Slide %1").arg(nameOf(session, opening_.id)));
  }
  QString words() const override { return reasonWords(reason_); }

 private:
  CanvasContext& context_;
  Opening opening_;
  Vector grip_;
  SnapReason reason_ = SnapReason::none;
};

class WallDrag : public Drag {
 public:
  WallDrag(CanvasContext& context, const WallFrame& wall, Point pressed)
      : context_(context), wall_(wall), pressed_(pressed) {}

  void to(const Pointer& pointer) override {
    const SnapRules rules = context_.snapRules(pointer);
    Length inward = dot(pointer.plan - pressed_, wall_.inward);
    if (rules.enabled) inward = snap_parts::roundTo(inward, rules.step);
    context_.session().dragTo(MoveWall{wall_.id, inward}, QObject::tr("Move wall"));
    moved_ = inward;
  }
  QString words() const override {
    return QObject::tr("Wall moved %1").arg(lengthWords(abs(moved_), context_.unit()));
  }

 private:
  CanvasContext& context_;
  WallFrame wall_;
  Point pressed_;
  Length moved_;
};

class CornerDrag : public Drag {
 public:
  CornerDrag(CanvasContext& context, const Layout& layout, std::size_t index, Point pressed)
      : context_(context), id_(layout.walls[index].id), grip_(layout.walls[index].from - pressed) {
    const std::size_t n = layout.walls.size();
    before_ = layout.walls[(index + n - 1) % n].from;
    after_ = layout.walls[(index + 1) % n].from;
  }

  void to(const Pointer& pointer) override {
    const SnapRules rules = context_.snapRules(pointer);
    Point wanted = pointer.plan + grip_;
    reason_ = SnapReason::none;
    guide_.reset();
    if (rules.enabled) {
      // Square with either neighbour first, then whole steps.
      Point snapped{snap_parts::roundTo(wanted.x, rules.step), snap_parts::roundTo(wanted.y, rules.step)};
      for (Point other : {before_, after_}) {
        if (abs(wanted.x - other.x) <= rules.reach)
          snapped.x = other.x, reason_ = SnapReason::rightAngle, guide_ = Segment{other, snapped};
        if (abs(wanted.y - other.y) <= rules.reach)
          snapped.y = other.y, reason_ = SnapReason::rightAngle, guide_ = Segment{other, snapped};
      }
      wanted = snapped;
    }
    at_ = wanted;
    context_.session().dragTo(MoveCorner{id_, wanted}, QObject::tr("Move corner"));
  }
  void paint(QPainter& painter) override {
    paintGuide(context_, painter, guide_);
    for (Segment wall : {Segment{before_, at_}, Segment{at_, after_}}) {
      const QPointF middle = (context_.map().toPx(wall.a) + context_.map().toPx(wall.b)) / 2;
      paintTag(painter, middle, lengthWords(distance(wall.a, wall.b), context_.unit()), QPalette::Text);
    }
  }
  QString words() const override { return reasonWords(reason_); }

 private:
  CanvasContext& context_;
  ElementId id_;
  Vector grip_;
  Point before_, after_, at_;
  SnapReason reason_ = SnapReason::none;
  std::optional<Segment> guide_;
};

class TurnDrag : public Drag {
 public:
  TurnDrag(CanvasContext& context, const PlacedFixture& placed)
      : context_(context), fixture_(placed.fixture), center_(placed.center) {}

  void to(const Pointer& pointer) override {
    // At turn 0 the front faces -y.
    Angle turn = Direction::between(center_, pointer.plan).angle() + Angle::fromDegrees(90);
    if (pointer.snaps()) turn = Angle::fromDegrees(15 * std::round(turn.degrees() / 15));
    turn_ = turn.normalised();
    Fixture turned = fixture_;
    turned.placement = Standing{center_, turn_};
    context_.session().dragTo(PutFixtures{{turned}},
                              QObject::tr("Turn %1").arg(nameOf(context_.session(), fixture_.id)));
  }
  QString words() const override { return QObject::tr("turned %1°").arg(turn_.degrees(), 0, 'f', 1); }

 private:
  CanvasContext& context_;
  Fixture fixture_;
  Point center_;
  Angle turn_;
};

class CeilingDrag : public Drag {
 public:
  CeilingDrag(CanvasContext& context, const CeilingItem& item, Point pressed)
      : context_(context), item_(item), grip_(item.at - pressed) {}

  void to(const Pointer& pointer) override {
    Session& session = context_.session();
    snapped_ =
        snapCeilingItem(session.dragBaseLayout(), item_, pointer.plan + grip_, context_.snapRules(pointer));
    CeilingItem moved = item_;
    moved.at = snapped_.at;
    session.dragTo(PutCeilingItems{{moved}}, QObject::tr("Move %1").arg(nameOf(session, item_.id)));
  }
  void paint(QPainter& painter) override {
    paintGuide(context_, painter, snapped_.guide_x);
    paintGuide(context_, painter, snapped_.guide_y);
  }
  QString words() const override {
    return snapped_.guide_x || snapped_.guide_y ? reasonWords(SnapReason::alignedCentre) : QString();
  }

 private:
  CanvasContext& context_;
  CeilingItem item_;
  Vector grip_;
  SnappedCeiling snapped_;
};

// Several things together, each on its own wall or with its own turn.
class GroupDrag : public Drag {
 public:
  GroupDrag(CanvasContext& context, Point pressed) : context_(context), pressed_(pressed) {}

  void to(const Pointer& pointer) override {
    Session& session = context_.session();
    const SnapRules rules = context_.snapRules(pointer);
    Vector by = pointer.plan - pressed_;
    if (rules.enabled) by = {snap_parts::roundTo(by.dx, rules.step), snap_parts::roundTo(by.dy, rules.step)};
    const Layout& base = session.dragBaseLayout();
    PutThings moved = movedBy(base, session.selection(), by);
    const QString label = QObject::tr("Move %n things", "", int(session.selection().size()));
    session.dragTo(std::move(moved), label);
  }

 private:
  CanvasContext& context_;
  Point pressed_;
};

}  // namespace

std::unique_ptr<Drag> startDrag(CanvasContext& context, const Hit& hit, const Pointer& pressed) {
  const Session& session = context.session();
  const Layout& layout = session.layout();
  const bool thing =
      hit.kind == Hit::Kind::fixture || hit.kind == Hit::Kind::opening || hit.kind == Hit::Kind::ceilingItem;
  if (thing && session.selection().size() > 1 && session.selection().contains(hit.id))
    return std::make_unique<GroupDrag>(context, pressed.plan);
  if (hit.kind == Hit::Kind::turner)
    for (const PlacedFixture& placed : layout.fixtures)
      if (placed.fixture.id == hit.id) return std::make_unique<TurnDrag>(context, placed);
  if (hit.kind == Hit::Kind::fixture)
    for (const PlacedFixture& placed : layout.fixtures)
      if (placed.fixture.id == hit.id) return std::make_unique<FixtureDrag>(context, placed, pressed.plan);
  if (hit.kind == Hit::Kind::ceilingItem)
    if (const CeilingItem* item = findCeilingItem(layout.option, hit.id))
      return std::make_unique<CeilingDrag>(context, *item, pressed.plan);
  if (hit.kind == Hit::Kind::opening)
    for (const PlacedOpening& placed : layout.openings)
      if (placed.opening.id == hit.id) return std::make_unique<OpeningDrag>(context, placed, pressed.plan);
  for (std::size_t i = 0; i < layout.walls.size(); ++i) {
    if (layout.walls[i].id != hit.id) continue;
    if (hit.kind == Hit::Kind::corner) return std::make_unique<CornerDrag>(context, layout, i, pressed.plan);
    if (hit.kind == Hit::Kind::wall)
      return std::make_unique<WallDrag>(context, layout.walls[i], pressed.plan);
  }
  return nullptr;
}

}  // namespace elbowroom::ui
