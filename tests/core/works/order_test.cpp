// Order of works: the machine-checkable edges of the trade's order (two builders' process pages, comfort table of
// works), on the whole list and on plans that have only part of it.
#include "core/works/order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

struct Edge {
  const char *before, *after;
};
constexpr Edge kEdges[] = {
    {"boxes", "inspection"},     {"inspection", "close-walls"}, {"close-walls", "waterproof"},
    {"waterproof", "tile"},      {"tile", "glass-measure"},     {"glass-measure", "glass-fit"},
    {"vanity", "counter"},       {"counter", "mirror-measure"}, {"mirror-measure", "mirror-fit"},
    {"boxes", "mirror-measure"}, {"backing", "close-walls"},    {"niche-frame", "close-walls"},
    {"subfloor-recess", "drain-set"}, {"drain-set", "waterproof"},
};

int placeOf(const std::vector<WorkStep>& steps, std::string_view id) {
  const auto at = std::find_if(steps.begin(), steps.end(), [&](const WorkStep& s) { return s.id == id; });
  return at == steps.end() ? -1 : static_cast<int>(at - steps.begin());
}
bool comesAfter(const std::vector<WorkStep>& steps, std::string_view later, std::string_view earlier) {
  const int at = placeOf(steps, later);
  if (at < 0) return false;
  for (const std::string_view a : steps[static_cast<std::size_t>(at)].after)
    if (a == earlier || comesAfter(steps, a, earlier)) return true;
  return false;
}
void expectTopological(const std::vector<WorkStep>& steps) {
  std::set<std::string_view> done;
  for (const WorkStep& step : steps) {
    for (const std::string_view a : step.after) EXPECT_TRUE(done.contains(a)) << a << " before " << step.id;
    EXPECT_TRUE(done.insert(step.id).second) << step.id;
    EXPECT_FALSE(step.title.empty());
    EXPECT_FALSE(step.why.empty());
  }
}
WallItem& put(RoomMaker& room, const char* kind, double along) {
  WallItem item = typicalWallItem(kind, room.option());
  item.wall = {"s"};
  item.along = in(along);
  room.option().on_walls.push_back(item);
  return room.option().on_walls.back();
}

RoomMaker everything() {
  RoomMaker room(120, 96);
  Fixture& shower = room.fixture("sh", FixtureKind::shower, "n", 18, 36, 36);
  shower.facts["floor_recess"] = 0.75_in;
  Pane pane;
  pane.door = 28_in;
  pane.hinge = Hand::left;
  shower.glass = {pane};
  room.fixture("v", FixtureKind::vanity, "s", 60, 36, 21);
  room.fixture("old", FixtureKind::toilet, "e", 40, 20, 28).status = Status::remove;
  Opening& d = room.door("d", "w", 40, 30, Hand::left, Swing::in);
  d.action = DoorAction::pocket;
  put(room, "mirror", 60);
  put(room, "side-light", 40);
  put(room, "niche", 100);
  put(room, "grab-bar", 90);
  return room;
}

TEST(OrderOfWorks, TheWholeListHoldsEveryEdge) {
  const auto& all = allWorkSteps();
  expectTopological(all);
  for (const Edge& e : kEdges) EXPECT_TRUE(comesAfter(all, e.after, e.before)) << e.before << " < " << e.after;
}

TEST(OrderOfWorks, APlanWithEverythingHoldsEveryEdge) {
  const auto steps = orderOfWorks(everything().layout());
  expectTopological(steps);
  for (const Edge& e : kEdges) {
    EXPECT_TRUE(comesAfter(steps, e.after, e.before)) << e.before << " < " << e.after;
    EXPECT_LT(placeOf(steps, e.before), placeOf(steps, e.after));
  }
  EXPECT_GE(placeOf(steps, "pocket-frame"), 0);
  EXPECT_GE(placeOf(steps, "demolish"), 0);
}

TEST(OrderOfWorks, StepsNameWhatTheyAreAbout) {
  const auto steps = orderOfWorks(everything().layout());
  const auto elements = [&](const char* id) { return steps.at(static_cast<std::size_t>(placeOf(steps, id))).elements; };
  EXPECT_EQ(elements("demolish"), (std::vector<ElementId>{{"old"}}));
  EXPECT_EQ(elements("boxes"), (std::vector<ElementId>{{"light"}}));
  EXPECT_EQ(elements("niche-frame"), (std::vector<ElementId>{{"niche"}}));
  EXPECT_EQ(elements("glass-measure"), (std::vector<ElementId>{{"sh"}}));
  const auto backed = elements("backing");
  EXPECT_EQ(std::count(backed.begin(), backed.end(), ElementId{"bar"}), 1);
  EXPECT_EQ(std::count(backed.begin(), backed.end(), ElementId{"mirror"}), 1);
  EXPECT_EQ(std::count(backed.begin(), backed.end(), ElementId{"sh"}), 1);
  EXPECT_EQ(std::count(backed.begin(), backed.end(), ElementId{"old"}), 0);
}

TEST(OrderOfWorks, OnlyWhatThePlanHas) {
  RoomMaker room(96, 60);
  EXPECT_TRUE(orderOfWorks(room.layout()).empty());
  put(room, "mirror", 40);
  const auto steps = orderOfWorks(room.layout());
  expectTopological(steps);
  for (const char* none : {"boxes", "glass-measure", "vanity", "waterproof", "inspection", "pocket-frame"})
    EXPECT_EQ(placeOf(steps, none), -1) << none;
  EXPECT_TRUE(comesAfter(steps, "mirror-fit", "mirror-measure"));
  EXPECT_TRUE(comesAfter(steps, "mirror-measure", "backing"));  // through the closed walls
}

TEST(OrderOfWorks, WhatStaysMakesNoWork) {
  RoomMaker room = everything();
  for (Fixture& f : room.option().fixtures) f.status = Status::keep;
  for (WallItem& i : room.option().on_walls) i.status = Status::keep;
  room.option().openings.clear();
  EXPECT_TRUE(orderOfWorks(room.layout()).empty());
}

// Without the step between, what it held together still holds.
TEST(OrderOfWorks, AMissingStepPassesItsEdgesOn) {
  RoomMaker room(96, 60);
  put(room, "mirror", 40);
  put(room, "side-light", 40);
  const auto steps = orderOfWorks(room.layout());
  EXPECT_EQ(placeOf(steps, "counter"), -1);
  EXPECT_EQ(placeOf(steps, "tile"), -1);
  EXPECT_TRUE(comesAfter(steps, "mirror-measure", "boxes"));
  EXPECT_TRUE(comesAfter(steps, "fixtures", "mirror-fit"));
}

}  // namespace
}  // namespace elbowroom
