#include <algorithm>
#include <cmath>
#include <optional>

#include "core/drawing/dimension_rows.h"
#include "core/drawing/dimensions.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/sheet_text.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

constexpr double kHeightTextMm = 2.5, kHeightStepMm = 3.4, kLeaderMm = 4;

bool stays(Status status) { return status != Status::remove; }

// ---- distances along the wall

struct Station {
  double s;
  bool centreline = true;
};

// Chains from corner to corner, as few as leave every distance room for its figure.
void addChains(DimensionGroup& group, std::vector<Station> stations, double length, double sign, int rank,
               const DrawStyle& style) {
  std::sort(stations.begin(), stations.end(), [](const Station& a, const Station& b) { return a.s < b.s; });
  std::vector<std::vector<Station>> chains;
  const auto room = [&](double gap) {
    const std::string words = sheetText(Length::fromInches(gap), style.unit);
    return gap < 1.0 / 16 ||
           gap >= textWidth(words, style.mm.scaled(kDimensionTextMm)).inches() + 2 * style.mm.inches();
  };
  for (const Station& station : stations) {
    if (station.s < 1.0 / 16 || station.s > length - 1.0 / 16) continue;
    const bool said = std::any_of(chains.begin(), chains.end(), [&](const auto& chain) {
      return std::abs(chain.back().s - station.s) < 1.0 / 16;
    });
    if (said) continue;
    auto chain = std::find_if(chains.begin(), chains.end(),
                              [&](const auto& c) { return room(station.s - c.back().s); });
    if (chain == chains.end()) chain = chains.insert(chains.end(), std::vector<Station>{{0, false}});
    chain->push_back(station);
  }
  for (std::vector<Station>& chain : chains) {
    chain.push_back({length, false});
    if (sign < 0) std::reverse(chain.begin(), chain.end());
    DimensionRow row;
    row.rank = rank;
    for (const Station& station : chain) {
      row.stations.push_back(sign * station.s);
      row.starts.push_back(group.base);
      row.centreline.push_back(station.centreline);
    }
    group.rows.push_back(std::move(row));
  }
}

struct Along {
  std::vector<Station> openings, low, high, bends;
};

Along alongWall(const Layout& layout, std::size_t wall) {
  Along along;
  const int index = static_cast<int>(wall);
  const WallFrame& frame = layout.walls[wall];
  for (const PlacedOpening& o : layout.openings) {
    if (o.wall != index) continue;
    const double half = o.opening.width.inches() / 2, c = o.opening.along.inches();
    along.openings.push_back({c - half, false}), along.openings.push_back({c + half, false});
  }
  for (const PlacedFixture& f : layout.fixtures) {
    if (f.wall == index && stays(f.fixture.status))
      along.low.push_back({dot(f.center - frame.from, frame.along).inches()});
  }
  const CeilingLine ceiling = ceilingLineOf(layout, wall);
  const Length waist = ceiling.highest().scaled(0.45);
  for (const PlacedWallItem& placed : layout.on_walls) {
    if (placed.wall != index || !stays(placed.item.status)) continue;
    auto& side = (placed.bottom + placed.top) / 2 < waist ? along.low : along.high;
    side.push_back({placed.item.along.inches()});
  }
  for (std::size_t i = 1; i + 1 < ceiling.points.size(); ++i)
    along.bends.push_back({ceiling.points[i].along.inches(), false});
  return along;
}

// ---- heights

struct Height {
  double y;            // inches above the finished floor
  double left, right;  // ends of what it belongs to, along the wall
  std::string what;
  ElementId id;
};

void addHeight(std::vector<Height>& heights, const ElementId& id, Length y, double left, double right,
               const std::string& what) {
  if (y > Length{}) heights.push_back({y.inches(), left, right, what, id});
}

