// What can be done about the open finding, with real mouse and keys.
#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include "core/rules/text.h"
#include "tests/ui/rooms.h"
#include "ui/advice/advice_list.h"
#include "ui/advice/advice_model.h"
#include "ui/advice/advice_panel.h"
#include "ui/advice/answer_field.h"
#include "ui/advice/finding_actions.h"
#include "ui/advice/remedy_button.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/session/session.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

// An invented room with one toilet 14 in from the wall: IRC P2705.1(5) asks for 15.
Plan toiletByTheWall() {
  Plan plan = hallBath();
  Option& o = plan.options.front();
  plan.books = {"us-residential"};
  std::erase_if(o.fixtures, [](const Fixture& f) { return f.id.text != "wc"; });
  o.on_walls.clear();
  o.openings.front().swing = Swing::out;
  std::get<OnWall>(o.fixtures.front().placement).along = 14_in;
  return plan;
}

// Pixels that differ to the eye; the raster engine itself is off by a level here and there.
int differing(const QImage& a, const QImage& b) {
  int count = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 8 ? 1 : 0;
  return count;
}

struct AdviceActionsTest : testing::Test {
  Session session{toiletByTheWall()};
  AdvicePanel panel{session};

  void SetUp() override {
    panel.resize(330, 620);
    panel.show();
    QTest::qWait(1);
  }
  AdviceList& list() { return *panel.list(); }
  AdviceModel& model() { return *panel.model(); }
  int rowOf(const std::string& rule, const std::string& book = "us-residential") {
    for (int row = 0; row < model().rowCount(); ++row)
      if (const Finding* f = model().findingOf(row); f != nullptr && f->rule == rule && f->book == book) return row;
    return -1;
  }
  // Clicks the finding open and waits for its remedies.
  FindingActions* open(const std::string& rule, const std::string& book = "us-residential") {
    panel.model()->setOpen(AdviceGroup::unknown, true);  // folded until it is asked for
    const int row = rowOf(rule, book);
    EXPECT_GE(row, 0) << rule;
    if (row < 0) return nullptr;
    list().scrollTo(model().index(row));
    QTest::mouseClick(list().viewport(), Qt::LeftButton, {}, list().visualRect(model().index(row)).center());
    QTest::qWait(1);
    FindingActions* actions = panel.actions();
    EXPECT_NE(actions, nullptr);
    const Finding* f = model().findingOf(rowOf(rule, book));
    if (f->outcome == Outcome::shortfall) {
      EXPECT_TRUE(QTest::qWaitFor([&] { return actions->searched(); }, 3000));
    }
    QTest::qWait(1);
    return actions;
  }
  Length along() { return std::get<OnWall>(findFixture(session.option(), {"wc"})->placement).along; }
};

TEST_F(AdviceActionsTest, HoverPreviewsAndLeavingTakesItAway) {
  FindingActions* actions = open("toilet-centreline-side");
  ASSERT_FALSE(actions->remedies().empty());
  RemedyButton* first = actions->remedies().front();
  EXPECT_EQ(first->accessibleName(), QString("Move Toilet 1\" away from Wall e"));
  EXPECT_TRUE(first->accessibleDescription().startsWith("then 15\"")) << first->accessibleDescription().toStdString();
  EXPECT_TRUE(list().viewport()->rect().intersects(
      QRect(first->mapTo(list().viewport(), QPoint()), first->size())));
  PlanCanvas canvas(session);
  canvas.resize(600, 500);
  canvas.show();
  QTest::qWait(5);
  session.lightFinding(-1);  // the mouse on its way takes the light along
  const QImage before = canvas.grab().toImage();
  const Plan plan = session.plan();
  QTest::mouseMove(first, first->rect().center());
  QEnterEvent enter(first->rect().center(), first->rect().center(), first->mapToGlobal(first->rect().center()));
  QApplication::sendEvent(first, &enter);
  ASSERT_TRUE(session.preview());
  EXPECT_EQ(session.preview()->moved, std::vector<ElementId>{{"wc"}});
  EXPECT_EQ(std::get<OnWall>(findFixture(session.preview()->layout.option, {"wc"})->placement).along, 15_in);
  EXPECT_GT(differing(canvas.grab().toImage(), before), 500) << "the ghost is drawn";
  EXPECT_EQ(session.plan(), plan) << "the plan itself stays";
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(first, &leave);
  EXPECT_FALSE(session.preview());
  EXPECT_EQ(differing(canvas.grab().toImage(), before), 0);
}

