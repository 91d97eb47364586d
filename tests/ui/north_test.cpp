// North: stated in the room's Particulars, shown by an arrow on the plan.
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QTest>

#include "tests/ui/rooms.h"
#include "ui/canvas/north_arrow.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/particulars/north_field.h"
#include "ui/particulars/particulars.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

struct NorthTest : testing::Test {
  Session session{hallBath()};
  Particulars particulars{session};
  QComboBox* direction = nullptr;
  QDoubleSpinBox* angle = nullptr;
  void SetUp() override {
    particulars.resize(280, 700);
    particulars.show();
    particulars.activateWindow();
    QTest::qWait(1);
    auto* field = particulars.findChild<NorthField*>();
    ASSERT_NE(field, nullptr);
    direction = field->findChild<QComboBox*>();
    angle = field->findChild<QDoubleSpinBox*>();
  }
  void choose(const QString& words) {
    direction->setFocus();
    direction->showPopup();
    QAbstractItemView* list = direction->view();
    QTest::keyClick(list, Qt::Key_Home);
    for (int i = 0; i < direction->findText(words); ++i) QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Return);
    ASSERT_EQ(direction->currentText().toStdString(), words.toStdString());
  }
};

TEST_F(NorthTest, ADirectionIsChosenAndTakenBack) {
  EXPECT_EQ(direction->currentText().toStdString(), "not stated");
  EXPECT_FALSE(angle->isVisible());
  choose("right");  // a quarter clockwise from up is three quarters counter-clockwise
  EXPECT_EQ(session.plan().north, 270_deg);
  choose("up and left");
  EXPECT_EQ(session.plan().north, 45_deg);
  session.undo();
  EXPECT_EQ(session.plan().north, 270_deg);
  EXPECT_EQ(direction->currentText().toStdString(), "right");
  choose("not stated");
  EXPECT_FALSE(session.plan().north.has_value());
  session.undo();
  session.undo();
  EXPECT_FALSE(session.plan().north.has_value());
  EXPECT_EQ(direction->currentText().toStdString(), "not stated");
}

TEST_F(NorthTest, AnAngleIsTypedAndItsStepsAreOneUndo) {
  choose("at an angle");
  ASSERT_TRUE(angle->isVisible());
  auto* line = angle->findChild<QLineEdit*>();
  line->selectAll();
  QTest::keyClicks(line, "22.5");
  QTest::keyClick(line, Qt::Key_Return);
  EXPECT_EQ(session.plan().north, 22.5_deg);
  QTest::keyClick(line, Qt::Key_Up);
  QTest::keyClick(line, Qt::Key_Up);
  EXPECT_EQ(session.plan().north, 32.5_deg);
  EXPECT_TRUE(angle->isVisible());
  session.undo();
  EXPECT_FALSE(session.plan().north.has_value());
  EXPECT_FALSE(angle->isVisible());
}

TEST_F(NorthTest, AnAngleFromAFileIsShown) {
  ASSERT_TRUE(session.perform(SetNorth{Angle::fromDegrees(-30)}, "North"));
  EXPECT_EQ(direction->currentText().toStdString(), "at an angle");
  EXPECT_TRUE(angle->isVisible());
  EXPECT_DOUBLE_EQ(angle->value(), 330);
}

// Dark dots of the arrow's corner, and where their middle lies from the corner's.
struct Arrow {
  int dots = 0;
  QPointF lean;
};
Arrow arrowIn(PlanCanvas& canvas, const QImage& without) {
  const QImage with = canvas.grab().toImage();
  const QRect box = northArrowBox(canvas.size()).toRect();
  Arrow found;
  for (int y = box.top(); y <= box.bottom(); ++y)
    for (int x = box.left(); x <= box.right(); ++x)
      if (with.pixel(x, y) != without.pixel(x, y)) {
        ++found.dots;
        found.lean += QPointF(x, y) - QRectF(box).center();
      }
  if (found.dots) found.lean /= found.dots;
  return found;
}

TEST(NorthArrow, IsOnThePlanOnlyWhenStatedAndItsLetterStandsWhereNorthIs) {
  Session session{hallBath()};
  PlanCanvas canvas(session);
  canvas.resize(700, 500);
  canvas.show();
  canvas.zoomToFit();
  const QImage without = canvas.grab().toImage();
  EXPECT_EQ(arrowIn(canvas, without).dots, 0);
  ASSERT_TRUE(session.perform(SetNorth{0_deg}, "North"));
  const Arrow up = arrowIn(canvas, without);
  EXPECT_GT(up.dots, 100);
  EXPECT_LT(up.lean.y(), -1);
  ASSERT_TRUE(session.perform(SetNorth{90_deg}, "North"));  // counter-clockwise: to the left
  const Arrow left = arrowIn(canvas, without);
  EXPECT_LT(left.lean.x(), -1);
  EXPECT_NEAR(left.lean.y(), 0, 1);
  canvas.zoomBy(2, {300, 200});
  canvas.zoomToFit();
  EXPECT_EQ(arrowIn(canvas, without).dots, left.dots);
}

}  // namespace
}  // namespace elbowroom::ui
