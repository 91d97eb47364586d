// What all fields and messages of the window do alike: the wheel, undo, and when a message goes.
#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>
#include <QSettings>
#include <QSpinBox>
#include <QtTest>

#include "tests/ui/rooms.h"
#include "ui/books/books_window.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/particulars/pages.h"
#include "ui/particulars/particulars.h"
#include "ui/window/file_flow.h"
#include "ui/window/main_window.h"
#include "ui/window/start_panel.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

class MannersTest : public ::testing::Test {
 protected:
  MannersTest() { open(hallBath()); }
  ~MannersTest() override {
    window->files().dropRecovery();
    QSettings().clear();
  }
  void open(Plan plan) {
    QSettings().clear();
    window = std::make_unique<MainWindow>(std::move(plan));
    window->resize(1280, 800);
    window->show();
    window->activateWindow();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowActive(window.get());
    QCoreApplication::processEvents();
  }
  Session& session() { return window->session(); }
  Particulars& particulars() { return *window->findChild<Particulars*>(); }
  template <typename Field>
  Field* field(QWidget* in, const QString& name) {
    for (Field* each : in->findChildren<Field*>())
      if (each->accessibleName() == name && each->isVisible()) return each;
    return nullptr;
  }
  // A notch downward over the middle of the widget, delivered as the platform delivers it.
  static void wheelOver(QWidget* widget) {
    const QPointF at = widget->rect().center();
    QWheelEvent event(at, widget->mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    // Only what comes from outside goes on to the parents; sendEvent would mark it as our own.
    QSpontaneKeyEvent::setSpontaneous(&event);
    qApp->notify(widget, &event);
  }
  QLabel* notice() { return field<QLabel>(window.get(), "Notice"); }

  std::unique_ptr<MainWindow> window;
};

TEST_F(MannersTest, TheWheelOverAFieldScrollsThePanelAndChangesNothing) {
  session().select({{"v"}});
  QCoreApplication::processEvents();
  const Plan before = session().plan();
  int tried = 0;
  for (QComboBox* box : particulars().findChildren<QComboBox*>()) {
    if (!box->isVisible()) continue;
    wheelOver(box);
    EXPECT_FALSE(box->hasFocus());
    ++tried;
  }
  for (QAbstractSpinBox* box : particulars().findChildren<QAbstractSpinBox*>()) {
    if (!box->isVisible()) continue;
    wheelOver(box->findChild<QLineEdit*>());
    EXPECT_FALSE(box->hasFocus());
    ++tried;
  }
  ASSERT_GE(tried, 2);
  EXPECT_EQ(session().plan(), before);
  // However tall the window is, a low panel has more than it shows.
  particulars().setFixedHeight(200);
  QCoreApplication::processEvents();
  ASSERT_GT(particulars().verticalScrollBar()->maximum(), 0);
  particulars().verticalScrollBar()->setValue(0);
  particulars().ensureWidgetVisible(field<QComboBox>(particulars().page(), "Status"));
  particulars().verticalScrollBar()->setValue(0);
  wheelOver(field<QComboBox>(particulars().page(), "Status"));
  EXPECT_GT(particulars().verticalScrollBar()->value(), 0);
}

TEST_F(MannersTest, TheWheelOverAFieldWithTheFocusStillTurnsIt) {
  session().select({{"v"}});
  QComboBox* status = field<QComboBox>(particulars().page(), "Status");
  ASSERT_TRUE(status);
  status->setFocus();
  wheelOver(status);
  EXPECT_NE(findFixture(session().option(), {"v"})->status, Status::fresh);
}

TEST_F(MannersTest, TheWheelInTheBooksWindowChangesNoSetting) {
  window->openBooks();
  auto* books = window->findChild<BooksWindow*>();
  ASSERT_TRUE(QTest::qWaitForWindowActive(books));
  auto* list = books->findChild<QListWidget*>();
  for (int i = 0; i < list->count() && !books->findChild<QComboBox*>(); ++i) list->setCurrentRow(i);
  QCoreApplication::processEvents();
  const Plan before = session().plan();
  int tried = 0;
  for (QComboBox* box : books->findChildren<QComboBox*>()) {
    if (!box->isVisible() || box->hasFocus()) continue;
    const int was = box->currentIndex();
    wheelOver(box);
    EXPECT_EQ(box->currentIndex(), was);
    ++tried;
  }
  EXPECT_GE(tried, 1);
  QTest::qWait(20);
  EXPECT_EQ(session().plan(), before);
}

TEST_F(MannersTest, UndoInAFieldThatWasTakenOverGoesToThePlan) {
  session().select({{"v"}});
  QLineEdit* width = field<QLineEdit>(particulars().page(), "Width");
  ASSERT_TRUE(width);
  width->setFocus();
  width->selectAll();
  QTest::keyClicks(width, "60");
  // Still being typed: the field takes its own text back.
  QTest::keyClick(width, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(findFixture(session().option(), {"v"})->width, 30_in);
  width->selectAll();
  QTest::keyClicks(width, "60");
  QTest::keyClick(width, Qt::Key_Return);
  ASSERT_EQ(findFixture(session().option(), {"v"})->width, 60_in);
  QTest::keyClick(width, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(findFixture(session().option(), {"v"})->width, 30_in);
  EXPECT_EQ(width->text(), "2'-6\"");
  QTest::keyClick(width, Qt::Key_Y, Qt::ControlModifier);
  EXPECT_EQ(findFixture(session().option(), {"v"})->width, 60_in);
  QTest::keyClick(width, Qt::Key_Z, Qt::ControlModifier);
  QTest::keyClick(width, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(findFixture(session().option(), {"v"})->width, 60_in);
  QLineEdit* name = field<QLineEdit>(particulars().page(), "Name");
  name->setFocus();
  QTest::keyClicks(name, "Mine");
  QTest::keyClick(name, Qt::Key_Return);
  ASSERT_EQ(findFixture(session().option(), {"v"})->name, "Mine");
  QTest::keyClick(name, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(findFixture(session().option(), {"v"})->name, "");
  EXPECT_EQ(name->text(), "");
}

TEST_F(MannersTest, AMessageGoesByEscapeAndByTheNextChange) {
  const auto refuse = [&] { emit session().refused("It does not fit there."); };
  refuse();
  ASSERT_TRUE(notice());
  window->canvas().setFocus();
  QTest::keyClick(&window->canvas(), Qt::Key_Escape);
  EXPECT_FALSE(notice());
  refuse();
  session().select({{"v"}});
  ASSERT_TRUE(notice());
  QTest::keyClick(&window->canvas(), Qt::Key_Right);
  EXPECT_FALSE(notice());
  refuse();
  QTest::keyClick(field<QLineEdit>(particulars().page(), "Width"), Qt::Key_Escape);
  EXPECT_FALSE(notice());
}

TEST_F(MannersTest, ALastingMessageGoesToo) {
  emit window->files().problem("This file cannot be read.");
  ASSERT_TRUE(notice());
  session().select({{"v"}});
  QTest::keyClick(&window->canvas(), Qt::Key_Right);
  EXPECT_FALSE(notice());
  emit window->files().problem("This file cannot be read.");
  bool will_go = false;
  for (QTimer* timer : window->findChildren<QTimer*>()) will_go |= timer->isActive() && timer->interval() == 15000;
  EXPECT_TRUE(will_go);
}

TEST_F(MannersTest, AMessageDoesNotCoverTheStart) {
  open(emptyPlan(Unit::inches));
  window->resize(1100, 560);
  QCoreApplication::processEvents();
  emit window->files().problem(QString("This file is not a plan. ").repeated(12));
  auto* start = window->findChild<StartPanel*>();
  ASSERT_TRUE(notice() && start->isVisible());
  EXPECT_FALSE(notice()->geometry().intersects(start->geometry()));
}

}  // namespace
}  // namespace elbowroom::ui