std::vector<Height> heightsOn(const Layout& layout, std::size_t wall) {
  std::vector<Height> heights;
  const int index = static_cast<int>(wall);
  const WallFrame& frame = layout.walls[wall];
  for (const PlacedOpening& o : layout.openings) {
    if (o.wall != index) continue;
    const double half = o.opening.width.inches() / 2, c = o.opening.along.inches();
    const bool window = o.opening.kind == OpeningKind::window;
    if (window && !o.opening.sill) continue;
    const Length sill = window ? *o.opening.sill : Length{};
    if (window) addHeight(heights, o.opening.id, sill, c - half, c + half, "sill");
    addHeight(heights, o.opening.id, sill + o.opening.height, c - half, c + half, "head");
  }
  for (const PlacedFixture& f : layout.fixtures) {
    if (f.wall != index || !stays(f.fixture.status) || !f.fixture.height) continue;
    if (f.fixture.kind == FixtureKind::toilet || f.fixture.kind == FixtureKind::shower) continue;
    const double c = dot(f.center - frame.from, frame.along).inches(), half = f.fixture.width.inches() / 2;
    const bool rim = f.fixture.kind == FixtureKind::basin || f.fixture.kind == FixtureKind::bath ||
                     f.fixture.kind == FixtureKind::freestandingBath;
    addHeight(heights, f.fixture.id, *f.fixture.height, c - half, c + half, rim ? "rim" : "top");
  }
  for (const PlacedWallItem& placed : layout.on_walls) {
    if (placed.wall != index || !stays(placed.item.status)) continue;
    for (const HeightMark& mark : heightMarks(placed))
      addHeight(heights, placed.item.id, mark.at, placed.from.inches(), placed.to.inches(), mark.what);
  }
  const CeilingLine ceiling = ceilingLineOf(layout, wall);
  // The wall's own height is said beside it.
  std::erase_if(heights,
                [&](const Height& h) { return std::abs(h.y - ceiling.highest().inches()) < 1.0 / 32; });
  for (std::size_t i = 1; i + 1 < ceiling.points.size(); ++i) {
    const double at = ceiling.points[i].along.inches();
    const Length height = ceiling.points[i].height;  // the corners' own heights are said beside them
    if (height != ceiling.points.front().height && height != ceiling.points.back().height)
      addHeight(heights, {}, height, at, at, "ceiling");
  }
  return heights;
}

// One figure per height and side, whatever shares it.
void merge(std::vector<Height>& heights, bool left) {
  std::stable_sort(heights.begin(), heights.end(),
                   [](const Height& a, const Height& b) { return a.y < b.y; });
  std::vector<Height> merged;
  for (const Height& h : heights) {
    if (merged.empty() || h.y - merged.back().y > 1.0 / 32) {
      merged.push_back(h);
      continue;
    }
    Height& same = merged.back();
    if (same.what.find(h.what) == std::string::npos) same.what += ", " + h.what;
    same.left = left ? std::max(same.left, h.left) : same.left;
    same.right = left ? same.right : std::min(same.right, h.right);
  }
  heights = std::move(merged);
}

// Places at least `step` apart, as near as can be to where they belong; from bottom to top.
std::vector<double> spread(const std::vector<Height>& heights, double step, double low, double high) {
  struct Block {
    double sum;
    int count;
    double at() const { return sum / count; }
  };
  std::vector<Block> blocks;
  for (std::size_t i = 0; i < heights.size(); ++i) {
    blocks.push_back({heights[i].y - static_cast<double>(i) * step, 1});
    while (blocks.size() > 1 && blocks[blocks.size() - 2].at() > blocks.back().at()) {
      blocks[blocks.size() - 2].sum += blocks.back().sum;
      blocks[blocks.size() - 2].count += blocks.back().count;
      blocks.pop_back();
    }
  }
  const double most = high - (static_cast<double>(heights.size()) - 1) * step;
  std::vector<double> places;
  for (const Block& block : blocks)
    for (int k = 0; k < block.count; ++k)
      places.push_back(std::clamp(block.at(), low, std::max(low, most)) +
                       static_cast<double>(places.size()) * step);
  return places;
}

