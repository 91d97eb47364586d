// From the Tray onto the wall strip, the plan and the ceiling, in the whole window.
#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QMimeData>
#include <QtTest>

#include "core/plan/wall_catalogue.h"
#include "tests/ui/rooms.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/tray/tray.h"
#include "ui/tray/tray_tile.h"
#include "ui/walls/wall_strip.h"
#include "ui/window/main_window.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

class PlaceOnWallsTest : public ::testing::Test {
 protected:
  PlaceOnWallsTest() : window(hallBath()) {
    window.resize(1500, 950);
    window.show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(&window);
    strip = window.findChild<WallStrip*>();
    tray = window.findChild<Tray*>();
  }
  void pick(const char* payload) { QTest::mouseClick(tray->tile(payload), Qt::LeftButton); }
  static void moveTo(QWidget* on, QPointF at, Qt::MouseButtons held = Qt::NoButton) {
    QMouseEvent event(QEvent::MouseMove, at, on->mapToGlobal(at), Qt::NoButton, held, {});
    QApplication::sendEvent(on, &event);
  }
  QPointF onStrip(double x, double y) {
    return strip->map().toPx({Length::fromInches(x), Length::fromInches(y)});
  }
  const Option& option() { return window.session().option(); }
  std::size_t count() { return option().on_walls.size(); }

  MainWindow window;
  WallStrip* strip = nullptr;
  Tray* tray = nullptr;
};

TEST_F(PlaceOnWallsTest, ClickInTheTrayThenOnTheStrip) {
  pick("wall:niche");
  moveTo(strip->viewport(), onStrip(96 + 20, 60));
  EXPECT_EQ(count(), 2U);  // it follows the pointer as part of the plan
  QTest::mouseClick(strip->viewport(), Qt::LeftButton, {}, onStrip(96 + 20, 60).toPoint());
  ASSERT_EQ(count(), 2U);
  const WallItem& niche = option().on_walls.back();
  EXPECT_EQ(niche.kind, "niche");
  EXPECT_EQ(niche.wall, ElementId{"e"});
  EXPECT_NEAR(niche.along.inches(), 20, 6);
  EXPECT_EQ(niche.shower, ElementId{"b"});  // the bath along that wall
  EXPECT_TRUE(strip->choosing());
  EXPECT_TRUE(window.canvas().choosing());
  window.session().undo();
  EXPECT_EQ(count(), 1U);
  EXPECT_FALSE(window.session().history().canUndo());
}

TEST_F(PlaceOnWallsTest, UndoWhileDraggingOnTheStripTakesOnlyTheDragBack) {
  ASSERT_TRUE(window.session().perform(SetTitle{"Renamed"}, "Change title"));
  const QPointF from = onStrip(231, 55);
  QTest::mousePress(strip->viewport(), Qt::LeftButton, {}, from.toPoint());
  for (int i = 1; i <= 6; ++i) moveTo(strip->viewport(), from - QPointF(6.0 * i, 0), Qt::LeftButton);
  ASSERT_NE(findWallItem(option(), {"m"})->along, 75_in);
  for (QAction* action : window.findChildren<QAction*>())
    if (action->shortcut() == QKeySequence(QKeySequence::Undo)) action->trigger();
  EXPECT_EQ(findWallItem(option(), {"m"})->along, 75_in);
  EXPECT_EQ(window.session().plan().title, "Renamed");
  moveTo(strip->viewport(), from - QPointF(80, 0), Qt::LeftButton);
  EXPECT_EQ(findWallItem(option(), {"m"})->along, 75_in);  // the mouse carries nothing any more
}

TEST_F(PlaceOnWallsTest, OverThePlanThenOverTheStripItIsOneThing) {
  pick("wall:towel-bar");
  PlanCanvas& canvas = window.canvas();
  moveTo(&canvas, canvas.map().toPx({48_in, 55_in}));
  ASSERT_EQ(count(), 2U);
  EXPECT_EQ(option().on_walls.back().wall, ElementId{"n"});
  moveTo(strip->viewport(), onStrip(96 + 60 + 30, 50));
  ASSERT_EQ(count(), 2U);
  EXPECT_EQ(option().on_walls.back().wall, ElementId{"s"});
  moveTo(&canvas, canvas.map().toPx({3_in, 20_in}));
  ASSERT_EQ(count(), 2U);
  QTest::mouseClick(&canvas, Qt::LeftButton, {}, canvas.map().toPx({3_in, 20_in}).toPoint());
  ASSERT_EQ(count(), 2U);
  const WallItem& bar = option().on_walls.back();
  EXPECT_EQ(bar.wall, ElementId{"w"});
  EXPECT_EQ(bar.bottom, findWallKind("towel-bar")->bottom);
  EXPECT_TRUE(strip->choosing());
  EXPECT_TRUE(canvas.choosing());
}

