// Commands on the wall strip by the right button, mixed selections, and what it answers while one drags.
#include <gtest/gtest.h>

#include <QSignalSpy>

#include "core/plan/wall_catalogue.h"
#include "tests/ui/strip_driver.h"
#include "ui/session/selected.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

class StripCommandsTest : public StripDriver {
 protected:
  WallItem put(const char* id, const char* kind, const char* wall, Length along) {
    WallItem item = typicalWallItem(kind, session.option());
    item.id = {id};
    item.wall = {wall};
    item.along = along;
    session.perform(PutWallItems{{item}}, "Add");
    return item;
  }
  void stateStuds(const char* id, Length first) {
    Wall wall = *findWall(session.option(), {id});
    wall.studs = Studs{first, 16_in, {}};
    session.perform(PutWall{wall}, "State studs");
  }
  const WallItem& item(const char* id) const { return *findWallItem(session.option(), {id}); }
  QPointF middleOf(const char* id) const { return strip.placeOf({id}).center(); }
  std::string undoLabel() const { return session.history().undoLabel(); }
};

TEST_F(StripCommandsTest, AMirrorFillsItsWallInOneStep) {
  ASSERT_TRUE(choose(middleOf("m"), "Mirror wall to wall and counter to ceiling"));
  // The bath on the east wall is 15 in high, under the counter: nothing stands beside the mirror.
  EXPECT_EQ(mirror().width, 96_in);
  EXPECT_EQ(mirror().along, 48_in);
  EXPECT_EQ(mirror().bottom, 34_in);
  EXPECT_EQ(mirror().height, 62_in);
  EXPECT_FALSE(choose(middleOf("m"), "Mirror wall to wall"));  // it does already
  session.undo();
  EXPECT_EQ(mirror().width, 24_in);
  EXPECT_FALSE(session.history().canUndo());
}

TEST_F(StripCommandsTest, OnAnEmptyWallTheCommandPlacesAMirror) {
  // The west wall, 252 to 312 on the strip; its door takes 25 to 55 of it.
  ASSERT_TRUE(choose(px(252 + 12, 60), "Mirror wall to wall and counter to ceiling"));
  ASSERT_EQ(session.option().on_walls.size(), 2u);
  const WallItem& placed = session.option().on_walls[1];
  EXPECT_EQ(placed.wall, ElementId{"w"});
  EXPECT_EQ(placed.along - placed.width / 2, 0_in);
  EXPECT_EQ(placed.width, 25_in);
  EXPECT_EQ(placed.bottom, 40_in);
  EXPECT_EQ(placed.bottom + placed.height, 96_in);
  EXPECT_EQ(session.selection(), std::set<ElementId>{placed.id});
  session.undo();
  EXPECT_EQ(session.option().on_walls.size(), 1u);
}

TEST_F(StripCommandsTest, ANicheMovesIntoTheNearestBay) {
  stateStuds("n", 8_in);
  put("niche", "niche", "n", 12_in);  // studs at 8 and 24: the bay is 8 3/4 to 23 1/4
  const Length half = item("niche").width / 2;
  ASSERT_LT(12_in - half, 8.75_in);
  ASSERT_TRUE(choose(middleOf("niche"), "Move into the nearest stud bay"));
  EXPECT_EQ(item("niche").along, 8.75_in + half);
  EXPECT_FALSE(choose(middleOf("niche"), "Move into the nearest stud bay"));
}

TEST_F(StripCommandsTest, CopiesAndPastesOnAnotherWallAndDuplicates) {
  ASSERT_TRUE(choose(middleOf("m"), "Copy"));
  ASSERT_TRUE(choose(px(96 + 30, 80), "Paste on this wall"));  // the east wall
  ASSERT_EQ(session.option().on_walls.size(), 2u);
  const WallItem pasted = session.option().on_walls[1];
  EXPECT_EQ(pasted.wall, ElementId{"e"});
  EXPECT_EQ(pasted.bottom, mirror().bottom);
  EXPECT_EQ(pasted.along, 48_in);  // 75 in is past the end of this wall
  EXPECT_EQ(session.selection(), std::set<ElementId>{pasted.id});
  EXPECT_EQ(undoLabel(), "Paste");
  ASSERT_TRUE(choose(middleOf("m"), "Duplicate"));
  ASSERT_EQ(session.option().on_walls.size(), 3u);
  EXPECT_EQ(session.option().on_walls[2].along, 49_in);  // to the left: 75 - 24 - 2
  session.undo();
  session.undo();
  EXPECT_EQ(session.option().on_walls.size(), 1u);
}

TEST_F(StripCommandsTest, SelectAllTakesWhatIsOnWallsAndTheCeiling) {
  session.perform(PutCeilingItems{{typicalCeilingItem("fan", session.option())}}, "Add");
  selectAll(session);
  EXPECT_EQ(session.selection().size(), 3u + 2u + 1u + 1u);
  // And all of it is copied in one step.
  duplicateSelected(session);
  EXPECT_EQ(session.option().fixtures.size(), 6u);
  EXPECT_EQ(session.option().on_walls.size(), 2u);
  EXPECT_EQ(session.option().on_ceiling.size(), 2u);
  session.undo();
  EXPECT_EQ(session.option().fixtures.size(), 3u);
}

