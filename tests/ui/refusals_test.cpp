// What is refused, and how it is said: sides of a new room, walls that cross, files that are no plans.
#include <gtest/gtest.h>

#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QMimeData>
#include <QTemporaryDir>
#include <QTimer>
#include <QtTest>

#include "core/file/plan_file.h"
#include "tests/ui/rooms.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/canvas/room_tool.h"
#include "ui/window/file_flow.h"
#include "ui/window/main_window.h"
#include "ui/window/start_panel.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

struct SidesTest : testing::TestWithParam<Unit> {
  Session session{emptyPlan(GetParam())};
  QWidget window;
  StartPanel panel{session, &window};
  QList<QLineEdit*> edits = panel.findChildren<QLineEdit*>();
  void SetUp() override {
    window.resize(700, 500);
    window.show();
    window.activateWindow();
    QTest::qWait(1);
    ASSERT_EQ(edits.size(), 2);
  }
  void type(int side, const QString& text) {
    edits[side]->setFocus();
    edits[side]->selectAll();
    QTest::keyClick(edits[side], Qt::Key_Delete);
    QTest::keyClicks(edits[side], text);
  }
  std::string said() const {
    for (const QLabel* label : panel.findChildren<QLabel*>())
      if (label->accessibleName() == "Why there is no room yet" && label->isVisible()) return label->text().toStdString();
    return {};
  }
  std::string answerTo(int side, const QString& text) {
    type(side, text);
    QTest::keyClick(edits[side], Qt::Key_Return);
    return said();
  }
};
struct SidesInInches : SidesTest {};
struct SidesInMillimetres : SidesTest {};

TEST_P(SidesInInches, TooSmallTooLargeAndNonsenseAreSaidBesideTheField) {
  EXPECT_EQ(answerTo(0, "8"), "Left to right: A room is at least 1'-0\" each way; this is 8\".");
  EXPECT_TRUE(session.layout().room.empty());
  EXPECT_EQ(edits[0]->selectedText(), "8") << "ready for another figure";
  EXPECT_FALSE(edits[0]->accessibleDescription().isEmpty());
  EXPECT_EQ(answerTo(0, "2400"),
            "Left to right: A room is at most 100'-0\" each way; this is 200'-0\". A plain number is inches here; "
            "write 2400 mm for millimetres.");
  EXPECT_EQ(answerTo(0, "200'"), "Left to right: A room is at most 100'-0\" each way; this is 200'-0\".");
  EXPECT_EQ(answerTo(0, "-8'"), "Left to right: A room is at least 1'-0\" each way; this is -8'-0\".");
  EXPECT_NE(answerTo(0, "wide").find("\"w\" at position 1"), std::string::npos) << said();
  EXPECT_NE(answerTo(0, "").find("No length is written"), std::string::npos);
  QTest::keyClicks(edits[0], "8");
  EXPECT_EQ(said(), "") << "what was said is about the figure before";
  EXPECT_EQ(answerTo(0, "2400 mm"), "");
  EXPECT_EQ(session.layout().walls[0].length, 2400_mm);
}

TEST_P(SidesInInches, TheOtherSideIsNamed) {
  EXPECT_EQ(answerTo(1, "3"), "Top to bottom: A room is at least 1'-0\" each way; this is 3\".");
  EXPECT_TRUE(edits[1]->hasFocus());
}

TEST_P(SidesInMillimetres, LimitsAreInMillimetresAndFeetAreUnderstood) {
  EXPECT_EQ(answerTo(0, "8"),
            "Left to right: A room is at least 300 mm each way; this is 8 mm. A plain number is millimetres here; "
            "write 8' for feet.");
  EXPECT_EQ(answerTo(0, "40000"), "Left to right: A room is at most 30000 mm each way; this is 40000 mm.");
  EXPECT_EQ(answerTo(0, "8'"), "");
  EXPECT_EQ(session.layout().walls[0].length, 96_in);
}
INSTANTIATE_TEST_SUITE_P(Start, SidesInInches, testing::Values(Unit::inches));
INSTANTIATE_TEST_SUITE_P(Start, SidesInMillimetres, testing::Values(Unit::millimetres));

// A wall from (60, 20) straight down crosses the bottom wall (0,0)-(96,0) at (60, 0).
TEST(Crossings, ArePlacesWhereAWallMeetsEarlierOnes) {
  const std::vector<Point> corners{{0_in, 0_in}, {96_in, 0_in}, {96_in, 20_in}, {60_in, 20_in}};
  EXPECT_EQ(crossingOf(corners, {60_in, -(10_in)}), (Point{60_in, 0_in}));
  EXPECT_EQ(crossingOf(corners, {60_in, 0_in}), (Point{60_in, 0_in})) << "touching is no corner either";
  EXPECT_EQ(crossingOf(corners, {60_in, 5_in}), std::nullopt);
  EXPECT_EQ(crossingOf(corners, {0_in, 0_in}), std::nullopt) << "closing at the first corner";
  EXPECT_EQ(crossingOf(corners, {80_in, 20_in}), (Point{80_in, 20_in})) << "back over the wall before";
  EXPECT_EQ(crossingOf({{0_in, 0_in}, {96_in, 0_in}}, {0_in, 0_in}), (Point{0_in, 0_in}));
  // The closing wall comes along the bottom wall from the right.
  EXPECT_NE(crossingOf({{0_in, 0_in}, {50_in, 0_in}, {50_in, 20_in}, {90_in, 20_in}, {90_in, 0_in}}, {0_in, 0_in}),
            std::nullopt);
}

