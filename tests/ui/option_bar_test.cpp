#include <gtest/gtest.h>

#include <QLineEdit>
#include <QTabBar>
#include <QTest>
#include <QToolButton>

#include "tests/ui/rooms.h"
#include "ui/options/option_bar.h"
#include "ui/session/session.h"

namespace elbowroom::ui {
namespace {

struct OptionBarTest : testing::Test {
  Session session{hallBath()};
  OptionBar bar{session};
  void SetUp() override {
    bar.resize(600, 36);
    bar.show();
    bar.activateWindow();
    QTest::qWait(1);
  }
  void duplicateAs(const QString& name) {
    QTest::mouseClick(bar.addButton(), Qt::LeftButton);
    bar.editor()->selectAll();
    QTest::keyClicks(bar.editor(), name);
    QTest::keyClick(bar.editor(), Qt::Key_Return);
  }
};

TEST_F(OptionBarTest, PlusDuplicatesTheShownOptionAndAsksItsNameInTheTab) {
  QTest::mouseClick(bar.addButton(), Qt::LeftButton);
  ASSERT_EQ(session.plan().options.size(), 2U);
  EXPECT_EQ(session.plan().options[1].name, "Option 2");
  EXPECT_EQ(session.optionIndex(), 1U);
  EXPECT_EQ(session.plan().options[1].fixtures, session.plan().options[0].fixtures);
  ASSERT_TRUE(bar.editor()->isVisible());
  QTest::keyClicks(bar.editor(), "Pocket door");
  QTest::keyClick(bar.editor(), Qt::Key_Return);
  EXPECT_FALSE(bar.editor()->isVisible());
  EXPECT_EQ(session.plan().options[1].name, "Pocket door");
  EXPECT_EQ(bar.tabs()->tabText(1), "Pocket door");
}

TEST_F(OptionBarTest, EscapeKeepsTheOfferedName) {
  QTest::mouseClick(bar.addButton(), Qt::LeftButton);
  QTest::keyClicks(bar.editor(), "never mind");
  QTest::keyClick(bar.editor(), Qt::Key_Escape);
  EXPECT_EQ(session.plan().options[1].name, "Option 2");
}

TEST_F(OptionBarTest, PlusWhileNamingKeepsTheNameTyped) {
  QTest::mouseClick(bar.addButton(), Qt::LeftButton);
  QTest::keyClicks(bar.editor(), "First try");
  QTest::mouseClick(bar.addButton(), Qt::LeftButton);
  ASSERT_EQ(session.plan().options.size(), 3U);
  EXPECT_EQ(session.plan().options[1].name, "First try");
}

TEST_F(OptionBarTest, TabsSwitchByMouseAndKeys) {
  duplicateAs("B");
  QTest::mouseClick(bar.tabs(), Qt::LeftButton, {}, bar.tabs()->tabRect(0).center());
  EXPECT_EQ(session.optionIndex(), 0U);
  QTest::keyClick(bar.tabs(), Qt::Key_Right);
  EXPECT_EQ(session.optionIndex(), 1U);
}

TEST_F(OptionBarTest, DoubleClickAndF2Rename) {
  QTest::mouseDClick(bar.tabs(), Qt::LeftButton, {}, bar.tabs()->tabRect(0).center());
  ASSERT_TRUE(bar.editor()->isVisible());
  QTest::keyClicks(bar.editor(), "Before");
  QTest::keyClick(bar.editor(), Qt::Key_Return);
  EXPECT_EQ(session.plan().options[0].name, "Before");
  QTest::keyClick(bar.tabs(), Qt::Key_F2);
  EXPECT_TRUE(bar.editor()->isVisible());
  EXPECT_EQ(bar.editor()->text(), "Before");
}

TEST_F(OptionBarTest, ANameTwiceIsRefusedInPlace) {
  duplicateAs("B");
  QTest::keyClick(bar.tabs(), Qt::Key_F2);
  bar.editor()->selectAll();
  QTest::keyClicks(bar.editor(), "As found");
  QTest::keyClick(bar.editor(), Qt::Key_Return);
  EXPECT_TRUE(bar.editor()->isVisible());
  EXPECT_FALSE(bar.editor()->accessibleDescription().isEmpty());
  EXPECT_EQ(session.plan().options[1].name, "B");
}

TEST_F(OptionBarTest, RemovingCanBeUndoneAndTheLastOneStays) {
  duplicateAs("B");
  bar.tabs()->setFocus();
  QTest::keyClick(bar.tabs(), Qt::Key_Delete);
  ASSERT_EQ(session.plan().options.size(), 1U);
  EXPECT_EQ(bar.tabs()->count(), 1);
  QTest::keyClick(bar.tabs(), Qt::Key_Delete);
  EXPECT_EQ(session.plan().options.size(), 1U);
  session.undo();
  EXPECT_EQ(bar.tabs()->count(), 2);
  EXPECT_EQ(bar.tabs()->tabText(1), "B");
}

TEST_F(OptionBarTest, TheCrossRemovesItsOwnTabAndKeepsTheShownOne) {
  duplicateAs("B");
  duplicateAs("C");
  ASSERT_EQ(session.optionIndex(), 2U);
  auto* cross = qobject_cast<QToolButton*>(bar.tabs()->tabButton(1, QTabBar::RightSide));
  ASSERT_NE(cross, nullptr);
  cross->click();
  ASSERT_EQ(session.plan().options.size(), 2U);
  EXPECT_EQ(session.option().name, "C");
  EXPECT_EQ(bar.tabs()->currentIndex(), 1);
}

TEST_F(OptionBarTest, FiguresCompareOptions) {
  duplicateAs("Empty");
  RemoveElements all;
  for (const Fixture& f : session.option().fixtures) all.ids.push_back(f.id);
  ASSERT_TRUE(session.perform(all, "Remove"));
  EXPECT_TRUE(bar.figures(1).contains("5'-0\""))
      << bar.figures(1).toStdString();  // 60 in between the long walls
  EXPECT_FALSE(bar.figures(0).contains("5'-0\""));
}

}  // namespace
}  // namespace elbowroom::ui
