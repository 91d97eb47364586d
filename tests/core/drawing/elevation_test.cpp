// One wall as an elevation: where things are drawn, what is written beside them, and that every kind has a
// sign of its own.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/drawing/elevation_key.h"
#include "core/drawing/elevation_parts.h"
#include "core/file/plan_file.h"
#include "core/plan/wall_catalogue.h"
#include "tests/core/drawing/plans.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::planOf;

constexpr StripLayers kAll{true, true, true, true, true};

// 96 x 60, studs at 8, 24, 40, ... on the vanity's wall; the ceiling falls toward wall e from 96 to 60 in
// over 36 in.
constexpr const char* kRoom = R"json({
 "format": "elbowroom-plan", "version": 1, "unit": "in", "title": "Elevations (invented example)",
 "books": ["us-residential", "us-electrical"], "people": [ {"name": "Ada", "stature": 74} ],
 "options": [ {"name": "As found",
   "room": {"ceiling": {"height": 96, "slopes": [{"wall": "e", "low": 60, "run": 36}]},
     "walls": [ {"id": "n", "from": [0,60], "thickness": 4.5, "studs": {"first": 8, "spacing": 16}},
                {"id": "e", "from": [96,60], "thickness": 4.5}, {"id": "s", "from": [96,0], "thickness": 4.5},
                {"id": "w", "from": [0,0], "thickness": 4.5} ]},
   "openings": [], "fixtures": [
                {"id": "v", "kind": "vanity", "wall": "n", "along": 30, "width": 36, "depth": 21,
       "height": 34, "basins": 1} ],
   "on_walls": [ {"id": "m", "kind": "mirror", "wall": "n", "along": 30, "bottom": 40, "width": 30,
                "height": 36},
                 {"id": "r", "kind": "receptacle", "wall": "n", "along": 52, "bottom": 41.75, "width": 2.75,
                  "height": 4.5} ] } ] })json";

DrawStyle style() {
  DrawStyle s;
  s.mm = 24_mm;
  return s;
}

std::vector<std::string> textsOf(const DisplayList& list) {
  std::vector<std::string> texts;
  for (const DrawItem& item : list)
    if (const auto* text = std::get_if<TextPrim>(&item.prim)) texts.push_back(text->text);
  return texts;
}

bool has(const std::vector<std::string>& texts, const std::string& words) {
  return std::find(texts.begin(), texts.end(), words) != texts.end();
}

std::vector<LinePrim> linesOf(const DisplayList& list, Role role) {
  std::vector<LinePrim> lines;
  for (const DrawItem& item : list)
    if (const auto* line = std::get_if<LinePrim>(&item.prim); line && item.role == role)
      lines.push_back(*line);
  return lines;
}

DisplayList symbolOf(std::string_view kind, Length mm) {
  WallItem item;
  item.id = {"x"};
  item.kind = std::string(kind);
  Pen pen(elevationFrame(), item.id);
  DrawStyle s;
  s.mm = mm;
  drawWallSymbol(pen, item, {{10_in, 20_in}, {34_in, 38_in}}, s);
  return pen.take();
}

TEST(WallSymbols, KeepToTheRectangleAndTouchItsSides) {
  for (const WallKindInfo& info : wallKinds()) {
    for (const Length mm : {1_mm, 24_mm, 2000_mm}) {
      const Box box = boundsOf(symbolOf(info.key, mm));
      EXPECT_NEAR(box.low.x.inches(), 10, 1e-6) << info.key;
      EXPECT_NEAR(box.low.y.inches(), 20, 1e-6) << info.key;
      EXPECT_NEAR(box.high.x.inches(), 34, 1e-6) << info.key;
      EXPECT_NEAR(box.high.y.inches(), 38, 1e-6) << info.key;
    }
  }
}

TEST(WallSymbols, EveryKindHasOneOfItsOwn) {
  std::map<std::string, std::string_view> seen;
  const auto print = [](const DisplayList& list) {
    std::string all;
    for (const DrawItem& item : list) {
      all += std::to_string(item.prim.index());
      const Box box = boundsOf(DisplayList{item});
      for (const Length l : {box.low.x, box.low.y, box.high.x, box.high.y})
        all += " " + std::to_string(l.nm());
      if (const auto* poly = std::get_if<PolyPrim>(&item.prim))
        all += " p" + std::to_string(poly->points.size());
      if (const auto* line = std::get_if<LinePrim>(&item.prim)) all += line->a.x < line->b.x ? " /" : " \\";
    }
    return all;
  };
  seen[print(symbolOf("a kind of one's own", 1_mm))] = "unknown";
  for (const WallKindInfo& info : wallKinds()) {
    const auto [it, fresh] = seen.emplace(print(symbolOf(info.key, 1_mm)), info.key);
    EXPECT_TRUE(fresh) << info.key << " looks like " << it->second;
  }
}

