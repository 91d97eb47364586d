// People named in their window, with keys and the mouse as a person would.
#include "ui/people/people_dialog.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QToolButton>
#include <QtTest>

#include "tests/ui/rooms.h"
#include "ui/walls/strip_layers.h"
#include "ui/walls/wall_strip.h"
#include "ui/window/file_flow.h"
#include "ui/window/main_window.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

Person person(const char* name, Length stature, bool child = false, std::optional<Chair> chair = {}) {
  return {name, stature, child, std::move(chair), {}};
}

class PeopleTest : public ::testing::Test {
 protected:
  PeopleTest() {
    QSettings().clear();
    Plan plan = hallBath();
    plan.people.clear();
    use(std::move(plan));
  }
  ~PeopleTest() override {
    window->files().dropRecovery();
    QSettings().clear();
  }
  void use(Plan plan) {
    window = std::make_unique<MainWindow>(std::move(plan));
    window->resize(1280, 800);
    window->show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
  }
  Session& session() { return window->session(); }
  void open() {
    QApplication::setActiveWindow(window.get());  // shortcuts are the active window's
    QTest::keyClick(window.get(), Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    found();
  }
  void found() {
    dialog = window->findChild<PeopleDialog*>();
    ASSERT_TRUE(dialog);
    ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
  }
  template <typename T>
  T* named(const char* name) {
    for (T* each : dialog->findChildren<T*>())
      if (each->accessibleName() == name || each->objectName() == name) return each;
    return nullptr;
  }
  QCheckBox* box(const char* text) {
    for (QCheckBox* each : dialog->findChildren<QCheckBox*>())
      if (each->text() == text) return each;
    return nullptr;
  }
  static void click(QWidget* widget) { QTest::mouseClick(widget, Qt::LeftButton, {}, QPoint(8, widget->height() / 2)); }
  void type(const char* field, const char* text) {
    auto* line = named<QLineEdit>(field);
    ASSERT_TRUE(line && line->isVisible()) << field;
    click(line);
    line->selectAll();
    QTest::keyClicks(line, text);
    if (line != named<QLineEdit>("Name")) QTest::keyClick(line, Qt::Key_Return);
  }
  void ok() { click(dialog->findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok)); }
  QString problem() {
    auto* label = named<QLabel>("What is missing");
    return label->isVisible() ? label->text() : QString();
  }

  std::unique_ptr<MainWindow> window;
  QPointer<PeopleDialog> dialog;
};

TEST_F(PeopleTest, ThreePeopleAreNamedInOneStep) {
  open();
  EXPECT_TRUE(named<QLabel>("nobody")->isVisible()) << "nobody named yet: why one should";
  EXPECT_FALSE(named<QPushButton>("remove")->isEnabled());
  click(named<QPushButton>("add"));

  EXPECT_FALSE(named<QLabel>("nobody")->isVisible());
  QTest::keyClicks(dialog->focusWidget(), "Ada");
  type("Height, standing", "5' 6");
  click(named<QPushButton>("add"));
  QTest::keyClicks(dialog->focusWidget(), "Cy");
  EXPECT_FALSE(named<QComboBox>("Height by age")->isVisible());
  click(box("A child"));
  auto* age = named<QComboBox>("Height by age");
  ASSERT_TRUE(age->isVisible());
  age->setFocus();
  QTest::keyClicks(age, "4");  // the line "4 years: ..."
  emit age->activated(age->currentIndex());
  click(named<QPushButton>("add"));
  QTest::keyClicks(dialog->focusWidget(), "Vi");
  type("Height, standing", "66");
  click(box("Uses a wheelchair"));
  type("Chair, width", "27");
  ok();
  EXPECT_TRUE(!dialog || !dialog->isVisible()) << problem().toStdString();
  const auto& people = session().plan().people;
  ASSERT_EQ(people.size(), 3u);
  EXPECT_EQ(people[0], (person("Ada", 66_in)));
  EXPECT_EQ(people[1], (person("Cy", 40.1_in, true)));  // CDC growth charts of 2000, 4 years
  EXPECT_EQ(people[2], (person("Vi", 66_in, false, Chair{27_in, 48_in})));
  session().undo();
  EXPECT_TRUE(session().plan().people.empty());
  session().redo();
  EXPECT_EQ(session().plan().people.size(), 3u);
}

TEST_F(PeopleTest, WhatIsMissingIsSaidAndNothingIsTaken) {
  open();
  click(named<QPushButton>("add"));

  ok();
  EXPECT_TRUE(problem().contains("needs a name")) << problem().toStdString();
  type("Name", "Ada");
  EXPECT_EQ(problem(), QString()) << "corrected, the sentence goes";
  ok();
  EXPECT_TRUE(problem().contains("How tall is Ada")) << problem().toStdString();
  type("Height, standing", "tall");
  ok();
  EXPECT_TRUE(dialog->isVisible());
  type("Height, standing", "5' 6");
  click(named<QPushButton>("add"));
  QTest::keyClicks(dialog->focusWidget(), "Ada");
  type("Height, standing", "70");
  ok();
  EXPECT_TRUE(problem().contains("two people named Ada")) << problem().toStdString();
  EXPECT_TRUE(session().plan().people.empty());
  QTest::keyClick(dialog, Qt::Key_Escape);
  EXPECT_TRUE(!dialog || !dialog->isVisible());
  EXPECT_FALSE(session().history().canUndo());
}

