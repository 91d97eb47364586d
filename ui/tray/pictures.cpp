#include "ui/tray/pictures.h"

#include <QPainter>
#include <QWidget>
#include <algorithm>

#include "core/drawing/draw_elevation.h"
#include "core/geometry/measure.h"
#include "core/plan/wall_catalogue.h"
#include "ui/look/look.h"
#include "ui/render/paint.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

QPixmap painted(const DisplayList& list, const Box& box, double most_px_per_inch, QSize size,
                const QWidget& on) {
  const double ratio = on.devicePixelRatioF();
  QPixmap pixmap(size * ratio);
  pixmap.setDevicePixelRatio(ratio);
  pixmap.fill(Qt::transparent);
  const double width = std::max(1.0, (box.high.x - box.low.x).inches());
  const double height = std::max(1.0, (box.high.y - box.low.y).inches());
  ViewMap map;
  map.px_per_inch = std::min({(size.width() - 2) / width, (size.height() - 2) / height, most_px_per_inch});
  map.origin = QPointF(size.width() / 2.0 - map.px_per_inch * (box.low.x.inches() + width / 2),
                       size.height() / 2.0 + map.px_per_inch * (box.low.y.inches() + height / 2));
  PaintOptions options;
  options.dark = isDark(on.palette());
  options.px_per_mm = 3.4;
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(QRectF(map.toPx(box.low), map.toPx(box.high)).normalized().adjusted(-1, -1, 1, 1));
  paint(painter, list, map, options);
  return pixmap;
}

DrawStyle plainStyle() {
  DrawStyle style;
  style.mm = 1.2_in;
  style.labels = false;
  style.clear_zones = false;
  return style;
}

Option plainRoom(Length side, Length thickness) {
  Option option;
  for (const Point at : {Point{0_in, side}, Point{side, side}, Point{side, 0_in}, Point{0_in, 0_in}}) {
    Wall wall;
    wall.id = {std::to_string(option.room.walls.size())};
    wall.from = at;
    wall.thickness = thickness;
    option.room.walls.push_back(wall);
  }
  return option;
}

}  // namespace

QPixmap wallItemPicture(std::string_view kind, QSize size, const QWidget& on) {
  Plan plan = emptyPlan(Unit::inches);
  plan.options.front().room = plainRoom(160_in, 5_in).room;
  WallItem item = typicalWallItem(kind, plan.options.front());
  item.wall = {"0"};
  item.along = 80_in;
  plan.options.front().on_walls = {item};
  WallStripDrawing strip = drawWallStrip(deriveLayout(plan, 0), plainStyle());
  std::erase_if(strip.list, [&](const DrawItem& each) { return each.source != item.id; });
  const Length left = item.along - item.width / 2, right = left + item.width, top = item.bottom + item.height;
  const bool outlined = std::any_of(strip.list.begin(), strip.list.end(),
                                    [](const DrawItem& each) { return each.role == Role::fixture; });
  if (!outlined)
    strip.list.push_back(
        {PolyPrim{{{left, item.bottom}, {right, item.bottom}, {right, top}, {left, top}}, true, false}, Role::fixture, {}});
  const Length rim = std::max(item.width, item.height) / 24;  // half a pen's width
  return painted(strip.list, {{left - rim, item.bottom - rim}, {right + rim, top + rim}}, 7, size, on);
}

QPixmap ceilingItemPicture(std::string_view kind, QSize size, const QWidget& on) {
  const CeilingKindInfo* info = findCeilingKind(kind);
  if (!info) return QPixmap();
  const Length w = info->width / 2, d = info->depth / 2;
  DisplayList list;
  if (info->round)
    list.push_back({EllipsePrim{{}, w, d, {}, false}, Role::fixture, {}});
  else
    list.push_back({PolyPrim{{{-w, -d}, {w, -d}, {w, d}, {-w, d}}, true, false}, Role::fixture, {}});
  list.push_back({LinePrim{{-w, {}}, {w, {}}}, Role::fixtureDetail, {}});
  list.push_back({LinePrim{{{}, -d}, {{}, d}}, Role::fixtureDetail, {}});
  return painted(list, {{-w, -d}, {w, d}}, 3, size, on);
}

QPixmap fixturePicture(FixtureKind kind, QSize size, const QWidget& on) {
  Plan plan = emptyPlan(Unit::inches);
  plan.options.front().fixtures.push_back(typicalFixture(kind, plan.options.front()));
  const Layout layout = deriveLayout(plan, 0);
  if (layout.fixtures.empty()) return QPixmap();
  const PlacedFixture& placed = layout.fixtures.front();
  return painted(drawFixture(placed, plainStyle()), boundsOf(placed.footprint), 1.45, size, on);
}

QPixmap openingPicture(const Opening& opening, QSize size, const QWidget& on) {
  Plan plan = emptyPlan(Unit::inches);
  Option& option = plan.options.front();
  const Length side = 160_in, thickness = 5_in;
  option.room = plainRoom(side, thickness).room;
  Opening o = opening;
  o.wall = {"0"};  // the upper wall: seen from inside, its left end is the picture's left
  o.along = side / 2;
  option.openings = {o};
  const Layout layout = deriveLayout(plan, 0);
  if (layout.openings.empty()) return QPixmap();
  const bool slides = o.action == DoorAction::pocket || o.action == DoorAction::surfaceSliding;
  const bool door = o.kind == OpeningKind::door;
  const Length half = o.width / 2, wall_bit = 8_in;
  const Length left = side / 2 - half - (door && slides && o.toward == Hand::right ? half * 2 : wall_bit);
  const Length right = side / 2 + half + (door && slides && o.toward != Hand::right ? half * 2 : wall_bit);
  const bool swings = door && !layout.openings.front().leaves.empty();
  const Length leaf = o.action == DoorAction::doubleLeaf || o.action == DoorAction::bifold ? half : half * 2;
  const Length inside = swings && o.swing == Swing::in ? leaf + 1_in : 5_in;
  const Length outside = thickness + (swings && o.swing == Swing::out ? leaf + 1_in : 1_in);
  return painted(drawPlan(layout, plainStyle()), Box{{left, side - inside}, {right, side + outside}}, 1.45,
                 size, on);
}

}  // namespace elbowroom::ui
