// Facts, slopes, studs, glass and the pages of things on walls and the ceiling, by their fields.
#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "core/plan/wall_catalogue.h"
#include "tests/ui/rooms.h"
#include "ui/particulars/facts_form.h"
#include "ui/particulars/particulars.h"
#include "ui/session/session.h"
#include "ui/widgets/amount_edit.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

Plan bathWithShower() {
  Plan plan = hallBath();
  Option& o = plan.options.front();
  Fixture shower = typicalFixture(FixtureKind::shower, o);
  shower.id = {"sh"};
  shower.placement = OnWall{{"n"}, 18_in, 0_in};
  o.fixtures.push_back(shower);
  WallItem receptacle = typicalWallItem("receptacle", o);
  receptacle.id = {"r"};
  receptacle.wall = {"s"};
  receptacle.along = 55_in;
  o.on_walls.push_back(receptacle);
  CeilingItem fan = typicalCeilingItem("fan", o);
  fan.id = {"f"};
  fan.at = {48_in, 30_in};
  o.on_ceiling.push_back(fan);
  return plan;
}

struct FactsTest : testing::Test {
  Session session{bathWithShower()};
  Particulars particulars{session};
  void SetUp() override {
    particulars.resize(300, 800);
    particulars.show();
  }
  template <typename Field>
  Field* field(const QString& name) {
    for (Field* each : particulars.findChildren<Field*>())
      if (each->accessibleName() == name && each->isVisible()) return each;
    return nullptr;
  }
  void type(const QString& name, const QString& text) {
    QLineEdit* line = field<QLineEdit>(name);
    ASSERT_NE(line, nullptr) << name.toStdString();
    line->selectAll();
    QTest::keyClick(line, Qt::Key_Delete);
    QTest::keyClicks(line, text);
    QTest::keyClick(line, Qt::Key_Return);
  }
  void pick(const QString& name, const QString& choice) {
    QComboBox* box = field<QComboBox>(name);
    ASSERT_NE(box, nullptr) << name.toStdString();
    const int index = box->findText(choice);
    ASSERT_GE(index, 0) << choice.toStdString();
    box->setCurrentIndex(index);
    emit box->activated(index);
  }
  void tick(const QString& label) {
    for (QCheckBox* box : particulars.findChildren<QCheckBox*>())
      if (box->text() == label && box->isVisible()) return box->click();
    FAIL() << label.toStdString();
  }
  bool press(const QString& label) {
    for (QPushButton* each : particulars.findChildren<QPushButton*>())
      if (each->text() == label && each->isVisible()) {
        each->click();
        return true;
      }
    return false;
  }
};

TEST_F(FactsTest, EveryFactOfTheKindHasItsRowAndNoOther) {
  const std::tuple<const char*, FactOn, const char*> things[] = {
      {"", FactOn::room, ""},          {"s", FactOn::wall, ""},         {"win", FactOn::opening, "window"},
      {"d1", FactOn::opening, "door"}, {"sh", FactOn::fixture, "shower"}, {"wc", FactOn::fixture, "toilet"},
      {"r", FactOn::wallItem, "receptacle"}, {"f", FactOn::ceilingItem, "fan"}};
  for (const auto& [id, on, kind] : things) {
    session.select(*id ? std::set<ElementId>{{id}} : std::set<ElementId>{});
    int rows = 0;
    for (const FactInfo& info : allFacts()) {
      if (info.on != on) continue;
      const bool has = particulars.facts()->ask(std::string(info.key));
      EXPECT_EQ(has, concerns(info, kind)) << id << " " << info.key;
      rows += has;
    }
    EXPECT_EQ(particulars.facts()->isVisible(), rows > 0) << id;
  }
}

TEST_F(FactsTest, YesNoNotStatedAndUndo) {
  session.select({{"r"}});
  pick("Protected against earth faults", "Yes");
  EXPECT_EQ(yesNo(findWallItem(session.option(), {"r"})->facts, "gfci"), true);
  pick("Protected against earth faults", "No");
  EXPECT_EQ(yesNo(findWallItem(session.option(), {"r"})->facts, "gfci"), false);
  session.undo();
  EXPECT_EQ(field<QComboBox>("Protected against earth faults")->currentText(), "Yes");
  pick("Protected against earth faults", "not stated");
  EXPECT_FALSE(yesNo(findWallItem(session.option(), {"r"})->facts, "gfci"));
}

TEST_F(FactsTest, AmountsAndLengths) {
  session.select({{"f"}});
  type("Air flow, cfm", "110");
  EXPECT_EQ(amountOf(findCeilingItem(session.option(), {"f"})->facts, "flow_cfm"), Amount::of(110));
  type("Air flow, cfm", "some");
  EXPECT_EQ(amountOf(findCeilingItem(session.option(), {"f"})->facts, "flow_cfm"), Amount::of(110));
  EXPECT_FALSE(field<QLineEdit>("Air flow, cfm")->toolTip().isEmpty());
  type("Air flow, cfm", "");
  EXPECT_FALSE(amountOf(findCeilingItem(session.option(), {"f"})->facts, "flow_cfm"));
  session.select({{"wc"}});
  type("Seat height", "17 1/4");
  EXPECT_EQ(lengthOf(findFixture(session.option(), {"wc"})->facts, "seat_height"), 17.25_in);
}

