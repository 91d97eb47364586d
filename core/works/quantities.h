// How much of what has to be bought: tile, membrane, board, glass. Areas from the plan; waste and sizes as stated with
// each line. A quantity is what to order, not what a contractor measures on site.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/plan/layout.h"
#include "core/rules/rule.h"

namespace elbowroom {

// Waste by how the tile is laid, per cent: 10, 12, 15, 20 (buildingclub.info and calculover.com, tile calculators).
enum class TileLay { straight, runningBond, diagonal, herringbone };
int wastePercent(TileLay);
Area withWaste(Area net, int percent);
// Whole pieces of this size for an area; 0 for no area. Precondition: the size is positive.
int piecesFor(Area gross, Length width, Length height);
constexpr Area sheetSize() { return Area::squareMicrometres(2'972'897'280'000); }  // 48 x 96 in; from memory, universal

// An enclosure of a shower or bath: its floor and the sides that stand at walls.
struct Enclosure {
  Area floor;
  Length walls;  // length of its sides at walls
  Length open;   // length of its open sides, doors in glass among them
};
Enclosure enclosureOf(const Layout&, const PlacedFixture&);

// Tile on the walls of an enclosure up to this height.
Area wallTile(const Enclosure&, Length height);
// Waterproofing of a shower: its floor, its walls up to `height`, and where there is no curb 12 in of floor past its
// open sides (diytileguy.com on curbless showers: at least 12 in past the high point).
Area membrane(const Enclosure&, Length height, bool curbless);
// Walls of the room less their openings; to the ceiling's own line where it slopes. nullopt: no ceiling stated.
std::optional<Area> wallBoard(const Layout&);

struct TakeOffChoices {
  Length tile_width, tile_height;  // default 12 x 24 in
  TileLay lay = TileLay::straight;
  Length wall_tile_top;            // where the plan does not state it; default 84 in
  Length glass;                    // thickness; default 3/8 in
  TakeOffChoices();
};

struct QuantityLine {
  std::string_view id;     // "floor-tile"
  std::string_view title;  // "Floor tile"
  ElementId element;       // the shower or bath; empty: the room
  Area net;
  int waste = 0;           // per cent
  Area gross;              // net and waste
  std::optional<int> pieces;        // tiles or sheets to buy
  std::optional<Amount> pounds;     // glass
  std::string_view basis;           // what the figure takes for granted, one sentence
  Grade grade = Grade::derived;
};
// Floor tile (baths and showers left out), floor and wall tile and membrane of each shower, wall tile over each bath
// at walls, board, glass by pane. What is to be removed and what stays asks for nothing of its own. Lines without area
// are left out.
std::vector<QuantityLine> quantities(const Layout&, const TakeOffChoices& = {});

}  // namespace elbowroom
