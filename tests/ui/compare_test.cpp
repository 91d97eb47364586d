// The window of options side by side, driven by mouse and keys.
#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QtTest>

#include "core/file/report_json.h"
#include "rooms.h"
#include "ui/compare/compare_window.h"
#include "ui/session/session.h"

namespace elbowroom::ui {
namespace {

class CompareWindowTest : public ::testing::Test {
 protected:
  CompareWindowTest() : session(hallBath()), window(session, nullptr) {
    window.show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(&window);
    lines = window.findChild<QTreeWidget*>();
  }
  QTreeWidgetItem* line(const QString& label) {
    for (int i = 0; i < lines->topLevelItemCount(); ++i)
      if (lines->topLevelItem(i)->text(1).startsWith(label)) return lines->topLevelItem(i);
    return nullptr;
  }
  void click(QTreeWidgetItem* item, int column) {
    lines->scrollToItem(item);
    QRect box = lines->visualItemRect(item);
    box.setLeft(lines->header()->sectionViewportPosition(column));
    QTest::mouseClick(lines->viewport(), Qt::LeftButton, {}, box.topLeft() + QPoint(10, box.height() / 2));
  }
  void secondOption() {
    ASSERT_TRUE(session.perform(AddOption{"Other", 0}, "copy"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return lines->columnCount() == 4; }));
  }

  Session session;
  CompareWindow window;
  QTreeWidget* lines = nullptr;
};

TEST_F(CompareWindowTest, OneOptionSaysWhatToDo) {
  EXPECT_EQ(lines->columnCount(), 3);
  EXPECT_TRUE(window.findChild<QLabel*>()->text().contains("one option"));
  EXPECT_FALSE(window.findChild<QCheckBox*>()->isEnabled());
}

TEST_F(CompareWindowTest, ANewOptionComesBesideAndOnlyWhatDiffersStays) {
  secondOption();
  EXPECT_EQ(lines->headerItem()->text(3), "Other");
  auto* only = window.findChild<QCheckBox*>();
  QTest::mouseClick(only, Qt::LeftButton, {}, QPoint(8, only->height() / 2));
  ASSERT_TRUE(only->isChecked());
  EXPECT_EQ(lines->topLevelItemCount(), 1) << "a copy differs in nothing, and the window says so";
  const ElementId wc = session.option().fixtures.front().id;
  ASSERT_TRUE(session.perform(RemoveElements{{wc}}, "remove"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return lines->topLevelItemCount() > 2; }));
  for (int i = 0; i < lines->topLevelItemCount(); ++i)
    if (!lines->topLevelItem(i)->text(1).isEmpty()) {
      EXPECT_EQ(lines->topLevelItem(i)->text(0), QString(u'\u2260'));
    }
}

TEST_F(CompareWindowTest, AClickGoesToTheOptionWithItsThings) {
  secondOption();
  ASSERT_EQ(session.optionIndex(), 1u);
  QTreeWidgetItem* door = line("Door");
  ASSERT_NE(door, nullptr);
  click(door, 2);
  EXPECT_EQ(session.optionIndex(), 0u);
  ASSERT_EQ(session.selection().size(), 1u);
  EXPECT_EQ(session.selection().begin()->text, session.option().openings.front().id.text);
  session.select({});
  lines->setFocus();
  QTest::keyClick(lines, Qt::Key_Return);
  EXPECT_EQ(session.optionIndex(), 0u);
  EXPECT_EQ(session.selection().size(), 1u);
}

TEST_F(CompareWindowTest, CopiesItsTextAndClosesByEscape) {
  secondOption();
  for (QPushButton* button : window.findChildren<QPushButton*>())
    if (button->text() == "&Copy as text") QTest::mouseClick(button, Qt::LeftButton);
  EXPECT_EQ(QApplication::clipboard()->text().toStdString(), compareText(session.plan(), choiceOf(session.plan())));
  QTest::keyClick(&window, Qt::Key_Escape);
  EXPECT_FALSE(window.isVisible());
}

}  // namespace
}  // namespace elbowroom::ui
