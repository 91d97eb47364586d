// The Wish list: each point in a plan that shows it and in one that does not, what the answers make of it,
// and what its rules say. Distances at their limits come from the sources that core/rules/wishes/points.cpp
// names.
#include "core/rules/wishes.h"

#include <gtest/gtest.h>

#include <functional>
#include <random>

#include "core/rules/text.h"
#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::item;
using testing_room::TestRoom;

WishState stateOf(const TestRoom& room, const std::string& key) {
  const Layout layout = deriveLayout(const_cast<TestRoom&>(room).plan(), 0);
  for (const WishState& s : wishStates(layout, figuresOf(layout)))
    if (s.point->key == key) return s;
  ADD_FAILURE() << "no point " << key;
  return {};
}
WishStand standOf(const TestRoom& room, const std::string& key) { return stateOf(room, key).stand; }

void answer(TestRoom& room, const char* key, bool is_in, const char* reason = "") {
  room.option().wishes[key] = {is_in, reason, {}};
}

// 120 x 120 in; walls run clockwise: n from the west, e from the north, s from the east, w from the south.
TestRoom square() { return TestRoom(120, 120); }
TestRoom withShower() {
  TestRoom room = square();
  room.add("sh", FixtureKind::shower, "n", 30, 60, 36);  // x 0..60, y 84..120
  return room;
}
TestRoom withBasin(double width = 30, int basins = 1) {
  TestRoom room = square();
  Fixture& v = room.add("v", FixtureKind::vanity, "s", 60, width, 21);
  v.basins = basins;
  v.height = 34_in;
  return room;
}
TestRoom withHeadAndControl(const char* wall, double along) {
  TestRoom room = withShower();
  item(room, "h", "shower-head", "w", 102, 76, 4, 4).shower = {"sh"};  // 18 in from the north wall
  item(room, "c", "control", wall, along, 40.5, 7, 7).shower = {"sh"};
  return room;
}
TestRoom withGlass(std::optional<Length> height) {
  TestRoom room = withShower();
  room.option().fixtures[0].glass = {{Side::front, height, {}, {}, {}, {}}};
  return room;
}
TestRoom withCurb(std::optional<Length> curb) {
  TestRoom room = withShower();
  room.option().fixtures[0].curb = curb;
  return room;
}
TestRoom withBath(std::optional<Length> rim) {
  TestRoom room = square();
  room.add("b", FixtureKind::bath, "n", 30, 60, 30).height = rim;
  return room;
}
TestRoom withToe(std::optional<Length> deep) {
  TestRoom room = withBasin();
  if (deep) room.option().fixtures[0].facts["toe_depth"] = *deep;
  return room;
}
TestRoom withDoor(double width, DoorAction action = DoorAction::hinged) {
  TestRoom room = square();
  Opening& d = room.door("e", 60, width, Hand::left, Swing::out);
  d.action = action;
  if (action != DoorAction::hinged) d.toward = Hand::left;
  return room;
}

struct Case {
  const char* key;
  std::function<TestRoom()> with, without;
  const char* shown_by;  // the first element
};
template <typename Build>
std::function<TestRoom()> plus(std::function<TestRoom()> base, Build build) {
  return [base, build] {
    TestRoom room = base();
    build(room);
    return room;
  };
}