// Where the wheel takes the remedy from under the pointer, no leaving is told until the mouse moves.
TEST_F(AdviceActionsTest, APreviewGoesWithARemedyThatScrollsAway) {
  FindingActions* actions = open("toilet-centreline-side");
  ASSERT_FALSE(actions->remedies().empty());
  RemedyButton* first = actions->remedies().front();
  QTest::mouseMove(&panel, QPoint(2, 2));
  const QPointF middle = first->rect().center();
  QEnterEvent enter(middle, middle, first->mapToGlobal(middle));
  QApplication::sendEvent(first, &enter);
  ASSERT_TRUE(session.preview());
  QScrollBar* bar = list().verticalScrollBar();
  ASSERT_GT(bar->maximum(), bar->value());
  bar->setValue(bar->maximum());
  EXPECT_FALSE(session.preview());
  bar->setValue(0);
  first->setFocus();
  ASSERT_TRUE(session.preview());
  bar->setValue(bar->value() + 1);
  EXPECT_TRUE(session.preview()) << "it has the focus";
}

TEST_F(AdviceActionsTest, AClickAppliesItAsOneStepAndUndoTakesItBack) {
  FindingActions* actions = open("toilet-centreline-side");
  ASSERT_FALSE(actions->remedies().empty());
  const Plan before = session.plan();
  QTest::mouseClick(actions->remedies().front(), Qt::LeftButton);
  EXPECT_EQ(along(), 15_in);
  EXPECT_EQ(session.history().undoLabel(), "Move Toilet 1\" away from Wall e");
  QTest::qWait(5);
  EXPECT_NE(model().groupOf(rowOf("toilet-centreline-side")), AdviceGroup::shortfall);
  session.undo();
  EXPECT_EQ(session.plan(), before);
  EXPECT_FALSE(session.history().canUndo());
}

TEST_F(AdviceActionsTest, KeysReachPreviewAndApplyARemedy) {
  list().setFocus();
  const int row = rowOf("toilet-centreline-side");
  for (int i = 0; i <= row; ++i) QTest::keyClick(&list(), Qt::Key_Down);
  ASSERT_EQ(list().currentIndex().row(), row);
  QTest::keyClick(&list(), Qt::Key_Right);
  auto* button = qobject_cast<RemedyButton*>(QApplication::focusWidget());
  ASSERT_NE(button, nullptr);
  EXPECT_TRUE(session.preview()) << "focus shows it";
  QTest::keyClick(button, Qt::Key_Escape);
  EXPECT_EQ(QApplication::focusWidget(), &list());
  EXPECT_FALSE(session.preview());
  QTest::keyClick(&list(), Qt::Key_Right);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  EXPECT_EQ(along(), 15_in);
  EXPECT_EQ(QApplication::focusWidget(), &list());
}

TEST_F(AdviceActionsTest, WhenNothingDoesTheConflictIsNamed) {
  Plan narrow = toiletByTheWall();
  narrow.options.front().openings.clear();
  narrow.options.front().room.walls[0].from = {67_in, 60_in};
  narrow.options.front().room.walls[3].from = {67_in, 0_in};
  session.replace(narrow);
  FindingActions* actions = open("toilet-centreline-side");
  EXPECT_TRUE(actions->remedies().empty());
  EXPECT_TRUE(actions->noneText().startsWith("No remedy found: Moving Toilet 1\" away from Wall e would leave Toilet: "
                                             "centreline to the nearest side is 14\""))
      << actions->noneText().toStdString();
}

