// The Books window, driven by mouse and keys: which books, which edition, limits of one's own, books of one's own.
#include "ui/books/books_window.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTreeWidget>
#include <QtTest>

#include "core/rules/added_book.h"
#include "core/rules/in_force.h"
#include "rooms.h"
#include "ui/books/book_shelf.h"
#include "ui/session/session.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

class BooksTest : public ::testing::Test {
 protected:
  BooksTest() : session(hallBath()), window(session, shelf, nullptr) {
    window.show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(&window);
    tree = window.findChild<QTreeWidget*>();
    list = window.findChild<QListWidget*>();
  }
  ~BooksTest() override {
    if (isAdded("grandparents")) shelf.remove("grandparents");
  }

  QPushButton* button(const QString& text) {
    for (QPushButton* each : window.findChildren<QPushButton*>())
      if (each->text() == text) return each;
    return nullptr;
  }
  bool shows(const QString& text) {
    const auto labels = window.findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(),
                       [&](QLabel* each) { return each->isVisibleTo(&window) && each->text().contains(text); });
  }
  void type(const char* field, const QString& text) {
    auto* edit = window.findChild<QLineEdit*>(field);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
  }
  void search(const QString& text) {
    for (QLineEdit* edit : window.findChildren<QLineEdit*>())
      if (edit->accessibleName() == "Search all rules") {
        edit->selectAll();
        QTest::keyClicks(edit, text);
      }
  }
  bool clickRule(const std::string& book, const std::string& rule) {
    for (int i = 0; i < tree->topLevelItemCount(); ++i) {
      QTreeWidgetItem* item = tree->topLevelItem(i);
      if (item->data(0, Qt::UserRole).toString().toStdString() != book ||
          item->data(0, Qt::UserRole + 1).toString().toStdString() != rule)
        continue;
      tree->scrollToItem(item);
      QTest::mouseClick(tree->viewport(), Qt::LeftButton, {}, tree->visualItemRect(item).center());
      return true;
    }
    return false;
  }
  int rowOf(const QString& id) {
    for (int i = 0; i < list->count(); ++i)
      if (list->item(i)->data(Qt::UserRole).toString() == id) return i;
    return -1;
  }
  void toggle(const QString& id) {  // on its check box
    list->setFocus();
    list->setCurrentRow(rowOf(id));
    QTest::keyClick(list, Qt::Key_Space);
    QCoreApplication::processEvents();
  }
  const Finding* front() {
    for (const Finding& f : session.report().findings)
      if (f.book == "us-residential" && f.rule == "toilet-clear-front") return &f;
    return nullptr;
  }

  Session session;
  BookShelf shelf;
  BooksWindow window;
  QTreeWidget* tree = nullptr;
  QListWidget* list = nullptr;
};

TEST_F(BooksTest, ABookIsChosenInTheListAndUndone) {
  const auto before = session.plan().books;
  toggle("comfort");
  EXPECT_NE(session.plan().books, before);
  EXPECT_EQ(std::count(session.plan().books.begin(), session.plan().books.end(), "comfort"), 0);
  EXPECT_EQ(list->item(rowOf("comfort"))->checkState(), Qt::Unchecked);
  session.undo();
  EXPECT_EQ(session.plan().books, before);
  EXPECT_EQ(list->item(rowOf("comfort"))->checkState(), Qt::Checked);
}

TEST_F(BooksTest, TheSearchFindsRulesOfAllBooksByEachOfTheirTexts) {
  const int of_the_book = tree->topLevelItemCount();
  EXPECT_GT(of_the_book, 5);
  search("toilet front");
  std::set<QString> books;
  for (int i = 0; i < tree->topLevelItemCount(); ++i) books.insert(tree->topLevelItem(i)->data(0, Qt::UserRole).toString());
  EXPECT_TRUE(books.count("us-residential") && books.count("us-uniform") && books.count("comfort"));
  search("P2705.1(5)");
  EXPECT_GE(tree->topLevelItemCount(), 3);
  EXPECT_TRUE(clickRule("us-residential", "toilet-clear-front"));
  search("no such words anywhere");
  EXPECT_EQ(tree->topLevelItemCount(), 0);
}