const std::vector<Case>& cases() {
  const auto toilet = [] {
    TestRoom room = square();
    room.toilet(60);
    return room;
  };
  const auto basin = [] { return withBasin(); };
  const auto pair = [] { return withBasin(60, 2); };
  static const std::vector<Case> all{
      {"control-away", [] { return withHeadAndControl("n", 54); }, [] { return withHeadAndControl("n", 20); },
       "c"},
      {"hand-spray", plus(withShower, [](TestRoom& r) { item(r, "hs", "hand-spray", "n", 30, 42, 3, 24); }),
       withShower, "hs"},
      {"niche", plus(withShower, [](TestRoom& r) { item(r, "ni", "niche", "n", 30, 48, 12, 24); }),
       withShower, "ni"},
      {"glass-below-ceiling", [] { return withGlass(78_in); }, [] { return withGlass(96_in); }, "sh"},
      {"curbless", [] { return withCurb(Length{}); }, [] { return withCurb(4_in); }, "sh"},
      {"bath-to-lean-over", [] { return withBath(16_in); }, [] { return withBath(23_in); }, "b"},
      {"double-receptacles",
       plus(pair,
            [](TestRoom& r) {
              item(r, "r1", "receptacle", "s", 24, 40, 2.75, 4.5);
              item(r, "r2", "receptacle", "s", 96, 40, 2.75, 4.5);
            }),
       plus(pair, [](TestRoom& r) { item(r, "r1", "receptacle", "s", 24, 40, 2.75, 4.5); }), "r1"},
      {"toe-space", [] { return withToe(5_in); }, [] { return withToe(3_in); }, "v"},
      {"full-mirror", plus(basin, [](TestRoom& r) { item(r, "m", "mirror", "s", 60, 34, 30, 62); }),
       plus(basin, [](TestRoom& r) { item(r, "m", "mirror", "s", 60, 40, 30, 36); }), "m"},
      {"side-lights",
       plus(basin,
            [](TestRoom& r) {
              item(r, "l1", "side-light", "s", 42, 57, 5, 12);
              item(r, "l2", "side-light", "s", 78, 57, 5, 12);
            }),
       plus(basin, [](TestRoom& r) { item(r, "l", "light", "s", 60, 75.5, 24, 5); }), "l1"},
      {"makeup-mirror",
       plus(square, [](TestRoom& r) { item(r, "mm", "makeup-mirror", "s", 30, 55.3, 9, 9); }), square, "mm"},
      {"toilet-receptacle",
       plus(toilet, [](TestRoom& r) { item(r, "r", "receptacle", "n", 80, 12, 2.75, 4.5); }),
       plus(toilet, [](TestRoom& r) { item(r, "r", "receptacle", "s", 60, 40, 2.75, 4.5); }), "r"},
      {"natural-light",
       plus(square,
            [](TestRoom& r) {
              Opening& w = r.door("n", 60, 24, Hand::left);
              w.kind = OpeningKind::window;
              w.id = {"win"};
            }),
       square, "win"},
      {"backing", plus(toilet,
                       [](TestRoom& r) {
                         r.option().room.walls[0].facts["backed"] = true;
                         r.option().room.walls[0].facts["backing_plywood"] = 0.75_in;
                       }),
       plus(toilet, [](TestRoom& r) { r.option().room.walls[0].facts["backed"] = false; }), "n"},
      {"sliding-door", [] { return withDoor(30, DoorAction::pocket); }, [] { return withDoor(30); }, "d"},
      {"timer-switch",
       plus(square, [](TestRoom& r) { item(r, "t", "humidity-switch", "s", 30, 42, 2.75, 4.5); }),
       plus(square, [](TestRoom& r) { item(r, "t", "switch", "s", 30, 42, 2.75, 4.5); }), "t"},
      // 34 in of leaf leave 32.125 clear, 32 in leave 30.125 (worked example T03).
      {"wide-door", [] { return withDoor(34); }, [] { return withDoor(32); }, "d"},
      {"wheelchair-ready", plus([] { return withDoor(34); }, [](TestRoom& r) { r.toilet(60); }),
       plus([] { return withDoor(32); }, [](TestRoom& r) { r.toilet(60); }), "d"},
  };
  return all;
}

TEST(Wishes, EveryPointIsFoundInAPlanThatShowsIt) {
  ASSERT_EQ(cases().size(), kWishCount);
  for (const Case& c : cases()) {
    SCOPED_TRACE(c.key);
    const WishState state = stateOf(c.with(), c.key);
    EXPECT_EQ(state.stand, WishStand::inPlan);
    EXPECT_TRUE(state.shown);
    ASSERT_FALSE(state.elements.empty());
    EXPECT_EQ(state.elements.front().text, c.shown_by);
    EXPECT_FALSE(state.places.empty());
    EXPECT_EQ(wishText(state, c.with().option()).rfind("In the plan: ", 0), 0u);
  }
}

TEST(Wishes, EveryPointIsUndecidedWhereThePlanDoesNotShowItAndNobodyAnswered) {
  for (const Case& c : cases()) {
    SCOPED_TRACE(c.key);
    const WishState state = stateOf(c.without(), c.key);
    EXPECT_EQ(state.stand, WishStand::undecided);
    EXPECT_FALSE(state.shown);
    EXPECT_FALSE(state.places.empty());
  }
}

TEST(Wishes, AnswersDecide) {
  for (const Case& c : cases()) {
    SCOPED_TRACE(c.key);
    TestRoom with = c.with(), without = c.without();
    answer(with, c.key, true);
    answer(without, c.key, true);
    EXPECT_EQ(standOf(with, c.key), WishStand::inPlan);
    EXPECT_EQ(standOf(without, c.key), WishStand::wanted);
    answer(with, c.key, false, "Costs too much");
    answer(without, c.key, false, "Costs too much");
    EXPECT_EQ(standOf(with, c.key), WishStand::leftOut);
    EXPECT_TRUE(stateOf(with, c.key).shown);
    EXPECT_EQ(wishText(stateOf(with, c.key), with.option()),
              "Left out: Costs too much (yet the plan shows it)");
    EXPECT_EQ(wishText(stateOf(without, c.key), without.option()), "Left out: Costs too much");
  }
}

