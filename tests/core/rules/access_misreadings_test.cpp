// What is often read wrongly in the texts on accessibility: each with the section that settles it.
#include <gtest/gtest.h>

#include "core/rules/checks/access_room.h"
#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::item;
using testing_room::met;
using testing_room::TestRoom;

const char* const kBook = "us-access";
const KneeSpace kKnees{27_in, 11_in, 17_in};

// 2010 ADA Standards 304.3.2: knee and toe space at the end of one segment of the T, not of two.
TEST(AccessMisreadings, TReachesUnderOneBasinOnly) {
  TestRoom room(60, 60);
  room.add("l", FixtureKind::cabinet, "w", 12, 24, 12);
  room.add("r", FixtureKind::cabinet, "e", 48, 24, 12);
  room.add("b1", FixtureKind::basin, "w", 42, 36, 10).knee_space = kKnees;
  EXPECT_TRUE(met(room.outcome(kBook, "turning-space")));
  EXPECT_EQ(room.findings(kBook, "turning-space").at(0).detail, "turning-by-t-knees");
  EXPECT_EQ(room.outcome("us-access-2017", "turning-space"), Outcome::shortfall) << "larger, and bare floor";
  room.add("b2", FixtureKind::basin, "e", 18, 36, 10).knee_space = kKnees;
  EXPECT_EQ(room.outcome(kBook, "turning-space"), Outcome::shortfall);
}

// ICC A117.1-2017 304.3.2.1: the T of 68 x 60 with its corners cut off, of 64 x 60 with 38 and 42, with 40
// and 40.
TEST(AccessMisreadings, TsOf2017StandInForTheCircle) {
  struct Case {
    double across, along, bar, base;
    bool chamfer;
  };
  for (const Case c : {Case{68, 60, 36, 36, true}, {64, 60, 38, 42, false}, {64, 60, 40, 40, false}}) {
    const auto with = [&](double across, double deep) {
      TestRoom room(across, deep);
      const double side = (across - c.base) / 2, down = c.along - c.bar;
      room.add("l", FixtureKind::cabinet, "w", down / 2, down - (c.chamfer ? 8 : 0),
               side - (c.chamfer ? 8 : 0));
      room.add("r", FixtureKind::cabinet, "e", deep - down / 2, down - (c.chamfer ? 8 : 0),
               side - (c.chamfer ? 8 : 0));
      return room.findings("us-access-2017", "turning-space").at(0);
    };
    const Finding drawn = with(c.across, c.along);
    EXPECT_TRUE(met(drawn.outcome)) << c.across << " " << c.bar;
    EXPECT_EQ(drawn.detail, "turning-by-t");
    EXPECT_EQ(with(c.across, c.along - 1).outcome, Outcome::shortfall);
  }
}

// 304.4 and 603.2.3: the door may swing over the turning space, not over a fixture's clear floor, but for a
// room of one person with 30 x 48 in beyond the arc (exception 2).
TEST(AccessMisreadings, DoorOverTurningSpaceAndOverClearFloor) {
  TestRoom turning(120, 120);
  turning.door("s", 60, 36, Hand::left);
  EXPECT_TRUE(met(turning.outcome(kBook, "turning-space")));
  EXPECT_TRUE(turning.findings(kBook, "door-swing-clear-floor").empty()) << "no fixture, no clear floor";

  const auto with = [](double width) {
    TestRoom room(width, 60);
    Fixture& basin = room.add("b", FixtureKind::basin, "n", width - 12, 20, 18);
    basin.knee_space = kKnees;
    room.door("s", 22, 36, Hand::left);  // before the basin
    return room.findings(kBook, "door-swing-clear-floor").at(0);
  };
  EXPECT_EQ(with(44).outcome, Outcome::shortfall) << "no place to wait";
  const Finding waits = with(100);
  EXPECT_TRUE(met(waits.outcome));
  EXPECT_EQ(waits.detail, "floor-beyond-door");
}

// 603.2.3 exception 2 cites 305.3, the size alone, not 305.4: knee space is no place to wait; ICC A117.1 Type
// B says so.
TEST(AccessMisreadings, KneeSpaceIsNoPlaceToWait) {
  const auto with = [](bool basin, const char* book) {
    TestRoom room(86, 60);
    // Beyond the arc and the toilet about 50 x 60 are left; a basin leaves less than 30 of them bare.
    Fixture& counter = room.add("b", basin ? FixtureKind::basin : FixtureKind::bench, "w", 30, 60, 30);
    if (basin) counter.knee_space = kKnees;
    if (!basin) counter.depth = 1_in;
    room.add("wc", FixtureKind::toilet, "n", 66, 20, 28);
    room.door("s", 18, 36, Hand::left);
    return room.findings(book, "door-swing-clear-floor").at(0);
  };
  for (const char* book : {"us-access", "us-adaptable"}) {
    EXPECT_TRUE(met(with(false, book).outcome)) << book;
    EXPECT_EQ(with(true, book).outcome, Outcome::shortfall) << book;
  }
}

// Table 404.2.4.1: 12 in beside the latch on the push side only with a closer and a latch; a door of a house
// has no closer.
TEST(AccessMisreadings, CloserAndLatchTogether) {
  const auto with = [](std::optional<bool> closer, std::optional<bool> latch) {
    TestRoom room(40, 48);
    Opening& door = room.door("s", 18, 36, Hand::right, Swing::out);
    door.closer = closer;
    door.latch = latch;
    return met(room.outcome(kBook, "door-manoeuvring"));
  };
  EXPECT_TRUE(with({}, {}));
  EXPECT_TRUE(with(true, false));
  EXPECT_TRUE(with(false, true));
  EXPECT_FALSE(with(true, true));
}

