// More of the plan by mouse and key: walls, corners, dimensions to click, several at once, hover, pan, stand-ins.
#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QtTest>

#include "core/plan/integrity.h"
#include "rooms.h"
#include "ui/canvas/live_dimensions.h"
#include "ui/canvas/plan_canvas.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

// The hall bath of rooms.h: 96 x 60 in, lower left corner at the origin; walls n, e, s, w.
class CanvasEditTest : public ::testing::Test {
 protected:
  CanvasEditTest() : session(hallBath()), canvas(session) {
    canvas.resize(900, 700);
    canvas.show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(&canvas);
    canvas.zoomToFit();
  }
  QPoint px(Length x, Length y) const { return canvas.map().toPx({x, y}).toPoint(); }
  void moveTo(QPointF at, Qt::MouseButtons held, Qt::KeyboardModifiers keys = {}) {
    QMouseEvent event(QEvent::MouseMove, at, canvas.mapToGlobal(at), Qt::NoButton, held, keys);
    QApplication::sendEvent(&canvas, &event);
  }
  void drag(Point from, Point to, Qt::MouseButton button = Qt::LeftButton) {
    const QPointF a = canvas.map().toPx(from), b = canvas.map().toPx(to);
    QTest::mousePress(&canvas, button, {}, a.toPoint());
    for (int i = 1; i <= 6; ++i) moveTo(a + (b - a) * (i / 6.0), button);
    QTest::mouseRelease(&canvas, button, {}, b.toPoint());
  }
  const WallFrame& wall(const char* id) const {
    for (const WallFrame& frame : session.layout().walls)
      if (frame.id.text == id) return frame;
    throw std::logic_error("no such wall");
  }

  Session session;
  PlanCanvas canvas;
};

TEST_F(CanvasEditTest, AWallIsDraggedParallelToItself) {
  drag({70_in, 63_in}, {70_in, 69_in});  // the north wall's body, 6 in outward
  EXPECT_NEAR(wall("w").length.inches(), 66, 0.51);
  EXPECT_NEAR(wall("e").length.inches(), wall("w").length.inches(), 1e-6);
  EXPECT_EQ(wall("n").length, 96_in);
  session.undo();
  EXPECT_EQ(wall("w").length, 60_in);
}

TEST_F(CanvasEditTest, ACornerIsDraggedAlone) {
  drag({96_in, 60_in}, {96_in, 72_in});
  EXPECT_NEAR(wall("e").length.inches(), 72, 0.51);
  EXPECT_EQ(wall("w").length, 60_in);
  EXPECT_NEAR(session.layout().walls[0].length.inches(), std::hypot(96, 12), 0.6);
}

TEST_F(CanvasEditTest, ADragThatCannotBeKeepsTheLastGoodRoom) {
  // The corner pulled across the opposite wall would make walls cross.
  const QPointF a = canvas.map().toPx({96_in, 60_in}), b = canvas.map().toPx({96_in, -30_in});
  QTest::mousePress(&canvas, Qt::LeftButton, {}, a.toPoint());
  for (int i = 1; i <= 30; ++i) {
    moveTo(a + (b - a) * (i / 30.0), Qt::LeftButton);
    ASSERT_FALSE(integrity(session.plan())) << i;
  }
  QTest::mouseRelease(&canvas, Qt::LeftButton, {}, b.toPoint());
  EXPECT_FALSE(integrity(session.plan()));
}

TEST_F(CanvasEditTest, ADoubleClickOnAWallAddsACorner) {
  QTest::mouseDClick(&canvas, Qt::LeftButton, {}, px(80_in, 63_in));
  EXPECT_EQ(session.layout().walls.size(), 5u);
  session.undo();
  EXPECT_EQ(session.layout().walls.size(), 4u);
}

TEST_F(CanvasEditTest, ADimensionIsClickedAndTyped) {
  session.select({session.option().fixtures.back().id});
  const auto dims = liveDimensions(canvas);
  ASSERT_FALSE(dims.empty());
  QTest::mouseClick(&canvas, Qt::LeftButton, {}, dims[0].label_box.center().toPoint());
  auto* entry = canvas.findChild<QLineEdit*>();
  ASSERT_TRUE(entry && entry->isVisible());
  EXPECT_EQ(entry->text(), dims[0].text);
  entry->selectAll();
  QTest::keyClicks(entry, "nonsense");
  QTest::keyClick(entry, Qt::Key_Return);
  EXPECT_TRUE(entry->isVisible()) << "what cannot be read stays to be mended";
  EXPECT_FALSE(entry->accessibleDescription().isEmpty());
  entry->selectAll();
  QTest::keyClicks(entry, "7 1/4");
  QTest::keyClick(entry, Qt::Key_Return);
  EXPECT_FALSE(entry->isVisible());
  bool found = false;
  for (const LiveDimension& dim : liveDimensions(canvas)) found |= abs(dim.value - 7.25_in) < 0.001_in;
  EXPECT_TRUE(found);
}