TEST_F(PeopleTest, ARenamedPersonKeepsTheMirrorAndOneRemovedLosesIt) {
  Plan plan = hallBath();
  plan.people = {Person{"Ada", 66_in, false, {}, {{"note", "1"}}}, person("Ben", 74_in)};
  plan.unit = Unit::millimetres;
  plan.options[0].on_walls[0].person = "Ada";
  use(plan);
  open();
  EXPECT_EQ(named<QLineEdit>("Height, standing")->text(), "1676 mm");
  type("Name", "Anna");
  ok();
  ASSERT_EQ(session().plan().people[0], (Person{"Anna", 66_in, false, {}, {{"note", "1"}}})) << "and keeps what else is known";
  EXPECT_EQ(session().option().on_walls[0].person, "Anna");
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  ASSERT_FALSE(dialog);
  open();
  click(named<QPushButton>("remove"));
  EXPECT_EQ(named<QListWidget>("People who use the room")->count(), 1);
  ok();
  ASSERT_EQ(session().plan().people.size(), 1u);
  EXPECT_EQ(session().plan().people[0].name, "Ben");
  EXPECT_EQ(session().option().on_walls[0].person, "");
  session().undo();
  EXPECT_EQ(session().option().on_walls[0].person, "Anna");
}

TEST_F(PeopleTest, OkWithoutAChangeLeavesNoStep) {
  Plan plan = hallBath();
  use(plan);
  open();
  ok();
  EXPECT_FALSE(session().history().canUndo());
  EXPECT_EQ(session().plan(), plan);
}

TEST_F(PeopleTest, TheStripSaysThatNobodyIsNamedAndOpensTheWindow) {
  auto* bar = window->findChild<StripLayersBar*>();
  ASSERT_TRUE(bar);
  auto* nobody = bar->findChild<QToolButton*>("nobody");
  ASSERT_TRUE(nobody);
  EXPECT_FALSE(nobody->isVisible()) << "only where heights are asked for";
  QTest::mouseClick(bar->findChild<QToolButton*>("people"), Qt::LeftButton);
  ASSERT_TRUE(nobody->isVisible());
  EXPECT_TRUE(nobody->text().contains("Nobody is named"));
  QTest::mouseClick(nobody, Qt::LeftButton);
  found();
  click(named<QPushButton>("add"));
  QTest::keyClicks(dialog->focusWidget(), "Ada");
  type("Height, standing", "66");
  ok();
  EXPECT_FALSE(nobody->isVisible());
  session().undo();
  EXPECT_TRUE(nobody->isVisible());
}

// The menu's tick: who was named by hand stays when it goes, with what is set to them.
TEST_F(PeopleTest, UntickingTheWheelchairKeepsWhoWasNamed) {
  Plan plan = hallBath();
  plan.people = {person("Vi", 66_in, false, Chair{27_in, 45_in}), person("Ada", 64_in)};
  use(std::move(plan));
  QAction* tick = nullptr;
  for (QAction* action : window->findChildren<QAction*>())
    if (action->text().remove('&') == "Somebody uses a wheelchair") tick = action;
  ASSERT_TRUE(tick);
  EXPECT_TRUE(tick->isChecked());
  tick->trigger();
  EXPECT_EQ(session().plan().people, (std::vector<Person>{person("Vi", 66_in), person("Ada", 64_in)}));
  EXPECT_FALSE(tick->isChecked());
  tick->trigger();
  ASSERT_EQ(session().plan().people.size(), 3u);
  EXPECT_EQ(session().plan().people[2].name, "Wheelchair user");
  tick->trigger();
  EXPECT_EQ(session().plan().people.size(), 2u);
  session().undo(), session().undo(), session().undo();
  EXPECT_EQ(session().plan().people[0].chair, (Chair{27_in, 45_in}));
}

// Which heights the growth charts list and which lie between two of them is said where one chooses.
TEST_F(PeopleTest, AHeightBetweenTwoOfTheChartsSaysSo) {
  open();
  click(named<QPushButton>("add"));
  click(box("A child"));
  auto* age = named<QComboBox>("Height by age");
  for (int at = 1; at < age->count(); ++at) {
    const int years = age->itemData(at).toInt();
    const QString tip = age->itemData(at, Qt::ToolTipRole).toString();
    EXPECT_EQ(tip.contains("Halfway"), years == 7 || years == 9 || years == 11) << years;
  }
  EXPECT_TRUE(age->toolTip().contains("7, 9, 11 years")) << age->toolTip().toStdString();
}

TEST_F(PeopleTest, EverythingInItHasAName) {
  open();
  click(named<QPushButton>("add"));
  click(box("A child"));
  click(box("Uses a wheelchair"));
  for (QWidget* widget : dialog->findChildren<QWidget*>()) {
    if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || widget->objectName().startsWith("qt_")) continue;
    EXPECT_FALSE(QAccessible::queryAccessibleInterface(widget)->text(QAccessible::Name).isEmpty())
        << widget->metaObject()->className();
  }
}

}  // namespace
}  // namespace elbowroom::ui
