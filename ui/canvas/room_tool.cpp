#include "ui/canvas/room_tool.h"

#include <algorithm>

#include "ui/canvas/tag.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

using namespace literals;

Length usualWallThickness(Unit unit) { return unit == Unit::inches ? 4.5_in : 115_mm; }

Room roomOf(std::vector<Point> corners, Length thickness, const Room& keep) {
  if (signedAreaOf(corners) > Area{}) std::reverse(corners.begin(), corners.end());
  Room room = keep;
  room.walls.clear();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    Wall wall;
    if (i < keep.walls.size()) wall = keep.walls[i];
    wall.id = {"w" + std::to_string(i + 1)};
    if (i >= keep.walls.size()) wall.thickness = thickness;
    wall.from = corners[i];
    room.walls.push_back(std::move(wall));
  }
  return room;
}

std::optional<Point> crossingOf(const std::vector<Point>& corners, Point next) {
  if (corners.size() < 2) return std::nullopt;
  const Segment wall{corners.back(), next};
  const bool closes = next == corners.front();
  // Back over the wall before it.
  const Point before = corners[corners.size() - 2];
  const Direction there = Direction::between(wall.a, before), way = Direction::between(wall.a, next);
  if (dot(next - wall.a, there) > Length{} && std::abs(there.x * way.y - there.y * way.x) < 1e-9)
    return distance(wall.a, next) < distance(wall.a, before) ? next : before;
  for (std::size_t i = 0; i + 2 < corners.size(); ++i) {
    const Segment other{corners[i], corners[i + 1]};
    const Gap gap = gapBetween(wall, other);
    if (gap.distance > Length{}) continue;
    if (closes && i == 0) {
      // They share the first corner; more than that only when one runs along the other.
      const Direction first = Direction::between(other.a, other.b), last = Direction::between(next, wall.a);
      if (first.x * last.x + first.y * last.y < 1 - 1e-12) continue;
    }
    return gap.from;
  }
  return std::nullopt;
}

QString RoomTool::wordsOfCrossing(Point at) const {
  const Length along = distance(corners_.back(), at);
  return QObject::tr("That wall would cross or touch another one %1 from its beginning; walls only meet at corners.")
      .arg(lengthWords(along, context_.unit()));
}

void RoomTool::move(const Pointer& pointer, bool) {
  crossed_.reset();
  next_ = snapped(pointer);
  pointed_ = true;
  context_.repaint();
}

// Within 12 degrees of square a hand means square; Shift leaves it free.
SnappedPoint RoomTool::snapped(const Pointer& pointer) const {
  const SnapRules rules = context_.snapRules(pointer);
  Point wanted = pointer.plan;
  if (rules.enabled && !corners_.empty() && distance(wanted, corners_.front()) > rules.reach) {
    const Vector v = wanted - corners_.back();
    constexpr double kSlope = 0.2126;  // tan 12 degrees
    if (abs(v.dy) < abs(v.dx).scaled(kSlope)) wanted.y = corners_.back().y;
    else if (abs(v.dx) < abs(v.dy).scaled(kSlope)) wanted.x = corners_.back().x;
  }
  return snapCorner(corners_, wanted, rules);
}

void RoomTool::press(const Pointer& pointer) {
  next_ = snapped(pointer);
  if (corners_.size() >= 3 && next_.reason == SnapReason::closing)
    finish();
  else if (const QString why = placeCorner(next_.point); !why.isEmpty())
    context_.say(why);
}

QString RoomTool::placeCorner(Point point) {
  if (!corners_.empty() && distance(corners_.back(), point) < 1_in) return {};
  crossed_ = crossingOf(corners_, point);
  context_.repaint();
  if (crossed_) return wordsOfCrossing(*crossed_);
  corners_.push_back(point);
  context_.say(hint());
  return {};
}

void RoomTool::doublePress(const Pointer&) { finish(); }

void RoomTool::finish() {
  if (corners_.size() < 3) {
    context_.say(QObject::tr("A room needs at least three corners."));
    return;
  }
  crossed_ = crossingOf(corners_, corners_.front());
  context_.repaint();
  if (crossed_) {
    context_.say(wordsOfCrossing(*crossed_));
    return;
  }
  Session& session = context_.session();
  if (session.perform(SetRoom{roomOf(corners_, usualWallThickness(context_.unit()), session.option().room)},
                      QObject::tr("Draw room"))) {
    corners_.clear();
    context_.toolDone();
  }
}