TEST_F(AdviceActionsTest, AMissingLengthIsStatedInPlace) {
  Plan plan = toiletByTheWall();
  plan.options.front().room.ceiling.height.reset();
  session.replace(plan);
  FindingActions* actions = open("ceiling-height");
  ASSERT_NE(actions->answer(), nullptr);
  auto* edit = actions->answer()->findChild<LengthEdit*>();
  ASSERT_NE(edit, nullptr);
  QTest::mouseClick(edit->line(), Qt::LeftButton);
  QTest::keyClicks(edit->line(), "8' 1\"");
  QTest::keyClick(edit->line(), Qt::Key_Return);
  EXPECT_EQ(session.option().room.ceiling.height, 97_in);
  QTest::qWait(5);
  EXPECT_EQ(rowOf("ceiling-height"), -1) << "clear, and that group is folded";
  session.undo();
  EXPECT_EQ(session.plan(), plan);
}

TEST_F(AdviceActionsTest, AMissingCountIsStatedInPlace) {
  Plan plan = toiletByTheWall();
  Fixture v = typicalFixture(FixtureKind::vanity, plan.options.front());
  v.width = 60_in;
  v.basins.reset();
  v.placement = OnWall{{"n"}, 50_in, 0_in};
  plan.options.front().fixtures.push_back(v);
  session.replace(plan);
  FindingActions* actions = open("basin-centreline-side");
  ASSERT_NE(actions->answer(), nullptr);
  const auto buttons = actions->answer()->findChildren<QPushButton*>();
  ASSERT_EQ(buttons.size(), 3);
  QTest::mouseClick(buttons[1], Qt::LeftButton);
  EXPECT_EQ(findFixture(session.option(), v.id)->basins, 2);
}

TEST_F(AdviceActionsTest, AcceptingNeedsAReasonAndCanBeTakenBack) {
  FindingActions* actions = open("toilet-centreline-side");
  const Plan before = session.plan();
  QTest::mouseClick(actions->acceptButton(), Qt::LeftButton);
  ASSERT_TRUE(actions->reasonLine()->isVisible());
  EXPECT_EQ(QApplication::focusWidget(), actions->reasonLine());
  QTest::keyClicks(actions->reasonLine(), "   ");
  QTest::keyClick(actions->reasonLine(), Qt::Key_Return);
  EXPECT_EQ(session.plan(), before) << "a blank is no reason";
  QTest::keyClicks(actions->reasonLine(), "Old house, stays as it is");
  QTest::keyClick(actions->reasonLine(), Qt::Key_Return);
  ASSERT_EQ(session.option().acknowledged.size(), 1U);
  EXPECT_EQ(session.option().acknowledged.front().reason, "Old house, stays as it is");
  QTest::qWait(5);
  EXPECT_EQ(model().countOf(AdviceGroup::accepted), 1);
  EXPECT_TRUE(panel.summary().contains("1 accepted")) << panel.summary().toStdString();
  const int row = rowOf("toilet-centreline-side");
  EXPECT_EQ(model().groupOf(row), AdviceGroup::accepted);
  EXPECT_GT(model().numberAt(row), 0) << "it keeps its mark on the plan";
  EXPECT_TRUE(model().index(row).data(Qt::AccessibleTextRole).toString().contains("accepted: Old house"));
  actions = open("toilet-centreline-side");
  ASSERT_TRUE(actions->takeBackButton()->isVisible());
  EXPECT_FALSE(actions->acceptButton()->isVisible());
  QTest::mouseClick(actions->takeBackButton(), Qt::LeftButton);
  EXPECT_TRUE(session.option().acknowledged.empty());
  QTest::qWait(5);
  EXPECT_EQ(model().groupOf(rowOf("toilet-centreline-side")), AdviceGroup::shortfall);
  session.undo();
  EXPECT_EQ(session.option().acknowledged.size(), 1U);
  session.undo();
  EXPECT_EQ(session.plan(), before);
}

