// Figures of the 2010 ADA Standards, each as drawn (met) and an inch to the wrong side (short). The figure or
// section stands beside each.
#include <gtest/gtest.h>

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

Outcome outcomeWith(const TestRoom& room, const std::string& rule, const std::string& setting,
                    const std::string& value) {
  TestRoom copy = room;
  BookChoice choice;
  choice.books = {kBook};
  choice.settings[kBook][setting] = value;
  Outcome found = Outcome::notApplicable;
  for (const Finding& f : check(deriveLayout(copy.plan(), 0), choice).findings)
    if (f.rule == rule) found = f.outcome;
  return found;
}

// Figure 604.8.1.1: 60 x 59 with a toilet on the floor, 60 x 56 with one that hangs on the wall.
TEST(AccessFigures, F4Compartment) {
  const auto with = [](double width, double depth, bool hung) {
    TestRoom room(width, depth);
    room.toilet(17).facts["wall_hung"] = hung;
    room.option().room.facts["compartment"] = true;
    return std::pair{met(room.outcome(kBook, "toilet-compartment-width")),
                     met(room.outcome(kBook, "toilet-compartment-depth"))};
  };
  EXPECT_EQ(with(60, 59, false), std::pair(true, true));
  EXPECT_EQ(with(60, 58, false), std::pair(true, false));
  EXPECT_EQ(with(60, 56, true), std::pair(true, true));
  EXPECT_EQ(with(60, 55, true), std::pair(true, false));
  EXPECT_EQ(with(59, 59, false), std::pair(false, true));
}

// Figure 305.7.1: a forward approach in an alcove deeper than 24 in takes 36 in of width, else 30 in.
TEST(AccessFigures, F5ForwardApproachInAnAlcove) {
  const auto with = [](double width, double alcove) {
    TestRoom room(100, 140);
    const double counted = 17;  // the space begins under the basin
    Fixture& basin = room.add("b", FixtureKind::basin, "n", 50, 20, 18);
    basin.knee_space = kKnees;
    const double deep = 18 - counted + alcove;
    room.add("l", FixtureKind::cabinet, "n", (50 - width / 2) / 2, 50 - width / 2, deep);
    room.add("r", FixtureKind::cabinet, "n", 100 - (50 - width / 2) / 2, 50 - width / 2, deep);
    return met(room.outcome(kBook, "basin-clear-floor"));
  };
  EXPECT_TRUE(with(36, 25));
  EXPECT_FALSE(with(35, 25));
  EXPECT_TRUE(with(30, 24));
  EXPECT_FALSE(with(29, 24));
}

// Figure 304.3.2: 60 x 60 with 36 in stem, the base clear for 24 in, the arms for 12 in each.
TEST(AccessFigures, F7TurningT) {
  const auto with = [](double base, double arm, double stem) {
    const double width = 2 * arm + stem;  // two cabinets leave a T of the room
    TestRoom room(width, 36 + base);
    room.add("l", FixtureKind::cabinet, "w", base / 2, base, arm);
    room.add("r", FixtureKind::cabinet, "e", 36 + base / 2, base, arm);
    return room.findings(kBook, "turning-space").at(0);
  };
  const Finding drawn = with(24, 12, 36);
  EXPECT_TRUE(met(drawn.outcome));
  EXPECT_EQ(drawn.detail, "turning-by-t");
  EXPECT_EQ(with(23, 12, 36).outcome, Outcome::shortfall) << "base 23";
  EXPECT_EQ(with(24, 11, 36).outcome, Outcome::shortfall) << "arms 11";
  EXPECT_EQ(with(24, 12.5, 35).outcome, Outcome::shortfall) << "stem 35";
}

TestRoom bathRoom(double deep = 120) {
  TestRoom room(60, deep);
  room.add("ba", FixtureKind::bath, "n", 30, 60, 30).height = 18_in;
  item(room, "control", "control", "w", deep - 15, 20, 7, 7).shower = {"ba"};
  return room;
}