TEST_F(StripCommandsTest, AMixedSelectionNudgesInOneStep) {
  session.select({{"m"}, {"v"}, {"win"}});
  for (int i = 0; i < 3; ++i) QTest::keyClick(&strip, Qt::Key_Left);
  QTest::keyClick(&strip, Qt::Key_Up);
  const auto vanity = [&] { return std::get<OnWall>(findFixture(session.option(), {"v"})->placement).along; };
  EXPECT_EQ(mirror().along, 73.5_in);
  EXPECT_EQ(mirror().bottom, 40.5_in);
  EXPECT_EQ(vanity(), 73.5_in);
  EXPECT_EQ(findOpening(session.option(), {"win"})->along, 46.5_in);
  session.undo();
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_EQ(mirror().bottom, 40_in);
  EXPECT_EQ(vanity(), 75_in);
  EXPECT_EQ(findOpening(session.option(), {"win"})->along, 48_in);
  EXPECT_FALSE(session.history().canUndo());
}

TEST_F(StripCommandsTest, AVanityTakesItsMirrorAlong) {
  session.select({{"m"}, {"v"}});
  const QPointF at = px(156 + 75, 20);  // on the vanity
  drag(at, at + QPointF(strip.map().px(-10_in), strip.map().px(-5_in)));
  const Length vanity = std::get<OnWall>(findFixture(session.option(), {"v"})->placement).along;
  EXPECT_EQ(vanity, mirror().along);
  EXPECT_NEAR(vanity.inches(), 65, 1.6);
  EXPECT_NEAR(mirror().bottom.inches(), 45, 1.6);  // up only what hangs
  session.undo();
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_FALSE(session.history().canUndo());
}

TEST_F(StripCommandsTest, ANicheAnswersWhileItIsDragged) {
  stateStuds("n", 8_in);
  put("niche", "niche", "n", 16_in);
  ASSERT_LE(item("niche").width, 14.5_in);
  QSignalSpy said(&strip, &WallStrip::said);
  const QPointF from = middleOf("niche");
  press(from);
  for (int i = 1; i <= 8; ++i)
    moveTo(from + QPointF(strip.map().px(1_in) * i, 0), Qt::LeftButton, Qt::ShiftModifier);
  // 8 in to the right: its middle is on the stud at 24.
  EXPECT_TRUE(said.last()[0].toString().contains("must move")) << said.last()[0].toString().toStdString();
  EXPECT_TRUE(said.last()[0].toString().contains("header"));
  for (int i = 7; i >= 0; --i)
    moveTo(from + QPointF(strip.map().px(1_in) * i, 0), Qt::LeftButton, Qt::ShiftModifier);
  EXPECT_TRUE(said.last()[0].toString().contains("fits between the studs, 1'-2 1/2"))
      << said.last()[0].toString().toStdString();
  release(from);
}

TEST_F(StripCommandsTest, AMirrorSaysWhomItServesWhileItIsDragged) {
  QSignalSpy said(&strip, &WallStrip::said);
  const auto words = [&] {
    const QPointF from = middleOf("m");
    press(from);
    for (int i = 1; i <= 6; ++i) moveTo(from + QPointF(-6.0 * i, 0), Qt::LeftButton);
    const QString last = said.last()[0].toString();
    QTest::keyClick(&strip, Qt::Key_Escape);
    release(from);
    return last;
  };
  // Head of 74 in: top at 71.6 or more. Face of somebody in a wheelchair: lower edge at 41 or less. 30 in is
  // less.
  EXPECT_TRUE(words().contains("no height of a mirror this high serves all of Tall adult and Visitor"))
      << words().toStdString();
  WallItem higher = mirror();
  higher.height = 36_in;
  session.perform(PutWallItems{{higher}}, "Resize");
  EXPECT_TRUE(words().contains("shows all of Tall adult and Visitor; lower edge from"))
      << words().toStdString();
}

// A hook: 55 to 70 in (comfort), beside nothing that was worked out for people.
TEST_F(StripCommandsTest, PublishedHeightsAreSaidWhileItIsDragged) {
  QSignalSpy said(&strip, &WallStrip::said);
  ASSERT_TRUE(session.perform(SetBooks{{"comfort"}}, "books"));
  WallItem hook = mirror();
  hook.id = {"hk"};
  hook.kind = "hook";
  hook.wall = {"n"};
  hook.along = 20_in, hook.bottom = 60_in;
  hook.width = 4_in, hook.height = 6_in;
  ASSERT_TRUE(session.perform(PutWallItems{{hook}}, "Hook"));
  const QPointF from = middleOf("hk");
  press(from);
  for (int i = 1; i <= 6; ++i) moveTo(from + QPointF(3.0 * i, 0), Qt::LeftButton);
  EXPECT_TRUE(said.last()[0].toString().contains("published: height of its centreline 55\" to 70\""))
      << said.last()[0].toString().toStdString();
  release(from);
}

TEST_F(StripCommandsTest, WhatReachesACornerShowsOnTheNeighbourToo) {
  WallItem shelf = put("shelf", "shelf", "s", 90_in);
  shelf.width = 12_in;
  shelf.depth = 8_in;
  shelf.height = 4_in;
  shelf.bottom = 70_in;
  session.perform(PutWallItems{{shelf}}, "Size");
  // The west wall begins at 252: the shelf's side is its first 8 in.
  const QPointF side = px(252 + 5, 72);
  EXPECT_EQ(strip.thingAt(side), ElementId{"shelf"});
  QTest::mouseClick(strip.viewport(), Qt::LeftButton, {}, side.toPoint());
  EXPECT_EQ(session.selection(), std::set<ElementId>{{"shelf"}});
  // Its own place is where it hangs.
  EXPECT_NEAR(strip.placeOf({"shelf"}).center().x(), px(156 + 90, 0).x(), 0.01);
  shelf.along = 80_in;
  session.perform(PutWallItems{{shelf}}, "Move");
  EXPECT_EQ(strip.thingAt(side), ElementId{"w"});
}

}  // namespace
}  // namespace elbowroom::ui
