// Take-off by hand: worked examples T34 and T37 to T40.
#include "core/works/quantities.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::RoomMaker;

QuantityLine line(const std::vector<QuantityLine>& lines, std::string_view id, std::string_view element = "") {
  const auto at = std::find_if(lines.begin(), lines.end(), [&](const QuantityLine& l) {
    return l.id == id && (element.empty() || l.element.text == element);
  });
  if (at == lines.end()) ADD_FAILURE() << "no line " << id;
  return at == lines.end() ? QuantityLine{} : *at;
}
bool has(const std::vector<QuantityLine>& lines, std::string_view id) {
  return std::any_of(lines.begin(), lines.end(), [&](const QuantityLine& l) { return l.id == id; });
}

// A room 60 wide; the shower 60 x 36 from wall to wall at its end, open in front.
RoomMaker alcove() {
  RoomMaker room(60, 108);
  room.fixture("sh", FixtureKind::shower, "n", 30, 60, 36);
  return room;
}

// T37: (60 + 36 + 36) / 12 x 7 = 77.0 sq ft; + 10 % 84.7, 43 tiles of 12 x 24; + 12 % 86.24.
TEST(Quantities, WallTileOfAnAlcove) {
  const RoomMaker room = alcove();
  QuantityLine tile = line(quantities(room.layout()), "wall-tile");
  EXPECT_NEAR(tile.net.squareFeet(), 77.0, 1e-6);
  EXPECT_NEAR(tile.gross.squareFeet(), 84.7, 1e-6);
  EXPECT_EQ(tile.waste, 10);
  EXPECT_EQ(tile.pieces, 43);
  TakeOffChoices bond;
  bond.lay = TileLay::runningBond;
  tile = line(quantities(room.layout(), bond), "wall-tile");
  EXPECT_NEAR(tile.gross.squareFeet(), 86.24, 1e-6);
  EXPECT_EQ(tile.pieces, 44);  // 43.12
}

TEST(Quantities, TheHeightOfTheTileIsThePlansWhereStated) {
  RoomMaker room = alcove();
  room.option().fixtures[0].facts["wet_wall_height"] = 72_in;
  EXPECT_NEAR(line(quantities(room.layout()), "wall-tile").net.squareFeet(), 66.0, 1e-6);
  room.option().room.ceiling.height = 60_in;  // no higher than the ceiling
  EXPECT_NEAR(line(quantities(room.layout()), "wall-tile").net.squareFeet(), 55.0, 1e-6);
}

// T38: 5 x 9 less a 60 x 30 bath: 32.5 sq ft; + 10 % 35.75; diagonal + 15 % 37.38.
TEST(Quantities, FloorTileLessTheBath) {
  RoomMaker room(60, 108);
  room.fixture("b", FixtureKind::bath, "n", 30, 60, 30);
  room.fixture("wc", FixtureKind::toilet, "w", 40, 20, 28);
  QuantityLine tile = line(quantities(room.layout()), "floor-tile");
  EXPECT_NEAR(tile.net.squareFeet(), 32.5, 1e-6);
  EXPECT_NEAR(tile.gross.squareFeet(), 35.75, 1e-6);
  TakeOffChoices diagonal;
  diagonal.lay = TileLay::diagonal;
  EXPECT_NEAR(line(quantities(room.layout(), diagonal), "floor-tile").gross.squareFeet(), 37.375, 1e-6);
  EXPECT_FALSE(has(quantities(room.layout()), "membrane"));
}