void RoomTool::askForLength(const QString& typed) {
  if (corners_.empty() || !pointed_) return;
  const Point from = corners_.back();
  const Direction way = Direction::between(from, next_.point);
  const QPointF at = (context_.map().toPx(from) + context_.map().toPx(next_.point)) / 2;
  context_.askLength(
      at, typed,
      [this, from, way](Length wanted) {
        if (wanted < 1_in) return QObject::tr("A wall is at least 1 in long.");
        const Point corner = from + wanted * way;
        if (corners_.size() >= 3 && distance(corner, corners_.front()) < 0.25_in)
          finish();
        else
          return placeCorner(corner);
        return QString();
      },
      QObject::tr("Wall length"));
}

bool RoomTool::key(QKeyEvent* event) {
  const QString typed = event->text();
  if (!typed.isEmpty() && typed[0].isDigit()) {
    askForLength(typed);
    return true;
  }
  if (event->key() == Qt::Key_Backspace) return undo();
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    finish();
    return true;
  }
  return false;
}

bool RoomTool::undo() {
  if (corners_.empty()) return false;
  corners_.pop_back();
  crossed_.reset();
  context_.say(hint());
  context_.repaint();
  return true;
}

void RoomTool::cancel() {
  corners_.clear();
  context_.toolDone();
}

void RoomTool::paint(QPainter& painter) {
  if (!pointed_) return;
  DisplayList list;
  std::vector<Point> line = corners_;
  line.push_back(next_.point);
  if (line.size() > 1) list.push_back({PolyPrim{line, false, false}, Role::selection, {}});
  if (next_.guide) list.push_back({LinePrim{next_.guide->a, next_.guide->b}, Role::guide, {}});
  context_.draw(painter, list);

  const QPalette palette = QGuiApplication::palette();
  painter.setPen(QPen(palette.color(QPalette::Highlight), 2));
  painter.setBrush(palette.color(QPalette::Base));
  for (Point corner : line) painter.drawEllipse(context_.map().toPx(corner), 4, 4);
  const auto label = [&](Segment wall) {
    paintTag(painter, (context_.map().toPx(wall.a) + context_.map().toPx(wall.b)) / 2,
             lengthWords(distance(wall.a, wall.b), context_.unit()), QPalette::Text);
  };
  for (std::size_t i = 1; i < line.size(); ++i)
    if (distance(line[i - 1], line[i]) > 2_in) label({line[i - 1], line[i]});
  // Seen while pointing, before it is refused.
  const bool closing = next_.reason == SnapReason::closing;
  std::optional<Point> crossing = crossed_;
  if (!crossing && !corners_.empty() && distance(corners_.back(), next_.point) >= 1_in)
    crossing = crossingOf(corners_, closing ? corners_.front() : next_.point);
  if (crossing) {
    const QPointF at = context_.map().toPx(*crossing);
    painter.setPen(QPen(palette.color(QPalette::Text), 2.5));
    painter.drawLine(at - QPointF(7, 7), at + QPointF(7, 7));
    painter.drawLine(at - QPointF(7, -7), at + QPointF(7, -7));
    paintTag(painter, at + QPointF(0, 20), QObject::tr("walls cross here"), QPalette::Text);
    return;
  }
  if (next_.reason != SnapReason::none && next_.reason != SnapReason::step) {
    painter.setPen(palette.color(QPalette::Text));
    painter.drawText(context_.map().toPx(next_.point) + QPointF(12, -8),
                     words(wordsOf(next_.reason)));
  }
}

QString RoomTool::hint() const {
  if (corners_.empty())
    return QObject::tr("Click the first corner, at the finished inside faces of the walls.");
  if (corners_.size() < 3)
    return QObject::tr(
        "Point along the next wall and click, or type its length and press Enter · Backspace takes a "
        "corner back · Esc stops");
  return QObject::tr(
      "Click the first corner again (or press Enter) to close the room · type a length · Backspace "
      "takes a corner back");
}

}  // namespace elbowroom::ui
