// A copy of a file, opened: it is a plan of its own. A copy left by a session that ended badly is offered.
#include <gtest/gtest.h>

#include <QFile>
#include <QLabel>
#include <QMimeData>
#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>

#include "core/file/plan_file.h"
#include "tests/ui/rooms.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/window/file_flow.h"
#include "ui/window/main_window.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

struct FileCopyTest : testing::Test {
  QTemporaryDir folder;
  std::unique_ptr<MainWindow> window;
  void SetUp() override {
    QSettings().clear();
    window = std::make_unique<MainWindow>(emptyPlan(Unit::inches));
    window->resize(1280, 800);
    window->show();
    window->activateWindow();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(window.get());
  }
  void TearDown() override {
    window->files().dropRecovery();
    QSettings().clear();
  }
  void drop(const QString& path) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(path)});
    QDragEnterEvent enter({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    QDropEvent event({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &event);
  }
  static QByteArray bytes(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
  }
};

TEST_F(FileCopyTest, ACopyIsSavedToItselfAndLeavesTheFileItCameFromAlone) {
  const QString first = folder.filePath("bath.elbowroom"), copy = folder.filePath("bath (copy).elbowroom");
  ASSERT_TRUE(savePlan(hallBath(), first.toStdString()).ok());
  drop(first);
  ASSERT_EQ(window->files().path(), first);
  ASSERT_TRUE(QFile::copy(first, copy));
  const QByteArray before = bytes(first);
  drop(copy);
  EXPECT_EQ(window->session().plan(), hallBath());
  EXPECT_FALSE(window->session().history().canUndo());
  EXPECT_TRUE(window->windowTitle().startsWith("bath (copy)")) << window->windowTitle().toStdString();
  EXPECT_EQ(window->files().recent(), (QStringList{copy, first}));
  window->session().select({{"v"}});
  window->canvas().setFocus();
  QTest::keyClick(&window->canvas(), Qt::Key_Delete);
  ASSERT_TRUE(window->isWindowModified());
  QTest::keyClick(&window->canvas(), Qt::Key_S, Qt::ControlModifier);
  EXPECT_FALSE(window->isWindowModified());
  EXPECT_EQ(bytes(first), before);
  EXPECT_EQ(loadPlan(copy.toStdString()).value(), window->session().plan());
  EXPECT_NE(bytes(copy), before);
}

TEST_F(FileCopyTest, ACopyIsReadAsItIsWhenTheFirstHasChangedSince) {
  const QString first = folder.filePath("bath.elbowroom"), copy = folder.filePath("other.elbowroom");
  ASSERT_TRUE(savePlan(hallBath(), first.toStdString()).ok());
  ASSERT_TRUE(QFile::copy(first, copy));
  drop(first);
  ASSERT_TRUE(window->session().perform(SetTitle{"Changed"}, "Title"));
  ASSERT_TRUE(window->files().save());
  drop(copy);
  EXPECT_EQ(window->session().plan().title, hallBath().title);
  drop(first);
  EXPECT_EQ(window->session().plan().title, "Changed");
}

TEST_F(FileCopyTest, ALeftCopyIsOfferedAndItsLinkBringsItBack) {
  QDir().mkpath(QFileInfo(window->files().recoveryFile()).absolutePath());
  ASSERT_TRUE(savePlan(hallBath(), window->files().recoveryFile().toStdString()).ok());
  window->offerRecovery();
  QLabel* notice = nullptr;
  for (QLabel* label : window->findChildren<QLabel*>())
    if (label->accessibleName() == "Notice") notice = label;
  ASSERT_TRUE(notice && notice->isVisible());
  // The first link of the sentence, by keys.
  notice->setFocus();
  QTest::keyClick(notice, Qt::Key_Tab);
  QTest::keyClick(notice, Qt::Key_Return);
  EXPECT_EQ(window->session().plan(), hallBath());
  EXPECT_TRUE(window->session().dirty()) << "what is on no disk of the person's own is not saved";
  EXPECT_FALSE(notice->isVisible());
}

}  // namespace
}  // namespace elbowroom::ui