// Draws one side's heights; answers how far the texts reach beyond the corner, in inches.
double drawHeights(DisplayList& list, std::vector<Height> heights, bool left, double length, double top,
                   const ElementId& wall, const DrawStyle& style) {
  if (heights.empty()) return 0;
  merge(heights, left);
  const double mm = style.mm.inches(), step = kHeightStepMm * mm, low = 1.2 * mm, high = top - 1.2 * mm;
  // What finds no place at all is in the list of things; better that than one figure over another.
  const std::size_t most = static_cast<std::size_t>(std::max(1.0, (high - low) / step + 1));
  if (heights.size() > most) heights.resize(most);
  const std::vector<double> places = spread(heights, step, low, high);
  const double corner = left ? 0 : length, way = left ? -1 : 1;
  double reach = 0;
  Pen pen(elevationFrame(), wall);
  DisplayList texts;
  for (std::size_t i = 0; i < heights.size(); ++i) {
    const Height& h = heights[i];
    const double start = left ? h.left - 0.8 * mm : h.right + 0.8 * mm;
    if ((start - corner) * way < 0) pen.line(Role::dimension, start, h.y, corner, h.y);
    pen.poly(
        Role::dimension,
        {{corner, h.y}, {corner + way * 1.2 * mm, h.y}, {corner + way * (kLeaderMm - 0.4) * mm, places[i]}},
        false);
    TextPrim text;
    text.text = sheetText(Length::fromInches(h.y), style.unit) + " " + h.what;
    text.height = style.mm.scaled(kHeightTextMm);
    text.at = {Length::fromInches(corner + way * kLeaderMm * mm), Length::fromInches(places[i])};
    text.h = left ? AnchorH::right : AnchorH::left;
    text.v = AnchorV::middle;
    text.halo = true;
    reach = std::max(reach, kLeaderMm * mm + textWidth(text.text, text.height).inches());
    texts.push_back({text, Role::dimensionText, wall});
  }
  append(list, pen.take());
  append(list, std::move(texts));
  return reach;
}

// A height that is only drawn is no figure to build by.
void drawCeilingHeight(DisplayList& list, double x, Length height, bool stated, double reach, bool left,
                       const DrawStyle& style) {
  const double offset = reach + 5.5 * style.mm.inches();
  const Point foot{Length::fromInches(x), {}}, top{foot.x, height};
  append(list, dimensionLine({foot, top}, Length::fromInches(left ? offset : -offset),
                             stated ? sheetText(height, style.unit) : "ceiling not stated", style));
}

}  // namespace

std::vector<HeightMark> heightMarks(const PlacedWallItem& placed) {
  const WallKindInfo* info = findWallKind(placed.item.kind);
  const HeightMark top{placed.top, "top"}, bottom{placed.bottom, "bottom"};
  const HeightMark middle{placed.bottom + boxUp(placed.item), "ctr"};
  if (!info) return {bottom, top};
  switch (info->use) {
    case WallUse::mirror:
      if (info->for_person) return {middle};
      return {bottom, top};
    case WallUse::recess:
    case WallUse::heat:
    case WallUse::panel:
      return {bottom, top};
    case WallUse::shelf:
      return {top};
    case WallUse::grabBar:
      if (info->key == "grab-bar-l") return {bottom, top};
      if (info->key == "grab-bar-fold") return {top};
      return {middle};
    case WallUse::water:
      if (info->key == "hand-spray") return {bottom, top};
      return {middle};
    case WallUse::lamp:
    case WallUse::receptacle:
    case WallUse::control:
    case WallUse::rail:
    case WallUse::hook:
    case WallUse::holder:
    case WallUse::air:
    case WallUse::box:
      return {middle};
  }
  return {middle};
}

DisplayList drawElevationDimensions(const Layout& layout, std::size_t wall, const DrawStyle& style) {
  const double length = layout.walls[wall].length.inches();
  const CeilingLine ceiling = ceilingLineOf(layout, wall);
  const Along along = alongWall(layout, wall);
  DimensionGroup below, above;
  below.along = {-1, 0}, below.outward = {0, -1}, below.square = true;
  above.along = {1, 0}, above.outward = {0, 1}, above.square = true;
  above.base = ceiling.highest().inches();
  addChains(below, along.openings, length, -1, 0, style);
  addChains(below, along.low, length, -1, 1, style);
  below.rows.push_back({{-length, 0}, {0, 0}, {false, false}, 2});
  addChains(above, along.high, length, 1, 0, style);
  addChains(above, along.bends, length, 1, 1, style);
  DisplayList list = drawDimensionGroups({below, above}, style);

  // On the nearer side, unless the ceiling there is too low for it.
  std::vector<Height> left, right;
  const Length left_top = ceiling.points.front().height, right_top = ceiling.points.back().height;
  for (const Height& h : heightsOn(layout, wall)) {
    bool on_left = h.left < length - h.right;
    if (on_left && h.y > left_top.inches() && right_top > left_top) on_left = false;
    if (!on_left && h.y > right_top.inches() && left_top > right_top) on_left = true;
    (on_left ? left : right).push_back(h);
  }
  const ElementId& id = layout.walls[wall].id;
  DisplayList heights;
  const double out_left = drawHeights(heights, left, true, length, left_top.inches(), id, style);
  const double out_right = drawHeights(heights, right, false, length, right_top.inches(), id, style);
  drawCeilingHeight(heights, 0, left_top, ceiling.stated, out_left, true, style);
  drawCeilingHeight(heights, length, right_top, ceiling.stated, out_right, false, style);
  append(list, std::move(heights));
  return list;
}

