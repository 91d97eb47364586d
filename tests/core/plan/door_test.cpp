#include <gtest/gtest.h>

#include <algorithm>

#include "core/plan/layout.h"
#include "core/rules/measures.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

double clearAt(Opening door, double width, Angle opens = 90_deg) {
  door.width = in(width);
  PlacedOpening placed;
  placed.opening = door;
  return clearOpening(placed, opens).inches();
}

// Pure geometry with 1/8 gaps and a 1/4 pin offset: W - 1.875 for a 1 3/8 leaf and a 7/16 stop, W - 2.3125
// for a 1 3/4 leaf and a 1/2 stop.
TEST(ClearOpening, HingedLeafAtNinetyDegrees) {
  const std::pair<double, double> thin[] = {{24, 22.125}, {30, 28.125}, {32, 30.125}, {34, 32.125}, {36, 34.125}};
  for (const auto& [leaf, clear] : thin) EXPECT_DOUBLE_EQ(clearAt({}, leaf), clear);
  Opening thick;
  thick.leaf_thickness = 1.75_in;
  thick.stop = 0.5_in;
  EXPECT_DOUBLE_EQ(clearAt(thick, 34), 31.6875);
  EXPECT_DOUBLE_EQ(clearAt(thick, 36), 33.6875);
}

// Swing-clear hinges take the leaf out of the opening: stop to stop, W + 2 x 1/8 - two stops. Read second hand
// (therapist's study cards): 1 1/2 to 2 in more than on butt hinges; for a thick leaf the geometry gives the same.
TEST(ClearOpening, SwingClearHingesTakeTheLeafOutOfTheOpening) {
  Opening thin;
  thin.facts["clear_hinges"] = true;
  EXPECT_DOUBLE_EQ(clearAt(thin, 32), 31.375);
  EXPECT_DOUBLE_EQ(clearAt(thin, 32, 60_deg), clearAt({}, 32, 60_deg)) << "it must open all the way";
  Opening thick;
  thick.leaf_thickness = 1.75_in;
  thick.stop = 0.5_in;
  const double on_butts = clearAt(thick, 34);
  thick.facts["clear_hinges"] = true;
  EXPECT_GE(clearAt(thick, 34) - on_butts, 1.5);
  EXPECT_LE(clearAt(thick, 34) - on_butts, 2);
}

// The leaf's face is a line through the foot of the pin's offset; distance from the stop's edge to it, worked
// by turning the closed face's ends about the pin.
TEST(ClearOpening, ShrinksWithTheAngle) {
  EXPECT_DOUBLE_EQ(clearAt({}, 32, 0_deg), 0);
  const double radians = std::numbers::pi / 6, behind = 0.25 + 1.375;
  const double stop_x = 32 + 0.25 - 0.0625 - 0.4375, stop_y = -behind;
  // Unit normal of the face turned by 30 degrees, and a point of that face.
  const double nx = std::sin(radians), ny = -std::cos(radians);
  const double px = behind * std::sin(radians), py = -behind * std::cos(radians);
  EXPECT_NEAR(clearAt({}, 32, 30_deg), nx * (stop_x - px) + ny * (stop_y - py), 1e-6);
  double before = 0;
  for (int a = 1; a <= 90; ++a) {
    const double clear = clearAt({}, 32, Angle::fromDegrees(a));
    EXPECT_GE(clear, before);
    before = clear;
  }
}

TEST(ClearOpening, OtherActions) {
  Opening door;
  door.action = DoorAction::pocket;
  EXPECT_DOUBLE_EQ(clearAt(door, 30), 29.5);
  door.action = DoorAction::surfaceSliding;
  EXPECT_DOUBLE_EQ(clearAt(door, 36), 32);  // the leaf covers 2 in of wall at each side of its opening
  EXPECT_DOUBLE_EQ(clearAt(door, 40), 36);
  EXPECT_DOUBLE_EQ(clearAt(door, 3), 0);
  door.action = DoorAction::cased;
  EXPECT_DOUBLE_EQ(clearAt(door, 32), 32);
  door.action = DoorAction::bifold;
  EXPECT_DOUBLE_EQ(clearAt(door, 30), 30 - 2 * 1.375);
  door.action = DoorAction::doubleLeaf;  // two pins, two leaves, three gaps, no stop
  EXPECT_NEAR(clearAt(door, 48), 48 + 3 * 0.125 - 2 * (0.0625 + 0.25 + 1.375), 1e-9);
}

