// Rough openings in the door schedule, as trade guides on framing give them.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/drawing/sheet.h"
#include "core/rules/check.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::RoomMaker;

// The texts of the schedules in their order; a table is written row by row.
std::vector<std::string> textsOf(const Layout& layout) {
  std::vector<std::string> texts;
  const SheetInfo info{"2026-01-01", Paper::tabloid, {}, {false, false, false, false, true, false}};
  for (const Sheet& sheet : makeSheets(layout, check(layout, {}), info))
    for (const DrawItem& item : sheet.content)
      if (const auto* text = std::get_if<TextPrim>(&item.prim)) texts.push_back(text->text);
  return texts;
}

long count(const std::vector<std::string>& texts, const std::string& wanted) {
  return std::count(texts.begin(), texts.end(), wanted);
}

struct RoughCase {
  DoorAction action;
  double leaf;
  const char* size;
  const char* rough;
};

// Hinged: leaf + 2 by height + 2 1/2. Pocket: twice the leaf + 1 by height + 4 1/2.
TEST(DoorSchedule, GivesTheRoughOpening) {
  const RoughCase cases[] = {
      {DoorAction::hinged, 30, "2'-6\" \u00d7 6'-8\"", "2'-8\" \u00d7 6'-10 1/2\""},
      {DoorAction::hinged, 36, "3'-0\" \u00d7 6'-8\"", "3'-2\" \u00d7 6'-10 1/2\""},
      {DoorAction::pocket, 30, "2'-6\" \u00d7 6'-8\"", "5'-1\" \u00d7 7'-0 1/2\""},
      {DoorAction::pocket, 32, "2'-8\" \u00d7 6'-8\"", "5'-5\" \u00d7 7'-0 1/2\""},
      {DoorAction::pocket, 36, "3'-0\" \u00d7 6'-8\"", "6'-1\" \u00d7 7'-0 1/2\""},
      {DoorAction::pocket, 24, "2'-0\" \u00d7 6'-8\"", "4'-1\" \u00d7 7'-0 1/2\""},
  };
  for (const RoughCase& c : cases) {
    RoomMaker room(160, 100);
    room.door("d", "n", 50, c.leaf, Hand::left, Swing::in).action = c.action;
    const std::vector<std::string> texts = textsOf(room.layout());
    EXPECT_EQ(count(texts, c.size), 1) << c.rough;
    EXPECT_EQ(count(texts, c.rough), 1) << c.rough;
  }
}

// Nobody publishes one for these; the schedule says who knows.
TEST(DoorSchedule, LeavesOtherRoughOpeningsToTheMaker) {
  RoomMaker room(160, 100);
  room.door("d", "n", 50, 36, Hand::left, Swing::in).action = DoorAction::surfaceSliding;
  const std::vector<std::string> texts = textsOf(room.layout());
  EXPECT_EQ(count(texts, "by the maker"), 1);
  EXPECT_EQ(count(texts, "2'-8\""), 1) << "clear opening of a 36 in leaf";
}

// Centre 30 + 24 / 2 from the left end of a wall of 160 in: 42 and 118.
TEST(WallSchedule, PlacesThings) {
  RoomMaker room(160, 100);
  WallItem mirror;
  mirror.id = {"m1"}, mirror.kind = "mirror", mirror.wall = {"n"}, mirror.person = "Ada";
  mirror.along = 42_in, mirror.bottom = 38_in, mirror.width = 24_in, mirror.height = 36_in;
  room.option().on_walls.push_back(mirror);
  WallItem niche = mirror;
  niche.id = {"n1"}, niche.kind = "niche", niche.along = 100_in, niche.depth = 3.5_in;
  room.option().on_walls.push_back(niche);
  niche.id = {"n2"}, niche.along = 140_in, niche.depth.reset();
  room.option().on_walls.push_back(niche);
  const std::vector<std::string> texts = textsOf(room.layout());
  EXPECT_EQ(count(texts, "3 1/2\" into it"), 1);
  EXPECT_EQ(count(texts, "not stated into it"), 0);
  for (const char* text : {"On the walls", "2'-0\" \u00d7 3'-0\"", "3'-2\"", "3'-6\" left, 9'-10\" right", "for Ada"})
    EXPECT_GE(count(texts, text), 1) << text;
}

}  // namespace
}  // namespace elbowroom
