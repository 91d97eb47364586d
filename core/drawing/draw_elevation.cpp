#include "core/drawing/draw_elevation.h"

#include <algorithm>

#include "core/drawing/pen.h"
#include "core/plan/catalogue.h"

namespace elbowroom {
namespace {

constexpr double kCeilingUnstated = 96, kFlush = 3;  // inches; a side this near a wall shows on it

struct Silhouette {
  double left = 0, right = 0, top = 0;
  bool stated = true;  // its height
};

Silhouette silhouetteOf(const Fixture& fixture, double left, double right) {
  return {left, right, heightOf(fixture).inches(), fixture.height.has_value()};
}

Role outlineRole(const Fixture& fixture, const Silhouette& s) {
  return fixture.status == Status::remove ? Role::fixtureRemoved : s.stated ? Role::fixture : Role::hidden;
}

void drawFront(Pen& pen, const Fixture& f, const Silhouette& s) {
  const Role role = outlineRole(f, s), detail = Role::fixtureDetail;
  const double middle = (s.left + s.right) / 2, width = s.right - s.left;
  switch (f.kind) {
    case FixtureKind::toilet: {
      const double half_tank = std::min(width, f.tank_width ? f.tank_width->inches() : width) / 2;
      const double half_bowl = std::min(width, f.bowl_width ? f.bowl_width->inches() : width * 0.7) / 2;
      const double seat = std::min(15.0, s.top * 0.6);
      pen.rectangle(role, middle - half_tank, seat, middle + half_tank, s.top);
      pen.poly(role,
               {{middle - half_bowl, seat},
                {middle + half_bowl, seat},
                {middle + half_bowl * 0.5, 0},
                {middle - half_bowl * 0.5, 0}},
               true);
      return;
    }
    case FixtureKind::basin:
    case FixtureKind::bidet: {
      const double rim = std::max(0.0, s.top - 6);
      pen.poly(
          role,
          {{s.left, s.top}, {s.right, s.top}, {middle + width * 0.25, rim}, {middle - width * 0.25, rim}},
          true);
      pen.line(detail, middle - width * 0.12, rim, middle - width * 0.1, 0);
      pen.line(detail, middle + width * 0.12, rim, middle + width * 0.1, 0);
      return;
    }
    case FixtureKind::vanity:
      pen.rectangle(role, s.left, f.knee_space ? std::max(0.0, f.knee_space->height.inches()) : 0, s.right,
                    s.top);
      pen.line(detail, s.left, s.top - 1.5, s.right, s.top - 1.5);
      if (!f.knee_space) pen.line(detail, middle, 4, middle, s.top - 1.5);
      if (!f.knee_space) pen.line(detail, s.left, 4, s.right, 4);
      return;
    case FixtureKind::shower: {
      const double curb = f.curb ? f.curb->inches() : 0;
      pen.rectangle(role, s.left, 0, s.right, s.top);
      if (curb > 0) pen.line(detail, s.left, curb, s.right, curb);
      return;
    }
    case FixtureKind::cabinet:
    case FixtureKind::linenCloset:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      pen.line(detail, middle, 0, middle, s.top);
      return;
    case FixtureKind::bath:
    case FixtureKind::freestandingBath:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      pen.line(detail, s.left, s.top - 1.5, s.right, s.top - 1.5);
      return;
    case FixtureKind::washer:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      pen.circle(detail, middle, s.top * 0.5, std::min(width, s.top) * 0.3);
      return;
    case FixtureKind::bench:
    case FixtureKind::heater:
      pen.rectangle(role, s.left, 0, s.right, s.top);
      return;
  }
}

void drawOpeningFront(Pen& pen, const Opening& o, double x) {
  const double half = o.width.inches() / 2, c = x + o.along.inches();
  const double left = c - half, right = c + half;
  const double bottom = o.kind == OpeningKind::window ? o.sill.value_or(Length{}).inches() : 0;
  const double top = bottom + o.height.inches();
  pen.rectangle(Role::opening, left, bottom, right, top, 0, true);
  if (o.kind == OpeningKind::window) {
    pen.rectangle(Role::fixtureDetail, left + 1.5, bottom + 1.5, right - 1.5, top - 1.5);
    return;
  }
  // Elevation sign of a swing: lines from the latch side's corners to the middle of the hinge side; dashed
  // when the leaf opens away from the viewer.
  const Role role = o.swing == Swing::in ? Role::fixtureDetail : Role::clearZone;
  const auto swing = [&](double hinge, double latch) {
    pen.line(role, latch, top, hinge, (top + bottom) / 2);
    pen.line(role, latch, bottom, hinge, (top + bottom) / 2);
  };
  const auto slide = [&](bool to_right) {
    const double y = (top + bottom) / 2, from = to_right ? left + half * 0.6 : right - half * 0.6,
                 to = to_right ? right - half * 0.4 : left + half * 0.4, tip = to_right ? -3 : 3;
    pen.line(Role::fixtureDetail, from, y, to, y);
    pen.line(Role::fixtureDetail, to, y, to + tip, y + 2);
    pen.line(Role::fixtureDetail, to, y, to + tip, y - 2);
  };
  switch (o.action) {
    case DoorAction::hinged:
      return o.hinge == Hand::left ? swing(left, right) : swing(right, left);
    case DoorAction::doubleLeaf:
      return swing(left, c), swing(right, c), pen.line(Role::opening, c, bottom, c, top);
    case DoorAction::bifold:
      return pen.line(Role::opening, c, bottom, c, top);
    case DoorAction::pocket:
    case DoorAction::surfaceSliding:
      return slide(o.toward.value_or(Hand::right) == Hand::right);
    case DoorAction::cased:
      return;
  }
}

// Extent of a footprint along a wall, and how near it comes to it.
struct Beside {
  double low, high, nearest;
};
Beside beside(const WallFrame& wall, const Outline& footprint) {
  Beside b{1e9, -1e9, 1e9};
  for (const Point& p : footprint) {
    const double along = dot(p - wall.from, wall.along).inches();
    b.low = std::min(b.low, along);
    b.high = std::max(b.high, along);
    b.nearest = std::min(b.nearest, dot(p - wall.from, wall.inward).inches());
  }
  return b;
}

class StripBuilder {
 public:
  StripBuilder(const Layout& layout, const DrawStyle& style) : layout_(layout), style_(style) {}

