#include <gtest/gtest.h>

#include <QLabel>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <set>

#include "core/drawing/draw_plan.h"
#include "core/rules/tally.h"
#include "core/rules/wishes.h"
#include "tests/ui/rooms.h"
#include "ui/advice/advice_delegate.h"
#include "ui/advice/advice_list.h"
#include "ui/advice/advice_model.h"
#include "ui/advice/advice_panel.h"
#include "ui/session/session.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

// The Wish list has a place of its own.
int countOf(const Session& session, Outcome outcome) {
  int count = 0;
  for (const Finding& f : session.report().findings) count += f.outcome == outcome && !onlyWished(f) ? 1 : 0;
  return count;
}

struct AdviceTest : testing::Test {
  Session session{hallBath()};
  AdvicePanel panel{session};

  void SetUp() override {
    panel.resize(320, 600);
    panel.show();
    QTest::qWait(1);
  }
  AdviceList& list() { return *panel.list(); }
  AdviceModel& model() { return *panel.model(); }
  QPoint middleOf(int row) { return list().visualRect(model().index(row)).center(); }
  int lastShown() {  // the last finding before the folded groups
    int row = model().rowCount() - 1;
    while (row > 0 && model().isGroup(row)) --row;
    return row;
  }
  // Moves the toilet along its wall.
  void moveToilet(Length along) {
    Fixture f = *findFixture(session.option(), {"wc"});
    f.placement = OnWall{{"s"}, along, 0_in};
    ASSERT_TRUE(session.perform(PutFixtures{{f}}, "Move toilet"));
  }
};

TEST_F(AdviceTest, SummaryCountsWhatTheReportSays) {
  const int shorts = countOf(session, Outcome::shortfall);
  ASSERT_GT(shorts, 0);
  EXPECT_TRUE(panel.summary().startsWith(QString("%1 short").arg(shorts))) << panel.summary().toStdString();
  EXPECT_TRUE(panel.summary().endsWith(QString("%1 clear").arg(countOf(session, Outcome::clear))));
}

TEST_F(AdviceTest, SummaryIsWholeInANarrowPanel) {
  panel.resize(220, 600);
  QTest::qWait(1);
  for (const QLabel* label : panel.findChildren<QLabel*>())
    if (label->text() == panel.summary()) {
      EXPECT_GT(label->heightForWidth(label->width()), label->fontMetrics().height());
      EXPECT_GE(label->height(), label->heightForWidth(label->width()));
    }
}

TEST_F(AdviceTest, SaysTheLargestTurningCircleWithoutFlattering) {
  // An empty 96 x 60 room with nothing in it has a 60 in circle: 5'-0", though a search may stay a hair
  // below.
  Plan bare = hallBath();
  bare.options.front().fixtures.clear();
  session.replace(bare);
  EXPECT_EQ(panel.turning(), "Largest turning circle 5'-0\"");
}

TEST_F(AdviceTest, RowsCarryTheNumbersOfThePlan) {
  model().setOpen(AdviceGroup::unknown, true);
  std::set<std::string> drawn;  // numbers on the plan
  DrawStyle style;
  style.mm = Length::fromMillimetres(20);
  for (const DrawItem& item : drawFindings(session.report(), style))
    if (const auto* text = std::get_if<TextPrim>(&item.prim))
      for (const QString& digits : QString::fromStdString(text->text).split(", ")) drawn.insert(digits.toStdString());
  int number = 0, row = 0;
  for (std::size_t i = 0; i < session.report().findings.size(); ++i) {
    const Outcome outcome = session.report().findings[i].outcome;
    if (outcome != Outcome::shortfall && outcome != Outcome::close && outcome != Outcome::unknown) continue;
    if (onlyWished(session.report().findings[i])) continue;
    row = model().rowOfFinding(static_cast<int>(i));
    ASSERT_GE(row, 0);
    if (outcome == Outcome::unknown) {
      EXPECT_EQ(model().numberAt(row), 0) << "what is not stated is no mark on the plan";
      continue;
    }
    EXPECT_EQ(model().numberAt(row), ++number);
    EXPECT_TRUE(drawn.count(std::to_string(number))) << number;
  }
  EXPECT_GT(number, 0);
  EXPECT_EQ(drawn.size(), static_cast<std::size_t>(number));
}

