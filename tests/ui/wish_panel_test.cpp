// The Wish list in the window, with real mouse and keys.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTest>

#include "tests/ui/rooms.h"
#include "ui/advice/advice_model.h"
#include "ui/advice/advice_panel.h"
#include "ui/advice/wish_panel.h"
#include "ui/advice/wish_row.h"
#include "ui/session/session.h"
#include "ui/window/main_window.h"

namespace elbowroom::ui {
namespace {

struct WishPanelTest : testing::Test {
  Session session{hallBath()};
  WishPanel panel{session};

  void SetUp() override {
    panel.resize(330, 2600);  // every row in view
    panel.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&panel));
    QTest::qWait(1);
  }
  WishRow& row(const char* key) { return *panel.row(key); }
  void click(const char* key, WishRow::Button which) {
    QTest::mouseClick(row(key).button(which), Qt::LeftButton);
    QTest::qWait(1);
  }
  const Wish* answerTo(const char* key) {
    const auto at = session.option().wishes.find(key);
    return at == session.option().wishes.end() ? nullptr : &at->second;
  }
  bool pressed(const char* key, WishRow::Button which) { return row(key).button(which)->isChecked(); }
};

TEST_F(WishPanelTest, EveryPointHasARowWithNamesForAReader) {
  for (const WishPoint& point : wishPoints()) {
    SCOPED_TRACE(point.key);
    WishRow* r = panel.row(point.key);
    ASSERT_NE(r, nullptr);
    EXPECT_FALSE(r->stateText().isEmpty());
    EXPECT_TRUE(r->accessibleDescription().contains("Source: "));
    for (const auto which : {WishRow::in, WishRow::out, WishRow::undecided, WishRow::show})
      EXPECT_TRUE(r->button(which)->accessibleName().contains(
          QString::fromUtf8(point.title.data(), point.title.size())));
  }
}

TEST_F(WishPanelTest, WhatThePlanShowsAndWhatDoesNotApplySaySo) {
  EXPECT_EQ(row("natural-light").stateText(), "In the plan: Window win");
  EXPECT_FALSE(pressed("natural-light", WishRow::undecided));
  EXPECT_TRUE(row("natural-light").button(WishRow::show)->isVisible());
  EXPECT_EQ(row("curbless").stateText(), "No shower in the plan");
  EXPECT_EQ(row("niche").stateText(), "Undecided");
  EXPECT_TRUE(pressed("niche", WishRow::undecided));
  EXPECT_FALSE(row("niche").button(WishRow::show)->isVisible());
}

TEST_F(WishPanelTest, InIsOneStepAndUndoTakesItBack) {
  const int before = panel.undecided();
  QSignalSpy counted(&panel, &WishPanel::undecidedChanged);
  click("niche", WishRow::in);
  ASSERT_NE(answerTo("niche"), nullptr);
  EXPECT_TRUE(answerTo("niche")->in);
  EXPECT_EQ(row("niche").stateText(), "Wanted, not in the plan yet");
  EXPECT_TRUE(pressed("niche", WishRow::in));
  EXPECT_EQ(panel.undecided(), before - 1);
  ASSERT_EQ(counted.size(), 1);
  EXPECT_EQ(counted[0][0].toInt(), before - 1);
  click("niche", WishRow::in);  // again: nothing more to undo
  click("hand-spray", WishRow::in);
  session.undo();
  EXPECT_EQ(answerTo("hand-spray"), nullptr);
  EXPECT_NE(answerTo("niche"), nullptr);
  session.undo();
  EXPECT_EQ(answerTo("niche"), nullptr);
  EXPECT_TRUE(pressed("niche", WishRow::undecided));
  EXPECT_EQ(panel.undecided(), before);
}

TEST_F(WishPanelTest, OutAsksForAReasonInPlace) {
  click("niche", WishRow::out);
  EXPECT_EQ(answerTo("niche"), nullptr) << "not without a reason";
  EXPECT_FALSE(pressed("niche", WishRow::out));
  ASSERT_TRUE(row("niche").askingReason());
  EXPECT_TRUE(row("niche").reasonLine()->hasFocus());
  EXPECT_FALSE(row("niche").leaveOutButton()->isEnabled());
  QTest::keyClicks(row("niche").reasonLine(), "  ");
  QTest::keyClick(row("niche").reasonLine(), Qt::Key_Return);
  EXPECT_EQ(answerTo("niche"), nullptr);
  QTest::keyClicks(row("niche").reasonLine(), "outside wall");
  QTest::keyClick(row("niche").reasonLine(), Qt::Key_Return);
  ASSERT_NE(answerTo("niche"), nullptr);
  EXPECT_FALSE(answerTo("niche")->in);
  EXPECT_EQ(answerTo("niche")->reason, "outside wall");
  EXPECT_EQ(row("niche").stateText(), "Left out: outside wall");
  EXPECT_TRUE(pressed("niche", WishRow::out));
  EXPECT_FALSE(row("niche").askingReason());
  // Pressed again it offers the reason to be changed, and Escape leaves it as it is.
  click("niche", WishRow::out);
  EXPECT_EQ(row("niche").reasonLine()->text(), "outside wall");
  QTest::keyClick(row("niche").reasonLine(), Qt::Key_Escape);
  EXPECT_FALSE(row("niche").askingReason());
  EXPECT_TRUE(row("niche").button(WishRow::out)->hasFocus());
  EXPECT_EQ(answerTo("niche")->reason, "outside wall");
  click("niche", WishRow::undecided);
  EXPECT_EQ(answerTo("niche"), nullptr);
  session.undo();
  ASSERT_NE(answerTo("niche"), nullptr);
}

