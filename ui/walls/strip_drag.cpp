#include "ui/walls/strip_drag.h"

#include <algorithm>

#include "core/rules/text.h"
#include "ui/walls/strip_dimensions.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

QString nameOf(const Session& session, const ElementId& id) {
  return QString::fromStdString(subjectName(session.option(), id)).toLower();
}

// Along the wall of `box` counted on over the corners, as the strip unrolls them.
Point inWall(StripContext& context, const WallBox& box, Point strip) {
  const auto& walls = context.scene().drawing().walls;
  const Length end = walls.back().x + walls.back().length;
  const Length x = std::clamp(strip.x, Length{}, end);
  return {x - context.scene().leftOf(box.wall).value_or(Length{}), strip.y};
}

WallBox movedTo(const WallBox& box, const WallSnapped& place) {
  const Length half = (box.right - box.left) / 2, height = box.high - box.low;
  return {box.id, place.wall, place.middle - half, place.middle + half, place.bottom, place.bottom + height};
}

class MoveDrag : public StripDrag {
 public:
  MoveDrag(StripContext& context, WallBox box, const Pointer& pressed)
      : context_(context), box_(std::move(box)) {
    const Length x = context.scene().leftOf(box_.wall).value_or(Length{});
    grip_ = Point{x + box_.middle(), box_.centreHeight()} - pressed.plan;
    const Session& session = context_.session();
    for (const ElementId& id : session.selection())
      if (const auto other = wallBoxOf(session.dragBaseLayout(), id); other && id != box_.id)
        others_.push_back(*other);
  }

  void to(const Pointer& pointer) override {
    Session& session = context_.session();
    const Layout& base = session.dragBaseLayout();
    const SnapRules rules = context_.snapRules(pointer);
    const std::vector<HeightLine> eyes = context_.eyes();
    Point wanted = inWall(context_, box_, pointer.plan + grip_);
    const QString label = others_.empty() ? QObject::tr("Move %1").arg(nameOf(session, box_.id))
                                          : QObject::tr("Move %n things", "", int(others_.size()) + 1);
    if (!others_.empty()) {
      // Things that go together keep their distances: they stay on their walls.
      if (const WallFrame* wall = findWallFrame(base, box_.wall))
        wanted.x = std::clamp(wanted.x, Length{}, wall->length);
      snapped_ = snapOnWall(base, box_, wanted, rules, eyes);
      return moveAll(base, label);
    }
    if (const Opening* opening = findOpening(base.option, box_.id);
        opening && opening->kind == OpeningKind::door)
      return moveDoor(*opening, wanted, rules, label);
    if (const Fixture* fixture = findFixture(base.option, box_.id))
      return moveFixture(*fixture, wanted, rules, label);
    snapped_ = snapOnWall(base, box_, wanted, rules, eyes);
    PutThings put;
    if (putBox(put, base, movedTo(box_, snapped_))) session.dragTo(std::move(put), label);
    answer_ = stripAnswer(session.layout(), session.report(), box_.id);
  }

  void paint(QPainter& painter) override {
    if (answer_) paintAnswer(painter, context_, *answer_);
    paintGuides(painter, context_, snapped_);
  }
  QString words() const override {
    return words_.isEmpty() ? withAnswer(answer_, snapWords(snapped_)) : words_;
  }

 private:
  void moveDoor(const Opening& opening, Point wanted, const SnapRules& rules, const QString& label) {
    Session& session = context_.session();
    const Layout& base = session.dragBaseLayout();
    const auto at = onInsideFace(wanted, Length{});
    const auto place = at ? snapOpening(base, opening, *at, rules) : std::nullopt;
    if (!place) return;
    Opening moved = opening;
    moved.wall = place->wall;
    moved.along = place->along;
    words_ = ui::words(wordsOf(place->reason));
    session.dragTo(PutOpenings{{moved}}, label);
  }