TEST_F(FactsTest, ThePageOfAThingOnAWall) {
  session.select({{"m"}});
  const auto mirror = [&] { return *findWallItem(session.option(), {"m"}); };
  type("Centre from right", "20");
  EXPECT_EQ(mirror().along, 76_in);
  type("Centre above floor", "60");
  EXPECT_EQ(mirror().bottom, 45_in);  // 30 high
  type("Depth", "1 1/2");
  EXPECT_EQ(mirror().depth, 1.5_in);
  pick("Kind", "Lit mirror");
  EXPECT_EQ(mirror().kind, "lit-mirror");
  pick("Height set for", "Tall adult");
  EXPECT_EQ(mirror().person, "Tall adult");
  EXPECT_EQ(field<QComboBox>("Belongs to"), nullptr);
  pick("Kind", "Niche");
  pick("Belongs to", field<QComboBox>("Belongs to")->itemText(1));
  EXPECT_EQ(mirror().shower.text, field<QComboBox>("Belongs to")->itemData(1).toString().toStdString());
  pick("Wall", field<QComboBox>("Wall")->itemText(1));
  EXPECT_EQ(mirror().wall, ElementId{"e"});
  EXPECT_EQ(mirror().along, 48_in);  // the east wall is 60 long, the mirror 24 wide
  session.undo();
  EXPECT_EQ(mirror().wall, ElementId{"s"});
}

TEST_F(FactsTest, ThePageOfAThingOnTheCeiling) {
  session.select({{"f"}});
  type("Centre, x", "40");
  EXPECT_EQ(findCeilingItem(session.option(), {"f"})->at.x, 40_in);
  type("Width", "13");
  EXPECT_EQ(findCeilingItem(session.option(), {"f"})->width, 13_in);
  ASSERT_TRUE(press("Remove from the plan"));
  EXPECT_EQ(findCeilingItem(session.option(), {"f"}), nullptr);
}

TEST_F(FactsTest, StudsOfAWall) {
  session.select({{"s"}});
  const auto studs = [&] { return findWall(session.option(), {"s"})->studs; };
  tick("Studs are known");
  ASSERT_TRUE(studs());
  EXPECT_EQ(studs()->spacing, 16_in);
  type("First stud", "8");
  type("On centre", "24");
  EXPECT_EQ(studs()->first, 8_in);
  EXPECT_EQ(studs()->spacing, 24_in);
  tick("Studs are known");
  EXPECT_FALSE(studs());
}

TEST_F(FactsTest, SlopesOfTheCeiling) {
  const auto slopes = [&] { return session.option().room.ceiling.slopes; };
  ASSERT_TRUE(press("Add a slope"));
  ASSERT_EQ(slopes().size(), 1U);
  EXPECT_EQ(slopes()[0].wall, ElementId{"n"});
  type("Height there", "60");
  type("Over a run of", "48");
  pick("Falls toward", field<QComboBox>("Falls toward")->itemText(3));
  EXPECT_EQ(slopes()[0], (CeilingSlope{{"w"}, 60_in, 48_in}));
  ASSERT_TRUE(press("Remove this slope"));
  EXPECT_TRUE(slopes().empty());
  session.undo();
  EXPECT_EQ(slopes().size(), 1U);
}

TEST_F(FactsTest, GlassOfAShower) {
  session.select({{"sh"}});
  const auto glass = [&] { return findFixture(session.option(), {"sh"})->glass; };
  tick("Glass at the front");
  ASSERT_EQ(glass().size(), 1U);
  EXPECT_EQ(glass()[0].side, Side::front);
  type("Height of the glass at the front", "78");
  type("Door in the glass at the front, width", "26");
  pick("Opens", "out of the shower");
  pick("Hinge side", "Left");
  EXPECT_EQ(glass()[0].height, 78_in);
  EXPECT_EQ(glass()[0].door, 26_in);
  EXPECT_EQ(glass()[0].door_swing, Swing::out);
  EXPECT_EQ(glass()[0].hinge, Hand::left);
  tick("Glass at the front");
  EXPECT_TRUE(glass().empty());
}

TEST_F(FactsTest, CloserAndLatchOfADoor) {
  session.select({{"d1"}});
  pick("Closer", "Yes");
  pick("Latch", "No");
  EXPECT_EQ(findOpening(session.option(), {"d1"})->closer, true);
  EXPECT_EQ(findOpening(session.option(), {"d1"})->latch, false);
  pick("Closer", "not stated");
  EXPECT_FALSE(findOpening(session.option(), {"d1"})->closer);
}

}  // namespace
}  // namespace elbowroom::ui
