// The catalogue of facts against the schema and through a file.
#include <gtest/gtest.h>

#include <fstream>

#include "core/file/plan_file.h"
#include "core/plan/edit.h"
#include "tests/core/file/example_plan.h"
#include "tests/core/file/json_schema.h"

namespace elbowroom {
namespace {

using testing::exampleWith;
using testing::Json;

constexpr const char* kDefinitions[] = {"room", "wall", "opening", "fixture", "wallItem", "ceilingItem"};

TEST(Facts, EachIsDescribedInTheSchemaWithItsType) {
  const Json schema = Json::parse(std::ifstream(SOURCE_DIR "/resources/plan.schema.json"));
  for (const FactInfo& fact : allFacts()) {
    const Json& all = schema.at("$defs").at(kDefinitions[static_cast<int>(fact.on)]).at("properties");
    ASSERT_TRUE(all.contains(std::string(fact.key))) << fact.key;
    const Json& entry = all.at(std::string(fact.key));
    const std::string type = entry.value("type", ""), ref = entry.value("$ref", "");
    switch (fact.type) {
      case FactType::yesNo: EXPECT_EQ(type, "boolean") << fact.key; break;
      case FactType::length: EXPECT_EQ(ref, "#/$defs/lengthOrZero") << fact.key; break;
      case FactType::amount: EXPECT_EQ(type, "number") << fact.key; break;
      case FactType::word: EXPECT_TRUE(entry.contains("enum")) << fact.key; break;
    }
    EXPECT_FALSE(fact.label.empty());
    EXPECT_EQ(fact.question.back(), '?') << fact.key;
    EXPECT_EQ(fact.type == FactType::amount, !fact.unit.empty()) << fact.key;
  }
}

TEST(Facts, AreReadStatedAndWritten) {
  const Result<Plan> plan = readPlan(exampleWith("\"flow_cfm\": 80", "\"flow_cfm\": 80.5, \"color\": 3"));
  ASSERT_TRUE(plan.ok()) << plan.error().message;
  const CeilingItem& fan = plan->options[0].on_ceiling[0];
  EXPECT_EQ(amountOf(fan.facts, "flow_cfm"), (Amount{80'500}));
  EXPECT_EQ(fan.extra.size(), 1u);
  const Result<Plan> stated =
      apply(*plan, {0, StateFact{fan.id, "ducted_outdoors", true}, "State", ""});
  ASSERT_TRUE(stated.ok());
  const Result<Plan> again = readPlan(writePlan(*stated));
  ASSERT_TRUE(again.ok()) << again.error().message;
  EXPECT_EQ(*again, *stated);
  EXPECT_EQ(yesNo(again->options[0].on_ceiling[0].facts, "ducted_outdoors"), true);
}

TEST(Facts, WhatDoesNotFitIsRefused) {
  EXPECT_EQ(readPlan(exampleWith("\"flow_cfm\": 80", "\"flow_cfm\": true")).error().code, "type");
  EXPECT_EQ(readPlan(exampleWith("\"flow_cfm\": 80", "\"flow_cfm\": -1")).error().code, "value");
  const Plan plan = *readPlan(testing::kExamplePlan);
  EXPECT_EQ(apply(plan, {0, StateFact{{"f"}, "safety_glass", true}, "", ""}).error().code, "edit/no-such-fact");
  EXPECT_EQ(apply(plan, {0, StateFact{{"f"}, "flow_cfm", true}, "", ""}).error().code, "edit/fact");
  EXPECT_EQ(apply(plan, {0, StateFact{{"x"}, "flow_cfm", true}, "", ""}).error().code, "edit/no-such-element");
}

TEST(Said, EverythingTheProgramModelsGoesThroughAFile) {
  Plan plan = *readPlan(testing::kExamplePlan);
  const auto one = Length::fromInches(1);
  Option& o = plan.options[0];
  o.room.ceiling.slopes.push_back({{"n"}, one * 60, one * 30, {}});
  o.room.facts["slip_resistant_floor"] = true;
  o.fixtures[0].glass.push_back({Side::front, one * 76, one * 24, Swing::out, Hand::left, {}});
  o.on_walls[0].depth = one;
  o.on_walls[0].person = "Tall adult";
  o.on_walls[0].status = Status::keep;
  o.acknowledged.push_back({"comfort", "toilet-clear-front", {{"wc"}, {"n"}}, "Only used at night", {}});
  o.wishes["niche"] = {false, "No room between the studs", {}};
  plan.book_settings["us-electrical"]["edition"] = "2017";
  plan.rule_changes.push_back({"comfort", "toilet-clear-front", false, one * 28, "Told by the town", {}});
  plan.rule_changes.push_back({"comfort", "shower-area", false, Area::squareMicrometres(645160000), "Told by the town", {}});
  plan.rule_changes.push_back({"craft", "pocket-meets-pipes", true, {}, "No pipes there", {}});
  const Result<Plan> again = readPlan(writePlan(plan));
  ASSERT_TRUE(again.ok()) << again.error().message;
  EXPECT_EQ(*again, plan);
  EXPECT_EQ(writePlan(*again), writePlan(plan));
}

}  // namespace
}  // namespace elbowroom