// What is not stated comes last, clear before it; both are folded until they are asked for, by mouse or by keys.
TEST_F(AdviceTest, ClearAndNotStatedAreFoldedUntilAsked) {
  const int rows = model().rowCount(), last = rows - 1;
  ASSERT_TRUE(model().isGroup(last));
  ASSERT_EQ(model().groupOf(last), AdviceGroup::unknown);
  ASSERT_TRUE(model().isGroup(last - 1));
  ASSERT_EQ(model().groupOf(last - 1), AdviceGroup::clear);
  list().scrollToBottom();
  QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, middleOf(last - 1));
  EXPECT_EQ(model().rowCount(), rows + countOf(session, Outcome::clear));
  list().setFocus();
  QTest::keyClick(&list(), Qt::Key_Left);
  EXPECT_EQ(model().rowCount(), rows);
  QTest::keyClick(&list(), Qt::Key_End);
  QTest::keyClick(&list(), Qt::Key_Right);
  const Tally tally = tallyOf(session.report());
  ASSERT_GT(tally.questions, 0);
  EXPECT_EQ(model().rowCount(), rows + tally.questions);
}

// Two rules of two books wait for the height of one basin: one row asks for it, and stands for both.
TEST_F(AdviceTest, OneQuestionIsAskedOnce) {
  ASSERT_TRUE(session.perform(SetBooks{{"comfort", "uk-access", "us-access"}}, "books"));
  model().setOpen(AdviceGroup::unknown, true);
  const auto& findings = session.report().findings;
  int again = 0;
  for (std::size_t i = 0; i < findings.size(); ++i)
    for (std::size_t k = i + 1; k < findings.size(); ++k) {
      if (!askTheSame(findings[i], findings[k])) continue;
      ++again;
      const int row = model().rowOfFinding(static_cast<int>(i));
      ASSERT_GE(row, 0);
      EXPECT_EQ(model().rowOfFinding(static_cast<int>(k)), row);
      EXPECT_GT(model().askingAt(row), 1);
    }
  EXPECT_GT(again, 0);
  const Tally tally = tallyOf(session.report());
  EXPECT_LT(tally.questions, tally.unknown);
  EXPECT_EQ(model().countOf(AdviceGroup::unknown), tally.questions);
  EXPECT_TRUE(panel.summary().contains(QString("%1 short").arg(tally.allShort()))) << panel.summary().toStdString();
}

TEST_F(AdviceTest, HoverLightsAndLeavingUnlights) {
  QSignalSpy lit(&session, &Session::litChanged);
  QTest::mouseMove(list().viewport(), middleOf(1));
  EXPECT_EQ(session.litFinding(), model().findingAt(1));
  QTest::mouseMove(list().viewport(), middleOf(2));
  EXPECT_EQ(session.litFinding(), model().findingAt(2));
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(&list(), &leave);
  EXPECT_EQ(session.litFinding(), -1);
  EXPECT_EQ(lit.count(), 3);
}

TEST_F(AdviceTest, ClickGoesThereAndTellsTheWholeStory) {
  QSignalSpy show(&session, &Session::showFinding);
  const int before = list().visualRect(model().index(1)).height();
  QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, middleOf(1));
  ASSERT_EQ(show.count(), 1);
  EXPECT_EQ(show.front().front().toInt(), model().findingAt(1));
  QTest::qWait(1);
  EXPECT_GT(list().visualRect(model().index(1)).height(), before + 40);
}

TEST_F(AdviceTest, KeysMoveLightAndGo) {
  QSignalSpy show(&session, &Session::showFinding);
  list().setFocus();
  QTest::keyClick(&list(), Qt::Key_Down);  // the group
  QTest::keyClick(&list(), Qt::Key_Down);
  QTest::keyClick(&list(), Qt::Key_Down);
  EXPECT_EQ(session.litFinding(), model().findingAt(2));
  QTest::keyClick(&list(), Qt::Key_Return);
  ASSERT_EQ(show.count(), 1);
  EXPECT_EQ(show.front().front().toInt(), model().findingAt(2));
  QTest::keyClick(&list(), Qt::Key_Escape);
  EXPECT_EQ(session.litFinding(), -1);
  EXPECT_FALSE(list().currentIndex().isValid());
}