struct DrawnCrossing : testing::Test {
  Session session{emptyPlan(Unit::inches)};
  PlanCanvas canvas{session};
  QString said;
  void SetUp() override {
    canvas.resize(800, 700);
    canvas.show();
    QTest::qWait(1);
    QObject::connect(&canvas, &PlanCanvas::said, [this](const QString& text) { said = text; });
    canvas.startRoom();
    for (Point p : {Point{0_in, 0_in}, Point{96_in, 0_in}, Point{96_in, 20_in}, Point{60_in, 20_in}}) click(p);
  }
  void click(Point p) {
    const QPoint at = canvas.map().toPx(p).toPoint();
    QTest::mouseMove(&canvas, at);
    QTest::mouseClick(&canvas, Qt::LeftButton, {}, at);
  }
};

TEST_F(DrawnCrossing, IsRefusedWithItsPlaceAndTheCornersBeforeStay) {
  click({60_in, -(20_in)});
  EXPECT_TRUE(said.startsWith("That wall would cross or touch another one 1'-8\" from its beginning")) << said.toStdString();
  click({60_in, 10_in});
  EXPECT_FALSE(said.contains("cross")) << said.toStdString();
  click({0_in, 10_in});
  click({0_in, 0_in});
  EXPECT_EQ(session.layout().walls.size(), 6u);
}

TEST_F(DrawnCrossing, IsRefusedForATypedLengthToo) {
  QTest::mouseMove(&canvas, canvas.map().toPx({60_in, 10_in}).toPoint());
  QTest::keyClicks(&canvas, "3");
  auto* entry = canvas.findChild<QLineEdit*>();
  ASSERT_TRUE(entry && entry->isVisible());
  QTest::keyClicks(entry, "0");
  QTest::keyClick(entry, Qt::Key_Return);
  EXPECT_TRUE(entry->isVisible()) << "the figure can be mended";
  EXPECT_TRUE(entry->accessibleDescription().contains("1'-8\" from its beginning"));
  QTest::keyClick(entry, Qt::Key_Escape);
}

TEST_F(DrawnCrossing, OfTheClosingWallIsRefusedToo) {
  // From (110, 10) the way home runs through the wall at x = 96.
  click({60_in, 40_in});
  click({110_in, 40_in});
  click({110_in, 10_in});
  QTest::keyClick(&canvas, Qt::Key_Return);
  EXPECT_TRUE(said.contains("cross")) << said.toStdString();
  EXPECT_TRUE(session.layout().room.empty());
  EXPECT_FALSE(canvas.choosing()) << "still drawing";
}

struct WrongFile : testing::Test {
  QTemporaryDir folder;
  std::unique_ptr<MainWindow> window;
  void SetUp() override {
    QSettings().clear();
    window = std::make_unique<MainWindow>(hallBath());
    window->resize(1280, 800);
    window->show();
    QCoreApplication::processEvents();
    ASSERT_TRUE(window->session().perform(SetTitle{"Mine, not saved"}, "Title"));
  }
  void TearDown() override {
    window->files().dropRecovery();
    QSettings().clear();
  }
  QString file(const QString& name, const QByteArray& content) {
    QFile out(folder.filePath(name));
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(content);
    return out.fileName();
  }
  // Dropped on the window, which must not ask about unsaved changes for a file that cannot be opened.
  std::string dropped(const QString& path) {
    const Plan before = window->session().plan();
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QDragEnterEvent enter({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    QDropEvent drop({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &drop);
    EXPECT_EQ(window->session().plan(), before);
    EXPECT_TRUE(window->session().dirty());
    EXPECT_TRUE(window->session().history().canUndo());
    for (const QLabel* label : window->findChildren<QLabel*>())
      if (label->accessibleName() == "Notice" && label->isVisible()) {
        EXPECT_EQ(label->textFormat(), Qt::PlainText);
        return label->text().toStdString();
      }
    return {};
  }
};

TEST_F(WrongFile, IsNamedWithTheReasonAndNothingIsLost) {
  const std::string kept = " The plan you have open is unchanged.";
  EXPECT_EQ(dropped(file("photo.jpg", QByteArray("\xFF\xD8\xFF\xE0\x00\x10JFIF", 10))),
            "photo.jpg was not opened: line 1, column 1: this is not JSON but some other kind of file." + kept);
  EXPECT_EQ(dropped(file("empty.elbowroom", "")),
            "empty.elbowroom was not opened: line 1, column 1: this is not JSON (the file is empty)." + kept);
  const QByteArray whole = QByteArray::fromStdString(writePlan(hallBath()));
  const std::string cut = dropped(file("cut.elbowroom", whole.left(whole.size() / 2)));
  EXPECT_NE(cut.find("ends too early, as if it had been cut off"), std::string::npos) << cut;
  const std::string other = dropped(file("other.json", R"({"format": "<a href=x>list</a>", "version": 1})"));
  EXPECT_NE(other.find("this is no plan of this program"), std::string::npos) << other;
  const std::string newer = dropped(file("newer.elbowroom", R"({"format": "elbowroom-plan", "version": 2})"));
  EXPECT_NE(newer.find("written by a newer program"), std::string::npos) << newer;
}

TEST_F(WrongFile, AGoodOneAsksFirst) {
  const QString path = file("good.elbowroom", QByteArray::fromStdString(writePlan(emptyPlan(Unit::millimetres))));
  bool asked = false;
  QTimer::singleShot(0, [&] {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    ASSERT_TRUE(box);
    asked = true;
    box->reject();
  });
  dropped(path);
  EXPECT_TRUE(asked);
}

}  // namespace
}  // namespace elbowroom::ui
