// Edit > Cut, the keys' help, a view that follows the room, and units in every field, in the whole window.
#include <gtest/gtest.h>

#include <QAction>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QSettings>
#include <QTabWidget>
#include <QTextBrowser>
#include <QtTest>

#include "tests/ui/rooms.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/particulars/particulars.h"
#include "ui/walls/wall_strip.h"
#include "ui/widgets/length_edit.h"
#include "ui/window/file_flow.h"
#include "ui/window/main_window.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

struct WholeWindow : testing::Test {
  std::unique_ptr<MainWindow> window;
  void open(Plan plan) {
    QSettings().clear();
    window = std::make_unique<MainWindow>(std::move(plan));
    window->resize(1280, 800);
    window->show();
    window->activateWindow();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(window.get());
    QTest::qWait(5);
  }
  void SetUp() override { open(hallBath()); }
  void TearDown() override {
    window->files().dropRecovery();
    QSettings().clear();
  }
  Session& session() { return window->session(); }
  PlanCanvas& canvas() { return window->canvas(); }
};

TEST_F(WholeWindow, CutTakesOutWhatItCopiesAndPasteBringsItBack) {
  session().select({{"v"}});
  canvas().setFocus();
  QTest::keyClick(&canvas(), Qt::Key_X, Qt::ControlModifier);
  EXPECT_EQ(findFixture(session().option(), {"v"}), nullptr);
  EXPECT_TRUE(QString::fromStdString(session().history().undoLabel()).startsWith("Cut vanity"));
  EXPECT_FALSE(session().copied().empty());
  QTest::keyClick(&canvas(), Qt::Key_V, Qt::ControlModifier);
  const auto& fixtures = session().option().fixtures;
  EXPECT_EQ(std::count_if(fixtures.begin(), fixtures.end(),
                          [](const Fixture& f) { return f.kind == FixtureKind::vanity; }), 1);
  session().undo();
  session().undo();
  EXPECT_NE(findFixture(session().option(), {"v"}), nullptr);
}

TEST_F(WholeWindow, CutLeavesWallsAlone) {
  session().select({{"n"}});
  canvas().setFocus();
  const Plan before = session().plan();
  QTest::keyClick(&canvas(), Qt::Key_X, Qt::ControlModifier);
  EXPECT_EQ(session().plan(), before);
  session().select({{"n"}, {"m"}});
  QTest::keyClick(&canvas(), Qt::Key_X, Qt::ControlModifier);
  EXPECT_EQ(findWallItem(session().option(), {"m"}), nullptr);
  EXPECT_EQ(session().option().room.walls.size(), 4u);
}

TEST_F(WholeWindow, F1TellsTheKeysOfTheViewThatIsWorkedIn) {
  const auto shown = [&]() -> QString {
    auto* help = window->findChild<QDialog*>("keys-help");
    if (!help || !help->isVisible()) return {};
    const QString text = static_cast<QTextBrowser*>(help->findChild<QTabWidget*>()->currentWidget())->toPlainText();
    help->close();
    window->activateWindow();
    QTest::qWait(1);
    return text;
  };
  auto* strip = window->findChild<WallStrip*>();
  strip->setFocus();
  QTest::keyClick(strip, Qt::Key_F1);
  const QString on_strip = shown();
  EXPECT_TRUE(on_strip.contains("Square handles") && on_strip.contains("stud bay")) << on_strip.toStdString();
  canvas().setFocus();
  QTest::keyClick(&canvas(), Qt::Key_F1);
  const QString on_plan = shown();
  EXPECT_TRUE(on_plan.contains("adds a corner")) << on_plan.toStdString();
  EXPECT_FALSE(on_plan.contains("Square handles"));
  EXPECT_TRUE(on_plan.contains("Ctrl+X"));
}

TEST_F(WholeWindow, AWallTypedLongerThanTheViewIsShownWhole) {
  canvas().zoomToFit();
  const double before = canvas().map().px_per_inch;
  ASSERT_TRUE(session().perform(MoveWall{{"e"}, -(200_in)}, "Longer"));
  EXPECT_LT(canvas().map().px_per_inch, before);
  EXPECT_TRUE(QRectF(canvas().rect()).contains(canvas().map().toPx({296_in, 0_in})));
  // Back: smaller than the view is no reason to move it.
  const double small = canvas().map().px_per_inch;
  session().undo();
  EXPECT_EQ(canvas().map().px_per_inch, small);
  // Who has zoomed into a corner stays there.
  canvas().zoomBy(6, QPointF(canvas().rect().center()));
  const double near = canvas().map().px_per_inch;
  ASSERT_TRUE(session().perform(MoveWall{{"e"}, -(200_in)}, "Longer"));
  EXPECT_EQ(canvas().map().px_per_inch, near);
}

// Typed with its unit, a figure means the same in every field of the Particulars, whatever unit the plan shows.
struct UnitsOfFields : WholeWindow {
  int typed = 0;
  void tryAll(const QString& text, Length meant) {
    auto* particulars = window->findChild<Particulars*>();
    std::vector<ElementId> things{{}};
    for (const char* id : {"w", "d1", "win", "wc", "v", "b", "m"}) things.push_back({id});
    for (const ElementId& thing : things) {
      session().select(thing.empty() ? std::set<ElementId>{} : std::set<ElementId>{thing});
      const auto fields = particulars->findChildren<LengthEdit*>();
      for (LengthEdit* field : fields) {
        if (!field->isVisibleTo(particulars)) continue;
        QLineEdit* line = field->line();
        if (line->isReadOnly() || !line->isEnabled()) continue;
        const std::string name = thing.text + ": " + line->accessibleName().toStdString();
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, text);
        QTest::keyClick(line, Qt::Key_Return);
        // Refused by a limit is an answer to the right length; not understood is not.
        EXPECT_FALSE(field->problem().contains("understood")) << name << ": " << field->problem().toStdString();
        if (field->problem().isEmpty()) {
          EXPECT_EQ(field->length(), meant) << name;
          ++typed;
        }
        QTest::keyClick(line, Qt::Key_Escape);
        while (session().history().canUndo()) session().undo();
      }
    }
  }
};

TEST_F(UnitsOfFields, MillimetresInAPlanInInches) {
  tryAll("600 mm", 600_mm);
  EXPECT_GT(typed, 20);
}

TEST_F(UnitsOfFields, FeetInAPlanInMillimetres) {
  Plan plan = hallBath();
  plan.unit = Unit::millimetres;
  open(plan);
  tryAll("2'", 24_in);
  EXPECT_GT(typed, 20);
}

TEST_F(UnitsOfFields, OnThePlanWhileAThingIsSelected) {
  session().select({{"wc"}});
  canvas().setFocus();
  QTest::keyClicks(&canvas(), "6");
  auto* entry = canvas().findChild<QLineEdit*>();
  ASSERT_TRUE(entry && entry->isVisible());
  QTest::keyClicks(entry, "00 mm");
  QTest::keyClick(entry, Qt::Key_Return);
  const auto place = std::get<OnWall>(findFixture(session().option(), {"wc"})->placement);
  EXPECT_FALSE(entry->isVisible()) << entry->accessibleDescription().toStdString();
  bool measured = false;
  for (const SideGap& gap : sideGaps(session().layout(), {"wc"})) measured |= gap.distance == 600_mm;
  EXPECT_TRUE(measured) << place.along.inches();
}

}  // namespace
}  // namespace elbowroom::ui