  void moveFixture(const Fixture& fixture, Point wanted, const SnapRules& rules, const QString& label) {
    Session& session = context_.session();
    const auto* on = std::get_if<OnWall>(&fixture.placement);
    const auto at = onInsideFace(wanted, (on ? on->gap : Length{}) + fixture.depth / 2);
    if (!at) return;
    const Snapped place = snapFixture(session.dragBaseLayout(), fixture, *at, rules);
    Fixture moved = fixture;
    moved.placement = place.placement;
    words_ = ui::words(wordsOf(place.reason));
    session.dragTo(PutFixtures{{moved}}, label);
  }

  // The point of the room that a place of the strip stands for.
  std::optional<Point> onInsideFace(Point wanted, Length off) const {
    const Length x = context_.scene().leftOf(box_.wall).value_or(Length{}) + wanted.x;
    const StripScene::Spot spot = context_.scene().spotAt(x);
    const WallFrame* wall = findWallFrame(context_.session().dragBaseLayout(), spot.wall);
    if (!wall) return std::nullopt;
    return wall->at(spot.along) + off * wall->inward;
  }

  void moveAll(const Layout& base, const QString& label) {
    Length dx = snapped_.middle - box_.middle(), dy = snapped_.bottom - box_.low;
    std::vector<WallBox> all = others_;
    all.push_back(box_);
    const auto climbs = [&](const WallBox& box) {
      const Opening* opening = findOpening(base.option, box.id);
      return findWallItem(base.option, box.id) || (opening && opening->kind == OpeningKind::window);
    };
    for (const WallBox& box : all) {
      const WallFrame* wall = findWallFrame(base, box.wall);
      if (!wall) continue;
      dx = std::clamp(dx, std::min(Length{}, -box.left), std::max(Length{}, wall->length - box.right));
      if (climbs(box)) dy = std::max(dy, -box.low);
    }
    PutThings put;
    for (WallBox box : all) {
      box.left += dx, box.right += dx;
      if (climbs(box)) box.low += dy, box.high += dy;
      putBox(put, base, box);
    }
    context_.session().dragTo(std::move(put), label);
  }

  StripContext& context_;
  WallBox box_;
  std::vector<WallBox> others_;
  Vector grip_;
  WallSnapped snapped_;
  std::optional<StripAnswer> answer_;
  QString words_;
};

class ResizeDrag : public StripDrag {
 public:
  ResizeDrag(StripContext& context, WallBox box, Handle handle, const Pointer& pressed)
      : context_(context), box_(std::move(box)), handle_(handle), grip_(handle.at - pressed.plan) {}

  void to(const Pointer& pointer) override {
    Session& session = context_.session();
    const Layout& base = session.dragBaseLayout();
    const WallFrame* wall = findWallFrame(base, box_.wall);
    if (!wall) return;
    Point wanted = inWall(context_, box_, pointer.plan + grip_);
    wanted.x = std::clamp(wanted.x, Length{}, wall->length);
    // The edge alone is a thing without width and height that snaps like any other.
    const WallBox edge{box_.id, box_.wall, wanted.x, wanted.x, wanted.y, wanted.y};
    const std::vector<HeightLine> eyes = context_.eyes();
    snapped_ = snapOnWall(base, edge, wanted, context_.snapRules(pointer), eyes);
    const Length least = context_.unit() == Unit::inches ? 1_in : 25_mm;
    next_ = box_;
    if (handle_.across < 0) next_.left = std::min(snapped_.middle, box_.right - least);
    if (handle_.across > 0) next_.right = std::max(snapped_.middle, box_.left + least);
    if (handle_.up < 0) next_.low = std::min(snapped_.bottom, box_.high - least);
    if (handle_.up > 0) next_.high = std::max(snapped_.bottom, box_.low + least);
    if (handle_.across == 0) snapped_.along = {};
    if (handle_.up == 0) snapped_.height = {};
    PutThings put;
    if (putBox(put, base, next_))
      session.dragTo(std::move(put), QObject::tr("Resize %1").arg(nameOf(session, box_.id)));
    answer_ = stripAnswer(session.layout(), session.report(), box_.id);
  }

