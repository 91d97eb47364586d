#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>
#include <set>

#include "tests/ui/rooms.h"
#include "ui/particulars/pages.h"
#include "ui/particulars/particulars.h"
#include "ui/session/session.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

struct ParticularsTest : testing::Test {
  Session session{hallBath()};
  Particulars particulars{session};

  void SetUp() override {
    particulars.resize(280, 700);
    particulars.show();
  }
  template <typename Field>
  Field* field(const QString& name) {
    for (Field* each : particulars.page()->findChildren<Field*>())
      if (each->accessibleName() == name && each->isVisible()) return each;
    return nullptr;
  }
  LengthEdit* length(const QString& name) {
    QLineEdit* line = field<QLineEdit>(name);
    return line ? qobject_cast<LengthEdit*>(line->parentWidget()) : nullptr;
  }
  void type(const QString& name, const QString& text) {
    LengthEdit* edit = length(name);
    ASSERT_NE(edit, nullptr) << name.toStdString();
    edit->line()->selectAll();
    QTest::keyClicks(edit->line(), text);
    QTest::keyClick(edit->line(), Qt::Key_Return);
  }
  void pick(const QString& name, const QString& choice) {
    QComboBox* box = field<QComboBox>(name);
    ASSERT_NE(box, nullptr) << name.toStdString();
    const int index = box->findText(choice);
    ASSERT_GE(index, 0);
    box->setCurrentIndex(index);
    emit box->activated(index);
  }
  const Fixture& fixture(const char* id) { return *findFixture(session.option(), {id}); }
  const Opening& door() { return *findOpening(session.option(), {"d1"}); }
};

TEST_F(ParticularsTest, NothingSelectedShowsTheRoom) {
  EXPECT_EQ(particulars.title(), "Room");
  type("Ceiling height", "7' 6\"");
  EXPECT_EQ(session.option().room.ceiling.height, 90_in);
  length("Ceiling height")->line()->selectAll();
  QTest::keyClick(length("Ceiling height")->line(), Qt::Key_Delete);
  QTest::keyClick(length("Ceiling height")->line(), Qt::Key_Return);
  EXPECT_FALSE(session.option().room.ceiling.height.has_value());
  session.undo();
  EXPECT_EQ(length("Ceiling height")->line()->text(), "7'-6\"");
}

// At the width that the window gives it first, nothing slides under the scroll bar.
TEST_F(ParticularsTest, NoPageIsWiderThanItsPanel) {
  particulars.resize(270, 400);
  for (const char* id : {"", "v", "wc", "b", "d1", "win", "s"}) {
    session.select(*id ? std::set<ElementId>{{id}} : std::set<ElementId>{});
    QTest::qWait(1);
    EXPECT_LE(particulars.widget()->minimumSizeHint().width(), particulars.viewport()->width()) << id;
  }
}

TEST_F(ParticularsTest, AWallsThicknessAndMarks) {
  session.select({{"w"}});
  EXPECT_EQ(particulars.title(), "Wall w");
  type("Thickness", "6 1/2");
  EXPECT_EQ(findWall(session.option(), {"w"})->thickness, 6.5_in);
  for (QCheckBox* box : particulars.page()->findChildren<QCheckBox*>()) box->click();
  EXPECT_TRUE(findWall(session.option(), {"w"})->exterior);
  EXPECT_TRUE(findWall(session.option(), {"w"})->plumbing);
}

TEST_F(ParticularsTest, ADoorIsMeasuredToBothCorners) {
  session.select({{"d1"}});
  // Wall w runs 60 in; the 30 in leaf is centred at 40: jambs at 25 and 55.
  EXPECT_EQ(length("From left corner")->length(), 25_in);
  EXPECT_EQ(length("From right corner")->length(), 5_in);
  type("From right corner", "8");
  EXPECT_EQ(door().along, 37_in);
  type("Leaf width", "2'4\"");
  EXPECT_EQ(door().width, 28_in);
  EXPECT_EQ(door().along, 37_in);
}

TEST_F(ParticularsTest, ADoorShowsOnlyWhatItsActionHas) {
  session.select({{"d1"}});
  EXPECT_NE(field<QComboBox>("Hinge side"), nullptr);
  EXPECT_EQ(field<QComboBox>("Slides toward"), nullptr);
  EXPECT_EQ(length("Sill above floor"), nullptr);
  pick("Action", "Pocket");
  EXPECT_EQ(door().action, DoorAction::pocket);
  EXPECT_EQ(field<QComboBox>("Hinge side"), nullptr);
  pick("Slides toward", "Left");
  EXPECT_EQ(door().toward, Hand::left);
  session.select({{"win"}});
  EXPECT_EQ(field<QComboBox>("Action"), nullptr);
  type("Sill above floor", "40");
  EXPECT_EQ(findOpening(session.option(), {"win"})->sill, 40_in);
}