DisplayList drawStripDimensions(const Layout& layout, std::size_t wall, double x, Clutter& taken,
                                const LabelRound& round, const DrawStyle& style) {
  const WallFrame& frame = layout.walls[wall];
  const double mm = style.mm.inches(), length = frame.length.inches(), y = -1.8 * mm;
  double strip_end = 0;
  for (const WallFrame& each : layout.walls) strip_end += each.length.inches();
  const Length top = ceilingLineOf(layout, wall).highest();
  Pen pen(elevationFrame(), frame.id);
  DisplayList texts;
  const auto text = [&](const std::string& words, double at_x, double at_y, AnchorH h, AnchorV v) {
    TextPrim prim;
    prim.text = words;
    prim.height = style.mm.scaled(2.4);
    prim.at = {Length::fromInches(at_x), Length::fromInches(at_y)};
    prim.h = h, prim.v = v, prim.halo = true;
    return prim;
  };
  // One chain of all centrelines; a distance too short for its figure goes without.
  const auto chain = [&] {
    const Along along = alongWall(layout, wall);
    std::vector<double> stations{0, length};
    for (const auto* part : {&along.openings, &along.low, &along.high})
      for (const Station& station : *part)
        if (station.s > 1.0 / 16 && station.s < length - 1.0 / 16) stations.push_back(station.s);
    std::sort(stations.begin(), stations.end());
    stations.erase(
        std::unique(stations.begin(), stations.end(), [](double a, double b) { return b - a < 1.0 / 16; }),
        stations.end());
    pen.line(Role::dimension, x, y, x + length, y);
    for (std::size_t i = 0; i < stations.size(); ++i) {
      pen.line(Role::dimension, x + stations[i] - 0.9 * mm, y - 0.9 * mm, x + stations[i] + 0.9 * mm,
               y + 0.9 * mm);
      if (i == 0) continue;
      const double a = stations[i - 1], b = stations[i];
      const TextPrim words = text(sheetText(Length::fromInches(b - a), style.unit), x + (a + b) / 2,
                                  y - 1.1 * mm, AnchorH::centre, AnchorV::top);
      const Box box = textBounds(words);
      if ((box.high.x - box.low.x).inches() + mm > b - a) continue;
      taken.addText(box);
      texts.push_back({words, Role::dimensionText, frame.id});
    }
  };
  if (!round.first) chain();
  for (const Height& h : heightsOn(layout, wall)) {
    if (!round.takes(h.id)) continue;
    const std::string words = sheetText(Length::fromInches(h.y), style.unit);
    // Near the thing; one that is asked for may stand farther off, at the end of a leader, or over the next
    // wall.
    std::vector<double> shifts{0.0, 1.8, -1.8};
    for (double far = 3.4; round.first && far < 24; far += 1.6) shifts.push_back(far), shifts.push_back(-far);
    const double low_end = round.first ? 0 : x, high_end = round.first ? strip_end : x + length;
    bool placed = false;
    for (const double shift : shifts) {
      for (const bool right : {true, false}) {
        if (placed) continue;
        const double at = right ? h.right + 1.4 * mm : h.left - 1.4 * mm, level = h.y + shift * mm;
        const AnchorH side = right ? AnchorH::left : AnchorH::right;
        const TextPrim prim = text(words, x + at, level, side, AnchorV::middle);
        const Box box = textBounds(prim);
        if (box.low.x.inches() < low_end || box.high.x.inches() > high_end) continue;
        if (box.low.y < Length{} || (round.first && box.high.y > top)) continue;
        if (taken.costOf(box, kTextOverText) >= kTextOverText) continue;
        taken.addText(box);
        pen.line(Role::dimension, x + (right ? h.right : h.left), h.y, x + at,
                 shift > 2 || shift < -2 ? level : h.y);
        texts.push_back({prim, Role::dimensionText, frame.id});
        placed = true;
      }
    }
  }
  DisplayList list = pen.take();
  append(list, std::move(texts));
  return list;
}

}  // namespace elbowroom