// Figure 607.2: the length of the bath by 30 in; a lavatory at the control end alone.
TEST(AccessFigures, F8BathClearance) {
  EXPECT_TRUE(met(bathRoom().outcome(kBook, "bath-clear-floor")));
  TestRoom control = bathRoom();
  control.add("lav", FixtureKind::basin, "w", 120 - 40, 20, 18).knee_space = kKnees;
  EXPECT_TRUE(met(control.outcome(kBook, "bath-clear-floor"))) << "lavatory at the control end";
  TestRoom head = bathRoom();
  head.add("lav", FixtureKind::basin, "e", 40, 20, 18).knee_space = kKnees;
  EXPECT_EQ(head.outcome(kBook, "bath-clear-floor"), Outcome::shortfall) << "lavatory at the head end";
  EXPECT_TRUE(met(bathRoom(60).outcome(kBook, "bath-clear-floor"))) << "30 wide";
  EXPECT_EQ(bathRoom(59).outcome(kBook, "bath-clear-floor"), Outcome::shortfall) << "29 wide";
}

// Figure 607.2(b): with a permanent seat at the head end 12 in more.
TEST(AccessFigures, F9BathWithSeat) {
  for (const auto& [length, passes] : {std::pair{72.0, true}, {71.0, false}}) {
    TestRoom room(length, 120);
    room.add("ba", FixtureKind::bath, "n", 30, 60, 30).facts["head_seat"] = true;
    item(room, "control", "control", "w", 105, 20, 7, 7).shower = {"ba"};
    EXPECT_EQ(met(room.outcome(kBook, "bath-clear-floor")), passes) << length;
  }
}

// Figure 608.2.1: exactly 36 x 36, with 36 x 48 from the control wall.
TEST(AccessFigures, F10TransferShower) {
  const auto with = [](double width, double depth, double clear) {
    TestRoom room(clear, 120);
    room.add("sh", FixtureKind::shower, "n", width / 2, width, depth).curb = 0.5_in;
    item(room, "control", "control", "w", 100, 20, 7, 7).shower = {"sh"};
    return std::pair{met(room.outcome(kBook, "shower-transfer-size")),
                     met(room.outcome(kBook, "shower-transfer-clear-floor"))};
  };
  EXPECT_EQ(with(36, 36, 48), std::pair(true, true));
  EXPECT_EQ(with(36, 37, 48), std::pair(false, true)) << "a larger one is no transfer shower";
  EXPECT_EQ(with(36, 36, 47), std::pair(true, false));
}

TestRoom rollIn(double width, double depth) {
  TestRoom room(width, 140);
  Fixture& shower = room.add("sh", FixtureKind::shower, "n", width / 2, width, depth);
  shower.curb = 0.5_in;
  shower.facts["seat_side"] = std::string("left");
  return room;
}

// Figure 608.2.2: 60 x 30 with as much before it; a lavatory at the end away from controls and seat.
TEST(AccessFigures, F11RollInShower) {
  const auto lavatory = [](const char* wall) {
    TestRoom room = rollIn(60, 30);
    item(room, "control", "control", "n", 20, 20, 7, 7).shower = {"sh"};  // within 27 in of the seat wall, 608.5.2
    if (wall) room.add("lav", FixtureKind::basin, wall, *wall == 'e' ? 40 : 100, 20, 18).knee_space = kKnees;
    return room.outcome(kBook, "shower-roll-in-clear-floor");
  };
  EXPECT_TRUE(met(rollIn(60, 30).outcome(kBook, "shower-roll-in-size")));
  EXPECT_FALSE(met(rollIn(59, 30).outcome(kBook, "shower-roll-in-size")));
  EXPECT_FALSE(met(rollIn(60, 29).outcome(kBook, "shower-roll-in-size")));
  EXPECT_TRUE(met(lavatory(nullptr)));
  EXPECT_TRUE(met(lavatory("e"))) << "at the end opposite the seat";
  EXPECT_EQ(lavatory("w"), Outcome::shortfall) << "at the seat's end";
  TestRoom unplaced = rollIn(60, 30);
  unplaced.add("lav", FixtureKind::basin, "e", 40, 20, 18).knee_space = kKnees;
  EXPECT_TRUE(met(unplaced.outcome(kBook, "shower-roll-in-clear-floor")))
      << "its control belongs beside the seat";
}

