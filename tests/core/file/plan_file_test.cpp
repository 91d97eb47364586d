#include "core/file/plan_file.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/core/file/example_plan.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::changed;
using testing::exampleWith;
using testing::kExamplePlan;

Plan read(const std::string& text) {
  const Result<Plan> plan = readPlan(text);
  if (!plan) {
    ADD_FAILURE() << plan.error().message;
    return {};
  }
  return *plan;
}

TEST(PlanFile, ReadsWhatTheExampleSays) {
  const Plan plan = read(kExamplePlan);
  EXPECT_EQ(plan.unit, Unit::inches);
  EXPECT_EQ(plan.title, "Hall bath (invented example)");
  EXPECT_EQ(plan.books.size(), 4u);
  ASSERT_EQ(plan.people.size(), 3u);
  EXPECT_EQ(plan.people[2].chair, (Chair{26_in, 48_in}));
  EXPECT_TRUE(plan.people[1].child);
  ASSERT_EQ(plan.options.size(), 1u);
  const Option& option = plan.options[0];
  EXPECT_EQ(option.room.ceiling.height, 96_in);
  ASSERT_EQ(option.room.walls.size(), 4u);
  EXPECT_EQ(option.room.walls[1].from, (Point{96_in, 60_in}));
  EXPECT_EQ(option.room.walls[0].thickness, 6.5_in);
  EXPECT_TRUE(option.room.walls[0].exterior);
  EXPECT_TRUE(option.room.walls[2].plumbing);
  EXPECT_EQ(option.room.walls[2].studs, (Studs{8_in, 16_in}));
  ASSERT_EQ(option.openings.size(), 2u);
  EXPECT_EQ(option.openings[0].hinge, Hand::right);
  EXPECT_EQ(option.openings[0].swing, Swing::in);
  EXPECT_EQ(option.openings[1].sill, 44_in);
  ASSERT_EQ(option.fixtures.size(), 4u);
  EXPECT_EQ(option.fixtures[0].status, Status::keep);
  EXPECT_EQ(option.fixtures[2].status, Status::fresh);
  EXPECT_EQ(option.fixtures[2].basins, 1);
  EXPECT_EQ(std::get<OnWall>(option.fixtures[1].placement), (OnWall{{"s"}, 45_in, {}}));
  EXPECT_EQ(std::get<Standing>(option.fixtures[3].placement), (Standing{{50_in, 53_in}, {}}));
  ASSERT_EQ(option.on_walls.size(), 1u);
  EXPECT_EQ(option.on_walls[0].height, 60_in);
  ASSERT_EQ(option.on_ceiling.size(), 1u);
  EXPECT_EQ(amountOf(option.on_ceiling[0].facts, "flow_cfm"), Amount::of(80));
}

TEST(PlanFile, WritesTheSameBytesOneElementPerLine) { EXPECT_EQ(writePlan(read(kExamplePlan)), kExamplePlan); }

TEST(PlanFile, KeepsUnknownKeysAtEveryLevel) {
  const std::string note = R"("zz": {"b": [1.50, null, "é\n"], "a": true})";
  const char* places[] = {R"("unit": "in")",       R"("name": "Child")",   R"("width": 26)",   R"("name": "As found")",
                          R"("room": {)",          R"("ceiling": {)",      R"("id": "n")",     R"("first": 8)",
                          R"("id": "d1")",         R"("id": "b")",         R"("id": "m")",     R"("id": "f")"};
  for (const std::string place : places) {
    const std::string with = exampleWith(place, place.back() == '{' ? place + note + ", " : place + ", " + note);
    const Plan plan = read(with);
    EXPECT_NE(plan, read(kExamplePlan)) << place;
    const std::string written = writePlan(plan);
    // Compared by another reader of JSON, as whole documents.
    EXPECT_EQ(nlohmann::json::parse(written), nlohmann::json::parse(with)) << place;
    EXPECT_NE(written.find(R"({"b":[1.50,null,"é\n"],"a":true})"), std::string::npos) << place;
    EXPECT_EQ(read(written), plan) << place;
  }
  const std::string knees =
      exampleWith(R"("basins": 1)", R"("knee_space": {"height": 27, "depth": 11, "toe": 17, "pipes": "wrapped"})");
  EXPECT_EQ(nlohmann::json::parse(writePlan(read(knees))), nlohmann::json::parse(knees));
}

TEST(PlanFile, KeepsLengthsToTheNanometreInBothUnits) {
  Plan plan = read(kExamplePlan);
  for (const Unit unit : {Unit::inches, Unit::millimetres}) {
    plan.unit = unit;
    plan.options[0].openings[0].along = Length::nanometres(1'016'000'001);
    plan.options[0].fixtures[3].placement =
        Standing{{Length::nanometres(1'270'000'003), Length::nanometres(-7)}, Angle::microdegrees(33'333'333)};
    plan.site_tolerance = Length::nanometres(1);
    plan.north = Angle::microdegrees(-12'345'678);
    EXPECT_EQ(read(writePlan(plan)), plan);
  }
}

TEST(PlanFile, ReadsMillimetres) {
  const Plan plan = read(changed(exampleWith(R"("unit": "in")", R"("unit": "mm")"), R"("along": 40)", R"("along": 40.1)"));
  EXPECT_EQ(plan.options[0].openings[0].along, Length::nanometres(40'100'000));
}

TEST(PlanFile, RemembersTheHingeOfADoorThatIsAPocketDoorNow) {
  Plan plan = read(kExamplePlan);
  Opening& door = plan.options[0].openings[0];
  for (const DoorAction action : {DoorAction::hinged, DoorAction::doubleLeaf, DoorAction::pocket,
                                  DoorAction::surfaceSliding, DoorAction::bifold, DoorAction::cased}) {
    for (const Hand hand : {Hand::left, Hand::right}) {
      for (const Swing swing : {Swing::in, Swing::out}) {
        door.action = action;
        door.hinge = hand;
        door.swing = swing;
        door.toward = hand;
        door.closer = swing == Swing::in;
        door.leaf_thickness = 1.75_in;
        door.stop = 0.5_in;
        EXPECT_EQ(read(writePlan(plan)), plan) << static_cast<int>(action);
      }
    }
  }
}

TEST(PlanFile, LeavesOutWhatIsNotStated) {
  const std::string bare = R"({"format": "elbowroom-plan", "version": 1.0, "unit": "mm",
    "options": [{"name": "As found", "room": {"walls": []}}]})";
  const Plan plan = read(bare);
  EXPECT_EQ(plan.title, "");
  EXPECT_TRUE(plan.options[0].room.walls.empty());
  EXPECT_EQ(read(writePlan(plan)), plan);
}

TEST(PlanFile, KeepsTextOfAnyScript) {
  Plan plan = read(kExamplePlan);
  plan.title = "Łazienka \"5×8\" \\ \n\t 浴室 \u0001";
  plan.people[0].name = "";
  EXPECT_EQ(read(writePlan(plan)), plan);
}

TEST(PlanFile, ByteOrderMarkAndCrLfAreNoMatter) {
  std::string text = "\xEF\xBB\xBF" + kExamplePlan;
  for (std::size_t at = 0; (at = text.find('\n', at)) != std::string::npos; at += 2) text.insert(at, "\r");
  EXPECT_EQ(read(text), read(kExamplePlan));
}

}  // namespace
}  // namespace elbowroom