TEST_F(BooksTest, ALimitIsChangedWithAReasonMarkedAndPutBack) {
  ASSERT_NE(front(), nullptr);
  search("toilet clear front");
  ASSERT_TRUE(clickRule("us-residential", "toilet-clear-front"));
  EXPECT_FALSE(button("Change limit")->isEnabled()) << "no reason yet";
  type("limit", "1' 8\"");
  type("reason", "permit office agreed");
  QTest::mouseClick(button("Change limit"), Qt::LeftButton);
  ASSERT_EQ(session.plan().rule_changes.size(), 1u);
  EXPECT_EQ(front()->limit, Quantity(20_in));
  EXPECT_TRUE(front()->changed);
  ASSERT_TRUE(clickRule("us-residential", "toilet-clear-front"));
  EXPECT_TRUE(tree->currentItem()->text(1).contains("changed by you"));
  // The book's own 21 in (IRC P2705.1) stays beside the 20 in, in the list and above the field.
  EXPECT_TRUE(tree->currentItem()->text(1).contains("at least 20\" (changed by you; the book: at least 21\")"))
      << tree->currentItem()->text(1).toStdString();
  EXPECT_TRUE(shows("at least 20\" instead of the book\u2019s at least 21\". permit office agreed"));
  QTest::mouseClick(button("Put it back"), Qt::LeftButton);
  EXPECT_TRUE(session.plan().rule_changes.empty());
  EXPECT_EQ(front()->limit, Quantity(21_in));
  session.undo();
  session.undo();
  EXPECT_TRUE(session.plan().rule_changes.empty());
}

TEST_F(BooksTest, AYesOrNoSaysWhatMustBe) {
  search("shower door outward");
  ASSERT_TRUE(clickRule("us-residential", "shower-door-outward"));
  EXPECT_EQ(tree->currentItem()->text(1), "must be so");
  EXPECT_TRUE(shows("Yes&nbsp;or&nbsp;no"));
  EXPECT_FALSE(shows(">Limit<"));
}

TEST_F(BooksTest, ItClosesByItsButtonAndByEscape) {
  ASSERT_NE(button("Close"), nullptr);
  QTest::mouseClick(button("Close"), Qt::LeftButton);
  EXPECT_FALSE(window.isVisible());
  window.show();
  window.findChild<QLineEdit*>("reason")->setFocus();
  QTest::keyClick(window.findChild<QLineEdit*>("reason"), Qt::Key_Escape);
  EXPECT_FALSE(window.isVisible());
}

TEST_F(BooksTest, WhatIsNoLengthIsRefusedAndStaysInTheField) {
  search("toilet clear front");
  ASSERT_TRUE(clickRule("us-residential", "toilet-clear-front"));
  type("limit", "wide");
  type("reason", "x");
  QTest::mouseClick(button("Change limit"), Qt::LeftButton);
  EXPECT_TRUE(session.plan().rule_changes.empty());
  EXPECT_EQ(window.findChild<QLineEdit*>("limit")->text(), "wide");
}

TEST_F(BooksTest, ARuleIsSwitchedOffWithAReason) {
  search("toilet clear front");
  ASSERT_TRUE(clickRule("us-residential", "toilet-clear-front"));
  type("reason", "a urinal comes instead");
  QTest::mouseClick(button("Switch off"), Qt::LeftButton);
  EXPECT_EQ(front(), nullptr);
  session.undo();
  EXPECT_NE(front(), nullptr);
}

TEST_F(BooksTest, EachOptionHasItsOutcomeOnceThePersonPauses) {
  ASSERT_TRUE(session.perform(AddOption{"Empty", -1}, "New option"));
  search("toilet clear front");
  QTest::qWait(400);
  ASSERT_EQ(tree->columnCount(), 5);
  ASSERT_TRUE(clickRule("us-residential", "toilet-clear-front"));
  EXPECT_NE(tree->currentItem()->text(3), "–");
  EXPECT_EQ(tree->currentItem()->text(4), "–") << "an empty option has no toilet";
}

TEST_F(BooksTest, ABookOfOnesOwnIsAddedKeptAndRemoved) {
  ASSERT_TRUE(window.addBook(SOURCE_DIR "/samples/books/grandparents.json"));
  EXPECT_TRUE(isAdded("grandparents"));
  EXPECT_TRUE(QFile::exists(BookShelf::folder() + "/grandparents.json"));
  EXPECT_GE(rowOf("grandparents"), 0);
  const auto found = [&] {
    return std::count_if(session.report().findings.begin(), session.report().findings.end(),
                         [](const Finding& f) { return f.book == "grandparents"; });
  };
  EXPECT_GT(found(), 0);
  EXPECT_FALSE(window.addBook(SOURCE_DIR "/samples/books/grandparents.json")) << "it is there already";
  EXPECT_FALSE(window.addBook(SOURCE_DIR "/samples/hall-bath.elbowroom"));
  QTest::mouseClick(button("Remove"), Qt::LeftButton);
  EXPECT_FALSE(isAdded("grandparents"));
  EXPECT_FALSE(QFile::exists(BookShelf::folder() + "/grandparents.json"));
  EXPECT_EQ(found(), 0);
}

TEST_F(BooksTest, ABookThatIsNotHereIsShownAsMissing) {
  auto books = session.plan().books;
  books.push_back("moon-code");
  ASSERT_TRUE(session.perform(SetBooks{books}, "Choose books"));
  ASSERT_GE(rowOf("moon-code"), 0);
  EXPECT_TRUE(list->item(rowOf("moon-code"))->text().contains("not here"));
}

}  // namespace
}  // namespace elbowroom::ui
