#include "ui/canvas/live_dimensions.h"

#include <cmath>

#include "core/base/length_text.h"
#include "core/rules/text.h"
#include "ui/widgets/dimension_label.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

LiveDimension make(CanvasContext& context, ElementId id, std::optional<SideGap> gap, Segment line,
                   Length value) {
  LiveDimension dim;
  dim.element = std::move(id);
  dim.gap = std::move(gap);
  dim.line = line;
  dim.value = value;
  dim.text = lengthWords(value, context.unit());
  const DimensionLabel label =
      dimensionLabel(context.map().toPx(line.a), context.map().toPx(line.b), dim.text);
  dim.label_px = label.middle;
  dim.label_box = label.box;
  return dim;
}

const WallFrame* frameOf(const Layout& layout, const ElementId& id, std::size_t* index = nullptr) {
  for (std::size_t i = 0; i < layout.walls.size(); ++i)
    if (layout.walls[i].id == id) {
      if (index) *index = i;
      return &layout.walls[i];
    }
  return nullptr;
}

QString resizeWall(Session& session, const ElementId& id, Length wanted) {
  std::size_t index = 0;
  const WallFrame* wall = frameOf(session.layout(), id, &index);
  if (!wall) return QObject::tr("That wall is gone.");
  const WallFrame& next = session.layout().walls[(index + 1) % session.layout().walls.size()];
  const QString label = QObject::tr("Set wall length");
  // Square corners stay square: the next wall moves parallel to itself. Elsewhere only the corner moves.
  const bool square = std::abs(wall->along.x * next.along.x + wall->along.y * next.along.y) < 1e-9;
  const double way = wall->along.x * next.inward.x + wall->along.y * next.inward.y;
  const bool ok =
      square ? session.perform(MoveWall{next.id, (wanted - wall->length).scaled(way > 0 ? 1 : -1)}, label)
             : session.perform(MoveCorner{next.id, wall->at(wanted)}, label);
  return ok ? QString() : session.lastError();
}

}  // namespace

std::vector<LiveDimension> liveDimensions(CanvasContext& context) {
  std::vector<LiveDimension> dims;
  const Session& session = context.session();
  if (session.selection().size() != 1) return dims;
  const ElementId id = *session.selection().begin();
  if (const WallFrame* wall = frameOf(session.layout(), id)) {
    const Vector out = (wall->thickness + context.style().mm * 6) * wall->inward.opposite();
    dims.push_back(make(context, id, std::nullopt, {wall->from + out, wall->to + out}, wall->length));
    return dims;
  }
  for (SideGap& gap : sideGaps(session.layout(), id)) {
    const Segment line = gap.line;
    const Length value = gap.distance;
    if (value < 0.06_in) continue;  // flush: nothing to show
    dims.push_back(make(context, id, std::move(gap), line, value));
  }
  return dims;
}

void paintLiveDimensions(QPainter& painter, CanvasContext& context, const std::vector<LiveDimension>& dims,
                         int active) {
  for (std::size_t i = 0; i < dims.size(); ++i) {
    context.draw(painter, dimensionLine(dims[i].line, Length{}, "", context.style()));
    paintDimensionLabel(painter, dims[i].label_box, dims[i].text, static_cast<int>(i) == active);
  }
}

QString applyDimension(Session& session, const LiveDimension& dim, Length wanted) {
  if (wanted < Length{}) return QObject::tr("A distance cannot be negative.");
  if (!dim.gap) return resizeWall(session, dim.element, wanted);
  const QString label =
      QObject::tr("Place %1")
          .arg(QString::fromStdString(subjectName(session.option(), dim.element)).toLower());
  if (const Fixture* fixture = findFixture(session.option(), dim.element)) {
    const auto placement = placeForGap(session.layout(), dim.element, *dim.gap, wanted);
    if (!placement) return QObject::tr("There is no place at that distance.");
    Fixture moved = *fixture;
    moved.placement = *placement;
    return session.finishDragWith(PutFixtures{{moved}}, label) ? QString() : session.lastError();
  }
  if (const Opening* opening = findOpening(session.option(), dim.element)) {
    const WallFrame* wall = frameOf(session.layout(), opening->wall);
    if (!wall) return QObject::tr("That wall is gone.");
    const double way = dim.gap->grow.x * wall->along.x + dim.gap->grow.y * wall->along.y;
    Opening moved = *opening;
    moved.along += (wanted - dim.gap->distance).scaled(way > 0 ? 1 : -1);
    return session.finishDragWith(PutOpenings{{moved}}, label) ? QString() : session.lastError();
  }
  return QObject::tr("That element is gone.");
}

}  // namespace elbowroom::ui