TEST_F(AdviceActionsTest, EscapeLeavesTheReasonWithoutAccepting) {
  FindingActions* actions = open("toilet-centreline-side");
  QTest::mouseClick(actions->acceptButton(), Qt::LeftButton);
  QTest::keyClicks(actions->reasonLine(), "Perhaps");
  QTest::keyClick(actions->reasonLine(), Qt::Key_Escape);
  EXPECT_FALSE(actions->reasonLine()->isVisible());
  EXPECT_TRUE(session.option().acknowledged.empty());
}

TEST_F(AdviceActionsTest, ADragSearchesNothingAndTheRestSearchesAgain) {
  FindingActions* actions = open("toilet-centreline-side");
  ASSERT_FALSE(actions->remedies().empty());
  session.beginDrag();
  Fixture f = *findFixture(session.option(), {"wc"});
  std::get<OnWall>(f.placement).along = 13_in;
  ASSERT_TRUE(session.dragTo(PutFixtures{{f}}, "Move toilet"));
  EXPECT_TRUE(actions->remedies().empty()) << "nothing older than the plan is offered";
  session.endDrag();
  ASSERT_EQ(panel.actions(), actions);
  actions->searchNow();
  ASSERT_FALSE(actions->remedies().empty());
  EXPECT_EQ(actions->remedies().front()->accessibleName(), QString("Move Toilet 2\" away from Wall e"));
}

TEST_F(AdviceActionsTest, AChangedLimitSaysSo) {
  ASSERT_TRUE(session.perform(
      ChangeRule{{"us-residential", "toilet-centreline-side", false, 16_in, "Told so by the office", {}}}, "Change"));
  const int row = rowOf("toilet-centreline-side");
  EXPECT_TRUE(model().index(row).data(Qt::AccessibleTextRole).toString().contains("limit changed by you"));
  EXPECT_TRUE(QString::fromStdString(model().textAt(row).source).contains("limit changed by you"));
}

// A room with many shortfalls, so that the list is longer than its view.
TEST(AdvicePlace, AcceptingLeavesTheListWhereItIs) {
  Session session{hallBath()};
  AdvicePanel panel(session);
  panel.resize(330, 520);
  panel.show();
  panel.activateWindow();
  QTest::qWait(1);
  AdviceList& list = *panel.list();
  AdviceModel& model = *panel.model();
  ASSERT_GT(model.countOf(AdviceGroup::shortfall), 8);
  const int row = 6;
  const QModelIndex at = model.index(row);
  list.scrollTo(at, QAbstractItemView::PositionAtTop);
  QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualRect(at).center());
  QTest::qWait(1);
  FindingActions* actions = panel.actions();
  ASSERT_NE(actions, nullptr);
  ASSERT_TRUE(QTest::qWaitFor([&] { return actions->searched(); }, 3000));
  QTest::qWait(1);
  const int top = list.visualRect(model.index(row)).top();
  const std::string next = model.index(row + 1).data().toString().toStdString();
  actions->acceptButton()->setFocus();
  QTest::keyClick(actions->acceptButton(), Qt::Key_Space);
  QLineEdit* reason = actions->reasonLine();
  ASSERT_TRUE(reason->isVisible());
  QTest::keyClicks(reason, "the wall stays");
  const int scrolled = list.verticalScrollBar()->value();
  QTest::keyClick(reason, Qt::Key_Return);
  QTest::qWait(30);
  EXPECT_EQ(model.countOf(AdviceGroup::accepted), 1);
  EXPECT_EQ(model.index(row).data().toString().toStdString(), next);
  EXPECT_EQ(list.verticalScrollBar()->value(), scrolled) << "the eyes stay";
  EXPECT_EQ(list.visualRect(model.index(row)).top(), top) << "the next one is where the accepted one was";
  EXPECT_EQ(list.currentIndex().row(), row) << "and is the one for the keys";
  EXPECT_TRUE(list.hasFocus());
  QTest::qWait(400);  // with its remedies searched
  EXPECT_EQ(list.visualRect(model.index(row)).top(), top);
}

}  // namespace
}  // namespace elbowroom::ui
