#include <gtest/gtest.h>

#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

struct LengthEditTest : testing::Test {
  LengthEdit edit{"Width"};
  std::vector<Length> committed;
  int cleared = 0;

  void SetUp() override {
    edit.setLength(30_in, Unit::inches);
    QObject::connect(&edit, &LengthEdit::committed, [this](Length l) { committed.push_back(l); });
    QObject::connect(&edit, &LengthEdit::cleared, [this] { ++cleared; });
    edit.show();
  }
  void type(const QString& text, Qt::Key then = Qt::Key_Return) {
    edit.line()->selectAll();
    QTest::keyClicks(edit.line(), text);
    QTest::keyClick(edit.line(), then);
  }
};

TEST_F(LengthEditTest, ShowsThePersonsUnit) {
  edit.setLength(62.5_in, Unit::inches);
  EXPECT_EQ(edit.line()->text(), "5'-2 1/2\"");
  edit.setLength(62.5_in, Unit::millimetres);
  EXPECT_EQ(edit.line()->text(), "1588 mm");
}

TEST_F(LengthEditTest, EnterCommitsWhatAPersonWrites) {
  type("2' 6 1/2\"");
  type("812.8 mm");
  ASSERT_EQ(committed.size(), 2U);
  EXPECT_EQ(committed[0], 30.5_in);
  EXPECT_EQ(committed[1], 32_in);  // 812.8 / 25.4
  EXPECT_FALSE(edit.stepped());
}

TEST_F(LengthEditTest, EscapeRestoresAndCommitsNothing) {
  type("44", Qt::Key_Escape);
  EXPECT_EQ(edit.line()->text(), "2'-6\"");
  EXPECT_TRUE(committed.empty());
}

TEST_F(LengthEditTest, NonsenseStaysInTheFieldWithASentence) {
  type("3x");
  EXPECT_TRUE(committed.empty());
  EXPECT_EQ(edit.line()->text(), "3x");
  EXPECT_FALSE(edit.problem().isEmpty());
  EXPECT_EQ(edit.line()->accessibleDescription(), edit.problem());
  EXPECT_EQ(*edit.length(), 30_in);
  // The plan changing elsewhere does not wipe what is being typed...
  edit.setLength(30_in, Unit::inches);
  EXPECT_EQ(edit.line()->text(), "3x");
  // ...and typing on takes the sentence away.
  QTest::keyClick(edit.line(), Qt::Key_Backspace);
  EXPECT_TRUE(edit.problem().isEmpty());
}

TEST_F(LengthEditTest, OutOfRangeIsSaidNotClamped) {
  edit.setRange(12_in, 48_in);
  type("4");
  EXPECT_TRUE(committed.empty());
  EXPECT_TRUE(edit.problem().contains("1'-0\"")) << edit.problem().toStdString();
  type("48");
  EXPECT_EQ(committed, std::vector<Length>{48_in});
}

TEST_F(LengthEditTest, ArrowsStepByHalfAnInchAndShiftByASixteenth) {
  QTest::keyClick(edit.line(), Qt::Key_Up);
  QTest::keyClick(edit.line(), Qt::Key_Down, Qt::ShiftModifier);
  ASSERT_EQ(committed.size(), 2U);
  EXPECT_EQ(committed[0], 30.5_in);
  EXPECT_EQ(committed[1], 30.4375_in);
  EXPECT_TRUE(edit.stepped());
}

TEST_F(LengthEditTest, ArrowsStepByTenMillimetresAndShiftByOne) {
  edit.setLength(700_mm, Unit::millimetres);
  QTest::keyClick(edit.line(), Qt::Key_Down);
  QTest::keyClick(edit.line(), Qt::Key_Up, Qt::ShiftModifier);
  ASSERT_EQ(committed.size(), 2U);
  EXPECT_EQ(committed[0], 690_mm);
  EXPECT_EQ(committed[1], 691_mm);
}

TEST_F(LengthEditTest, StepsStopAtTheRange) {
  edit.setRange(29.75_in, 48_in);
  QTest::keyClick(edit.line(), Qt::Key_Down);
  QTest::keyClick(edit.line(), Qt::Key_Down);
  EXPECT_EQ(committed, std::vector<Length>{29.75_in});
}

TEST_F(LengthEditTest, AnUntouchedFieldNeverRoundsThePlan) {
  edit.setLength(Length::nanometres(762'123'457), Unit::inches);  // shown as 2'-6"
  QTest::keyClick(edit.line(), Qt::Key_Return);
  edit.line()->clearFocus();
  EXPECT_TRUE(committed.empty());
}

TEST_F(LengthEditTest, LeavingTheFieldCommits) {
  edit.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&edit));
  edit.line()->setFocus();
  edit.line()->selectAll();
  QTest::keyClicks(edit.line(), "36");
  edit.line()->clearFocus();
  EXPECT_EQ(committed, std::vector<Length>{36_in});
}

TEST_F(LengthEditTest, EmptyMeansNotStatedOnlyWhereAllowed) {
  edit.line()->selectAll();
  QTest::keyClick(edit.line(), Qt::Key_Delete);
  QTest::keyClick(edit.line(), Qt::Key_Return);
  EXPECT_FALSE(edit.problem().isEmpty());
  EXPECT_EQ(cleared, 0);
  edit.setMayBeEmpty("not stated");
  QTest::keyClick(edit.line(), Qt::Key_Return);
  EXPECT_EQ(cleared, 1);
  EXPECT_FALSE(edit.length());
}

TEST_F(LengthEditTest, StockSizesAreOneChoiceAway) {
  edit.setUsual({28_in, 32_in});
  auto* menu = edit.findChild<QMenu*>();
  ASSERT_NE(menu, nullptr);
  ASSERT_EQ(menu->actions().size(), 2);
  EXPECT_EQ(menu->actions()[1]->text(), "2'-8\"");
  menu->actions()[1]->trigger();
  EXPECT_EQ(committed, std::vector<Length>{32_in});
}

}  // namespace
}  // namespace elbowroom::ui