TEST(Elevation, ASlopeCutsTheWallTruly) {
  const Layout layout = deriveLayout(planOf(kRoom), 0);
  // Wall n runs toward the slope: level until 36 in before its right end, then down to 60.
  const CeilingLine line = ceilingLineOf(layout, 0);
  ASSERT_EQ(line.points.size(), 3u);
  EXPECT_EQ(line.points[1].along, 60_in);
  EXPECT_EQ(line.points[1].height, 96_in);
  EXPECT_EQ(line.points[2].height, 60_in);
  const std::vector<std::string> texts = textsOf(drawElevation(layout, 0, kAll, style()).list);
  EXPECT_TRUE(has(texts, "8'-0\""));  // at the left corner
  EXPECT_TRUE(has(texts, "5'-0\""));  // at the right one, and where the bend is along the wall
}

// It is drawn at eight feet, but that is nobody's figure.
TEST(Elevation, GivesNoHeightToACeilingThatIsNotStated) {
  Plan plan = planOf(testing::kHallBath);
  const auto textsOn = [&](std::size_t wall) {
    return textsOf(drawElevation(deriveLayout(plan, 0), wall, kAll, style()).list);
  };
  EXPECT_TRUE(has(textsOn(1), "8'-0\""));  // wall e is five feet long: only its height is eight
  EXPECT_FALSE(has(textsOn(1), "ceiling not stated"));
  plan.options[0].room.ceiling.height.reset();
  EXPECT_FALSE(has(textsOn(1), "8'-0\""));
  EXPECT_TRUE(has(textsOn(1), "ceiling not stated"));
}

TEST(Elevation, WritesHeightsAndDistancesAsTheTradeDoes) {
  const Layout layout = deriveLayout(planOf(kRoom), 0);
  const ElevationDrawing drawing = drawElevation(layout, 0, kAll, style());
  const std::vector<std::string> texts = textsOf(drawing.list);
  // Mirror: lower and upper edge, 40 and 76; box: its middle, 41 3/4 + 2 1/4 = 44; counter 34.
  for (const char* words : {"3'-4\" bottom", "6'-4\" top", "3'-8\" ctr", "2'-10\" top"})
    EXPECT_TRUE(has(texts, words)) << words;
  // Mirror at 30, receptacle at 52 of 96: 30, 22, 44; the whole.
  for (const char* words : {"2'-6\"", "1'-10\"", "3'-8\"", "8'-0\""}) EXPECT_TRUE(has(texts, words)) << words;
  // Without the layer none of it.
  StripLayers none = kAll;
  none.dimensions = false;
  EXPECT_FALSE(has(textsOf(drawElevation(layout, 0, none, style()).list), "3'-8\" ctr"));
}

// The attic's west wall by hand from its plan: the door's leaf of 28 in is 10 in from the left, 46 from the
// right, the wall 84. The slope rises from 72 to 88 in over the first 24: at the casing's left edge,
// 10 - 2 1/2 = 7 1/2, it is 77 up, and it meets the casing's top, 78 + 2 1/2 = 80 1/2, at 12 3/4. The casing
// ends where the wall does.
TEST(Elevation, TheAtticsWestWallByHand) {
  const Result<Plan> plan = loadPlan(std::string(SOURCE_DIR) + "/samples/attic.elbowroom");
  ASSERT_TRUE(plan.ok());
  const Layout layout = deriveLayout(*plan, 1);
  std::size_t west = 0;
  while (layout.walls[west].id != ElementId{"w"}) ++west;
  const DisplayList list = drawElevation(layout, west, kAll, style()).list;
  const std::vector<std::string> texts = textsOf(list);
  for (const char* words : {"10\"", "2'-4\"", "3'-10\"", "7'-0\"", "6'-6\" head", "6'-0\"", "7'-4\""})
    EXPECT_TRUE(has(texts, words)) << words;
  // Switch at 43, control at 60, head at 66 of 84: 43, 17, 6, 18.
  for (const char* words : {"3'-7\"", "1'-5\"", "6\"", "1'-6\""}) EXPECT_TRUE(has(texts, words)) << words;
  bool cut = false;
  for (const DrawItem& item : list) {
    const auto* poly = std::get_if<PolyPrim>(&item.prim);
    if (!poly || item.role != Role::fixtureDetail || poly->points.size() < 4) continue;
    const auto holds = [&](Point p) {
      return std::any_of(poly->points.begin(), poly->points.end(),
                         [&](Point q) { return abs(q.x - p.x) < 0.001_in && abs(q.y - p.y) < 0.001_in; });
    };
    cut |= holds({7.5_in, 77_in}) && holds({12.75_in, 80.5_in}) && holds({40.5_in, 80.5_in});
  }
  EXPECT_TRUE(cut);
}

