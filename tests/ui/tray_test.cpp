#include <gtest/gtest.h>

#include <QDrag>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/rooms.h"
#include "ui/session/session.h"
#include "ui/tray/tray.h"
#include "ui/tray/tray_tile.h"

namespace elbowroom::ui {
namespace {

struct TrayTest : testing::Test {
  Session session{hallBath()};
  Tray tray{session};
  void SetUp() override {
    tray.resize(270, 500);
    tray.show();
  }
};

TEST_F(TrayTest, OffersEveryFixtureEveryActionAndAWindow) {
  for (const KindInfo& info : fixtureKinds())
    EXPECT_NE(tray.tile("fixture:" + QString::fromUtf8(info.key.data())), nullptr) << info.key;
  for (const char* action : {"hinged", "double", "pocket", "surface-sliding", "bifold", "cased"})
    EXPECT_NE(tray.tile(QString("door:") + action), nullptr) << action;
  EXPECT_NE(tray.tile("window"), nullptr);
}

TEST_F(TrayTest, EveryTileHasANameASizeAndAPictureWithInk) {
  for (const TrayTile* tile : tray.tiles()) {
    EXPECT_FALSE(tile->accessibleName().isEmpty());
    EXPECT_TRUE(tile->toolTip().contains('"')) << tile->toolTip().toStdString();
    const QImage image = tile->picture().toImage();
    int inked = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) inked += image.pixelColor(x, y).alpha() > 60 ? 1 : 0;
    EXPECT_GT(inked, 60) << tile->payload().toStdString();
  }
}

TEST_F(TrayTest, ClickAndEnterArmPlacing) {
  QSignalSpy picked(&tray, &Tray::picked);
  QTest::mouseClick(tray.tile("fixture:toilet"), Qt::LeftButton);
  QTest::keyClick(tray.tile("door:pocket"), Qt::Key_Return);
  ASSERT_EQ(picked.count(), 2);
  EXPECT_EQ(picked[0][0].toString(), "fixture:toilet");
  EXPECT_EQ(picked[1][0].toString(), "door:pocket");
}

TEST_F(TrayTest, DraggingCarriesThePayloadAndDoesNotArm) {
  QSignalSpy picked(&tray, &Tray::picked);
  QByteArray carried;
  tray.run_drag = [&](QDrag* drag) {
    carried = drag->mimeData()->data("application/x-elbowroom-kind");
    EXPECT_FALSE(drag->pixmap().isNull());
    delete drag;
  };
  TrayTile* tile = tray.tile("window");
  QTest::mousePress(tile, Qt::LeftButton, {}, QPoint(10, 10));
  QTest::mouseMove(tile, QPoint(12, 11));
  EXPECT_TRUE(carried.isEmpty());
  QMouseEvent move(QEvent::MouseMove, QPointF(40, 40), tile->mapToGlobal(QPointF(40, 40)), Qt::NoButton,
                   Qt::LeftButton, {});
  QApplication::sendEvent(tile, &move);
  EXPECT_EQ(carried, "window");
  QTest::mouseRelease(tile, Qt::LeftButton, {}, QPoint(40, 40));
  EXPECT_EQ(picked.count(), 0);
}

TEST_F(TrayTest, ArrowsMoveWithinAndTabHasOneStop) {
  tray.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&tray));
  tray.tiles()[0]->setFocus();
  QTest::keyClick(tray.tiles()[0], Qt::Key_Right);
  EXPECT_EQ(QApplication::focusWidget(), tray.tiles()[1]);
  QTest::keyClick(tray.tiles()[1], Qt::Key_End);
  EXPECT_EQ(QApplication::focusWidget(), tray.tiles().back());
  int stops = 0;
  for (const TrayTile* tile : tray.tiles()) stops += tile->focusPolicy() & Qt::TabFocus ? 1 : 0;
  EXPECT_EQ(stops, 1);
}

TEST_F(TrayTest, SizesFollowThePlansUnit) {
  session.perform(SetUnit{Unit::millimetres}, "Use millimetres");
  EXPECT_TRUE(tray.tile("fixture:toilet")->toolTip().contains("mm"));
}

}  // namespace
}  // namespace elbowroom::ui
