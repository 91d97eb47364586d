#include <gtest/gtest.h>

#include <QApplication>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
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

TEST_F(OptionBarTest, UndoBringsARemovedOptionBackToItsPlaceAndTheShownOneStaysShown) {
  duplicateAs("B");
  duplicateAs("C");
  session.setOption(2);
  session.select({{"wc"}});
  const Plan before = session.plan();
  QString said;
  QObject::connect(&bar, &OptionBar::said, [&](const QString& text) { said = text; });
  qobject_cast<QToolButton*>(bar.tabs()->tabButton(1, QTabBar::RightSide))->click();
  EXPECT_TRUE(said.contains("B") && said.contains("Ctrl+Z")) << said.toStdString();
  EXPECT_EQ(session.selection().count({"wc"}), 1U) << "what is selected in the shown option stays selected";
  ASSERT_EQ(session.option().name, "C");
  session.undo();
  EXPECT_EQ(session.plan(), before);
  EXPECT_EQ(session.option().name, "C");
  EXPECT_EQ(bar.tabs()->currentIndex(), 2);
  EXPECT_EQ(bar.tabs()->tabText(1), "B");
  session.redo();
  EXPECT_EQ(session.option().name, "C");
  EXPECT_EQ(bar.tabs()->currentIndex(), 1);
}

TEST_F(OptionBarTest, UndoneRenamingStaysAtTheOption) {
  duplicateAs("B");
  duplicateAs("C");
  session.setOption(1);
  ASSERT_TRUE(session.perform(RenameOption{"Pocket"}, "Rename"));
  EXPECT_EQ(session.optionIndex(), 1U);
  session.undo();
  EXPECT_EQ(session.optionIndex(), 1U);
  EXPECT_EQ(session.option().name, "B");
}

TEST_F(OptionBarTest, AltArrowsMoveATabButNeverBeforeTheFirst) {
  duplicateAs("B");
  duplicateAs("C");
  bar.tabs()->setFocus();
  QTest::keyClick(bar.tabs(), Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(session.plan().options[1].name, "C");
  EXPECT_EQ(session.option().name, "C");
  EXPECT_EQ(bar.tabs()->currentIndex(), 1);
  EXPECT_EQ(bar.tabs()->tabText(1), "C");
  QTest::keyClick(bar.tabs(), Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(session.plan().options[0].name, "As found");
  QTest::keyClick(bar.tabs(), Qt::Key_Right, Qt::AltModifier);
  EXPECT_EQ(session.plan().options[2].name, "C");
  EXPECT_EQ(bar.tabs()->currentIndex(), 2);
  session.undo();
  EXPECT_EQ(session.option().name, "C");
  EXPECT_EQ(bar.tabs()->currentIndex(), 1);
}

// The menu of a tab; `at` as the window system would ask for it.
struct OptionMenuTest : OptionBarTest {
  QMenu* asked(QContextMenuEvent::Reason reason, QPoint at) {
    QContextMenuEvent event(reason, at, bar.tabs()->mapToGlobal(at));
    QApplication::sendEvent(bar.tabs(), &event);
    return bar.findChild<QMenu*>();
  }
  static QAction* entry(QMenu* menu, const QString& text) {
    for (QAction* action : menu->actions())
      if (action->text().remove('&').startsWith(text)) return action;
    return nullptr;
  }
};

TEST_F(OptionMenuTest, ARightClickOffersTheTabUnderIt) {
  duplicateAs("B");
  duplicateAs("C");
  QMenu* menu = asked(QContextMenuEvent::Mouse, bar.tabs()->tabRect(1).center());
  ASSERT_NE(menu, nullptr);
  ASSERT_TRUE(menu->isVisible());
  EXPECT_FALSE(entry(menu, "Move left")->isEnabled()) << "the first stays first";
  EXPECT_TRUE(entry(menu, "Remove")->isEnabled());
  QTest::mouseClick(menu, Qt::LeftButton, {}, menu->actionGeometry(entry(menu, "Move right")).center());
  EXPECT_EQ(session.plan().options[2].name, "B");
  EXPECT_EQ(session.option().name, "C");
}

TEST_F(OptionMenuTest, TheMenuKeyOffersTheShownTabAndLettersChoose) {
  duplicateAs("B");
  QMenu* menu = asked(QContextMenuEvent::Keyboard, bar.tabs()->rect().center());
  ASSERT_NE(menu, nullptr);
  QTest::keyClick(menu, Qt::Key_D);
  ASSERT_EQ(session.plan().options.size(), 3U);
  EXPECT_TRUE(bar.editor()->isVisible());
  QTest::keyClick(bar.editor(), Qt::Key_Escape);
  bar.tabs()->setCurrentIndex(0);
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  menu = asked(QContextMenuEvent::Keyboard, {});
  ASSERT_NE(menu, nullptr);
  EXPECT_FALSE(entry(menu, "Move left")->isEnabled());
  EXPECT_FALSE(entry(menu, "Move right")->isEnabled());
  QTest::keyClick(menu, Qt::Key_R);
  EXPECT_TRUE(bar.editor()->isVisible());
  EXPECT_EQ(bar.editor()->text(), "As found");
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
