#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/base/length_text.h"
#include "core/drawing/draw_plan.h"
#include "core/geometry/measure.h"
#include "core/rules/wishes.h"
#include "tests/core/drawing/plans.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::planOf;

DrawStyle styleOf(const Plan& plan) {
  DrawStyle style;
  style.mm = 24_mm;
  style.unit = plan.unit;
  return style;
}

double squareInchesOf(const DisplayList& list, Role role, const ElementId& source) {
  double sum = 0;
  for (const DrawItem& item : list) {
    const auto* poly = std::get_if<PolyPrim>(&item.prim);
    if (poly != nullptr && poly->filled && item.role == role && item.source == source)
      sum += areaOf(poly->points).squareInches();
  }
  return sum;
}

// A mitred wall of a rectangle is a trapezium: thickness times the mean of its inner and outer length.
TEST(DrawPlan, CutsOpeningsOutOfTheWalls) {
  const Plan plan = planOf(testing::kHallBath);
  const Layout layout = deriveLayout(plan, 0);
  const DisplayList list = drawPlan(layout, styleOf(plan));
  EXPECT_NEAR(squareInchesOf(list, Role::wallCut, {"n"}), 6.5 * (96 + 105) / 2 - 24 * 6.5, 0.01);
  EXPECT_NEAR(squareInchesOf(list, Role::wallCut, {"e"}), 4.5 * (60 + 71) / 2, 0.01);
  EXPECT_NEAR(squareInchesOf(list, Role::wallCut, {"w"}), 4.5 * (60 + 71) / 2 - 30 * 4.5, 0.01);
}

TEST(DrawPlan, LeavesThePocketHollow) {
  const Plan plan = planOf(testing::kAttic);
  const Layout layout = deriveLayout(plan, 0);
  const PlacedOpening& door = layout.openings[0];
  ASSERT_FALSE(door.cavity.empty());
  const DisplayList list = drawPlan(layout, styleOf(plan));
  const double body = areaOf(layout.walls[4].body).squareInches();
  const double drawn = squareInchesOf(list, Role::wallCut, {"w"});
  const double opening = 28 * 4.5;
  EXPECT_LT(drawn, body - opening - 28 * 1.375);  // at least the leaf's own room is missing
  EXPECT_GT(drawn, body - opening - 30 * 4.5);    // but the skins beside it stand
}

// The leaf's edge runs from the latch jamb to a point one leaf's width from the hinge, at a right angle.
TEST(DrawPlan, SwingsADoorByItsTrueAngle) {
  const Plan plan = planOf(testing::kHallBath);
  const Layout layout = deriveLayout(plan, 0);
  const DisplayList list = drawOpening(layout, layout.openings[0], styleOf(plan));
  int arcs = 0;
  for (const DrawItem& item : list) {
    const auto* arc = std::get_if<ArcPrim>(&item.prim);
    if (arc == nullptr || item.role != Role::doorSwing) continue;
    ++arcs;
    EXPECT_EQ(arc->radius, 30_in);
    EXPECT_EQ(arc->center,
              (Point{0_in, 55_in}));  // right jamb of wall w seen from inside: 40 + 15 from (0,0)
    EXPECT_NEAR(std::abs(arc->sweep.degrees()), 90, 1e-6);
  }
  EXPECT_EQ(arcs, 1);
}

// Stopped early, the leaf stands where it is stopped and the rest of its way is dashed.
TEST(DrawPlan, ShowsALeafThatIsStopped) {
  Plan plan = planOf(testing::kHallBath);
  Fixture block = plan.options[0].fixtures[3];
  block.id = {"block"};
  block.placement = Standing{{20_in, 40_in}, {}};
  plan.options[0].fixtures.push_back(block);
  const Layout layout = deriveLayout(plan, 0);
  const DoorFigures figures = doorFigures(layout, layout.openings[0]);
  ASSERT_LT(figures.opens, 90_deg);
  Angle swung, rest;
  for (const DrawItem& item : drawOpening(layout, layout.openings[0], styleOf(plan))) {
    const auto* arc = std::get_if<ArcPrim>(&item.prim);
    if (arc == nullptr) continue;
    (item.role == Role::doorSwing ? swung : rest) = Angle::microdegrees(std::abs(arc->sweep.microdegrees()));
  }
  EXPECT_EQ(swung, figures.opens);
  EXPECT_EQ(swung + rest, 90_deg);
}

