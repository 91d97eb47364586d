#include "core/drawing/elevation_key.h"

#include <algorithm>

#include "core/drawing/elevation_parts.h"
#include "core/drawing/sheet_text.h"
#include "core/plan/bays.h"
#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/text.h"

namespace elbowroom {
namespace {

std::string fromCorners(const char* what, Length left, Length right, Unit unit) {
  return std::string(what) + " " + sheetText(left, unit) + " from left, " + sheetText(right, unit) +
         " from right";
}

std::string statusWords(Status status) {
  switch (status) {
    case Status::keep:
      return "stays";
    case Status::move:
      return "moved here";
    case Status::remove:
      return "to be removed";
    case Status::fresh:
      return "";
  }
  return "";
}

std::string openingSize(const Opening& o, Unit unit) {
  if (o.kind == OpeningKind::window) {
    const std::string size = sheetText(o.width, o.height, unit);
    return o.sill ? size + ", sill " + sheetText(*o.sill, unit) : size + ", sill not stated";
  }
  return std::string(labelOf(o.action)) + ", " + sheetText(o.width, o.height, unit);
}

KeyEntry entryOf(const Layout& layout, std::size_t wall, const PlacedOpening& placed) {
  const Unit unit = layout.settings.unit;
  const Opening& o = placed.opening;
  const Length half = o.width / 2, length = layout.walls[wall].length;
  return {0,
          o.id,
          subjectName(layout.option, o.id),
          {openingSize(o, unit), fromCorners("jambs", o.along - half, length - o.along - half, unit)}};
}

KeyEntry entryOf(const Layout& layout, std::size_t wall, const PlacedFixture& placed) {
  const Unit unit = layout.settings.unit;
  const WallFrame& frame = layout.walls[wall];
  const Fixture& f = placed.fixture;
  const Length along = dot(placed.center - frame.from, frame.along);
  std::string size = sheetText(f.width, f.depth, unit);
  size += f.height ? ", " + sheetText(*f.height, unit) + " high" : ", height not stated";
  if (const std::string status = statusWords(f.status); !status.empty()) size += ", " + status;
  return {0,
          f.id,
          subjectName(layout.option, f.id),
          {size, fromCorners("centre", along, frame.length - along, unit)}};
}

// How a thing that goes into the wall stands to its studs.
std::string bayWords(const Layout& layout, const PlacedWallItem& placed) {
  const WallKindInfo* info = findWallKind(placed.item.kind);
  if (!info || !info->in_bay || !placed.recessed) return {};
  const auto fit = bayFit(layout, placed);
  if (!fit) return "studs not stated";
  if (fit->fits) return "between studs";
  const Unit unit = layout.settings.unit;
  const std::string cut = std::to_string(fit->cut.size()) + (fit->cut.size() == 1 ? " stud" : " studs");
  if (!fit->move) return "wider than any bay: cuts " + cut + ", header";
  return "cuts " + cut + ", header; or move " + sheetText(abs(*fit->move), unit) +
         (*fit->move < Length{} ? " left" : " right");
}

KeyEntry entryOf(const Layout& layout, std::size_t wall, const PlacedWallItem& placed) {
  const Unit unit = layout.settings.unit;
  const WallItem& item = placed.item;
  std::string heights;
  for (const HeightMark& mark : heightMarks(placed))
    heights += (heights.empty() ? "" : ", ") + mark.what + " " + sheetText(mark.at, unit);
  KeyEntry entry{0,
                 item.id,
                 subjectName(layout.option, item.id),
                 {sheetText(item.width, item.height, unit) + ", " + heights,
                  fromCorners("centre", item.along, layout.walls[wall].length - item.along, unit)}};
  std::string more;
  const auto add = [&](const std::string& words) {
    if (!words.empty()) more += (more.empty() ? "" : "; ") + words;
  };
  if (!item.person.empty()) add("for " + item.person);
  if (placed.recessed) add(sheetText(placed.depth, unit) + " into the wall");
  add(bayWords(layout, placed));
  add(statusWords(item.status));
  if (!more.empty()) entry.lines.push_back(more);
  return entry;
}

// Where a numbered thing is drawn.
Box boxOfThing(const Layout& layout, std::size_t wall, const ElementId& id) {
  const WallFrame& frame = layout.walls[wall];
  for (const PlacedWallItem& p : layout.on_walls)
    if (p.item.id == id) return {{p.from, p.bottom}, {p.to, p.top}};
  for (const PlacedOpening& p : layout.openings) {
    const Opening& o = p.opening;
    if (o.id != id) continue;
    const Length sill = o.kind == OpeningKind::window ? o.sill.value_or(Length{}) : Length{};
    return {{o.along - o.width / 2, sill}, {o.along + o.width / 2, sill + o.height}};
  }
  for (const PlacedFixture& p : layout.fixtures) {
    if (p.fixture.id != id) continue;
    const Length c = dot(p.center - frame.from, frame.along), half = p.fixture.width / 2;
    return {{c - half, {}}, {c + half, p.fixture.height.value_or(Length::fromInches(24))}};
  }
  return {};
}

constexpr double kTagMm = 1.9, kTagTextMm = 2.3;

}  // namespace

std::vector<KeyEntry> keyOfWall(const Layout& layout, std::size_t wall) {
  const int index = static_cast<int>(wall);
  std::vector<KeyEntry> key;
  const auto addAll = [&](const auto& things) {
    const std::size_t start = key.size();
    for (const auto& placed : things)
      if (placed.wall == index) key.push_back(entryOf(layout, wall, placed));
    std::stable_sort(key.begin() + static_cast<std::ptrdiff_t>(start), key.end(),
                     [&](const KeyEntry& a, const KeyEntry& b) {
                       return boxOfThing(layout, wall, a.id).low.x < boxOfThing(layout, wall, b.id).low.x;
                     });
  };
  addAll(layout.openings);
  addAll(layout.fixtures);
  addAll(layout.on_walls);
  for (std::size_t i = 0; i < key.size(); ++i) key[i].number = static_cast<int>(i) + 1;
  return key;
}

std::string wallWords(const Layout& layout, std::size_t wall) {
  const Unit unit = layout.settings.unit;
  const Wall& stated = layout.option.room.walls[wall];
  std::string words = sheetText(stated.thickness, unit) + " thick";
  if (stated.exterior) words += ", exterior";
  if (stated.plumbing) words += ", pipes in it";
  if (yesNo(stated.facts, "load_bearing").value_or(false)) words += ", load-bearing";
  if (stated.studs)
    words += ", studs " + sheetText(stated.studs->spacing, unit) + " on centre, first " +
             sheetText(stated.studs->first, unit) + " from left";
  else
    words += ", studs not stated";
  if (yesNo(stated.facts, "backed").value_or(false)) words += ", backed all over";
  return words;
}

DisplayList drawNumbers(const Layout& layout, std::size_t wall, const std::vector<KeyEntry>& key,
                        const DisplayList& drawn, const DrawStyle& style) {
  Clutter clutter;
  clutter.add(drawn);
  DisplayList lines, tags;
  const double mm = style.mm.inches(), r = kTagMm * mm;
  const double length = layout.walls[wall].length.inches();
  const double top = ceilingLineOf(layout, wall).highest().inches();
  for (const KeyEntry& entry : key) {
    const Box box = boxOfThing(layout, wall, entry.id);
    const double l = box.low.x.inches(), b = box.low.y.inches(), w = box.high.x.inches() - l,
                 h = box.high.y.inches() - b;
    struct Spot {
      double x, y, penalty;
      bool leader;
    };
    std::vector<Spot> spots;
    if (w > 2.4 * r && h > 2.4 * r) {
      for (const double fy : {0.5, 0.72, 0.28, 0.86, 0.14})
        for (const double fx : {0.5, 0.7, 0.3, 0.86, 0.14})
          spots.push_back({l + w * fx, b + h * fy, std::abs(fx - 0.5) * 4 + std::abs(fy - 0.5) * 4, false});
    }
    for (const double away : {0.7, 2.2, 4.5, 7.5, 11.0}) {
      const double d = away * mm + r;
      const double cx = l + w / 2, cy = b + h / 2;
      for (const auto& [x, y] : {std::pair{l + w + d, cy},
                                 {l - d, cy},
                                 {cx, b + h + d},
                                 {cx, b - d},
                                 {l + w + d, b + h + d},
                                 {l - d, b + h + d},
                                 {l + w + d, b - d},
                                 {l - d, b - d},
                                 {l + w + d, b + h},
                                 {l - d, b + h},
                                 {l + w + d, b},
                                 {l - d, b}})
        spots.push_back({x, y, 3 + away * 2.5, away > 2});
    }
    const auto quiet = quietest(spots.size(), kTextOverText, [&](std::size_t i, double enough) {
      const Spot& spot = spots[i];
      if (spot.x - r < 0 || spot.x + r > length || spot.y - r < 0 || spot.y + r > top) return enough;
      const Box at{{Length::fromInches(spot.x - r * 1.15), Length::fromInches(spot.y - r * 1.15)},
                   {Length::fromInches(spot.x + r * 1.15), Length::fromInches(spot.y + r * 1.15)}};
      return spot.penalty + clutter.costOf(at, enough - spot.penalty);
    });
    if (!quiet) continue;
    const Spot* best = &spots[*quiet];
    Pen pen(elevationFrame(), entry.id);
    pen.ellipse(Role::opening, best->x, best->y, r, r, true);
    TextPrim text;
    text.text = std::to_string(entry.number);
    text.height = style.mm.scaled(kTagTextMm);
    text.at = {Length::fromInches(best->x), Length::fromInches(best->y)};
    text.h = AnchorH::centre, text.v = AnchorV::middle, text.bold = true;
    pen.add(Role::label, text);
    if (best->leader) {
      Pen leader(elevationFrame(), entry.id);
      const double tx = std::clamp(best->x, l, l + w), ty = std::clamp(best->y, b, b + h);
      leader.line(Role::dimension, best->x, best->y, tx, ty);
      append(lines, leader.take());
    }
    DisplayList tag = pen.take();
    clutter.add(tag);
    clutter.addText({{Length::fromInches(best->x - r), Length::fromInches(best->y - r)},
                     {Length::fromInches(best->x + r), Length::fromInches(best->y + r)}});
    append(tags, std::move(tag));
  }
  append(lines, std::move(tags));
  return lines;
}

DisplayList drawSideNames(const Layout& layout, std::size_t wall, const DisplayList& drawn,
                          const DrawStyle& style) {
  Clutter clutter;
  clutter.add(drawn);
  DisplayList names;
  for (const PlacedFixture& placed : layout.fixtures) {
    if (placed.wall == static_cast<int>(wall)) continue;
    const DisplayList side = drawFixtureOnWall(layout, placed, wall, 0);
    if (side.empty()) continue;
    const Box box = boundsOf(side);
    const Length width = box.high.x - box.low.x, height = box.high.y - box.low.y;
    TextPrim text;
    text.height = style.mm.scaled(kTagTextMm);
    text.h = AnchorH::centre, text.v = AnchorV::middle, text.halo = true;
    text.text = subjectName(layout.option, placed.fixture.id);
    // Lying, else upright, within its outline.
    std::vector<TextPlace> places;
    for (const double turn : {0.0, 90.0}) {
      const Length needed = textWidth(text.text, text.height) + style.mm;
      if (needed > (turn == 0 ? width : height)) continue;
      for (const double up : {0.5, 0.8, 0.2, 0.65, 0.35}) {
        for (const double across : {0.5, 0.3, 0.7}) {
          text.turn = Angle::fromDegrees(turn);
          text.at = {box.low.x + width.scaled(across), box.low.y + height.scaled(up)};
          const Box at = textBounds(text);
          if (at.low.x < box.low.x || at.high.x > box.high.x || at.low.y < box.low.y ||
              at.high.y > box.high.y)
            continue;
          places.push_back({text, turn / 30});
        }
      }
    }
    const auto best = quietestText(clutter, places);
    if (!best) continue;
    clutter.addText(textBounds(*best));
    names.push_back({*best, Role::note, placed.fixture.id});
  }
  return names;
}

}  // namespace elbowroom