// T39: 15 + 76.08 + 5 = 96.1 sq ft: walls to 83, 12 in past the open side of 60.
TEST(Quantities, MembraneOfACurblessShower) {
  RoomMaker room = alcove();
  room.option().fixtures[0].curb = 0_in;
  EXPECT_NEAR(line(quantities(room.layout()), "membrane").net.squareFeet(), 15 + 76.0833 + 5, 0.001);
  room.option().fixtures[0].curb = 2_in;
  EXPECT_NEAR(line(quantities(room.layout()), "membrane").net.squareFeet(), 15 + 76.0833, 0.001);
  WallItem head = typicalWallItem("shower-head", room.option());
  head.wall = {"n"};
  head.along = 30_in;
  head.bottom = 70_in;  // centre 72: to 75
  head.shower = {"sh"};
  room.option().on_walls.push_back(head);
  EXPECT_NEAR(line(quantities(room.layout()), "membrane").net.squareFeet(), 15 + 11 * 6.25, 0.001);
}

// T40: 5 x 9 x 8, one 30 x 80 door: 224 - 16.7 = 207.3 sq ft; / 32 = 6.48; + 10 %: 8 sheets.
TEST(Quantities, BoardOfARoom) {
  RoomMaker room(60, 108);
  room.door("d", "s", 30, 30, Hand::left, Swing::in);
  EXPECT_FALSE(has(quantities(room.layout()), "board"));  // no ceiling stated
  room.option().room.ceiling.height = 96_in;
  const QuantityLine board = line(quantities(room.layout()), "board");
  EXPECT_NEAR(board.net.squareFeet(), 207.333, 0.001);
  EXPECT_NEAR(board.net.squareFeet() / sheetSize().squareFeet(), 6.479, 0.001);
  EXPECT_EQ(board.pieces, 8);
}

// The ceiling falls over the whole 108 to 48 at n: n is 5 x 4, s 5 x 8, both sides 9 x 6.
TEST(Quantities, BoardUnderASlope) {
  RoomMaker room(60, 108);
  room.option().room.ceiling.height = 96_in;
  room.option().room.ceiling.slopes = {{{"n"}, 48_in, 108_in, {}}};
  EXPECT_NEAR(line(quantities(room.layout()), "board").net.squareFeet(), 20 + 40 + 2 * 54, 0.001);
}

// T34: 28 x 76 x 3/8: 14.78 sq ft, 72.1 lb.
TEST(Quantities, GlassByItsSide) {
  RoomMaker room(96, 108);
  Fixture& shower = room.fixture("sh", FixtureKind::shower, "n", 14, 28, 36);
  Pane front, right;
  front.side = Side::front;
  front.height = 76_in;
  front.door = 26_in;
  right.side = Side::right;
  shower.glass = {front, right};  // the right one has no height
  const auto lines = quantities(room.layout());
  const QuantityLine glass = line(lines, "glass");
  EXPECT_NEAR(glass.net.squareFeet(), 14.78, 0.005);
  EXPECT_NEAR(glass.pounds.value().value(), 72.1, 0.05);
  EXPECT_EQ(std::count_if(lines.begin(), lines.end(), [](const QuantityLine& l) { return l.id == "glass"; }), 1);
}

TEST(Quantities, WhatStaysAsksForNothingOfItsOwn) {
  RoomMaker room = alcove();
  room.option().fixtures[0].status = Status::keep;
  const auto lines = quantities(room.layout());
  EXPECT_FALSE(has(lines, "wall-tile"));
  EXPECT_NEAR(line(lines, "floor-tile").net.squareFeet(), 30, 1e-6);  // it still stands there
  room.option().fixtures[0].status = Status::remove;
  EXPECT_NEAR(line(quantities(room.layout()), "floor-tile").net.squareFeet(), 45, 1e-6);
  EXPECT_TRUE(quantities(deriveLayout(emptyPlan(Unit::inches), 0)).empty());
}

TEST(Quantities, WasteAndWholePieces) {
  EXPECT_EQ(wastePercent(TileLay::herringbone), 20);
  EXPECT_EQ(piecesFor(12_in * 12_in, 12_in, 12_in), 1);
  EXPECT_EQ(piecesFor(12_in * 12.0625_in, 12_in, 12_in), 2);
  EXPECT_EQ(piecesFor({}, 12_in, 12_in), 0);
}

}  // namespace
}  // namespace elbowroom