// Each rule: met when shown or left out, short only when wanted and absent, unknown while undecided.
TEST(Wishes, RulesFollowTheList) {
  for (const Case& c : cases()) {
    SCOPED_TRACE(c.key);
    const std::string rule = std::string("wish-") + c.key;
    TestRoom with = c.with(), without = c.without();
    EXPECT_EQ(with.outcome("craft", rule), Outcome::clear);
    EXPECT_EQ(without.outcome("craft", rule), Outcome::unknown);
    EXPECT_TRUE(onlyWished(without.findings("craft", rule).at(0)));
    answer(without, c.key, true);
    EXPECT_EQ(without.outcome("craft", rule), Outcome::shortfall);
    EXPECT_FALSE(onlyWished(without.findings("craft", rule).at(0)))
        << "a wish not fulfilled belongs to Advice";
    EXPECT_EQ(textOf(without.findings("craft", rule).at(0), without.option(), Unit::inches).headline,
              std::string(findWish(c.key)->title) + ": wanted, and not in the plan");
    answer(without, c.key, false, "No room");
    EXPECT_EQ(without.outcome("craft", rule), Outcome::clear);
    EXPECT_EQ(textOf(without.findings("craft", rule).at(0), without.option(), Unit::inches).detail,
              "Left out by you: No room");
  }
}

TEST(Wishes, WhatHasNothingToBelongToDoesNotApply) {
  const TestRoom empty = square();
  for (const char* key :
       {"control-away", "hand-spray", "niche", "glass-below-ceiling", "curbless", "bath-to-lean-over",
        "double-receptacles", "toe-space", "full-mirror", "side-lights", "toilet-receptacle", "backing",
        "sliding-door", "wide-door", "wheelchair-ready"}) {
    SCOPED_TRACE(key);
    EXPECT_EQ(standOf(empty, key), WishStand::notApplicable);
    EXPECT_EQ(empty.outcome("craft", std::string("wish-") + key), Outcome::notApplicable);
    EXPECT_EQ(wishText(stateOf(empty, key), Option{}), findWish(key)->without);
  }
  // One can want a thing before anything of it is drawn.
  TestRoom wants = square();
  answer(wants, "hand-spray", true);
  EXPECT_EQ(standOf(wants, "hand-spray"), WishStand::wanted);
}

TEST(Wishes, WithoutARoomNothingIsFoundAndAnswersStay) {
  Plan plan;
  plan.options.resize(1);
  plan.options[0].wishes["niche"] = {true, "", {}};
  const Layout layout = deriveLayout(plan, 0);
  for (const WishState& s : wishStates(layout, figuresOf(layout)))
    EXPECT_EQ(s.stand, s.point->key == "niche" ? WishStand::wanted : WishStand::notApplicable)
        << s.point->key;
}

TEST(Wishes, WantedAndNotStatedAsksForTheFact) {
  struct Silent {
    const char* key;
    TestRoom room;
    const char* fact;
  };
  TestRoom walls = square();
  walls.toilet(60);
  for (Silent& s : std::vector<Silent>{{"curbless", withCurb({}), "curb"},
                                       {"bath-to-lean-over", withBath({}), "height"},
                                       {"toe-space", withToe({}), "toe_depth"},
                                       {"glass-below-ceiling", withGlass({}), "glass.height"},
                                       {"backing", walls, "backed"}}) {
    SCOPED_TRACE(s.key);
    const std::string rule = std::string("wish-") + s.key;
    EXPECT_EQ(standOf(s.room, s.key), WishStand::undecided);
    answer(s.room, s.key, true);
    const WishState state = stateOf(s.room, s.key);
    EXPECT_EQ(state.stand, WishStand::wanted);
    EXPECT_TRUE(state.not_stated);
    const Finding f = s.room.findings("craft", rule).at(0);
    EXPECT_EQ(f.outcome, Outcome::unknown);
    EXPECT_EQ(f.fact, s.fact);
    EXPECT_FALSE(onlyWished(f));
  }
  TestRoom low = withGlass(78_in);
  low.option().room.ceiling.height.reset();
  answer(low, "glass-below-ceiling", true);
  const Finding f = low.findings("craft", "wish-glass-below-ceiling").at(0);
  EXPECT_EQ(f.fact, "ceiling.height");
  EXPECT_TRUE(f.subjects.empty()) << "a fact of the room is asked of the room";
}