  WallStripDrawing build() {
    WallStripDrawing strip;
    const auto& height = layout_.option.room.ceiling.height;
    strip.ceiling_stated = height.has_value();
    strip.ceiling = height.value_or(Length::fromInches(kCeilingUnstated));
    Length x;
    for (std::size_t i = 0; i < layout_.walls.size(); ++i) {
      const WallFrame& wall = layout_.walls[i];
      strip.walls.push_back({wall.id, x, wall.length});
      drawWall(strip, static_cast<int>(i), x);
      x += wall.length;
    }
    if (strip.walls.empty()) return strip;
    const double end = x.inches(), top = strip.ceiling.inches();
    Pen pen(frame(), {});
    pen.line(Role::wallCut, 0, 0, end, 0);
    pen.line(strip.ceiling_stated ? Role::wallCut : Role::hidden, 0, top, end, top);
    append(strip.list, pen.take());
    strip.bounds = {{{}, -style_.mm.scaled(4.5)}, {x, strip.ceiling + style_.mm.scaled(4.5)}};
    return strip;
  }

 private:
  static LocalFrame frame() { return {{}, {1, 0}, {0, 1}}; }

  void drawWall(WallStripDrawing& strip, int index, Length at) {
    const WallFrame& wall = layout_.walls[static_cast<std::size_t>(index)];
    const double x = at.inches(), length = wall.length.inches(), top = strip.ceiling.inches();
    Pen edges(frame(), wall.id);
    edges.line(Role::opening, x, 0, x, top);
    edges.line(Role::opening, x + length, 0, x + length, top);
    addText(edges, x, length, top + 0.8 * style_.mm.inches(), Role::label, nameOf(wall), AnchorV::base);
    addText(edges, x, length, -1.2 * style_.mm.inches(), Role::dimensionText,
            lengthText(wall.length, style_.unit), AnchorV::top);
    append(strip.list, edges.take());
    for (const PlacedOpening& o : layout_.openings) {
      if (o.wall != index) continue;
      Pen pen(frame(), o.opening.id);
      drawOpeningFront(pen, o.opening, x);
      append(strip.list, pen.take());
    }
    for (const PlacedFixture& f : layout_.fixtures) drawFixtureOn(strip, f, index, x);
    for (const PlacedWallItem& placed : layout_.on_walls) {
      if (placed.wall != index) continue;
      Pen pen(frame(), placed.item.id);
      pen.rectangle(Role::fixtureDetail, (at + placed.from).inches(), placed.bottom.inches(),
                    (at + placed.to).inches(), placed.top.inches());
      append(strip.list, pen.take());
    }
  }

  void drawFixtureOn(WallStripDrawing& strip, const PlacedFixture& placed, int index, double x) {
    const WallFrame& wall = layout_.walls[static_cast<std::size_t>(index)];
    const Fixture& f = placed.fixture;
    Pen pen(frame(), f.id);
    if (placed.wall == index) {
      const double c = x + dot(placed.center - wall.from, wall.along).inches(), half = f.width.inches() / 2;
      drawFront(pen, f, silhouetteOf(f, c - half, c + half));
    } else {
      const Beside b = beside(wall, placed.footprint);
      const double low = std::max(b.low, 0.0), high = std::min(b.high, wall.length.inches());
      if (b.nearest > kFlush || b.nearest < -kFlush || high - low < 1) return;
      const Silhouette s = silhouetteOf(f, x + low, x + high);
      pen.rectangle(f.status == Status::remove ? Role::fixtureRemoved : Role::fixtureDetail, s.left, 0,
                    s.right, s.top);
    }
    append(strip.list, pen.take());
  }

  static std::string nameOf(const WallFrame& wall) {
    std::string name = "Wall " + wall.id.text;
    if (wall.plumbing) name += ", pipes";
    if (wall.exterior) name += ", exterior";
    return name;
  }

  void addText(Pen& pen, double x, double length, double y, Role role, const std::string& full, AnchorV v) {
    TextPrim text;
    text.height = style_.mm.scaled(2.6);
    text.text = full;
    const Length room = Length::fromInches(length * 0.96);
    if (textWidth(text.text, text.height) > room) text.text = full.substr(0, full.find(','));
    if (textWidth(text.text, text.height) > room) return;
    text.at = {Length::fromInches(x + length / 2), Length::fromInches(y)};
    text.h = AnchorH::centre;
    text.v = v;
    pen.add(role, text);
  }

  const Layout& layout_;
  const DrawStyle& style_;
};

}  // namespace

WallStripDrawing drawWallStrip(const Layout& layout, const DrawStyle& style) {
  return StripBuilder(layout, style).build();
}

}  // namespace elbowroom
