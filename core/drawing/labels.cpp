#include <algorithm>
#include <cctype>
#include <optional>

#include "core/drawing/clutter.h"
#include "core/drawing/figures.h"
#include "core/drawing/sheet_text.h"
#include "core/geometry/measure.h"
#include "core/plan/catalogue.h"

namespace elbowroom {
namespace {

constexpr double kLabelMm = 2.7;
constexpr double kLineStep = 1.2;
constexpr double kOutsideFixture = 12;
constexpr double kAmongDimensions = 10;  // where the strings of the plan run
constexpr double kShorterLabel = 18;     // as much as crossing a fixture's outline twice

struct Candidate {
  Point middle;
  bool upright = true;  // false: reads from the right
  double penalty = 0;
};

// One way to word a label; the shorter ones cost more and are taken where the longer find no room.
struct Wording {
  std::vector<std::string> lines;
  double penalty = 0;
  bool bold = false;
};

// The lines of a label centred on a point.
std::vector<TextPrim> block(const Wording& wording, const Candidate& where, const DrawStyle& style) {
  const std::vector<std::string>& lines = wording.lines;
  const Length height = style.mm.scaled(kLabelMm);
  const Direction down = where.upright ? Direction{0, -1} : Direction{1, 0};
  const double first = -(static_cast<double>(lines.size()) - 1) / 2;
  std::vector<TextPrim> texts;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    TextPrim text;
    text.text = lines[i];
    text.height = height;
    text.turn = Angle::fromDegrees(where.upright ? 0 : 90);
    text.h = AnchorH::centre;
    text.v = AnchorV::middle;
    text.halo = true;
    text.bold = wording.bold;
    text.at = where.middle + height.scaled(kLineStep * (first + static_cast<double>(i))) * down;
    texts.push_back(text);
  }
  return texts;
}

bool within(const Box& box, const Box& home) {
  return box.low.x >= home.low.x && box.low.y >= home.low.y && box.high.x <= home.high.x &&
         box.high.y <= home.high.y;
}

void place(DisplayList& list, Clutter& clutter, const std::vector<Wording>& wordings,
           const std::vector<Candidate>& candidates, const ElementId& source, const DrawStyle& style,
           const std::optional<Box>& home = std::nullopt) {
  const std::size_t count = candidates.size();
  const auto texts = [&](std::size_t i) { return block(wordings[i / count], candidates[i % count], style); };
  const auto best = quietest(wordings.size() * count, kTextOverText, [&](std::size_t i, double enough) {
    double cost = candidates[i % count].penalty + wordings[i / count].penalty;
    for (const TextPrim& text : texts(i)) {
      const Box box = textBounds(text);
      if (home && !within(box, *home)) cost += kOutsideFixture;
      if (cost < enough) cost += clutter.costOf(box, enough - cost);
    }
    return cost;
  });
  if (!best) return;  // nothing rather than one text across another; the schedule says it too
  for (const TextPrim& text : texts(*best)) {
    clutter.addText(grown(textBounds(text), style.mm.scaled(0.3)));
    list.push_back({text, Role::label, source});
  }
}

std::vector<Candidate> inFixture(const PlacedFixture& placed, const DrawStyle& style) {
  std::vector<Candidate> candidates;
  const Direction forward = placed.facing, right = forward.left();
  const Fixture& f = placed.fixture;
  // Thin things (heaters, shelves) are named on the floor before them.
  const Length before = f.depth / 2 + style.mm.scaled(std::abs(forward.x) > 0.5 ? 6.5 : 2.4);
  candidates.push_back({placed.center + before * forward, true, 2});
  candidates.push_back({placed.center + (f.depth / 2 + style.mm.scaled(2.4)) * forward, false, 4});
  for (const double y : {0.0, 0.12, -0.12, 0.24, -0.24, 0.36, -0.36}) {
    for (const double x : {0.0, 0.15, -0.15, 0.3, -0.3}) {
      const Point at = placed.center + f.depth.scaled(y) * forward + f.width.scaled(x) * right;
      const double off = 4 * (std::abs(x) + std::abs(y));
      candidates.push_back({at, true, off});
      candidates.push_back({at, false, off + 4});
    }
  }
  return candidates;
}

std::vector<Candidate> nearOpening(const Layout& layout, const PlacedOpening& placed,
                                   const DrawStyle& style) {
  std::vector<Candidate> candidates;
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(placed.wall)];
  const double width = placed.opening.width.inches(), mm = style.mm.inches();
  for (const Leaf& leaf : placed.leaves) {
    const bool positive = leaf.sweep > Angle{};
    for (const double turn : {45.0, 35.0, 55.0, 25.0, 65.0}) {
      for (const double reach : {0.52, 0.42, 0.62, 0.72}) {
        const Direction d = leaf.closed.turned(Angle::fromDegrees(positive ? turn : -turn));
        const Point at = leaf.hinge + leaf.width.scaled(reach) * d;
        const bool outside = dot(at - wall.from, wall.inward) < Length{};
        const double penalty = std::abs(turn - 45) / 20 + (outside ? kAmongDimensions : 0);
        candidates.push_back({at, true, penalty});
        candidates.push_back({at, false, 3 + penalty});
      }
    }
  }
  const Point middle = midpoint(placed.left, placed.right);
  const bool slopes = std::abs(wall.along.y) > 0.5;
  const double rise = slopes ? 11 * mm : 3.4 * mm;
  for (const double along : {0.0, 0.3, -0.3, 0.6, -0.6, 0.9, -0.9}) {
    for (const double in : {rise, rise + 2 * mm, rise + 5 * mm, rise + 9 * mm, rise + 14 * mm}) {
      const Point at =
          middle + Length::fromInches(along * width) * wall.along + Length::fromInches(in) * wall.inward;
      candidates.push_back({at, true, 2 + 6 * std::abs(along) + (in - rise) / mm * 0.6});
    }
    for (const double in : {3.4 * mm, 6 * mm, 9 * mm}) {
      const Point at =
          middle + Length::fromInches(along * width) * wall.along + Length::fromInches(in) * wall.inward;
      if (slopes) candidates.push_back({at, false, 3 + 6 * std::abs(along) + in / mm * 0.6});
    }
  }
  return candidates;
}