// Worked example T29 with the head's middle 34 in above the control's: 8 + 34 tan 10 = 14.0 to 8 + 34 tan 30
// = 27.6 in before the head's wall, 34 tan 10 / cos 20 = 6.4 in to either side; from the ceiling 4 + 52 tan
// 10 = 13.2 in round.
TEST(Wishes, TheControlIsAwayOnlyOutsideTheSpray) {
  for (const auto& [along, away] : std::vector<std::pair<double, bool>>{
           {10, true}, {13.9, true}, {14.1, false}, {20, false}, {27.5, false}, {27.8, true}, {54, true}}) {
    SCOPED_TRACE(along);
    EXPECT_EQ(standOf(withHeadAndControl("n", along), "control-away") == WishStand::inPlan, away);
  }
  EXPECT_EQ(standOf(withHeadAndControl("w", 102), "control-away"), WishStand::undecided)
      << "right under the head";
  EXPECT_EQ(standOf(withHeadAndControl("w", 95), "control-away"), WishStand::inPlan) << "7 in aside";
  TestRoom no_head = withShower();
  item(no_head, "c", "control", "n", 54, 40.5, 7, 7).shower = {"sh"};
  EXPECT_EQ(standOf(no_head, "control-away"), WishStand::undecided) << "away from what?";
  TestRoom ceiling = no_head;
  CeilingItem rain;
  rain.id = {"rain"};
  rain.kind = "shower-head";
  rain.at = {18_in, 110_in};
  ceiling.option().on_ceiling.push_back(rain);
  EXPECT_EQ(standOf(ceiling, "control-away"), WishStand::inPlan);
  ceiling.option().on_walls[0].along = 18_in;  // 10 in from its middle
  EXPECT_EQ(standOf(ceiling, "control-away"), WishStand::undecided);
}

TEST(Wishes, TheRimIsThatOfTheShortestAdultNamedWhoKneels) {
  TestRoom room = withBath(15.5_in);
  EXPECT_EQ(standOf(room, "bath-to-lean-over"), WishStand::inPlan) << "16 in where nobody is named";
  room.plan().people = {
      {"Tall", 74_in, false, {}, {}}, {"Short", 60_in, false, {}, {}}, {"Child", 40_in, true, {}, {}}};
  EXPECT_EQ(standOf(room, "bath-to-lean-over"), WishStand::undecided) << "0.238 x 60 = 14.3 in";
  room.option().fixtures[0].height = 14.25_in;
  EXPECT_EQ(standOf(room, "bath-to-lean-over"), WishStand::inPlan);
}

TEST(Wishes, TwoBasinsOnOneWallCountAsAPair) {
  TestRoom room = square();
  room.add("a", FixtureKind::basin, "s", 30, 20, 18);
  room.add("b", FixtureKind::basin, "s", 90, 20, 18);
  item(room, "r1", "receptacle", "s", 12, 40, 2.75, 4.5);
  EXPECT_EQ(standOf(room, "double-receptacles"), WishStand::undecided);
  item(room, "r2", "receptacle", "s", 108, 40, 2.75, 4.5);
  EXPECT_EQ(standOf(room, "double-receptacles"), WishStand::inPlan);
  room.option().on_walls[1].wall = {"n"};
  EXPECT_EQ(standOf(room, "double-receptacles"), WishStand::undecided)
      << "across the room is not at the basin";
}

TEST(Wishes, AMirrorFromWallToWallIsFull) {
  TestRoom room = withBasin();
  item(room, "m", "mirror", "s", 60, 40, 120, 36);
  EXPECT_EQ(standOf(room, "full-mirror"), WishStand::inPlan);
  room.option().on_walls[0].width = 117_in;
  EXPECT_EQ(standOf(room, "full-mirror"), WishStand::undecided);
}

TEST(Wishes, ReceptacleAtTheToiletWithinItsCord) {
  for (const auto& [along, there] : {std::pair{106.0, true}, {106.5, false}}) {  // 70 in + 36 in
    TestRoom room = square();
    room.toilet(60);
    item(room, "r", "receptacle", "n", along, 12, 2.75, 4.5);
    EXPECT_EQ(standOf(room, "toilet-receptacle") == WishStand::inPlan, there) << along;
  }
}

