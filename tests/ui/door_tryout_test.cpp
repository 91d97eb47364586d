#include <gtest/gtest.h>

#include <QTest>
#include <algorithm>

#include "tests/ui/rooms.h"
#include "ui/particulars/door_trials.h"
#include "ui/particulars/door_tryout.h"
#include "ui/particulars/trial_row.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

const DoorTrial& trialOf(const std::vector<DoorTrial>& trials, const QString& label) {
  for (const DoorTrial& trial : trials)
    if (trial.label == label) return trial;
  static const DoorTrial kNone{};
  ADD_FAILURE() << "no row " << label.toStdString();
  return kNone;
}

TEST(DoorTrials, FiguresAreTheTrades) {
  const std::vector<DoorTrial> trials = tryDoor(hallBath(), 0, {"d1"});
  ASSERT_EQ(trials.size(), 11U);
  // A quarter circle of a 30 in leaf is pi/4 * 900 sq in = 4.909 sq ft, its square 6.25 sq ft.
  const DoorTrial& in = trialOf(trials, "Hinged right, in");
  EXPECT_TRUE(in.present);
  EXPECT_NEAR(in.figures.floor_taken.squareFeet(), 4.909, 0.001);
  EXPECT_NEAR(in.figures.square.squareFeet(), 6.25, 0.001);
  // Clear opening of a hinged 30 in leaf, 1 3/8 in thick: 30 - 1.875 in.
  EXPECT_NEAR(in.figures.clear_opening.inches(), 28.125, 0.001);
  EXPECT_EQ(trialOf(trials, "Hinged right, out").figures.floor_taken, Area{});
  // A pocket needs 2 x 30 + 1 in of wall; wall w has 25 + 30 in to the left end: 6 in short. To the right
  // more.
  const DoorTrial& pocket = trialOf(trials, "Pocket, left");
  EXPECT_NEAR(pocket.figures.wall_needed.inches(), 61, 0.001);
  ASSERT_EQ(pocket.troubles.size(), 1);
  EXPECT_TRUE(pocket.troubles[0].contains("6\"")) << pocket.troubles[0].toStdString();
  EXPECT_TRUE(trialOf(trials, "Cased opening").troubles.isEmpty());
}

TEST(DoorTrials, ShortfallsAreThoseOfTheWholePlanThen) {
  const Plan plan = hallBath();
  for (const DoorTrial& trial : tryDoor(plan, 0, {"d1"})) {
    Session session(plan);
    ASSERT_TRUE(session.perform(PutOpenings{{trial.door}}, "Try"));
    int shorts = 0;
    for (const Finding& f : session.report().findings) shorts += f.outcome == Outcome::shortfall ? 1 : 0;
    EXPECT_EQ(trial.shorts, shorts) << trial.label.toStdString();
  }
}

// As Advice counts them: what is accepted is not short.
TEST(DoorTrials, WhatIsAcceptedIsNotCounted) {
  Plan plan = hallBath();
  const Report report = check(deriveLayout(plan, 0), choiceOf(plan));
  const auto shortfall = std::find_if(report.findings.begin(), report.findings.end(), [](const Finding& f) {
    return f.outcome == Outcome::shortfall && f.subjects.front() != ElementId{"d1"};
  });
  ASSERT_NE(shortfall, report.findings.end());
  const auto present = [&] { return trialOf(tryDoor(plan, 0, {"d1"}), "Hinged right, in").shorts; };
  const int before = present();
  plan.options[0].acknowledged.push_back(
      {shortfall->book, shortfall->rule, shortfall->subjects, "It stays as it is"});
  EXPECT_EQ(present(), before - 1);
}

TEST(DoorTrials, OnlyDoorsAreTried) {
  EXPECT_TRUE(tryDoor(hallBath(), 0, {"win"}).empty());
  EXPECT_TRUE(tryDoor(hallBath(), 0, {"nobody"}).empty());
  EXPECT_TRUE(tryDoor(hallBath(), 7, {"d1"}).empty());
}

struct DoorTryoutTest : testing::Test {
  Session session{hallBath()};
  DoorTryout tryout{session};
  void SetUp() override {
    tryout.resize(300, 900);
    tryout.setDoor({"d1"});
    tryout.show();
  }
  TrialRow* row(const QString& label) {
    for (TrialRow* each : tryout.rows())
      if (each->text() == label) return each;
    return nullptr;
  }
  const Opening& door() { return *findOpening(session.option(), {"d1"}); }
};

TEST_F(DoorTryoutTest, MeasuresOnceThePlanHasComeToRest) {
  EXPECT_FALSE(tryout.measured());
  EXPECT_EQ(row("Bifold")->figuresText(), "measuring");
  EXPECT_TRUE(QTest::qWaitFor([&] { return tryout.measured(); }, 2000));
  EXPECT_TRUE(row("Hinged right, in")->figuresText().contains(unbroken("2'-4 1/8\"")));
  // A change makes the figures old: they are not shown any more.
  Fixture f = *findFixture(session.option(), {"v"});
  f.width = 28_in;
  ASSERT_TRUE(session.perform(PutFixtures{{f}}, "Change"));
  EXPECT_FALSE(tryout.measured());
  EXPECT_EQ(row("Hinged right, in")->figuresText(), "measuring");
}

TEST_F(DoorTryoutTest, HiddenItMeasuresNothing) {
  tryout.hide();
  Opening o = door();
  o.width = 28_in;
  session.perform(PutOpenings{{o}}, "Change");
  QTest::qWait(200);
  EXPECT_FALSE(tryout.measured());
}

TEST_F(DoorTryoutTest, ClickAppliesItAsOneUndoableEdit) {
  tryout.measureNow();
  QTest::mouseClick(row("Pocket, left"), Qt::LeftButton);
  EXPECT_EQ(door().action, DoorAction::pocket);
  EXPECT_EQ(door().toward, Hand::left);
  EXPECT_TRUE(row("Pocket, left")->trial().present);
  EXPECT_FALSE(row("Hinged right, in")->trial().present);
  session.undo();
  EXPECT_EQ(door().action, DoorAction::hinged);
  EXPECT_FALSE(session.history().canUndo());
  EXPECT_TRUE(row("Hinged right, in")->trial().present);
}

TEST_F(DoorTryoutTest, EnterAppliesAndThePresentOneChangesNothing) {
  tryout.measureNow();
  QTest::keyClick(row("Hinged left, out"), Qt::Key_Return);
  EXPECT_EQ(door().hinge, Hand::left);
  EXPECT_EQ(door().swing, Swing::out);
  const long revision = session.history().revision();
  QTest::keyClick(row("Hinged left, out"), Qt::Key_Return);
  EXPECT_EQ(session.history().revision(), revision);
}

TEST_F(DoorTryoutTest, NoDoorNoTable) {
  tryout.setDoor({});
  EXPECT_FALSE(tryout.isVisible());
}

}  // namespace
}  // namespace elbowroom::ui