TEST_F(ParticularsTest, WhatThePlanRefusesStaysInTheFieldWithTheReason) {
  session.select({{"d1"}});
  type("Leaf width", "72");  // the wall is 60 in long
  EXPECT_EQ(door().width, 30_in);
  LengthEdit* edit = length("Leaf width");
  EXPECT_EQ(edit->problem(), session.lastError());
  EXPECT_FALSE(edit->problem().isEmpty());
  EXPECT_EQ(edit->line()->text(), "6'-0\"");
  QTest::keyClick(edit->line(), Qt::Key_Escape);
  EXPECT_EQ(edit->line()->text(), "2'-6\"");
  EXPECT_TRUE(edit->problem().isEmpty());
}

TEST_F(ParticularsTest, AFixturesSizePlaceAndStatus) {
  session.select({{"v"}});
  type("Width", "24");
  type("Centre from right", "1'");
  pick("Status", "Keep");
  EXPECT_EQ(fixture("v").width, 24_in);
  EXPECT_EQ(std::get<OnWall>(fixture("v").placement).along, 84_in);  // wall s is 96 in long
  EXPECT_EQ(fixture("v").status, Status::keep);
  QLineEdit* name = field<QLineEdit>("Name");
  QTest::keyClicks(name, "Her vanity");
  QTest::keyClick(name, Qt::Key_Return);
  EXPECT_EQ(fixture("v").name, "Her vanity");
  EXPECT_EQ(particulars.title(), "Her vanity");
}

TEST_F(ParticularsTest, KneeSpaceOnVanitiesOnlyAndBowlOnToilets) {
  session.select({{"wc"}});
  EXPECT_NE(length("Bowl width"), nullptr);
  EXPECT_EQ(length("Knee height"), nullptr);
  session.select({{"v"}});
  EXPECT_EQ(length("Bowl width"), nullptr);
  for (QCheckBox* box : particulars.page()->findChildren<QCheckBox*>())
    if (box->isVisible()) box->click();
  ASSERT_TRUE(fixture("v").knee_space);
  EXPECT_EQ(fixture("v").knee_space->height, 27_in);  // 2010 ADA Standards 306.3.3
  type("Knee depth", "10");
  EXPECT_EQ(fixture("v").knee_space->depth, 10_in);
}

TEST_F(ParticularsTest, StepsOfOneFieldAreOneUndoTypedFiguresEachTheirOwn) {
  session.select({{"v"}});
  LengthEdit* width = length("Width");
  for (int i = 0; i < 4; ++i) QTest::keyClick(width->line(), Qt::Key_Up);
  EXPECT_EQ(fixture("v").width, 32_in);
  session.undo();
  EXPECT_EQ(fixture("v").width, 30_in);
  type("Width", "28");
  type("Width", "26");
  session.undo();
  EXPECT_EQ(fixture("v").width, 28_in);
}

TEST_F(ParticularsTest, ATextBeingTypedNeverReachesAnotherElement) {
  session.select({{"v"}});
  type("Depth", "28");  // as deep as the toilet: the field has no new figure to show
  LengthEdit* depth = length("Depth");
  depth->line()->selectAll();
  QTest::keyClicks(depth->line(), "33");
  session.select({{"wc"}});
  EXPECT_EQ(fixture("wc").depth, 28_in);
  EXPECT_EQ(length("Depth")->line()->text(), "2'-4\"");
  QTest::keyClick(length("Depth")->line(), Qt::Key_Return);
  EXPECT_EQ(fixture("wc").depth, 28_in);
}

TEST_F(ParticularsTest, SeveralAreCountedNamedAndRemovedTogether) {
  session.select({{"v"}, {"wc"}, {"w"}});
  EXPECT_EQ(particulars.title(), "3 selected");
  particulars.page()->findChild<QPushButton*>()->click();
  EXPECT_EQ(findFixture(session.option(), {"v"}), nullptr);
  EXPECT_EQ(findFixture(session.option(), {"wc"}), nullptr);
  EXPECT_NE(findWall(session.option(), {"w"}), nullptr);  // walls belong to the room
  session.undo();
  EXPECT_NE(findFixture(session.option(), {"v"}), nullptr);
}

TEST_F(ParticularsTest, AMirrorOnTheWall) {
  session.select({{"m"}});
  type("Bottom above floor", "42");
  EXPECT_EQ(findWallItem(session.option(), {"m"})->bottom, 42_in);
}

TEST_F(ParticularsTest, EveryFieldHasAName) {
  for (const char* id : {"v", "wc", "b", "d1", "win", "w", "m"}) {
    session.select({{id}});
    for (QWidget* each : particulars.page()->findChildren<QWidget*>()) {
      if (!each->isVisible() || !(each->focusPolicy() & Qt::TabFocus)) continue;
      const auto* button = qobject_cast<QAbstractButton*>(each);
      const bool inner = qobject_cast<QAbstractSpinBox*>(each->parentWidget());
      EXPECT_TRUE(inner || !each->accessibleName().isEmpty() || (button && !button->text().isEmpty()))
          << id << ": " << each->metaObject()->className();
    }
  }
}

}  // namespace
}  // namespace elbowroom::ui