TEST(Swing, HingesAndLeavesOfEachHand) {
  for (const Swing swing : {Swing::in, Swing::out}) {
    for (const Hand hand : {Hand::left, Hand::right}) {
      RoomMaker room(96, 60);
      room.door("d", "n", 40, 30, hand, swing);
      const Layout layout = room.layout();
      ASSERT_EQ(layout.openings[0].leaves.size(), 1u);
      const Leaf leaf = layout.openings[0].leaves[0];
      const double face = swing == Swing::in ? 0 : -4.5;
      EXPECT_EQ(leaf.hinge, room.at(hand == Hand::left ? 25 : 55, face));
      EXPECT_EQ(leaf.hinge + leaf.width * leaf.closed, room.at(hand == Hand::left ? 55 : 25, face));
      const Point open = leaf.hinge + leaf.width * leaf.closed.turned(leaf.sweep);
      EXPECT_EQ(open, room.at(hand == Hand::left ? 25 : 55, swing == Swing::in ? 30 : -34.5));
      EXPECT_EQ(layout.openings[0].leaves_inside, swing == Swing::in);
    }
  }
}

// Quarter circle pi/4 W^2 and keep-clear square W^2.
TEST(Swing, AreasOfTheTable) {
  const std::tuple<double, double, double> table[] = {
      {36, 7.069, 9.000}, {32, 5.585, 7.111}, {30, 4.909, 6.250}, {28, 4.276, 5.444}, {24, 3.142, 4.000}};
  for (const auto& [width, quarter, square] : table) {
    RoomMaker room(96, 96);
    room.door("d", "n", 48, width, Hand::left, Swing::in);
    const Layout layout = room.layout();
    const DoorFigures door = doorFigures(layout, layout.openings[0]);
    EXPECT_NEAR(door.sweep.squareFeet(), quarter, 0.0005);
    EXPECT_NEAR(door.square.squareFeet(), square, 0.0005);
    EXPECT_EQ(door.floor_taken, door.sweep);
    EXPECT_EQ(door.opens, 90_deg);
  }
  RoomMaker room(96, 96);
  room.door("d", "n", 48, 36, Hand::left, Swing::out);
  const Layout layout = room.layout();
  EXPECT_EQ(doorFigures(layout, layout.openings[0]).floor_taken, Area{});
}

// A 30 in leaf reaches 31 in at its far edge: a corner at (24, 18) from the pin clashes, at (26, 18) is clear.
TEST(Swing, CornerWithinTheLeafsReachClashes) {
  for (const double x : {24.0, 26.0}) {
    RoomMaker room(120, 120);
    room.door("d", "n", 45, 30, Hand::left, Swing::in);  // pin at x 30
    room.standing("c", FixtureKind::cabinet, 30 + x + 10, 18 + 10, 20, 20);
    const Layout layout = room.layout();
    const DoorFigures door = doorFigures(layout, layout.openings[0]);
    if (x == 24.0) {
      EXPECT_EQ(door.hits, ElementId{"c"});
      EXPECT_LT(door.opens, 90_deg);
      ASSERT_TRUE(door.hits_at);
      EXPECT_LT(door.clear_opening, 28.125_in);
    } else {
      EXPECT_FALSE(door.hits);
      EXPECT_EQ(door.opens, 90_deg);
      EXPECT_EQ(door.clear_opening, 28.125_in);
    }
  }
}

// The leaf's line reaches a corner at (20, 10) from the pin at atan(10/20).
TEST(Swing, OpensToTheAngleOfTheFirstCorner) {
  RoomMaker room(120, 120);
  room.door("d", "n", 45, 36, Hand::left, Swing::in);
  room.option().openings[0].along = 48_in;  // pin at x 30
  room.standing("c", FixtureKind::cabinet, 30 + 10, 10 + 10, 20, 20);
  const Layout layout = room.layout();
  EXPECT_NEAR(doorFigures(layout, layout.openings[0]).opens.degrees(), 26.565, 0.1);
}

TEST(Swing, WallCloserThanTheLeafStopsIt) {
  RoomMaker room(96, 24);
  room.door("d", "n", 48, 30, Hand::left, Swing::in);
  const Layout layout = room.layout();
  const DoorFigures door = doorFigures(layout, layout.openings[0]);
  EXPECT_EQ(door.hits, ElementId{"s"});
  EXPECT_NEAR(door.opens.degrees(), std::asin(24.0 / 30) * 180 / std::numbers::pi, 0.1);
}

RoomMaker sliding(DoorAction action, double along, double width, std::optional<Hand> toward) {
  RoomMaker room(120, 100);
  Opening& door = room.door("d", "n", along, width, Hand::left, Swing::in);
  door.action = action;
  door.toward = toward;
  return room;
}

