#include <algorithm>
#include <optional>

#include "core/base/length_text.h"
#include "core/drawing/elevation_parts.h"
#include "core/drawing/sheet_text.h"
#include "core/people/body.h"
#include "core/plan/bays.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

constexpr double kLayerTextMm = 2.3;

TextPrim layerText(const std::string& words, double x, double y, const DrawStyle& style) {
  TextPrim text;
  text.text = words;
  text.height = style.mm.scaled(kLayerTextMm);
  text.at = {Length::fromInches(x), Length::fromInches(y)};
  text.v = AnchorV::middle;
  text.halo = true;
  return text;
}

// From where to where along the wall a person's line matters.
struct Reach {
  double from = 1e9, to = -1e9;
  void take(double a, double b) { from = std::min(from, a), to = std::max(to, b); }
  bool any() const { return to > from; }
};

struct Concerned {
  Reach eyes, elbows, hands;
};

Concerned concernedOn(const Layout& layout, std::size_t wall) {
  Concerned on;
  for (const PlacedWallItem& placed : layout.on_walls) {
    if (placed.wall != static_cast<int>(wall) || placed.item.status == Status::remove) continue;
    const double a = placed.from.inches(), b = placed.to.inches();
    const WallKindInfo* info = findWallKind(placed.item.kind);
    if (!info) continue;
    if (info->use == WallUse::mirror || info->use == WallUse::lamp) on.eyes.take(a, b);
    if (info->use == WallUse::shelf || info->use == WallUse::hook || info->use == WallUse::recess)
      on.hands.take(a, b);
  }
  for (const PlacedFixture& placed : layout.fixtures) {
    const bool basin =
        placed.fixture.kind == FixtureKind::basin || placed.fixture.kind == FixtureKind::vanity;
    if (!basin || placed.wall != static_cast<int>(wall) || placed.fixture.status == Status::remove) continue;
    const WallFrame& frame = layout.walls[wall];
    const double c = dot(placed.center - frame.from, frame.along).inches();
    const double half = placed.fixture.width.inches() / 2;
    on.elbows.take(c - half, c + half);
  }
  return on;
}

// A person's level where it matters, along the wall.
struct BodyLevel {
  double from, to, y;
  std::string words;
};

std::vector<BodyLevel> levelsOn(const Layout& layout, std::size_t wall, Unit unit) {
  std::vector<BodyLevel> levels;
  const Concerned on = concernedOn(layout, wall);
  const double length = layout.walls[wall].length.inches();
  const Length top = ceilingLineOf(layout, wall).highest();
  for (const Person& person : layout.settings.people) {
    const auto add = [&](const Reach& reach, const char* what, Length at) {
      if (!reach.any() || at > top) return;
      levels.push_back({std::max(0.0, reach.from - 6), std::min(length, reach.to + 6), at.inches(),
                        person.name + ": " + what + " " + lengthText(at, unit)});
    };
    if (!person.chair) {
      add(on.eyes, "eyes", eyesOf(person).high);
      add(on.elbows, "elbow", elbowHeight(person));
    }
    add(on.hands, "reach", reachUp(person));
  }
  return levels;
}

}  // namespace

double heightAt(const CeilingLine& line, double along) {
  const auto& p = line.points;
  for (std::size_t i = 1; i < p.size(); ++i) {
    const double a = p[i - 1].along.inches(), b = p[i].along.inches();
    if (along > b && i + 1 < p.size()) continue;
    const double share = b > a ? std::clamp((along - a) / (b - a), 0.0, 1.0) : 0;
    return p[i - 1].height.inches() + share * (p[i].height - p[i - 1].height).inches();
  }
  return p.empty() ? 0 : p.front().height.inches();
}

DisplayList drawStuds(const Layout& layout, std::size_t wall, double x) {
  const auto studs = studsOf(layout, static_cast<int>(wall));
  if (!studs) return {};
  const CeilingLine ceiling = ceilingLineOf(layout, wall);
  const double half = studWidth().inches() / 2, length = layout.walls[wall].length.inches();
  Pen pen(elevationFrame(), layout.walls[wall].id);
  for (const Stud& stud : *studs) {
    for (const double at : {stud.at.inches() - half, stud.at.inches() + half})
      if (at > 0 && at < length) pen.line(Role::stud, x + at, 0, x + at, heightAt(ceiling, at));
  }
  return pen.take();
}

DisplayList labelBays(const Layout& layout, std::size_t wall, double x, Clutter& taken,
                      const DrawStyle& style) {
  const auto bays = baysOf(layout, static_cast<int>(wall));
  if (!bays) return {};
  const CeilingLine ceiling = ceilingLineOf(layout, wall);
  Pen pen(elevationFrame(), layout.walls[wall].id);
  for (const WallSpan& bay : *bays) {
    const std::string words = sheetText(bay.width(), style.unit);
    TextPrim text = layerText(words, x + (bay.from + bay.to).inches() / 2, 0, style);
    if (textWidth(words, text.height) + style.mm.scaled(1.5) > bay.width()) continue;
    text.h = AnchorH::centre;
    const double top = std::min(heightAt(ceiling, bay.from.inches()), heightAt(ceiling, bay.to.inches()));
    // Under the ceiling, else just above the floor.
    for (const double y : {top - 2 * style.mm.inches(), 2 * style.mm.inches()}) {
      text.at.y = Length::fromInches(y);
      const Box box = textBounds(text);
      if (taken.costOf(box) >= kTextOverText) continue;
      taken.addText(box);
      pen.add(Role::note, text);
      break;
    }
  }
  return pen.take();
}

DisplayList drawPeopleLines(const Layout& layout, std::size_t wall, double x, const DrawStyle& style) {
  Pen pen(elevationFrame(), layout.walls[wall].id);
  for (const BodyLevel& level : levelsOn(layout, wall, style.unit))
    pen.line(Role::person, x + level.from, level.y, x + level.to, level.y);
  return pen.take();
}

DisplayList labelPeopleLines(const Layout& layout, std::size_t wall, double x, Clutter& taken,
                             const DrawStyle& style) {
  const double length = layout.walls[wall].length.inches(), mm = style.mm.inches();
  Pen pen(elevationFrame(), layout.walls[wall].id);
  for (const BodyLevel& level : levelsOn(layout, wall, style.unit)) {
    const double a = level.from, b = level.to;
    struct Spot {
      double at, up;
      AnchorH h;
    };
    std::vector<Spot> spots{{b + 0.8 * mm, 0, AnchorH::left}, {a - 0.8 * mm, 0, AnchorH::right}};
    for (const double up : {1.6, -1.6, 0.0}) {
      spots.push_back({a + 1 * mm, up, AnchorH::left});
      spots.push_back({b - 1 * mm, up, AnchorH::right});
      spots.push_back({(a + b) / 2, up, AnchorH::centre});
    }
    // Beside the line, else over or under it, else on it: where least else is, and never on other words.
    std::vector<TextPlace> places;
    for (std::size_t i = 0; i < spots.size(); ++i) {
      TextPrim text = layerText(level.words, x + spots[i].at, level.y + spots[i].up * mm, style);
      text.h = spots[i].h;
      const Box box = textBounds(text);
      if (box.low.x.inches() < x || box.high.x.inches() > x + length) continue;
      places.push_back({text, 2 * static_cast<double>(i)});
    }
    const auto best = quietestText(taken, places);
    if (!best) continue;
    taken.addText(grown(textBounds(*best), style.mm.scaled(0.5)));
    pen.add(Role::person, *best);
  }
  return pen.take();
}

}  // namespace elbowroom