TEST(DrawPlan, DashesWhatIsRemoved) {
  const Plan plan = planOf(testing::kManyOpenings);
  const Layout layout = deriveLayout(plan, 0);
  for (const DrawItem& item : drawPlan(layout, styleOf(plan))) {
    if (item.source == ElementId{"old"} && !std::holds_alternative<TextPrim>(item.prim)) {
      EXPECT_EQ(item.role, Role::fixtureRemoved);
    }
    EXPECT_FALSE(item.source == ElementId{"wc"} && item.role == Role::fixtureRemoved);
  }
}

// Lengths between ticks on dimension lines parallel to the sheet, from what is drawn and not from the texts.
std::multiset<std::string> dimensionTexts(const Layout& layout, const DrawStyle& style) {
  std::multiset<std::string> texts;
  for (const DrawItem& item : drawDimensions(layout, style)) {
    if (const auto* text = std::get_if<TextPrim>(&item.prim)) texts.insert(text->text);
  }
  return texts;
}

// Worked by hand from the plan file: every opening by its jambs and every fixture by its centreline, from
// both corners of its wall; every wall whole.
TEST(DrawDimensions, LocateEverythingFromBothCorners) {
  const Plan plan = planOf(testing::kHallBath);
  const std::multiset<std::string> expected{
      "8'-0\"", "8'-0\"",  "5'-0\"", "5'-0\"",  // the walls
      "3'-0\"", "2'-0\"",  "3'-0\"",            // window in n: 36, 24, 36
      "2'-1\"", "2'-6\"",  "5\"",               // door in w: 25, 30, 5
      "2'-6\"", "2'-6\"",                       // bath on e: 30, 30
      "3'-9\"", "4'-3\"",                       // toilet on s: 45, 51
      "6'-3\"", "1'-9\"",                       // vanity on s: 75, 21
      "4'-2\"", "3'-10\"",                      // hamper standing free, across: 50, 46
      "4'-5\"", "7\"",                          // and along: 53, 7
  };
  EXPECT_EQ(dimensionTexts(deriveLayout(plan, 0), styleOf(plan)), expected);
}

TEST(DrawDimensions, SpeakMillimetres) {
  Plan plan = planOf(testing::kHallBath);
  plan.unit = Unit::millimetres;
  const std::multiset<std::string> texts = dimensionTexts(deriveLayout(plan, 0), styleOf(plan));
  EXPECT_EQ(texts.count("2438"), 2u);  // 96 in
  EXPECT_EQ(texts.count("610"), 1u);   // the window's 24 in
}

// All strings of a room stand outside it, walls and outward leaves included.
TEST(DrawDimensions, StandOutsideTheRoom) {
  for (const testing::NamedPlan& named : testing::allPlans()) {
    for (std::size_t option = 0; option < named.plan.options.size(); ++option) {
      const Layout layout = deriveLayout(named.plan, option);
      for (const DrawItem& item : drawDimensions(layout, styleOf(named.plan))) {
        const auto* text = std::get_if<TextPrim>(&item.prim);
        if (text == nullptr) continue;
        EXPECT_FALSE(contains(layout.room, text->at)) << named.name << ": " << text->text;
        for (const WallFrame& wall : layout.walls) EXPECT_FALSE(contains(wall.body, text->at)) << named.name;
        for (const PlacedOpening& opening : layout.openings) {
          for (const Leaf& leaf : opening.leaves) {
            EXPECT_FALSE(contains(sectorOutline(leaf), text->at)) << named.name << ": " << text->text;
          }
        }
      }
    }
  }
}