// Pocket rough opening 2W + 1: 30 -> 61, 32 -> 65, 36 -> 73, 24 -> 49.
TEST(Pocket, TakesTwiceTheLeafAndAnInchOfWall) {
  const std::pair<double, double> table[] = {{30, 61}, {32, 65}, {36, 73}, {24, 49}};
  for (const auto& [width, rough] : table) {
    const RoomMaker room = sliding(DoorAction::pocket, 25, width, {});
    const Layout layout = room.layout();
    const PlacedOpening& placed = layout.openings[0];
    EXPECT_EQ(doorFigures(layout, placed).wall_needed, in(rough));
    EXPECT_TRUE(placed.leaves.empty());
    // More wall to the right; opening and cavity together are the rough opening, within the wall.
    Outline both = placed.cavity;
    both.push_back(placed.left);
    const Box box = boundsOf(both);
    EXPECT_EQ(box.high.x - box.low.x, in(rough));
    EXPECT_GT(boundsOf(placed.cavity).low.y, room.at(0, 0).y);
    EXPECT_TRUE(doorTroubles(layout, placed).empty());
  }
}

TEST(Pocket, IsRefusedAtACornerAnOpeningOrPipes) {
  {
    const RoomMaker room = sliding(DoorAction::pocket, 25, 30, Hand::left);
    const Layout layout = room.layout();
    const auto troubles = doorTroubles(layout, layout.openings[0]);
    ASSERT_EQ(troubles.size(), 1u);
    EXPECT_EQ(troubles[0].kind, DoorTrouble::pocketMeetsCorner);
    EXPECT_EQ(troubles[0].other, ElementId{"w"});
    EXPECT_EQ(troubles[0].short_by, 21_in);  // 31 needed, 10 there
    EXPECT_EQ(troubles[0].at, room.at(0, 0));
  }
  {
    RoomMaker room = sliding(DoorAction::pocket, 25, 30, Hand::right);
    room.door("win", "n", 80, 24, Hand::left, Swing::in).kind = OpeningKind::window;  // from 68
    const Layout layout = room.layout();
    const auto troubles = doorTroubles(layout, layout.openings[0]);
    ASSERT_EQ(troubles.size(), 1u);
    EXPECT_EQ(troubles[0].kind, DoorTrouble::pocketMeetsOpening);
    EXPECT_EQ(troubles[0].other, ElementId{"win"});
    EXPECT_EQ(troubles[0].short_by, 3_in);  // 31 needed, 28 there
  }
  {
    RoomMaker room = sliding(DoorAction::pocket, 25, 30, Hand::right);
    room.option().room.walls[0].plumbing = true;
    const Layout layout = room.layout();
    const auto troubles = doorTroubles(layout, layout.openings[0]);
    ASSERT_EQ(troubles.size(), 1u);
    EXPECT_EQ(troubles[0].kind, DoorTrouble::pocketMeetsPipes);
    EXPECT_EQ(troubles[0].short_by, Length{});
  }
}

// Leaf = opening + 2 x 2 in; free wall beside the opening >= leaf (O 32 -> 36, O 36 -> 40).
TEST(SurfaceSliding, NeedsItsOwnWidthOfWall) {
  const std::pair<double, double> table[] = {{32, 36}, {36, 40}};
  for (const auto& [opening, leaf] : table) {
    const RoomMaker fits = sliding(DoorAction::surfaceSliding, leaf + opening / 2, leaf, Hand::left);
    const Layout layout = fits.layout();
    EXPECT_EQ(distance(layout.openings[0].left, layout.openings[0].right), in(opening));
    EXPECT_EQ(areaOf(layout.openings[0].in_wall), in(opening) * in(4.5));
    EXPECT_EQ(doorFigures(layout, layout.openings[0]).clear_opening, in(opening));
    EXPECT_EQ(doorFigures(layout, layout.openings[0]).wall_needed, in(leaf));
    const Box park = boundsOf(layout.openings[0].park);
    EXPECT_EQ(park.low.x, in(0));
    EXPECT_EQ(park.high.x, in(leaf));
    EXPECT_TRUE(doorTroubles(layout, layout.openings[0]).empty());

    const RoomMaker misses = sliding(DoorAction::surfaceSliding, leaf + opening / 2 - 1, leaf, Hand::left);
    const Layout tight = misses.layout();
    const auto troubles = doorTroubles(tight, tight.openings[0]);
    ASSERT_EQ(troubles.size(), 1u);
    EXPECT_EQ(troubles[0].kind, DoorTrouble::noWallToSlideOn);
    EXPECT_EQ(troubles[0].short_by, 1_in);
  }
}

