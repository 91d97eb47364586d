#include <algorithm>
#include <cmath>

#include "core/drawing/sheet_text.h"
#include "core/drawing/table.h"
#include "core/plan/catalogue.h"
#include "core/plan/rough_opening.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/text.h"

namespace elbowroom {
namespace {

std::string handOf(Hand hand) { return hand == Hand::left ? "left" : "right"; }

std::string actionText(const Opening& o) {
  std::string text(labelOf(o.action));
  switch (o.action) {
    case DoorAction::hinged:
      return text + ", hinges " + handOf(o.hinge) + ", swings " + (o.swing == Swing::in ? "in" : "out") +
             (yesNo(o.facts, "clear_hinges") == true ? ", swing-clear hinges" : "");
    case DoorAction::doubleLeaf:
      return text + ", swings " + (o.swing == Swing::in ? "in" : "out");
    case DoorAction::bifold:
      return text + ", folds " + handOf(o.hinge) + ", " + (o.swing == Swing::in ? "in" : "out");
    case DoorAction::pocket:
    case DoorAction::surfaceSliding:
      return o.toward ? text + ", slides " + handOf(*o.toward) : text + ", side not stated";
    case DoorAction::cased:
      return text;
  }
  return text;
}

std::string roughOpening(const Opening& o, Unit unit) {
  const auto rough = roughOpeningOf(o);
  return rough ? sheetText(rough->width, rough->height, unit) : "by the maker";
}

std::string wallName(const Layout& layout, int wall) {
  return wall < 0 ? "stands free" : layout.walls[static_cast<std::size_t>(wall)].id.text;
}

// From a stretch of a wall to the wall's ends.
std::string fromEnds(const WallFrame& wall, Length from, Length to, Unit unit) {
  return sheetText(from, unit) + " left, " + sheetText(wall.length - to, unit) + " right";
}

// Both jambs, each from its own end of the wall.
std::string jambsText(const Layout& layout, const PlacedOpening& placed, Unit unit) {
  if (placed.wall < 0) return "-";
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(placed.wall)];
  const Length a = dot(placed.left - wall.from, wall.along), b = dot(placed.right - wall.from, wall.along);
  return fromEnds(wall, std::min(a, b), std::max(a, b), unit);
}

void doors(TablePages& pages, const Layout& layout, Unit unit) {
  bool any = false;
  for (const PlacedOpening& placed : layout.openings) {
    const Opening& o = placed.opening;
    if (o.kind != OpeningKind::door) continue;
    if (!any) {
      pages.heading("Doors");
      pages.begin({{"Door", 1},
                   {"Wall", 1.2},
                   {"Leaf", 1.7},
                   {"Action and hand", 3},
                   {"Clear opening", 1.4},
                   {"Rough opening", 1.8},
                   {"Jambs from wall ends", 2.7}});
      any = true;
    }
    const DoorFigures figures = doorFigures(layout, placed);
    std::string trouble;
    for (const Trouble& t : figures.troubles) {
      trouble += (trouble.empty() ? "" : " ") + troubleText(t, layout.option, unit);
    }
    if (figures.hits)
      trouble += (trouble.empty() ? "" : " ") + std::string("Opens to ") +
                 std::to_string(static_cast<int>(figures.opens.degrees())) + "\u00b0: stopped by " +
                 subjectName(layout.option, *figures.hits) + ".";
    pages.row({{o.id.text, "", true},
               {wallName(layout, placed.wall), ""},
               {sheetText(o.width, o.height, unit), ""},
               {actionText(o), trouble},
               {sheetText(figures.clear_opening, unit), ""},
               {roughOpening(o, unit), ""},
               {jambsText(layout, placed, unit), ""}});
  }
  if (!any) return;
  pages.end();
  pages.paragraph(
      std::string(
          "Hand and wall ends as seen from inside, facing the wall. Rough openings by published trade "
          "guidance: hinged, leaf + ") +
      sheetText(kHingedWider, unit) + " by height + " + sheetText(kHingedTaller, unit) +
      "; pocket, twice the leaf + " + sheetText(kPocketWider, unit) + " by height + " +
      sheetText(kPocketTaller, unit) + ". Confirm with the maker of the door.");
}

void windows(TablePages& pages, const Layout& layout, Unit unit) {
  bool any = false;
  for (const PlacedOpening& placed : layout.openings) {
    const Opening& o = placed.opening;
    if (o.kind != OpeningKind::window) continue;
    if (!any) {
      pages.heading("Windows");
      pages.begin({{"Window", 1},
                   {"Wall", 1},
                   {"Opening", 2},
                   {"Sill above finished floor", 2},
                   {"Head above finished floor", 2},
                   {"Jambs from wall ends", 3}});
      any = true;
    }
    pages.row({{o.id.text, "", true},
               {wallName(layout, placed.wall), ""},
               {sheetText(o.width, o.height, unit), ""},
               {o.sill ? sheetText(*o.sill, unit) : "not stated", ""},
               {o.sill ? sheetText(*o.sill + o.height, unit) : "not stated", ""},
               {jambsText(layout, placed, unit), ""}});
  }
  if (any) pages.end();
}

void fixtures(TablePages& pages, const Layout& layout, Unit unit) {
  if (layout.fixtures.empty()) return;
  pages.heading("Fixtures");
  pages.begin({{"Fixture", 2.2},
               {"Kind", 1.8},
               {"Width \u00d7 depth", 1.9},
               {"Height", 1.1},
               {"Status", 1},
               {"Wall", 1},
               {"Centreline from wall ends", 3}});
  for (const PlacedFixture& placed : layout.fixtures) {
    const Fixture& f = placed.fixture;
    std::string place = "-";
    if (placed.wall >= 0) {
      const WallFrame& wall = layout.walls[static_cast<std::size_t>(placed.wall)];
      const Length along = dot(placed.center - wall.from, wall.along);
      place = fromEnds(wall, along, along, unit);
    } else if (!layout.walls.empty()) {
      place = "as dimensioned on the plan";
    }
    pages.row({{subjectName(layout.option, f.id), "", true},
               {std::string(infoOf(f.kind).label), ""},
               {sheetText(f.width, f.depth, unit), ""},
               {f.height ? sheetText(*f.height, unit) : "not stated", ""},
               {std::string(labelOf(f.status)), ""},
               {wallName(layout, placed.wall), ""},
               {place, ""}});
  }
  pages.end();
}

void wallThings(TablePages& pages, const Layout& layout, Unit unit) {
  if (layout.on_walls.empty()) return;
  pages.heading("On the walls");
  pages.begin({{"What", 2.2},
               {"Kind", 1.8},
               {"Width \u00d7 height", 1.9},
               {"Depth", 1.2},
               {"Lower edge", 1.1},
               {"Status", 1},
               {"Wall", 0.8},
               {"Centre from wall ends", 2.8}});
  for (const PlacedWallItem& placed : layout.on_walls) {
    const WallItem& item = placed.item;
    const WallKindInfo* info = findWallKind(item.kind);
    std::string place = "-", depth = "not stated";
    if (item.depth) depth = sheetText(*item.depth, unit) + (placed.recessed ? " into it" : "");
    if (placed.wall >= 0) {
      const Length centre = (placed.from + placed.to) / 2;
      place = fromEnds(layout.walls[static_cast<std::size_t>(placed.wall)], centre, centre, unit);
    }
    pages.row({{subjectName(layout.option, item.id), item.person.empty() ? "" : "for " + item.person, true},
               {info ? std::string(info->label) : item.kind, ""},
               {sheetText(item.width, item.height, unit), ""},
               {depth, ""},
               {sheetText(placed.bottom, unit), ""},
               {std::string(labelOf(item.status)), ""},
               {wallName(layout, placed.wall), ""},
               {place, ""}});
  }
  pages.end();
}

// The nearest wall, and the nearest of those that stand across it: what one measures a place on the ceiling
// from.
std::string fromWalls(const Layout& layout, Point at, Unit unit) {
  struct Near {
    const WallFrame* wall;
    Length away;
  };
  std::vector<Near> near;
  for (const WallFrame& wall : layout.walls) {
    const Length along = dot(at - wall.from, wall.along), away = dot(at - wall.from, wall.inward);
    if (along >= Length{} && along <= wall.length && away >= Length{}) near.push_back({&wall, away});
  }
  std::stable_sort(near.begin(), near.end(), [](const Near& a, const Near& b) { return a.away < b.away; });
  std::string words;
  const WallFrame* first = nullptr;
  for (const Near& each : near) {
    const Direction& d = each.wall->along;
    if (first && std::abs(first->along.x * d.x + first->along.y * d.y) > 0.8) continue;
    words += (words.empty() ? "" : ", ") + sheetText(each.away, unit) + " from wall " + each.wall->id.text;
    if (first) break;
    first = each.wall;
  }
  return words;
}

void ceilings(TablePages& pages, const Layout& layout, Unit unit) {
  if (layout.on_ceiling.empty()) return;
  pages.heading("On the ceiling");
  pages.begin({{"What", 2.2}, {"Kind", 1.8}, {"Size", 1.9}, {"Centre from the walls", 6.1}});
  for (const PlacedCeilingItem& placed : layout.on_ceiling) {
    const CeilingKindInfo* info = findCeilingKind(placed.item.kind);
    pages.row({{subjectName(layout.option, placed.item.id), "", true},
               {info ? std::string(info->label) : placed.item.kind, ""},
               {info && info->round ? "\u2300 " + sheetText(placed.width, unit)
                                    : sheetText(placed.width, placed.depth, unit),
                ""},
               {fromWalls(layout, placed.item.at, unit), ""}});
  }
  pages.end();
}

}  // namespace

std::vector<PageContent> schedulePages(const Layout& layout, Paper paper) {
  TablePages pages("Schedules", bodyOf(paper));
  const Unit unit = layout.settings.unit;
  doors(pages, layout, unit);
  windows(pages, layout, unit);
  fixtures(pages, layout, unit);
  wallThings(pages, layout, unit);
  ceilings(pages, layout, unit);
  return pages.take();
}

}  // namespace elbowroom