TEST(Wishes, ReadyForAWheelchairNeedsDoorTurningAndWay) {
  TestRoom ready = withDoor(34);
  ready.toilet(60);
  EXPECT_EQ(standOf(ready, "wheelchair-ready"), WishStand::inPlan);
  TestRoom narrow(58, 58);  // no circle of 60 in, no T
  narrow.door("e", 29, 34, Hand::left, Swing::out);
  narrow.toilet(29);
  EXPECT_EQ(standOf(narrow, "wheelchair-ready"), WishStand::undecided);
  TestRoom blocked = ready;  // two cabinets leave 30 in of way to the toilet, and room to turn before them
  blocked.add("c1", FixtureKind::cabinet, "w", 76, 45, 10);
  blocked.add("c2", FixtureKind::cabinet, "e", 44, 45, 10);
  EXPECT_EQ(standOf(blocked, "wheelchair-ready"), WishStand::undecided);
}

// The way that leads straight over the largest circle only saves the search: in 300 random rooms the answer
// is that of the searched ways themselves.
TEST(Wishes, TheShortCutToReadyForAWheelchairAgreesWithTheSearchedWays) {
  std::mt19937 random(7);
  const auto between = [&](double low, double high) {
    return std::uniform_real_distribution<>(low, high)(random);
  };
  int ready = 0;
  for (int i = 0; i < 300; ++i) {
    const double width = between(84, 130), depth = between(84, 130);
    TestRoom room(width, depth);
    room.door("e", between(20, depth - 20), 36, Hand::left, Swing::out);
    room.toilet(between(14, width - 14));
    room.add("v", FixtureKind::vanity, "s", between(18, width - 18), 36, 21);
    room.add("c", FixtureKind::cabinet, "w", between(12, depth - 12), between(12, 24), between(10, 30));
    const Layout layout = deriveLayout(room.plan(), 0);
    const Figures figures = figuresOf(layout);
    bool ways = true;
    for (const RouteFigure& r : routeFigures(layout))
      if (r.to.text != "c") ways = ways && r.route.reachable && r.route.width >= 36_in - kMetTolerance;
    const bool turns = figures.turning.largest.radius * 2 >= 60_in - kMetTolerance;
    if (!turns) continue;  // the T is the turning rule's own business
    SCOPED_TRACE(i);
    EXPECT_EQ(standOf(room, "wheelchair-ready") == WishStand::inPlan, ways);
    ready += ways ? 1 : 0;
  }
  EXPECT_GT(ready, 50);
}

TEST(Wishes, WhatIsToBeRemovedShowsNothing) {
  TestRoom room = withShower();
  item(room, "ni", "niche", "n", 30, 48, 12, 24).status = Status::remove;
  EXPECT_EQ(standOf(room, "niche"), WishStand::undecided);
  room.option().fixtures[0].status = Status::remove;
  EXPECT_EQ(standOf(room, "niche"), WishStand::notApplicable);
}

TEST(Wishes, CountsAreTheSameFromTheListAndFromAReport) {
  TestRoom room = withHeadAndControl("n", 54);
  room.toilet(90);
  answer(room, "niche", true);
  answer(room, "hand-spray", false, "Not wanted");
  answer(room, "control-away", false, "Yet there");
  answer(room, "curbless", true);  // not stated
  const Layout layout = deriveLayout(room.plan(), 0);
  const WishCounts counts = countsOf(wishStates(layout, figuresOf(layout)));
  EXPECT_EQ(counts, wishCounts(room.report({"craft"})));
  EXPECT_EQ(counts.wanted, 2);
  EXPECT_EQ(counts.left_out, 2);
  EXPECT_EQ(counts.in_plan + counts.wanted + counts.left_out + counts.undecided + counts.not_applicable,
            static_cast<int>(kWishCount));
  EXPECT_EQ(wishCounts(room.report({"comfort"})), WishCounts{});
}

TEST(Wishes, TheTableIsWhole) {
  for (const WishPoint& p : wishPoints()) {
    SCOPED_TRACE(p.key);
    EXPECT_EQ(findWish(p.key), &p);
    for (const std::string_view text : {p.why, p.seen_as}) {
      ASSERT_FALSE(text.empty());
      EXPECT_EQ(text.back(), '.');
      EXPECT_EQ(text.find(". "), std::string_view::npos) << "one sentence";
    }
    EXPECT_FALSE(p.topic.empty());
    EXPECT_FALSE(p.without.empty());
    EXPECT_NE(findRule("craft", "wish-" + std::string(p.key)), nullptr);
  }
  EXPECT_EQ(findWish("no-such-point"), nullptr);
}

}  // namespace
}  // namespace elbowroom