TEST_F(PlaceOnWallsTest, EscapeTakesItAwayEverywhere) {
  pick("wall:mirror");
  moveTo(strip->viewport(), onStrip(100, 50));
  ASSERT_EQ(count(), 2U);
  QTest::keyClick(strip, Qt::Key_Escape);
  EXPECT_EQ(count(), 1U);
  EXPECT_TRUE(window.canvas().choosing());
  moveTo(strip->viewport(), onStrip(110, 50));
  moveTo(&window.canvas(), QPointF(window.canvas().rect().center()));
  EXPECT_EQ(count(), 1U);
  EXPECT_FALSE(window.session().history().canUndo());
}

TEST_F(PlaceOnWallsTest, EnterPutsItOnTheSelectedWallAtItsUsualHeight) {
  window.session().select({{"w"}});
  pick("wall:hook");
  QTest::keyClick(strip, Qt::Key_Return);
  ASSERT_EQ(count(), 2U);
  const WallItem& hook = option().on_walls.back();
  EXPECT_EQ(hook.wall, ElementId{"w"});
  EXPECT_EQ(hook.along, 30_in);
  EXPECT_EQ(hook.bottom, findWallKind(hook.kind)->bottom);
}

TEST_F(PlaceOnWallsTest, ADropFromTheTrayOntoTheStrip) {
  QMimeData data;
  data.setData(kKindMime, "wall:mirror");
  const QPoint at = onStrip(96 + 60 + 70, 60).toPoint();
  QDragEnterEvent enter(at, Qt::CopyAction, &data, Qt::LeftButton, {});
  QApplication::sendEvent(strip->viewport(), &enter);
  QDragMoveEvent move(at, Qt::CopyAction, &data, Qt::LeftButton, {});
  QApplication::sendEvent(strip->viewport(), &move);
  QDropEvent drop(at, Qt::CopyAction, &data, Qt::LeftButton, {});
  QApplication::sendEvent(strip->viewport(), &drop);
  ASSERT_EQ(count(), 2U);
  EXPECT_EQ(option().on_walls.back().along, 75_in);  // the vanity's centreline
  EXPECT_EQ(option().on_walls.back().wall, ElementId{"s"});
}

TEST_F(PlaceOnWallsTest, CeilingThingsGoOntoThePlanAndMoveThere) {
  pick("ceiling:fan");
  PlanCanvas& canvas = window.canvas();
  const QPoint at = canvas.map().toPx({60_in, 40_in}).toPoint();
  moveTo(&canvas, at);
  QTest::mouseClick(&canvas, Qt::LeftButton, {}, at);
  ASSERT_EQ(option().on_ceiling.size(), 1U);
  const Point put = option().on_ceiling[0].at;
  EXPECT_NEAR(put.x.inches(), 60, 2);
  EXPECT_NEAR(put.y.inches(), 40, 2);
  EXPECT_EQ(window.session().selection(), std::set<ElementId>{option().on_ceiling[0].id});
  QTest::keyClick(&canvas, Qt::Key_Left);
  EXPECT_EQ(option().on_ceiling[0].at.x, put.x - 0.5_in);
  const QPointF from = canvas.map().toPx(option().on_ceiling[0].at), to = canvas.map().toPx({40_in, 45_in});
  QTest::mousePress(&canvas, Qt::LeftButton, {}, from.toPoint());
  for (int i = 1; i <= 5; ++i) moveTo(&canvas, from + (to - from) * (i / 5.0), Qt::LeftButton);
  QTest::mouseRelease(&canvas, Qt::LeftButton, {}, to.toPoint());
  EXPECT_NEAR(option().on_ceiling[0].at.x.inches(), 40, 2);
  EXPECT_NEAR(option().on_ceiling[0].at.y.inches(), 45, 2);
}

}  // namespace
}  // namespace elbowroom::ui
