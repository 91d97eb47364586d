#include "ui/walls/strip_dimensions.h"

#include <algorithm>

#include "core/rules/text.h"
#include "ui/widgets/dimension_label.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

using namespace literals;

QString StripDimension::purpose() const {
  const bool corner = gap.other.empty();
  switch (gap.side) {
    case WallSide::below: return QObject::tr("Height above the floor");
    case WallSide::above: return QObject::tr("Below the ceiling");
    case WallSide::left:
      return corner ? QObject::tr("From the left corner") : QObject::tr("To the left neighbour");
    case WallSide::right:
      return corner ? QObject::tr("From the right corner") : QObject::tr("To the right neighbour");
  }
  return {};
}

std::vector<StripDimension> stripDimensions(StripContext& context) {
  std::vector<StripDimension> dims;
  const Session& session = context.session();
  if (session.selection().size() != 1) return dims;
  const ElementId id = *session.selection().begin();
  const std::optional<WallBox> box = wallBoxOf(session.layout(), id);
  if (!box || !context.scene().leftOf(box->wall)) return dims;
  for (WallGap& gap : wallGaps(session.layout(), id)) {
    StripDimension dim;
    dim.element = id;
    dim.line = context.scene().fromWall(box->wall, gap.line);
    dim.text =
        (gap.to_centre ? QStringLiteral("\u2104 ") : QString()) + lengthWords(gap.distance, context.unit());
    const DimensionLabel label =
        dimensionLabel(context.map().toPx(dim.line.a), context.map().toPx(dim.line.b), dim.text);
    dim.label_box = label.box;
    // At the strip's ends, the floor and the ceiling it would be cut off.
    const Box& bounds = context.scene().drawing().bounds;
    const QRectF whole = QRectF(context.map().toPx(bounds.low), context.map().toPx(bounds.high)).normalized();
    if (dim.label_box.left() < whole.left()) dim.label_box.moveLeft(whole.left());
    if (dim.label_box.right() > whole.right()) dim.label_box.moveRight(whole.right());
    if (dim.label_box.top() < whole.top()) dim.label_box.moveTop(whole.top());
    if (dim.label_box.bottom() > whole.bottom()) dim.label_box.moveBottom(whole.bottom());
    dim.label_px = dim.label_box.center();
    dim.gap = std::move(gap);
    dims.push_back(std::move(dim));
  }
  return dims;
}

std::vector<int> visibleDimensions(const std::vector<StripDimension>& dims, int active) {
  std::vector<int> order, shown;
  for (int i = 0; i < static_cast<int>(dims.size()); ++i) order.push_back(i);
  std::stable_partition(order.begin(), order.end(), [active](int i) { return i == active; });
  for (int i : order) {
    const StripDimension& dim = dims[static_cast<std::size_t>(i)];
    if (dim.gap.distance < 0.06_in && i != active) continue;  // flush: nothing to show
    const bool covers = std::any_of(shown.begin(), shown.end(), [&](int other) {
      return dims[static_cast<std::size_t>(other)].label_box.adjusted(-1, -1, 1, 1).intersects(dim.label_box);
    });
    if (!covers) shown.push_back(i);
  }
  return shown;
}

void paintStripDimensions(QPainter& painter, StripContext& context, const std::vector<StripDimension>& dims,
                          int active) {
  const std::vector<int> visible = visibleDimensions(dims, active);
  for (int i : visible)
    context.draw(painter,
                 dimensionLine(dims[static_cast<std::size_t>(i)].line, Length{}, "", context.style()));
  for (int i : visible) {
    const StripDimension& dim = dims[static_cast<std::size_t>(i)];
    paintDimensionLabel(painter, dim.label_box, dim.text, i == active);
  }
}

bool putBox(PutThings& put, const Layout& layout, const WallBox& box) {
  if (const WallItem* item = findWallItem(layout.option, box.id)) {
    WallItem moved = *item;
    moved.wall = box.wall;
    moved.along = box.middle();
    moved.bottom = box.low;
    moved.width = box.right - box.left;
    moved.height = box.high - box.low;
    put.on_walls.push_back(std::move(moved));
    return true;
  }
  if (const Opening* opening = findOpening(layout.option, box.id)) {
    Opening moved = *opening;
    moved.wall = box.wall;
    moved.along = box.middle();
    if (moved.kind == OpeningKind::window && (moved.sill || box.low != Length{})) moved.sill = box.low;
    put.openings.push_back(std::move(moved));
    return true;
  }
  const Fixture* fixture = findFixture(layout.option, box.id);
  if (!fixture || !std::holds_alternative<OnWall>(fixture->placement)) return false;
  Fixture moved = *fixture;
  auto& on = std::get<OnWall>(moved.placement);
  on.wall = box.wall;
  on.along = box.middle();
  put.fixtures.push_back(std::move(moved));
  return true;
}

QString applyStripDimension(Session& session, const StripDimension& dim, Length wanted) {
  if (wanted < Length{}) return QObject::tr("A distance cannot be negative.");
  const std::optional<WallBox> box = boxForWallGap(session.layout(), dim.element, dim.gap, wanted);
  if (!box) return QObject::tr("There is no place at that distance.");
  PutThings put;
  if (!putBox(put, session.layout(), *box)) return QObject::tr("That element is gone.");
  const QString label =
      QObject::tr("Place %1")
          .arg(QString::fromStdString(subjectName(session.option(), dim.element)).toLower());
  return session.finishDragWith(std::move(put), label) ? QString() : session.lastError();
}

}  // namespace elbowroom::ui