TEST_F(CanvasEditTest, AWallsLengthIsTypedAndSquareStaysSquare) {
  session.select({{"s"}});
  canvas.setFocus();
  QTest::keyClicks(&canvas, "1");
  auto* entry = canvas.findChild<QLineEdit*>();
  ASSERT_TRUE(entry && entry->isVisible());
  entry->selectAll();
  QTest::keyClicks(entry, "9' 2\"");
  QTest::keyClick(entry, Qt::Key_Return);
  EXPECT_EQ(wall("s").length, 110_in);
  EXPECT_EQ(wall("n").length, 110_in);
  EXPECT_EQ(session.layout().room_area, 110_in * 60_in);
}

TEST_F(CanvasEditTest, ABandSelectsWhatLiesWithinAndTheGroupMovesAsOneStep) {
  drag({-12_in, -14_in}, {108_in, 80_in});
  EXPECT_EQ(session.selection().size(), session.option().fixtures.size() + session.option().openings.size());
  std::set<ElementId> two{session.option().fixtures[1].id, session.option().fixtures[2].id};
  session.select(two);
  const Plan before = session.plan();
  const Point from = session.layout().fixtures[1].center;
  drag(from, from + Vector{-4_in, Length{}});
  EXPECT_NE(session.plan(), before);
  for (std::size_t i : {1u, 2u}) {
    const auto& was = std::get<OnWall>(before.options[0].fixtures[i].placement);
    const auto& is = std::get<OnWall>(session.option().fixtures[i].placement);
    EXPECT_NEAR(abs(is.along - was.along).inches(), 4, 0.51);
  }
  session.undo();
  EXPECT_EQ(session.plan(), before);
}

TEST_F(CanvasEditTest, ArrowsNudgeAndOneUndoTakesTheRunBack) {
  session.select({session.option().fixtures[1].id});
  canvas.setFocus();
  const Plan before = session.plan();
  const Point center = session.layout().fixtures[1].center;
  for (int i = 0; i < 3; ++i) QTest::keyClick(&canvas, Qt::Key_Left);
  EXPECT_EQ(center.x - session.layout().fixtures[1].center.x, 1.5_in);
  session.undo();
  EXPECT_EQ(session.plan(), before);
}

TEST_F(CanvasEditTest, PointingAtAFindingsPlaceLightsIt) {
  int index = -1;
  for (std::size_t i = 0; i < session.report().findings.size() && index < 0; ++i) {
    const Finding& finding = session.report().findings[i];
    if (finding.outcome == Outcome::shortfall && !finding.places.empty() && finding.places[0].points.size() >= 2)
      index = static_cast<int>(i);
  }
  ASSERT_GE(index, 0);
  const auto& points = session.report().findings[static_cast<std::size_t>(index)].places[0].points;
  moveTo(canvas.map().toPx(midpoint(points[0], points[1])), Qt::NoButton);
  EXPECT_GE(session.litFinding(), 0);
  moveTo({5, 5}, Qt::NoButton);
  EXPECT_EQ(session.litFinding(), -1);
}

TEST_F(CanvasEditTest, TheMiddleButtonPansWithoutTouchingThePlan) {
  const Plan before = session.plan();
  const QPointF origin = canvas.map().origin;
  drag({50_in, 30_in}, {60_in, 40_in}, Qt::MiddleButton);
  EXPECT_NE(canvas.map().origin, origin);
  EXPECT_EQ(session.plan(), before);
}

TEST_F(CanvasEditTest, TheClearFloorSpaceTurnsAndJumpsToWhereItFits) {
  canvas.showStandIn(StandIn::Kind::rectangle);
  StandIn& space = canvas.standIn();
  space.center = {96_in, 30_in};
  EXPECT_FALSE(space.fit(session.layout()).fits) << "half in the east wall";
  canvas.setFocus();
  const Angle turn = space.turn;
  QTest::keyClick(&canvas, Qt::Key_BracketLeft);
  EXPECT_EQ(space.turn, (turn + 15_deg).normalised());
  const bool fits_somewhere =
      session.layout().floor_with_knees.nearestRectangleAnyTurn(space.along, space.across, {space.center, space.turn}).has_value();
  canvas.jumpStandIn();
  EXPECT_EQ(space.fit(session.layout()).fits, fits_somewhere);
  QTest::keyClick(&canvas, Qt::Key_Escape);
  EXPECT_FALSE(space.shown());
}

}  // namespace
}  // namespace elbowroom::ui