  void paint(QPainter& painter) override {
    if (answer_) paintAnswer(painter, context_, *answer_);
    paintGuides(painter, context_, snapped_);
  }
  QString words() const override {
    const Unit unit = context_.unit();
    const QString size =
        QObject::tr("%1 wide, %2 high")
            .arg(lengthWords(next_.right - next_.left, unit), lengthWords(next_.high - next_.low, unit));
    const QString why = withAnswer(answer_, snapWords(snapped_));
    return why.isEmpty() ? size : size + QStringLiteral(" · ") + why;
  }

 private:
  StripContext& context_;
  WallBox box_, next_;
  Handle handle_;
  Vector grip_;
  WallSnapped snapped_;
  std::optional<StripAnswer> answer_;
};

}  // namespace

void paintGuides(QPainter& painter, StripContext& context, const WallSnapped& snapped) {
  for (const WallSnap* snap : {&snapped.along, &snapped.height})
    if (snap->guide) {
      const Segment line = context.scene().fromWall(snapped.wall, *snap->guide);
      context.draw(painter, {{LinePrim{line.a, line.b}, Role::guide, {}}});
    }
}

QString snapWords(const WallSnapped& snapped) {
  QStringList parts;
  for (const WallSnap* snap : {&snapped.along, &snapped.height}) {
    if (snap->reason == WallSnapReason::none || snap->reason == WallSnapReason::step) continue;
    QString part = words(wordsOf(snap->reason));
    if (!snap->person.empty())
      part = QObject::tr("middle at the eyes of %1").arg(QString::fromStdString(snap->person));
    parts << part;
  }
  return parts.join(QStringLiteral(" · "));
}

QString withAnswer(const std::optional<StripAnswer>& answer, const QString& why) {
  if (!answer) return why;
  return why.isEmpty() ? answer->words : answer->words + QStringLiteral(" · ") + why;
}

std::unique_ptr<StripDrag> dragThing(StripContext& context, const ElementId& id, const Pointer& pressed) {
  const auto box = wallBoxOf(context.session().dragBaseLayout(), id);
  if (!box || !context.scene().leftOf(box->wall)) return nullptr;
  return std::make_unique<MoveDrag>(context, *box, pressed);
}

std::vector<Handle> handlesOf(StripContext& context) {
  const Session& session = context.session();
  if (session.selection().size() != 1) return {};
  const ElementId id = *session.selection().begin();
  const WallItem* item = findWallItem(session.option(), id);
  const auto box = context.scene().boxOf(id);
  if (!item || !box) return {};
  const double wide = context.map().px(box->high.x - box->low.x),
               high = context.map().px(box->high.y - box->low.y);
  std::vector<Handle> handles;
  // On what is only a few pixels large handles would leave nothing to take hold of.
  const bool across = wide >= 14, up = high >= 14;
  const Point middle = midpoint(box->low, box->high);
  if (across && up)
    for (int x : {-1, 1})
      for (int y : {-1, 1})
        handles.push_back({x, y, {x < 0 ? box->low.x : box->high.x, y < 0 ? box->low.y : box->high.y}});
  if (across)
    for (int x : {-1, 1}) handles.push_back({x, 0, {x < 0 ? box->low.x : box->high.x, middle.y}});
  if (up)
    for (int y : {-1, 1}) handles.push_back({0, y, {middle.x, y < 0 ? box->low.y : box->high.y}});
  return handles;
}

std::unique_ptr<StripDrag> dragHandle(StripContext& context, const ElementId& id, const Handle& handle,
                                      const Pointer& pressed) {
  const auto box = wallBoxOf(context.session().dragBaseLayout(), id);
  if (!box) return nullptr;
  return std::make_unique<ResizeDrag>(context, *box, handle, pressed);
}

}  // namespace elbowroom::ui