std::vector<Candidate> roundCeilingItem(const PlacedCeilingItem& placed, const DrawStyle& style) {
  std::vector<Candidate> candidates;
  const Point c = placed.item.at;
  for (const double away : {2.0, 4.0, 7.0}) {
    const Length up = placed.depth / 2 + style.mm.scaled(away),
                 aside = placed.width / 2 + style.mm.scaled(away + 3);
    for (const Point at :
         {Point{c.x, c.y - up}, Point{c.x, c.y + up}, Point{c.x + aside, c.y}, Point{c.x - aside, c.y}})
      candidates.push_back({at, true, away});
  }
  return candidates;
}

}  // namespace

std::vector<std::string> doorLabel(const Layout& layout, const PlacedOpening& placed,
                                   const DrawStyle& style) {
  const Opening& opening = placed.opening;
  if (opening.kind == OpeningKind::window) {
    return {opening.id.text + ": window", sheetText(opening.width, opening.height, style.unit)};
  }
  std::string action(labelOf(opening.action));
  action[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(action[0])));
  const Length clear = doorFigures(layout, placed).clear_opening;
  return {opening.id.text + ": " + action + " " + sheetText(opening.width, style.unit),
          "clear " + sheetText(clear, style.unit)};
}

std::vector<std::string> fixtureLabel(const PlacedFixture& placed) {
  const Fixture& f = placed.fixture;
  std::vector<std::string> lines{f.name.empty() ? std::string(infoOf(f.kind).short_label) : f.name};
  if (f.status == Status::remove) lines.push_back("(remove)");
  return lines;
}

DisplayList drawLabels(const Layout& layout, const DisplayList& drawn, const DrawStyle& style, bool brief) {
  DisplayList list;
  Clutter clutter;
  clutter.add(drawn);
  for (const PlacedFixture& placed : layout.fixtures) {
    std::vector<std::string> lines = fixtureLabel(placed);
    const Length shorter = std::min(placed.fixture.width, placed.fixture.depth);
    const Length longer = std::max(placed.fixture.width, placed.fixture.depth);
    if (textWidth(lines[0], style.mm.scaled(kLabelMm)) > longer) {
      std::vector<std::string> wrapped = wrapText(lines[0], style.mm.scaled(kLabelMm), shorter);
      wrapped.insert(wrapped.end(), lines.begin() + 1, lines.end());
      lines = wrapped;
    }
    std::vector<Wording> wordings{{lines}};
    if (!placed.fixture.name.empty()) {
      lines = {std::string(infoOf(placed.fixture.kind).short_label)};
      wordings.push_back({lines, kShorterLabel});
    }
    const Box home = boundsOf(placed.footprint);
    place(list, clutter, wordings, inFixture(placed, style), placed.fixture.id, style, home);
  }
  for (const PlacedOpening& placed : layout.openings) {
    if (placed.wall < 0 || placed.wall >= static_cast<int>(layout.walls.size())) continue;
    std::vector<Wording> wordings{{{placed.opening.id.text}, brief ? 0.0 : kShorterLabel}};
    if (!brief) wordings.push_back({doorLabel(layout, placed, style), 0});
    place(list, clutter, wordings, nearOpening(layout, placed, style), placed.opening.id, style);
  }
  for (const PlacedCeilingItem& placed : layout.on_ceiling)
    place(list, clutter, {{{ceilingLabel(placed)}, 0}}, roundCeilingItem(placed, style), placed.item.id,
          style);
  return list;
}

DisplayList drawWallNames(const Layout& layout, const DisplayList& drawn, const DrawStyle& style) {
  DisplayList list;
  Clutter clutter;
  clutter.add(drawn);
  for (const WallFrame& wall : layout.walls) {
    const bool upright = std::abs(wall.along.x) >= std::abs(wall.along.y);
    std::vector<Candidate> candidates;
    for (const double in : {2.4, 4.5, 7.5, 11.0, 15.0}) {
      for (const double share : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88}) {
        const Point at =
            wall.from + wall.length.scaled(share) * wall.along + style.mm.scaled(in) * wall.inward;
        candidates.push_back({at, upright, 2 * in + 12 * std::abs(share - 0.5)});
      }
    }
    place(list, clutter, {{{"Wall " + wall.id.text}, 0, true}}, candidates, wall.id, style);
  }
  return list;
}

}  // namespace elbowroom