TEST(SurfaceSliding, FixtureAgainstTheWallBlocksTheStrip) {
  RoomMaker room = sliding(DoorAction::surfaceSliding, 25, 34, Hand::right);  // 30: parks at 40 to 74
  room.fixture("cab", FixtureKind::cabinet, "n", 80, 18, 14);                 // from 71
  room.standing("far", FixtureKind::cabinet, 50, 30, 18, 14);
  const Layout layout = room.layout();
  const auto troubles = doorTroubles(layout, layout.openings[0]);
  ASSERT_EQ(troubles.size(), 1u);
  EXPECT_EQ(troubles[0].kind, DoorTrouble::slideMeetsFixture);
  EXPECT_EQ(troubles[0].other, ElementId{"cab"});
  EXPECT_EQ(troubles[0].short_by, 3_in);
}

// A cabinet turned by 30 degrees: its back left corner, 1/2 in from the wall, is nearer to the jamb than the
// place where its left side leaves the strip that the leaf of 1 3/8 in takes.
TEST(SurfaceSliding, CornerWithinTheStripBlocksIt) {
  RoomMaker room = sliding(DoorAction::surfaceSliding, 25, 34, Hand::right);  // parks from 40 to 74
  const double turn = std::numbers::pi / 6, c = std::cos(turn), s = std::sin(turn);
  Fixture& cabinet = room.standing("cab", FixtureKind::cabinet, 0, 0, 10, 40);
  // Its back left corner as placed, (-5, 20) from the centre (y up), turned counter-clockwise by 30 degrees.
  const double corner_x = -5 * c - 20 * s, corner_y = -5 * s + 20 * c;
  cabinet.placement = Standing{room.at(70 - corner_x, 0.5 + corner_y), 30_deg};
  const Layout layout = room.layout();
  const Outline& footprint = layout.fixtures[0].footprint;
  EXPECT_TRUE(std::any_of(footprint.begin(), footprint.end(),
                          [&](Point p) { return distance(p, room.at(70, 0.5)) < 0.001_in; }));
  const auto troubles = doorTroubles(layout, layout.openings[0]);
  ASSERT_EQ(troubles.size(), 1u);
  EXPECT_EQ(troubles[0].kind, DoorTrouble::slideMeetsFixture);
  EXPECT_NEAR(troubles[0].short_by.inches(), 4, 1e-6);
}

// Another leaf that slides on the same wall stands 2 in beyond its jambs; a pocket ends at the jamb.
TEST(SurfaceSliding, MeetsTheLeafOfTheNextDoor) {
  for (const DoorAction action : {DoorAction::surfaceSliding, DoorAction::pocket}) {
    RoomMaker room = sliding(action, 25, 34, Hand::right);
    room.door("next", "n", 90, 36, Hand::left, Swing::in).action = DoorAction::surfaceSliding;
    const Layout layout = room.layout();
    const auto troubles = doorTroubles(layout, layout.openings[0]);
    ASSERT_EQ(troubles.size(), 1u);
    const bool slides = action == DoorAction::surfaceSliding;
    EXPECT_EQ(troubles[0].kind, slides ? DoorTrouble::slideMeetsOpening : DoorTrouble::pocketMeetsOpening);
    // 34 wanted from the jamb at 40 to the leaf at 72; 34 + 1 from the jamb at 42 to the jamb at 74.
    EXPECT_EQ(troubles[0].short_by, slides ? 2_in : 3_in);
  }
}

TEST(Bifold, TwoQuarterCirclesCoverItsPanels) {
  RoomMaker room(96, 60);
  room.door("d", "n", 40, 30, Hand::left, Swing::in).action = DoorAction::bifold;
  const Layout layout = room.layout();
  ASSERT_EQ(layout.openings[0].leaves.size(), 2u);
  const double pivot = layout.openings[0].leaves[0].width.inches();
  const double other = layout.openings[0].leaves[1].width.inches();
  EXPECT_LT(pivot, 1.16 * 15);
  EXPECT_EQ(other, 15);
  EXPECT_NEAR(doorFigures(layout, layout.openings[0]).sweep.squareFeet(), 4.909 / 2, 0.0005);
  // Every place of both panels as they fold lies within the two quarter circles.
  for (int a = 0; a <= 90; ++a) {
    const double t = a * std::numbers::pi / 180, s = std::sin(t), c = std::cos(t);
    for (double k = 0; k <= 1; k += 0.02) {
      const double x = 15 * c * (1 + k), y = 15 * s * (1 - k);
      EXPECT_LE(std::min(std::hypot(x, y) - pivot, std::hypot(30 - x, y) - other), 1e-9);
    }
  }
}

}  // namespace
}  // namespace elbowroom
