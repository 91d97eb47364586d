// The switches over the Wall strip, clicked: each changes what is painted and is remembered.
#include <gtest/gtest.h>

#include <QSettings>
#include <QTest>
#include <QToolButton>

#include "tests/ui/samples.h"
#include "ui/session/session.h"
#include "ui/walls/wall_strip.h"

namespace elbowroom::ui {
namespace {

constexpr const char* kKeys[] = {"studs", "people", "backing", "electrical", "dimensions"};

struct StripLayersTest : testing::Test {
  Session session{sample("family-walls")};  // has something to show in every layer
  std::unique_ptr<WallStrip> strip;
  StripLayersTest() {
    QSettings().remove("strip_layers");
    session.setOption(1);
    open();
  }
  ~StripLayersTest() override { QSettings().remove("strip_layers"); }
  void open() {
    strip = std::make_unique<WallStrip>(session);
    strip->resize(1280, 260);
    strip->show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(strip.get());
  }
  QToolButton* button(const char* key) const { return strip->findChild<QToolButton*>(key); }
  void click(const char* key) {
    QToolButton* at = button(key);
    ASSERT_TRUE(at) << key;
    QTest::mouseClick(at, Qt::LeftButton, {}, at->rect().center());
  }
  QImage painted() const { return strip->viewport()->grab().toImage(); }
};

TEST_F(StripLayersTest, EachSwitchChangesWhatIsPaintedAndBack) {
  for (const char* key : kKeys) {
    const QImage before = painted();
    const bool was = button(key)->isChecked();
    click(key);
    EXPECT_EQ(button(key)->isChecked(), !was) << key;
    EXPECT_NE(painted(), before) << key << " changes nothing";
    click(key);
    EXPECT_EQ(button(key)->isChecked(), was) << key;
    EXPECT_EQ(painted(), before) << key << " does not come back";
  }
}

TEST_F(StripLayersTest, EachSwitchIsRememberedByTheNextStrip) {
  for (const char* key : kKeys) {
    const bool was = button(key)->isChecked();
    click(key);
    const QImage then = painted();
    open();
    EXPECT_EQ(button(key)->isChecked(), !was) << key;
    EXPECT_EQ(painted(), then) << key;
  }
}

TEST_F(StripLayersTest, SpaceTurnsASwitchAsAClickDoes) {
  QToolButton* people = button("people");
  people->setFocus();
  const QImage before = painted();
  QTest::keyClick(people, Qt::Key_Space);
  EXPECT_TRUE(people->isChecked());
  EXPECT_NE(painted(), before);
}

}  // namespace
}  // namespace elbowroom::ui