// Access Board guide to chapter 6: no element stands in the door's manoeuvring clearance, a lavatory with
// knee space neither.
TEST(AccessMisreadings, LavatoryIsNoDoorClearance) {
  const auto with = [](double depth) {
    TestRoom room(60, depth);
    room.add("lav", FixtureKind::basin, "n", 40, 20, 18).knee_space = kKnees;
    room.door("s", 22, 36, Hand::right, Swing::out);
    return met(room.outcome(kBook, "door-manoeuvring"));
  };
  EXPECT_TRUE(with(48 + 18));
  EXPECT_FALSE(with(48 + 17));
}

// 609.3: 1 1/2 in is absolute, neither less nor more.
TEST(AccessMisreadings, GrabBarGapIsExact) {
  for (const auto& [gap, passes] : {std::pair{1.5, true}, {1.25, false}, {1.75, false}}) {
    TestRoom room(96, 96);
    item(room, "bar", "grab-bar", "e", 48, 33.5, 24, 1.25).facts["wall_gap"] = in(gap);
    EXPECT_EQ(met(room.outcome(kBook, "grab-bar-gap")), passes) << gap;
  }
}

// 607.2: with a permanent seat the clearance goes 12 in past the head-end wall; the lavatory stays at the
// control end.
TEST(AccessMisreadings, BathWithSeatIsLongerThanTheBath) {
  const auto with = [](double width, const char* lavatory) {
    TestRoom room(width, 120);
    room.add("ba", FixtureKind::bath, "n", 30, 60, 30).facts["head_seat"] = true;
    item(room, "control", "control", "w", 105, 20, 7, 7).shower = {"ba"};
    if (lavatory)
      room.add("lav", FixtureKind::basin, lavatory, *lavatory == 'w' ? 80 : 40, 20, 14).knee_space = kKnees;
    return met(room.outcome(kBook, "bath-clear-floor"));
  };
  EXPECT_FALSE(with(60, nullptr)) << "as long as the bath alone";
  EXPECT_TRUE(with(72, nullptr));
  EXPECT_TRUE(with(72, "w")) << "lavatory at the control end";
  EXPECT_FALSE(with(72, "e")) << "lavatory at the head end";
}

// 608.2.2.1, exception: the lavatory at the end away from controls and seat.
TEST(AccessMisreadings, RollInLavatoryAwayFromSeatAndControl) {
  const auto with = [](const char* seat, double control, const char* lavatory) {
    TestRoom room(60, 140);
    Fixture& shower = room.add("sh", FixtureKind::shower, "n", 30, 60, 30);
    shower.curb = 0.5_in;
    if (*seat) shower.facts["seat_side"] = std::string(seat);
    item(room, "control", "control", "n", control, 20, 7, 7).shower = {"sh"};
    room.add("lav", FixtureKind::basin, lavatory, *lavatory == 'e' ? 40 : 100, 20, 18).knee_space = kKnees;
    return met(room.outcome(kBook, "shower-roll-in-clear-floor"));
  };
  EXPECT_TRUE(with("left", 20, "e"));
  EXPECT_FALSE(with("left", 20, "w"));
  EXPECT_FALSE(with("left", 45, "e")) << "the control at that end";
  EXPECT_TRUE(with("", 20, "e"));
  EXPECT_FALSE(with("", 20, "w"));
}

// 305.7.2: 48 in alongside in a niche deeper than 15 in takes 60 in. (Forward approaches: figure 305.7.1.)
TEST(AccessMisreadings, AlcoveAsksForMoreWidth) {
  const auto with = [](double width, double alcove) {
    TestRoom room(140, 140);
    room.add("b", FixtureKind::basin, "n", 70, 20, 18);
    room.add("l", FixtureKind::cabinet, "n", (70 - width / 2) / 2, 70 - width / 2, 18 + alcove);
    room.add("r", FixtureKind::cabinet, "n", 140 - (70 - width / 2) / 2, 70 - width / 2, 18 + alcove);
    return met(room.outcome("us-adaptable", "basin-clear-floor"));
  };
  EXPECT_TRUE(with(60, 16));
  EXPECT_FALSE(with(59, 16));
  EXPECT_TRUE(with(48, 15));
  EXPECT_FALSE(with(47, 15));
}

// A consultant's answer (mcintoshtransforms.com): the jambs of a door that swings out are floor to turn on.
TEST(AccessMisreadings, JambsOfAnOutwardDoorAreTurningSpace) {
  const auto with = [](Swing swing, double depth) {
    TestRoom room(60, depth);
    room.door("s", 30, 36, Hand::left, swing);
    return met(room.outcome(kBook, "turning-space"));
  };
  EXPECT_FALSE(with(Swing::in, 59));
  EXPECT_TRUE(with(Swing::out, 59));
  EXPECT_TRUE(with(Swing::out, 57)) << "4 1/2 in of wall less 1 3/8 in of leaf";
  EXPECT_FALSE(with(Swing::out, 56));
}

// Access Board guide to chapter 6: the size of the room is a result, never a rule.
TEST(AccessMisreadings, RoomSizeIsNoRuleOfTheStandards) {
  for (const Rule& rule : allRules()) {
    if (rule.book.substr(0, 3) != "us-") continue;
    EXPECT_NE(rule.measure, checks::roomSpans) << rule.book << "/" << rule.id;
    EXPECT_EQ(std::string_view(rule.id).find("room-"), std::string_view::npos) << rule.id;
  }
}

}  // namespace
}  // namespace elbowroom