TEST(DimensionLine, StandsOnTheLeftOfWhatItMeasures) {
  DrawStyle style;
  style.mm = 24_mm;
  const DisplayList list = dimensionLine({{0_in, 0_in}, {60_in, 0_in}}, 10_in, "5'-0\"", style);
  bool line = false;
  int ticks = 0;
  for (const DrawItem& item : list) {
    if (const auto* text = std::get_if<TextPrim>(&item.prim)) {
      EXPECT_EQ(text->text, "5'-0\"");
      EXPECT_GT(text->at.y, 10_in);
      EXPECT_EQ(text->turn, 0_deg);
    } else if (const auto* l = std::get_if<LinePrim>(&item.prim)) {
      line = line || (l->a == Point{0_in, 10_in} && l->b == Point{60_in, 10_in});
      const Length dx = abs(l->b.x - l->a.x), dy = abs(l->b.y - l->a.y);
      ticks += dx > Length{} && dx == dy;  // oblique
    }
  }
  EXPECT_TRUE(line);
  EXPECT_EQ(ticks, 2);
  // Measured downwards the text still reads from the right.
  for (const DrawItem& item : dimensionLine({{0_in, 60_in}, {0_in, 0_in}}, 10_in, "5'-0\"", style)) {
    const auto* text = std::get_if<TextPrim>(&item.prim);
    if (text != nullptr) {
      EXPECT_EQ(text->turn, 90_deg);
    }
  }
}

TEST(DrawFindings, NumbersFollowTheReportAndShapesTellThemApart) {
  const Plan plan = planOf(testing::kHallBath);
  const Layout layout = deriveLayout(plan, 0);
  const Report report = check(layout, choiceOf(plan));
  int expected = 0;
  for (const Finding& f : report.findings) {
    if (onlyWished(f)) continue;  // an undecided wish is no finding of the plan
    expected += f.outcome == Outcome::shortfall || f.outcome == Outcome::close;  // what is not stated has no place
  }
  std::set<int> numbers;
  for (const DrawItem& item : drawFindings(report, styleOf(plan))) {
    if (const auto* text = std::get_if<TextPrim>(&item.prim)) {
      for (std::size_t i = 0; i < text->text.size();) {
        const std::size_t comma = std::min(text->text.find(", ", i), text->text.size());
        if (text->text != "?") numbers.insert(std::stoi(text->text.substr(i, comma - i)));
        i = comma + 2;
      }
    }
    const auto* poly = std::get_if<PolyPrim>(&item.prim);
    if (poly == nullptr || !poly->filled) continue;
    EXPECT_EQ(poly->points.size(), item.role == Role::markClose ? 3u : 4u);
  }
  ASSERT_GT(expected, 5);
  EXPECT_EQ(numbers.size(), static_cast<std::size_t>(expected));
  EXPECT_EQ(*numbers.begin(), 1);
  EXPECT_EQ(*numbers.rbegin(), expected);
}

// 2009 IRC P2705.1(5) asks for 21 in before a toilet; the dashed zone is that deep and as wide as the toilet.
TEST(DrawClearZones, AreAsDeepAsTheBookAsks) {
  Plan plan = planOf(testing::kHallBath);
  plan.books = {"us-residential"};
  const Layout layout = deriveLayout(plan, 0);
  const Report report = check(layout, choiceOf(plan));
  bool seen = false;
  for (const DrawItem& item : drawClearZones(layout, report, styleOf(plan))) {
    if (item.source != ElementId{"wc"}) continue;
    seen = true;
    EXPECT_EQ(item.role, Role::clearZone);
    const Box box = boundsOf({item});
    EXPECT_EQ(box.low.y, 28_in);
    EXPECT_EQ(box.high.y, 49_in);
  }
  EXPECT_TRUE(seen);
}

}  // namespace
}  // namespace elbowroom
