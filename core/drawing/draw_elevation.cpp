#include "core/drawing/draw_elevation.h"

#include <algorithm>

#include "core/base/length_text.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/elevation_works.h"
#include "core/drawing/serving_bands.h"

namespace elbowroom {
namespace {

constexpr double kCeilingUnstated = 96;  // inches
constexpr double kNameMm = 4.5, kFiguresMm = 4.5, kDistancesMm = 5.0;

// What the layers show that is found for the whole room at once.
struct InTheWalls {
  std::vector<BackingZone> backing;
  std::vector<ElectricalZone> electrical;
  InTheWalls(const Layout& layout, const StripLayers& layers) {
    if (layers.backing) backing = backingZones(layout);
    if (layers.electrical) electrical = electricalZones(layout, choiceOf(layout.settings));
  }
};

void drawCeiling(DisplayList& list, const Layout& layout, std::size_t wall, double x) {
  const CeilingLine line = ceilingLineOf(layout, wall);
  Pen pen(elevationFrame(), layout.walls[wall].id);
  std::vector<std::array<double, 2>> points;
  for (const CeilingPoint& p : line.points) points.push_back({x + p.along.inches(), p.height.inches()});
  pen.poly(line.stated ? Role::wallCut : Role::hidden, points, false);
  pen.line(Role::opening, points.front()[0], 0, points.front()[0], points.front()[1]);
  pen.line(Role::opening, points.back()[0], 0, points.back()[0], points.back()[1]);
  append(list, pen.take());
}

// Everything within one wall's outline, from what lies deepest to what is nearest.
void drawFace(DisplayList& list, const Layout& layout, std::size_t wall, double x, const StripLayers& layers,
              const InTheWalls& in, const DrawStyle& style) {
  const int index = static_cast<int>(wall);
  append(list, drawBackingOn(layout.walls[wall], in.backing, x, style));
  if (layers.studs) append(list, drawStuds(layout, wall, x));
  drawCeiling(list, layout, wall, x);
  for (const PlacedOpening& o : layout.openings) {
    if (o.wall != index) continue;
    Pen pocket(elevationFrame(), layout.walls[wall].id);
    drawPocket(pocket, o, layout.walls[wall], x);
    append(list, pocket.take());
    Pen casing(elevationFrame(), layout.walls[wall].id);
    drawCasing(casing, o.opening, ceilingLineOf(layout, wall), x);
    append(list, casing.take());
    Pen pen(elevationFrame(), o.opening.id);
    drawOpeningFront(pen, o.opening, x);
    append(list, pen.take());
  }
  for (const PlacedFixture& f : layout.fixtures) append(list, drawFixtureOnWall(layout, f, wall, x));
  const Length left = Length::fromInches(x);
  for (const PlacedWallItem& placed : layout.on_walls) {
    if (placed.wall != index) continue;
    Pen pen(elevationFrame(), placed.item.id);
    drawWallSymbol(pen, placed.item, {{left + placed.from, placed.bottom}, {left + placed.to, placed.top}},
                   style);
    append(list, pen.take());
  }
  append(list, drawElectricalOn(layout.walls[wall], in.electrical, x, style));
}

std::string nameOf(const WallFrame& wall) {
  std::string name = "Wall " + wall.id.text;
  if (wall.plumbing) name += ", pipes";
  if (wall.exterior) name += ", exterior";
  return name;
}

// Across the wall's middle; shorter where the wall is short.
void addText(DisplayList& list, const WallFrame& wall, Length x, Length y, Role role, const std::string& full,
             AnchorV v, Clutter& taken, const DrawStyle& style) {
  TextPrim text;
  text.height = style.mm.scaled(2.6);
  text.text = full;
  const Length room = wall.length.scaled(0.96);
  if (textWidth(text.text, text.height) > room) text.text = full.substr(0, full.find(','));
  if (textWidth(text.text, text.height) > room) return;
  text.at = {x + wall.length / 2, y};
  text.h = AnchorH::centre;
  text.v = v;
  if (taken.costOf(textBounds(text), kTextOverText) >= kTextOverText) return;
  taken.addText(textBounds(text));
  list.push_back({text, role, wall.id});
}

Length highestOf(const Layout& layout) {
  return layout.option.room.ceiling.height.value_or(Length::fromInches(kCeilingUnstated));
}

}  // namespace

Length CeilingLine::highest() const {
  Length most;
  for (const CeilingPoint& p : points) most = std::max(most, p.height);
  return most;
}

CeilingLine ceilingLineOf(const Layout& layout, std::size_t wall) {
  const WallFrame& frame = layout.walls[wall];
  if (const auto along = ceilingAlong(layout, {frame.from, frame.to}); along && along->size() >= 2)
    return {*along, true};
  const Length level = highestOf(layout);
  return {{{{}, level}, {frame.length, level}}, layout.option.room.ceiling.height.has_value()};
}

double stripTextMm(const StripLayers& layers) {
  return kNameMm + kFiguresMm + (layers.dimensions ? kDistancesMm : 0);
}

WallStripDrawing drawWallFaces(const Layout& layout, const DrawStyle& style, const StripLayers& layers) {
  WallStripDrawing strip;
  strip.ceiling_stated = layout.option.room.ceiling.height.has_value();
  strip.ceiling = highestOf(layout);
  InTheWalls in(layout, layers);
  Length x;
  for (std::size_t i = 0; i < layout.walls.size(); ++i) {
    strip.walls.push_back({layout.walls[i].id, x, layout.walls[i].length});
    drawFace(strip.list, layout, i, x.inches(), layers, in, style);
    if (layers.people) {
      append(strip.list, drawServingBands(layout, i, x.inches(), style));
      append(strip.list, drawPeopleLines(layout, i, x.inches(), style));
    }
    x += layout.walls[i].length;
  }
  if (strip.walls.empty()) return strip;
  strip.list.push_back({LinePrim{{{}, {}}, {x, {}}}, Role::wallCut, {}});
  const double below = stripTextMm(layers) - kNameMm;
  strip.bounds = {{{}, -style.mm.scaled(below)}, {x, strip.ceiling + style.mm.scaled(kNameMm)}};
  strip.backing = std::move(in.backing);
  strip.electrical = std::move(in.electrical);
  return strip;
}

void labelWallStrip(WallStripDrawing& strip, const Layout& layout, const DrawStyle& style,
                    const StripLayers& layers, const LabelsAmid& amid) {
  const double below = stripTextMm(layers) - kNameMm;
  Clutter all;
  for (const Box& box : amid.taken) all.addText(box);
  if (layers != StripLayers{}) all.add(strip.list);
  DisplayList labels;
  for (std::size_t i = 0; i < layout.walls.size(); ++i) {
    const WallFrame& wall = layout.walls[i];
    const Length x = strip.walls[i].x;
    addText(labels, wall, x, strip.ceiling + style.mm.scaled(0.8), Role::label, nameOf(wall), AnchorV::base,
            all, style);
    addText(labels, wall, x, -style.mm.scaled(below - 3.3), Role::dimensionText,
            lengthText(wall.length, style.unit), AnchorV::top, all, style);
  }
  // What is pointed at or chosen is labelled before everything else.
  for (const bool first : {true, false}) {
    if (first && amid.first.empty()) continue;
    const LabelRound round{amid.first, first};
    for (std::size_t i = 0; i < layout.walls.size(); ++i) {
      const WallFrame& wall = layout.walls[i];
      const double x = strip.walls[i].x.inches();
      if (layers.dimensions) append(labels, drawStripDimensions(layout, i, x, all, round, style));
      if (layers.people) append(labels, labelServingBands(layout, i, x, all, round, style));
      if (layers.people && !first) append(labels, labelPeopleLines(layout, i, x, all, style));
      append(labels, labelBackingOn(wall, strip.backing, x, false, all, round, style));
      append(labels, labelElectricalOn(wall, strip.electrical, x, all, round, style));
      if (layers.studs && !first) append(labels, labelBays(layout, i, x, all, style));
    }
  }
  append(strip.list, std::move(labels));
}

WallStripDrawing drawWallStrip(const Layout& layout, const DrawStyle& style, const StripLayers& layers) {
  WallStripDrawing strip = drawWallFaces(layout, style, layers);
  labelWallStrip(strip, layout, style, layers, {});
  return strip;
}

ElevationDrawing drawElevation(const Layout& layout, std::size_t wall, const StripLayers& layers,
                               const DrawStyle& style) {
  ElevationDrawing drawing;
  const CeilingLine ceiling = ceilingLineOf(layout, wall);
  drawing.ceiling = ceiling.highest();
  drawing.ceiling_stated = ceiling.stated;
  const InTheWalls in(layout, layers);
  drawFace(drawing.list, layout, wall, 0, layers, in, style);
  const WallFrame& frame = layout.walls[wall];
  PolyPrim cut;  // where floor, ceiling and the walls beside it are cut
  cut.closed = true;
  for (const CeilingPoint& p : ceiling.points) cut.points.push_back({p.along, p.height});
  cut.points.push_back({frame.length, {}}), cut.points.push_back({{}, {}});
  if (ceiling.stated) drawing.list.push_back({cut, Role::wallCutExterior, frame.id});
  else drawing.list.push_back({LinePrim{{{}, {}}, {frame.length, {}}}, Role::wallCutExterior, frame.id});
  if (layers.dimensions) append(drawing.list, drawElevationDimensions(layout, wall, style));
  if (layers.people) {
    append(drawing.list, drawServingBands(layout, wall, 0, style));
    append(drawing.list, drawPeopleLines(layout, wall, 0, style));
  }
  Clutter taken;
  taken.add(drawing.list);
  if (layers.people) {
    append(drawing.list, labelServingBands(layout, wall, 0, taken, {}, style));
    append(drawing.list, labelPeopleLines(layout, wall, 0, taken, style));
  }
  append(drawing.list, labelBackingOn(frame, in.backing, 0, layers.dimensions, taken, {}, style));
  append(drawing.list, labelElectricalOn(frame, in.electrical, 0, taken, {}, style));
  if (layers.studs) append(drawing.list, labelBays(layout, wall, 0, taken, style));
  drawing.bounds = boundsOf(drawing.list);
  return drawing;
}

}  // namespace elbowroom
