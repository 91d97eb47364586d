#include "core/works/quantities.h"

#include <algorithm>
#include <cmath>

#include "core/plan/ceiling.h"
#include "core/plan/fixture_sides.h"
#include "core/works/backing.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kPastOpenSide = 12_in;
constexpr Length kAboveHead = 3_in;  // planning guideline 13, from memory
constexpr Length kHeadUnstated = 80_in;

bool isBath(const Fixture& f) { return f.kind == FixtureKind::bath; }
bool isShower(const Fixture& f) { return f.kind == FixtureKind::shower; }
bool isNew(const Fixture& f) { return f.status == Status::fresh || f.status == Status::move; }

Length wallTop(const Layout& layout, const Fixture& f, Length otherwise) {
  Length top = lengthOf(f.facts, "wet_wall_height").value_or(otherwise);
  if (layout.option.room.ceiling.height) top = std::min(top, *layout.option.room.ceiling.height);
  return top;
}

// 3 in above the centre of the head.
Length membraneTop(const Layout& layout, const Fixture& f) {
  Length head;
  for (const PlacedWallItem& i : layout.on_walls)
    if (i.item.kind == "shower-head" && i.item.shower == f.id) head = std::max(head, (i.bottom + i.top) / 2);
  if (head == Length{}) head = kHeadUnstated;
  return head + kAboveHead;
}

Area openingArea(const Opening& o) { return openingWidth(o) * o.height; }

QuantityLine tileLine(std::string_view id, std::string_view title, const ElementId& element, Area net,
                      const TakeOffChoices& choices, std::string_view basis) {
  QuantityLine line{id, title, element, net, wastePercent(choices.lay), {}, {}, {}, basis, Grade::verifiedSecondHand};
  line.gross = withWaste(net, line.waste);
  line.pieces = piecesFor(line.gross, choices.tile_width, choices.tile_height);
  return line;
}

void addWet(const Layout& layout, const PlacedFixture& f, const TakeOffChoices& choices,
            std::vector<QuantityLine>& lines) {
  const Enclosure enclosure = enclosureOf(layout, f);
  const Length top = wallTop(layout, f.fixture, choices.wall_tile_top);
  lines.push_back(tileLine("wall-tile", isBath(f.fixture) ? "Wall tile at the bath" : "Wall tile of the shower",
                           f.fixture.id, wallTile(enclosure, top), choices,
                           "From the floor up to the height stated, else to 84 in; windows and niches not taken off."));
  if (!isShower(f.fixture)) return;
  lines.push_back(tileLine("shower-floor-tile", "Floor tile of the shower", f.fixture.id, enclosure.floor, choices,
                           "Level area; small tile at a point drain is bought by the area."));
  const bool curbless = f.fixture.curb.value_or(1_in) == Length{};
  QuantityLine wet{"membrane", "Waterproofing of the shower", f.fixture.id, {}, 0, {}, {}, {},
                   "Floor, walls to 3 in above the head (from memory; the head at 80 in where none is placed), and "
                   "12 in past the open sides of a curbless one; laps not counted.",
                   Grade::partial};
  wet.net = membrane(enclosure, membraneTop(layout, f.fixture), curbless);
  wet.gross = wet.net;
  lines.push_back(wet);
}

void addGlass(const Layout& layout, const PlacedFixture& f, const TakeOffChoices& choices,
              std::vector<QuantityLine>& lines) {
  for (const FixtureSide& side : sidesOf(layout, f)) {
    if (side.pane == nullptr || !side.pane->height) continue;
    QuantityLine line{"glass", "Glass of the shower", f.fixture.id, {}, 0, {}, {}, {},
                      "The whole side at its height, without gaps; 2500 kg per cubic metre, from memory.",
                      Grade::derived};
    line.net = distance(side.line.a, side.line.b) * *side.pane->height;
    line.gross = line.net;
    line.pounds = glassWeight(line.net, choices.glass);
    lines.push_back(line);
  }
}

}  // namespace

TakeOffChoices::TakeOffChoices() : tile_width(12_in), tile_height(24_in), wall_tile_top(84_in), glass(0.375_in) {}

int wastePercent(TileLay lay) {
  switch (lay) {
    case TileLay::straight:
      return 10;
    case TileLay::runningBond:
      return 12;
    case TileLay::diagonal:
      return 15;
    case TileLay::herringbone:
      return 20;
  }
  return 0;
}

Area withWaste(Area net, int percent) { return net.scaled((100 + percent) / 100.0); }

int piecesFor(Area gross, Length width, Length height) {
  const double pieces = gross.squareInches() / (width * height).squareInches();
  return static_cast<int>(std::ceil(pieces - 1e-9));
}

Enclosure enclosureOf(const Layout& layout, const PlacedFixture& f) {
  Enclosure found{areaOf(f.footprint), {}, {}};
  for (const FixtureSide& side : sidesOf(layout, f)) {
    const Length length = distance(side.line.a, side.line.b);
    if (side.at_wall)
      found.walls += length;
    else if (side.pane && side.pane->door)
      found.open += *side.pane->door;
    else if (!side.pane)
      found.open += length;
  }
  return found;
}

Area wallTile(const Enclosure& e, Length height) { return e.walls * height; }

Area membrane(const Enclosure& e, Length height, bool curbless) {
  return e.floor + e.walls * height + (curbless ? e.open * kPastOpenSide : Area{});
}

std::optional<Area> wallBoard(const Layout& layout) {
  Area sum;
  for (const WallFrame& wall : layout.walls) {
    const auto line = ceilingAlong(layout, {wall.from, wall.to});
    if (!line) return std::nullopt;
    for (std::size_t i = 0; i + 1 < line->size(); ++i) {
      const CeilingPoint &a = (*line)[i], &b = (*line)[i + 1];
      sum = sum + ((b.along - a.along) * (a.height + b.height)).scaled(0.5);
    }
  }
  for (const Opening& o : layout.option.openings) sum = sum - openingArea(o);
  return std::max(sum, Area{});
}

std::vector<QuantityLine> quantities(const Layout& layout, const TakeOffChoices& choices) {
  std::vector<QuantityLine> lines;
  if (layout.room.empty()) return lines;
  Area floor = layout.room_area;
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.status != Status::remove && (isBath(f.fixture) || isShower(f.fixture)))
      floor = floor - areaOf(f.footprint);
  lines.push_back(tileLine("floor-tile", "Floor tile", {}, floor, choices,
                           "The room's floor less its baths and showers; tiled under everything else."));
  for (const PlacedFixture& f : layout.fixtures) {
    if (!isNew(f.fixture) || (!isBath(f.fixture) && !isShower(f.fixture))) continue;
    addWet(layout, f, choices, lines);
    addGlass(layout, f, choices, lines);
  }
  if (const auto board = wallBoard(layout)) {
    QuantityLine line{"board", "Wall board", {}, *board, 10, withWaste(*board, 10), {}, {},
                      "All walls to the ceiling less their openings; sheets of 4 by 8 ft, 10 per cent waste.",
                      Grade::memory};
    line.pieces = piecesFor(line.gross, 48_in, 96_in);
    lines.push_back(line);
  }
  std::erase_if(lines, [](const QuantityLine& l) { return l.net <= Area{}; });
  return lines;
}

}  // namespace elbowroom
