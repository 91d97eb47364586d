#include "ui/walls/strip_scene.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>

#include "core/drawing/marks.h"
#include "core/plan/corners.h"

namespace elbowroom::ui {
namespace {

bool holds(const Box& box, Point p) {
  return p.x >= box.low.x && p.x <= box.high.x && p.y >= box.low.y && p.y <= box.high.y;
}

Area areaOfBox(const Box& box) { return (box.high.x - box.low.x) * (box.high.y - box.low.y); }

// Tells drawings apart well enough to know what must be painted again.
class Fingerprint {
 public:
  void add(const DisplayList& list) {
    for (const DrawItem& item : list) {
      add(static_cast<std::size_t>(item.role));
      add(item.prim.index());
      std::visit([this](const auto& prim) { add(prim); }, item.prim);
    }
  }
  std::size_t value() const { return value_; }

 private:
  void add(std::size_t v) { value_ = (value_ ^ v) * 1099511628211ULL; }
  void add(Length l) { add(static_cast<std::size_t>(l.nm())); }
  void add(Point p) { add(p.x), add(p.y); }
  void add(Angle a) { add(std::hash<double>{}(a.degrees())); }
  void add(const LinePrim& line) { add(line.a), add(line.b); }
  void add(const PolyPrim& poly) {
    for (Point p : poly.points) add(p);
  }
  void add(const ArcPrim& arc) { add(arc.center), add(arc.radius), add(arc.from), add(arc.sweep); }
  void add(const EllipsePrim& e) { add(e.center), add(e.rx), add(e.ry), add(e.turn); }
  void add(const TextPrim& text) { add(text.at), add(std::hash<std::string>{}(text.text)); }
  void add(const HatchPrim& hatch) {
    for (Point p : hatch.outline) add(p);
  }
  std::size_t value_ = 1469598103934665603ULL;
};

}  // namespace

std::vector<std::size_t> StripScene::rebuild(const Layout& layout, const Report& report,
                                             const DrawStyle& style, const StripLayers& layers,
                                             const std::set<ElementId>& first) {
  const std::vector<StripWall> before = std::move(drawing_.walls);
  const Box bounds_before = drawing_.bounds;
  const std::vector<OneWall> walls_before = std::move(walls_);
  drawing_ = drawWallFaces(layout, style, layers);
  shown_.clear();
  walls_.assign(drawing_.walls.size(), {});
  const std::size_t common_before = common_.fingerprint, marks_before = mark_list_.fingerprint;
  common_ = {};
  distribute(layout, 0);
  showCorners(layout);
  mark(report, style);
  LabelsAmid amid{{}, first};
  for (const Mark& each : marks_) amid.taken.push_back(each.box);
  const std::size_t labels = drawing_.list.size();
  labelWallStrip(drawing_, layout, style, layers, amid);
  distribute(layout, labels);
  Fingerprint common;
  common.add(common_.list);
  common_.fingerprint = common.value();
  Fingerprint marks;
  marks.add(mark_list_.list);
  mark_list_.fingerprint = marks.value();
  bool moved = before.size() != drawing_.walls.size() || !(bounds_before == drawing_.bounds);
  for (std::size_t w = 0; w < before.size() && !moved; ++w)
    moved = before[w].id != drawing_.walls[w].id || before[w].x != drawing_.walls[w].x;
  moved |= common_.fingerprint != common_before || mark_list_.fingerprint != marks_before;
  std::vector<std::size_t> changed;
  for (std::size_t w = 0; w < walls_.size(); ++w) {
    Fingerprint print;
    print.add(walls_[w].list);
    walls_[w].fingerprint = print.value();
    if (moved || walls_before[w].fingerprint != walls_[w].fingerprint) changed.push_back(w);
  }
  return changed;
}

void StripScene::distribute(const Layout& layout, std::size_t begin) {
  for (std::size_t i = begin; i < drawing_.list.size();) {
    DisplayList one;
    const ElementId id = drawing_.list[i].source;
    for (; i < drawing_.list.size() && drawing_.list[i].source == id; ++i) one.push_back(drawing_.list[i]);
    const Box box = boundsOf(one);
    if (!id.empty() && !findWall(layout.option, id)) show(layout, id, box);
    DisplayList& list = listFor(layout, id, box);
    list.insert(list.end(), one.begin(), one.end());
  }
}

// Everything is painted once: with the wall it belongs to, or with all of them when it spans several.
DisplayList& StripScene::listFor(const Layout& layout, const ElementId& id, const Box& box) {
  std::optional<WallBox> own;
  if (!id.empty() && !findFixture(layout.option, id)) own = wallBoxOf(layout, id);
  for (std::size_t w = 0; w < walls_.size(); ++w) {
    const StripWall& wall = drawing_.walls[w];
    if (wall.id == id || (own && own->wall == wall.id)) return walls_[w].list;
  }
  for (std::size_t w = 0; w < walls_.size(); ++w) {
    const StripWall& wall = drawing_.walls[w];
    if (box.low.x >= wall.x && box.high.x <= wall.x + wall.length) return walls_[w].list;
  }
  return common_.list;
}

// Items and openings have the place the plan gives them, whatever their sign on the drawing; a fixture may
// show on several walls.
void StripScene::show(const Layout& layout, const ElementId& id, Box box) {
  const bool fixture = findFixture(layout.option, id) != nullptr;
  const auto same = [&](const Shown& each) { return each.id == id; };
  const auto placed = wallBoxOf(layout, id);
  if (!fixture && std::any_of(shown_.begin(), shown_.end(), same)) return;
  bool own = false;
  if (placed) {
    const Length x = leftOf(placed->wall).value_or(Length{});
    if (!fixture) box = {{x + placed->left, placed->low}, {x + placed->right, placed->high}};
    const Length middle = (box.low.x + box.high.x) / 2;
    own = middle >= x + placed->left && middle <= x + placed->right;
  }
  shown_.push_back({id, box, own});
}

// What reaches a corner goes on there: a heavy line where both walls carry it, at the strip's two ends as
// well, and things of the walls from their side on the neighbour, as fixtures are drawn.
void StripScene::showCorners(const Layout& layout) {
  for (const CornerTouch& touch : cornerTouches(layout)) {
    const auto x = leftOf(touch.wall);
    const WallFrame* wall = findWallFrame(layout, touch.wall);
    if (!x || !wall) continue;
    const auto add = [&](const Box& box, Prim prim, Role role) {
      DisplayList& list = listFor(layout, touch.wall, box);
      list.push_back({std::move(prim), role, touch.id});
    };
    const Box side{{*x + touch.from, touch.low}, {*x + touch.to, touch.high}};
    if (findWallItem(layout.option, touch.id)) {
      const Outline outline{side.low, {side.high.x, side.low.y}, side.high, {side.low.x, side.high.y}};
      add(side, PolyPrim{outline, true, false}, Role::fixtureDetail);
      shown_.push_back({touch.id, side, false});
    }
    const Length end = drawing_.walls.back().x + drawing_.walls.back().length;
    const Length corner = touch.at_left ? *x : *x + wall->length;
    // The first wall's left end and the last one's right end are one corner.
    std::vector<Length> at{corner};
    if (corner == Length{} || corner == end) at = {Length{}, end};
    for (const Length c : at) add(side, LinePrim{{c, touch.low}, {c, touch.high}}, Role::fixture);
  }
}

void StripScene::mark(const Report& report, const DrawStyle& style) {
  marks_.clear();
  mark_list_ = {};
  struct Group {
    Outcome outcome;
    ElementId id;
    std::string digits;
    int count = 0;
    int finding = -1;
  };
  std::vector<Group> groups;
  int number = 0;
  for (std::size_t i = 0; i < report.findings.size(); ++i) {
    const Finding& finding = report.findings[i];
    if (!isMarked(finding)) continue;
    ++number;  // as the plan and Advice count them
    if (finding.subjects.empty() || !boxOf(finding.subjects.front())) continue;
    const ElementId& id = finding.subjects.front();
    if (leftOf(id)) continue;  // a whole wall
    auto same = std::find_if(groups.begin(), groups.end(),
                             [&](const Group& g) { return g.outcome == finding.outcome && g.id == id; });
    if (same == groups.end()) {
      groups.push_back({finding.outcome, id, {}, 0, static_cast<int>(i)});
      same = std::prev(groups.end());
    }
    ++same->count;
    if (same->count <= 3) same->digits += (same->count > 1 ? ", " : "") + std::to_string(number);
    if (same->count == 4) same->digits += " \u2026";
  }
  const Length mark = style.mm.scaled(kMarkMm), text_height = style.mm.scaled(kMarkTextMm);
  std::vector<Box> taken;
  for (const Group& group : groups) {
    const Box box = *boxOf(group.id);
    Length width = mark.scaled(1.2) + textWidth(group.digits, text_height, true);
    // Beside the upper right corner of the thing, below one another.
    Point at{box.high.x - mark / 2, std::min(box.high.y, drawing_.ceiling) - mark.scaled(0.6)};
    const auto boxAt = [&](Point p) {
      return elbowroom::Box{{p.x - mark / 2, p.y - mark / 2}, {p.x - mark / 2 + width, p.y + mark / 2}};
    };
    const auto meets = [&](const Box& b) {
      return std::any_of(taken.begin(), taken.end(), [&](const Box& t) {
        return t.low.x < b.high.x && b.low.x < t.high.x && t.low.y < b.high.y && b.low.y < t.high.y;
      });
    };
    // Where others are already: the free place nearest to it, within the wall that the thing is on.
    const auto [first, last] = endsAt(midpoint(box.low, box.high).x);
    const bool fits = width <= last - first;
    const auto wantedFor = [&](Length wide) {
      const Length x = std::clamp(at.x, first + mark / 2, std::max(first + mark / 2, last - wide + mark / 2));
      return Point{x, std::max(at.y, mark / 2)};
    };
    Point wanted = wantedFor(width);
    at = wanted;
    double nearest = !fits || meets(boxAt(at)) ? 1e9 : 0;
    const auto seek = [&](int reach) {
      for (int row = -8; row <= 8 && nearest > 0; ++row) {
        for (int column = -reach; column <= reach; ++column) {
          const Point spot{wanted.x + mark.scaled(0.7 * column), wanted.y + mark.scaled(1.05 * row)};
          const elbowroom::Box there = boxAt(spot);
          if (there.low.y < Length{} || spot.y > drawing_.ceiling) continue;
          if (there.low.x < first || there.high.x > last) continue;
          const double away = std::hypot(0.7 * column, 1.05 * row);
          if (away < nearest && !meets(boxAt(spot))) nearest = away, at = spot;
        }
      }
    };
    if (fits) seek(9);
    // No room for its numbers: the sign alone, which a click opens all the same.
    const bool numbered = nearest < 1e9;
    if (!numbered) width = mark, wanted = wantedFor(width), at = wanted, seek(40);
    taken.push_back(boxAt(at));
    marks_.push_back({group.finding, boxAt(at)});
    DisplayList list = drawMark(group.outcome, at, style, group.id);
    mark_list_.list.insert(mark_list_.list.end(), list.begin(), list.end());
    if (!numbered) continue;
    TextPrim text;
    text.at = {at.x + mark.scaled(0.62), at.y};
    text.text = group.digits;
    text.height = text_height;
    text.v = AnchorV::middle;
    text.bold = true;
    text.halo = true;
    mark_list_.list.push_back({text, markRole(group.outcome), group.id});
  }
}

std::pair<Length, Length> StripScene::endsAt(Length x) const {
  for (const StripWall& wall : drawing_.walls)
    if (x < wall.x + wall.length) return {wall.x, wall.x + wall.length};
  const StripWall& last = drawing_.walls.back();
  return {last.x, last.x + last.length};
}

ElementId StripScene::thingAt(Point p, Length reach) const {
  const Shown* best = nullptr;
  for (const Shown& each : shown_) {
    Box box = each.box;
    // What is only a few pixels large could hardly be hit.
    const Length wide = std::max(Length{}, (reach * 2 - (box.high.x - box.low.x)) / 2);
    const Length high = std::max(Length{}, (reach * 2 - (box.high.y - box.low.y)) / 2);
    box = {{box.low.x - wide, box.low.y - high}, {box.high.x + wide, box.high.y + high}};
    if (holds(box, p) && (!best || areaOfBox(each.box) < areaOfBox(best->box))) best = &each;
  }
  if (best) return best->id;
  for (const StripWall& wall : drawing_.walls)
    if (p.x >= wall.x && p.x < wall.x + wall.length && p.y >= Length{} && p.y <= drawing_.ceiling)
      return wall.id;
  return {};
}

std::optional<Box> StripScene::boxOf(const ElementId& id) const {
  const Shown* first = nullptr;
  for (const Shown& each : shown_)
    if (each.id == id && (!first || (each.own && !first->own))) first = &each;
  if (first) return first->box;
  for (const StripWall& wall : drawing_.walls)
    if (wall.id == id) return Box{{wall.x, Length{}}, {wall.x + wall.length, drawing_.ceiling}};
  return std::nullopt;
}

int StripScene::findingAt(Point p) const {
  for (const Mark& each : marks_)
    if (holds(each.box, p)) return each.finding;
  return -1;
}

std::vector<ElementId> StripScene::within(const Box& band) const {
  std::vector<ElementId> ids;
  for (const Shown& each : shown_)
    if (holds(band, each.box.low) && holds(band, each.box.high)) ids.push_back(each.id);
  return ids;
}

std::vector<ElementId> StripScene::inOrder() const {
  std::vector<ElementId> order;
  for (const StripWall& wall : drawing_.walls) {
    order.push_back(wall.id);
    for (const Shown& each : shown_)
      if (each.box.low.x >= wall.x && each.box.low.x < wall.x + wall.length &&
          std::find(order.begin(), order.end(), each.id) == order.end())
        order.push_back(each.id);
  }
  return order;
}

StripScene::Spot StripScene::spotAt(Length x) const {
  if (drawing_.walls.empty()) return {};
  for (const StripWall& wall : drawing_.walls)
    if (x < wall.x + wall.length) return {wall.id, std::max(Length{}, x - wall.x)};
  return {drawing_.walls.back().id, drawing_.walls.back().length};
}

std::optional<Length> StripScene::leftOf(const ElementId& id) const {
  for (const StripWall& wall : drawing_.walls)
    if (wall.id == id) return wall.x;
  return std::nullopt;
}

Segment StripScene::fromWall(const ElementId& wall, const Segment& s) const {
  const Length x = leftOf(wall).value_or(Length{});
  return {{s.a.x + x, s.a.y}, {s.b.x + x, s.b.y}};
}

}  // namespace elbowroom::ui