TEST_F(WishPanelTest, AReasonBeingTypedStaysWhileThePlanChanges) {
  click("niche", WishRow::out);
  QTest::keyClicks(row("niche").reasonLine(), "no r");
  ASSERT_TRUE(session.perform(SetTitle{"Another title (invented example)"}, "Rename"));
  EXPECT_TRUE(row("niche").askingReason());
  EXPECT_EQ(row("niche").reasonLine()->text(), "no r");
}

TEST_F(WishPanelTest, ArrowKeysGoToTheSameButtonOfTheNextRow) {
  row("niche").button(WishRow::out)->setFocus();
  QTest::keyClick(row("niche").button(WishRow::out), Qt::Key_Down);
  EXPECT_TRUE(row("glass-below-ceiling").button(WishRow::out)->hasFocus());
  QTest::keyClick(row("glass-below-ceiling").button(WishRow::out), Qt::Key_Up);
  EXPECT_TRUE(row("niche").button(WishRow::out)->hasFocus());
  QTest::keyClick(row("niche").button(WishRow::out), Qt::Key_Tab);
  EXPECT_TRUE(row("niche").button(WishRow::undecided)->hasFocus());
  row("niche").button(WishRow::in)->setFocus();
  QTest::keyClick(row("niche").button(WishRow::in), Qt::Key_Space);
  EXPECT_NE(answerTo("niche"), nullptr);
}

TEST_F(WishPanelTest, AnswersAreThoseOfTheOption) {
  click("niche", WishRow::in);
  ASSERT_TRUE(session.perform(AddOption{"Other", 0}, "Add option"));
  session.setOption(1);
  EXPECT_TRUE(pressed("niche", WishRow::in)) << "a copy keeps them";
  click("niche", WishRow::undecided);
  EXPECT_TRUE(pressed("niche", WishRow::undecided));
  session.setOption(0);
  EXPECT_TRUE(pressed("niche", WishRow::in));
}

TEST_F(WishPanelTest, WithoutARoomItSaysSoAndStillTakesAnswers) {
  session.replace(emptyPlan(Unit::inches));
  EXPECT_EQ(panel.undecided(), 0);
  click("niche", WishRow::in);
  ASSERT_NE(answerTo("niche"), nullptr);
  EXPECT_EQ(row("niche").stateText(), "Wanted, not in the plan yet");
}

// An undecided point is no flaw: it stays out of Advice until it is wanted and not there.
TEST_F(WishPanelTest, OnlyUnfulfilledWishesAreInAdvice) {
  AdvicePanel advice(session);
  const auto wishesInAdvice = [&] {
    int count = 0;
    for (int r = 0; r < advice.model()->rowCount(); ++r)
      if (const Finding* f = advice.model()->findingOf(r); f != nullptr && wishOf(*f) != nullptr) ++count;
    return count;
  };
  advice.model()->setOpen(AdviceGroup::clear, true);
  EXPECT_EQ(wishesInAdvice(), 0);
  click("niche", WishRow::in);
  EXPECT_EQ(wishesInAdvice(), 1);
  click("niche", WishRow::undecided);
  EXPECT_EQ(wishesInAdvice(), 0);
}

TEST(WishWindow, IsATabBesideAdviceWithTheCountInItsTitle) {
  MainWindow window(hallBath());
  window.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
  auto* panel = window.findChild<WishPanel*>();
  ASSERT_NE(panel, nullptr);
  QTabWidget* tabs = nullptr;
  for (auto* each : window.findChildren<QTabWidget*>())
    if (each->indexOf(panel) >= 0) tabs = each;
  ASSERT_NE(tabs, nullptr);
  EXPECT_NE(tabs->currentWidget(), panel) << "Advice comes first";
  const int at = tabs->indexOf(panel);
  EXPECT_EQ(tabs->tabText(at), QString("Wish list (%1)").arg(panel->undecided()));
  tabs->setCurrentIndex(at);
  QTest::qWait(1);
  const int before = panel->undecided();
  QTest::mouseClick(panel->row("control-away")->button(WishRow::in), Qt::LeftButton);
  EXPECT_EQ(tabs->tabText(at), QString("Wish list (%1)").arg(before - 1));
  // Show: selected on the plan.
  auto* light = panel->row("natural-light");
  panel->findChild<QScrollArea*>()->ensureWidgetVisible(light);
  QTest::qWait(1);
  QTest::mouseClick(light->button(WishRow::show), Qt::LeftButton);
  EXPECT_EQ(window.session().selection(), (std::set<ElementId>{{"win"}}));
  window.session().markSaved();
}

}  // namespace
}  // namespace elbowroom::ui