TEST(Elevation, StudsAreDrawnWithBothTheirEdges) {
  const Layout layout = deriveLayout(planOf(kRoom), 0);
  std::set<double> at;
  for (const LinePrim& line : linesOf(drawElevation(layout, 0, kAll, style()).list, Role::stud)) {
    if (line.a.x == line.b.x) at.insert(line.a.x.inches());
    if (line.a.x == 72.75_in) {
      EXPECT_NEAR(line.b.y.inches(), 96 - 12.75, 1e-6);  // cut by the slope of 1:1
    }
  }
  // 8, 24, 40, 56, 72, 88 on centre, 1 1/2 in wide.
  for (const double centre : {8, 24, 40, 56, 72, 88}) {
    EXPECT_EQ(at.count(centre - 0.75), 1u) << centre;
    EXPECT_EQ(at.count(centre + 0.75), 1u) << centre;
  }
  EXPECT_TRUE(linesOf(drawElevation(layout, 1, kAll, style()).list, Role::stud).empty());  // not stated there
}

// Eyes at 0.935 of the stature, elbows at 0.617 (ANSUR II, computed): 69.19 and 45.66 in for 74.
TEST(Elevation, PeoplesLinesAreAtTheirHeights) {
  const Layout layout = deriveLayout(planOf(kRoom), 0);
  std::vector<double> heights;
  for (const LinePrim& line : linesOf(drawElevation(layout, 0, kAll, style()).list, Role::person))
    heights.push_back(line.a.y.inches());
  std::sort(heights.begin(), heights.end());
  ASSERT_EQ(heights.size(), 2u);
  EXPECT_NEAR(heights[0], 45.66, 0.01);
  EXPECT_NEAR(heights[1], 69.19, 0.01);
  // Nothing on wall w goes by anybody's height.
  EXPECT_TRUE(linesOf(drawElevation(layout, 3, kAll, style()).list, Role::person).empty());
}

TEST(Elevation, TheStripDrawsTheSameThings) {
  for (const testing::NamedPlan& named : testing::allPlans()) {
    const Layout layout = deriveLayout(named.plan, 0);
    const WallStripDrawing strip = drawWallStrip(layout, style());
    for (std::size_t w = 0; w < layout.walls.size(); ++w) {
      const ElevationDrawing one = drawElevation(layout, w, {}, style());
      for (const PlacedWallItem& placed : layout.on_walls) {
        if (placed.wall != static_cast<int>(w)) continue;
        const auto boxOf = [&](const DisplayList& list) {
          DisplayList own;
          for (const DrawItem& item : list)
            if (item.source == placed.item.id) own.push_back(item);
          return boundsOf(own);
        };
        const Box a = boxOf(strip.list), b = boxOf(one.list);
        EXPECT_NEAR((a.low.x - strip.walls[w].x).inches(), b.low.x.inches(), 1e-6) << named.name;
        EXPECT_EQ(a.high.y, b.high.y) << named.name;
      }
    }
  }
}

TEST(ElevationKey, NamesEverythingOnTheWallWithItsFigures) {
  const Layout layout = deriveLayout(planOf(kRoom), 0);
  const std::vector<KeyEntry> key = keyOfWall(layout, 0);
  ASSERT_EQ(key.size(), 3u);
  EXPECT_EQ(key[0].title, "Vanity");
  EXPECT_EQ(key[1].title, "Mirror");
  EXPECT_EQ(key[1].lines[0], "2'-6\" \u00d7 3'-0\", bottom 3'-4\", top 6'-4\"");
  EXPECT_EQ(key[1].lines[1], "centre 2'-6\" from left, 5'-6\" from right");
  EXPECT_EQ(key[2].number, 3);
  EXPECT_NE(wallWords(layout, 0).find("studs 1'-4\" on centre, first 8\" from left"), std::string::npos);
  // Every number is drawn beside its thing.
  const ElevationDrawing drawing = drawElevation(layout, 0, kAll, style());
  const std::vector<std::string> numbers = textsOf(drawNumbers(layout, 0, key, drawing.list, style()));
  for (const char* number : {"1", "2", "3"}) EXPECT_TRUE(has(numbers, number)) << number;
}

}  // namespace
}  // namespace elbowroom