// Figure 608.2.3: exactly 36 deep, at least 60 long, an entry of 36 at one end.
TEST(AccessFigures, F12AlternateRollIn) {
  const auto with = [](double depth, double entry) {
    TestRoom room(60, 140);
    Fixture& shower = room.add("sh", FixtureKind::shower, "n", 30, 60, depth);
    shower.curb = 0.5_in;
    Pane front;
    front.side = Side::front;
    front.door = in(entry);
    shower.glass = {front};
    return std::pair{met(room.outcome(kBook, "shower-alternate-depth")),
                     met(room.outcome(kBook, "shower-entry"))};
  };
  EXPECT_EQ(with(36, 36), std::pair(true, true));
  EXPECT_EQ(with(36, 35), std::pair(true, false));
  EXPECT_EQ(with(37, 36), std::pair(false, true));
}

// Figure 404.2.4.1(a): front pull, 60 in by the door and 18 in beside its latch.
TEST(AccessFigures, F13FrontPull) {
  const auto with = [](double latch, double depth) {
    TestRoom room(4 + 36 + latch, depth);
    room.door("s", latch + 18, 36, Hand::right, Swing::in);
    return met(room.outcome(kBook, "door-manoeuvring"));
  };
  EXPECT_TRUE(with(18, 60));
  EXPECT_FALSE(with(17, 60));
  EXPECT_FALSE(with(18, 59));
}

// Figure 404.2.4.1(b), (c): front push, 48 in by the door; with closer and latch 12 in more beside the latch.
TEST(AccessFigures, F14FrontPush) {
  const auto with = [](double latch, double depth, bool closer, bool latched) {
    TestRoom room(4 + 36 + latch, depth);
    Opening& door = room.door("s", latch + 18, 36, Hand::right, Swing::out);
    door.closer = closer;
    door.latch = latched;
    return met(room.outcome(kBook, "door-manoeuvring"));
  };
  EXPECT_TRUE(with(0, 48, false, false));
  EXPECT_FALSE(with(0, 47, false, false));
  EXPECT_TRUE(with(12, 48, true, true));
  EXPECT_FALSE(with(11, 48, true, true));
}

// 404.2.3: from the face of the open door to the stop. A leaf of 36 in, 1 3/4 in thick, behind a stop of 1/2
// in leaves about 33 3/4 in; one of 33 in about 30 3/4 in.
TEST(AccessFigures, F15ClearWidth) {
  const auto with = [](double leaf) {
    TestRoom room(120, 120);
    Opening& door = room.door("s", 60, leaf, Hand::right, Swing::out);
    door.leaf_thickness = 1.75_in;
    door.stop = 0.5_in;
    return std::pair{room.measured(kBook, "door-clear-opening"),
                     met(room.outcome(kBook, "door-clear-opening"))};
  };
  EXPECT_NEAR(with(36).first, 33.75, 0.125);
  EXPECT_TRUE(with(36).second);
  EXPECT_NEAR(with(33).first, 30.75, 0.125);
  EXPECT_FALSE(with(33).second);
}

// 1991 ADA Standards figure 28: centreline at 18, a lavatory's edge 18 from it, 48 x 66 (56 from the side).
TEST(AccessFigures, F16ToiletSpaceOf1991) {
  const auto with = [](double edge, double depth) {
    TestRoom room(100, depth);
    room.toilet(18);
    room.add("lav", FixtureKind::basin, "n", 18 + edge + 10, 20, 18).knee_space = kKnees;
    return met(outcomeWith(room, "toilet-clearance-1991", "edition", "1991"));
  };
  EXPECT_TRUE(with(18, 66));
  EXPECT_TRUE(with(18, 56));
  EXPECT_FALSE(with(17, 66));
  EXPECT_FALSE(with(18, 55));
}

}  // namespace
}  // namespace elbowroom
