#include <gtest/gtest.h>

#include "core/drawing/display_list.h"

namespace elbowroom {
namespace {

using namespace literals;

// hmtx of DejaVu Sans 2.37, 2048 units to the em: H 1540, i 569, space 651, W 2025; bold H 1714.
TEST(TextWidth, AddsTheFontsAdvances) {
  EXPECT_EQ(textWidth("H", 2048_mm), 1540_mm);
  EXPECT_EQ(textWidth("Hi W", 2048_mm), Length::fromMillimetres(1540 + 569 + 651 + 2025));
  EXPECT_EQ(textWidth("H", 2048_mm, true), 1714_mm);
  EXPECT_EQ(textWidth("", 2048_mm), 0_mm);
}

TEST(TextWidth, KeepsRoomForWhatTheTableLacks) {
  EXPECT_EQ(textWidth("\u4e2d", 10_mm), 10_mm);
  EXPECT_EQ(textWidth("\xff", 2048_mm), textWidth("?", 2048_mm));  // a broken byte is one unknown character
}

TEST(WrapText, BreaksAtSpacesAndKeepsEveryWord) {
  const std::string text = "clear floor in front of the  toilet";
  const Length width = textWidth("clear floor in", 3_mm);
  const std::vector<std::string> lines = wrapText(text, 3_mm, width);
  ASSERT_GE(lines.size(), 3u);
  EXPECT_EQ(lines[0], "clear floor in");
  std::string all;
  for (const std::string& line : lines) {
    EXPECT_LE(textWidth(line, 3_mm), width) << line;
    all += (all.empty() ? "" : " ") + line;
  }
  EXPECT_EQ(all, "clear floor in front of the toilet");
  EXPECT_TRUE(wrapText("", 3_mm, width).empty());
}

TEST(WrapText, LetsALongWordStandAlone) {
  const std::vector<std::string> lines = wrapText("a manoeuvring b", 3_mm, 4_mm);
  EXPECT_EQ(lines, (std::vector<std::string>{"a", "manoeuvring", "b"}));
}

TEST(TextBounds, FollowsAnchorAndTurn) {
  TextPrim text{{0_mm, 0_mm}, "HHHH", 10_mm, {}, AnchorH::centre, AnchorV::base};
  const Length width = textWidth("HHHH", 10_mm);
  Box box = textBounds(text);
  EXPECT_EQ(box.high.x - box.low.x, width);
  EXPECT_EQ(box.low.x, -(width / 2));
  EXPECT_GT(box.high.y, 7_mm);    // capitals are 0.729 em tall
  EXPECT_LT(box.low.y, -(2_mm));  // and descenders 0.236 em
  text.turn = 90_deg;
  box = textBounds(text);
  EXPECT_EQ(box.high.y - box.low.y, width);
  EXPECT_LT(box.low.x, -(7_mm));
  text.turn = {};
  text.v = AnchorV::top;
  EXPECT_LE(textBounds(text).high.y, 0_mm);
}

TEST(BoundsOf, CoversEveryKindOfPrimitive) {
  const DisplayList list{
      {LinePrim{{1_mm, 1_mm}, {2_mm, 1_mm}}, Role::note, {}},
      {ArcPrim{{0_mm, 0_mm}, 10_mm, 0_deg, 90_deg}, Role::note, {}},
      {EllipsePrim{{0_mm, 0_mm}, 20_mm, 3_mm, 90_deg}, Role::note, {}},
  };
  const Box box = boundsOf(list);
  EXPECT_EQ(box.high, (Point{10_mm, 20_mm}));
  EXPECT_EQ(box.low, (Point{-(3_mm), -(20_mm)}));
  EXPECT_EQ(boundsOf(DisplayList{}), Box{});
}

TEST(HatchLines, StayInsideAndCoverAConcaveOutline) {
  // An L: 40 x 40 less the upper right 20 x 20.
  const Outline ell{{0_mm, 0_mm},   {40_mm, 0_mm},  {40_mm, 20_mm},
                    {20_mm, 20_mm}, {20_mm, 40_mm}, {0_mm, 40_mm}};
  const std::vector<Segment> lines = hatchLines({ell, 2_mm});
  double total = 0;
  for (const Segment& s : lines) {
    const Point m = midpoint(s.a, s.b);
    EXPECT_FALSE(m.x > 20_mm && m.y > 20_mm) << m.x.millimetres() << ", " << m.y.millimetres();
    EXPECT_NEAR((s.b.x - s.a.x).millimetres(), (s.b.y - s.a.y).millimetres(), 1e-6);
    total += distance(s.a, s.b).millimetres();
  }
  // Lines every 2 mm across 1200 mm2 are about 600 mm long.
  EXPECT_NEAR(total, 600, 30);
}

}  // namespace
}  // namespace elbowroom