TEST_F(AdviceTest, LightFromThePlanShowsInTheList) {
  const int row = lastShown();
  ASSERT_FALSE(model().isGroup(row));
  session.lightFinding(model().findingAt(row));
  const QRect place = list().visualRect(model().index(row));
  EXPECT_TRUE(list().viewport()->rect().intersects(place));
  EXPECT_EQ(static_cast<AdviceDelegate*>(list().itemDelegate())->litRow(), row);
}

TEST_F(AdviceTest, ADragKeepsRowsScrollAndTheOpenStory) {
  list().setCurrentIndex(model().index(3));
  QTest::qWait(1);
  const QString headline = model().index(3).data().toString().section(':', 0, 0);
  list().verticalScrollBar()->setValue(20);
  QSignalSpy reset(&model(), &QAbstractItemModel::modelReset);
  session.beginDrag();
  for (int i = 0; i < 10; ++i) {
    Fixture f = *findFixture(session.option(), {"v"});
    f.placement = OnWall{{"s"}, 75_in + Length::fromInches(0.1 * i), 0_in};
    ASSERT_TRUE(session.dragTo(PutFixtures{{f}}, "Move vanity"));
  }
  session.endDrag();
  EXPECT_EQ(reset.count(), 0);
  EXPECT_EQ(list().verticalScrollBar()->value(), 20);
  ASSERT_TRUE(list().currentIndex().isValid());
  EXPECT_EQ(list().currentIndex().data().toString().section(':', 0, 0), headline);
}

TEST_F(AdviceTest, FindingsComeAndGoWithTheDragAndUndo) {
  const auto shortOf = [&](const std::string& rule) {
    for (int row = 0; row < model().rowCount(); ++row) {
      if (model().isGroup(row) || model().groupOf(row) != AdviceGroup::shortfall) continue;
      const Finding& f = session.report().findings[static_cast<std::size_t>(model().findingAt(row))];
      if (f.rule == rule && f.book == "us-residential") return true;
    }
    return false;
  };
  ASSERT_FALSE(shortOf("toilet-centreline-side"));  // exactly 15 in: IRC P2705.1(5) is met
  moveToilet(47_in);                                // 13 in to the vanity
  EXPECT_TRUE(shortOf("toilet-centreline-side"));
  session.undo();
  EXPECT_FALSE(shortOf("toilet-centreline-side"));
}

TEST_F(AdviceTest, LightOnAFoldedFindingShowsAtItsGroup) {
  const auto& findings = session.report().findings;
  const auto asked = std::find_if(findings.begin(), findings.end(), [](const Finding& f) {
    return f.outcome == Outcome::unknown && !onlyWished(f);
  });
  ASSERT_NE(asked, findings.end());
  session.lightFinding(static_cast<int>(asked - findings.begin()));
  const int row = static_cast<AdviceDelegate*>(list().itemDelegate())->litRow();
  ASSERT_GE(row, 0);
  EXPECT_TRUE(model().isGroup(row));
  EXPECT_EQ(model().groupOf(row), AdviceGroup::unknown);
}

TEST_F(AdviceTest, TheLitFindingFollowsItsRowWhenOthersComeBeforeIt) {
  const int row = lastShown();
  const std::string rule = session.report().findings[static_cast<std::size_t>(model().findingAt(row))].rule;
  session.lightFinding(model().findingAt(row));
  moveToilet(47_in);
  ASSERT_GE(session.litFinding(), 0);
  EXPECT_EQ(session.report().findings[static_cast<std::size_t>(session.litFinding())].rule, rule);
}

TEST_F(AdviceTest, EmptyStatesAndCaution) {
  session.replace(emptyPlan(Unit::inches));
  EXPECT_FALSE(list().isVisible());
  bool caution = false, hint = false;
  for (const QLabel* label : panel.findChildren<QLabel*>()) {
    if (!label->isVisible()) continue;
    hint |= label->text().startsWith("No room is drawn yet");
    if (!label->text().contains(QString::fromStdString(cautionLines().back()))) continue;
    caution = true;
    EXPECT_TRUE(label->textInteractionFlags() & Qt::TextSelectableByMouse);
  }
  EXPECT_TRUE(hint);
  EXPECT_TRUE(caution);
}

TEST_F(AdviceTest, RowsReadAloudSayOutcomeFiguresAndNumber) {
  const QString spoken = model().index(1).data(Qt::AccessibleTextRole).toString();
  EXPECT_TRUE(spoken.startsWith("1, Short, ")) << spoken.toStdString();
}

}  // namespace
}  // namespace elbowroom::ui
