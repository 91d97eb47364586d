#include "core/file/report_json.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <numbers>
#include <set>

#include "core/file/plan_file.h"
#include "core/plan/catalogue.h"
#include "core/rules/text.h"
#include "tests/core/file/example_plan.h"

namespace elbowroom {
namespace {

using Json = nlohmann::json;
using namespace literals;
using testing::exampleWith;
using testing::kExamplePlan;

struct Checked {
  Plan plan;
  Layout layout;
  Report report;
};
Checked checkedPlan(const std::string& text) {
  const Result<Plan> plan = readPlan(text);
  if (!plan) throw std::logic_error(plan.error().message);
  Layout layout = deriveLayout(*plan, 0);
  Report report = check(layout, choiceOf(*plan));
  return {*plan, std::move(layout), std::move(report)};
}

Json checkOf(const Checked& c) { return Json::parse(checkJson(c.layout, c.report, "hall.elbowroom")); }

Json measureOf(const Checked& c) {
  return Json::parse(
      measureJson(c.layout, c.report.figures, routeFigures(c.layout), turningTFigure(c.layout)));
}

TEST(Report, EveryApplicableRuleIsThereAlsoTheClearOnes) {
  const Checked c = checkedPlan(kExamplePlan);
  const Json j = checkOf(c);
  EXPECT_EQ(j.at("plan"), "hall.elbowroom");
  EXPECT_EQ(j.at("option"), "As found");
  ASSERT_EQ(j.at("findings").size(), c.report.findings.size());
  std::set<std::string> outcomes;
  for (std::size_t i = 0; i < c.report.findings.size(); ++i) {
    const Json& f = j.at("findings")[i];
    EXPECT_EQ(f.at("rule"), c.report.findings[i].rule);
    EXPECT_EQ(f.at("outcome"), keyOf(c.report.findings[i].outcome));
    outcomes.insert(f.at("outcome"));
  }
  EXPECT_TRUE(outcomes.count("short"));
  EXPECT_TRUE(outcomes.count("clear"));
}

// The bowl ends 28 in from its wall, the hamper begins 53 - 7 = 46 in from it; IRC P2705.1(5) asks for 21 in.
TEST(Report, AShortFindingCarriesItsFiguresInInches) {
  const Json j = checkOf(checkedPlan(kExamplePlan));
  for (const Json& f : j.at("findings")) {
    if (f.at("rule") != "toilet-clear-front" || f.at("book") != "us-residential") continue;
    EXPECT_NEAR(f.at("measured_in").get<double>(), 18, 1e-4);
    EXPECT_EQ(f.at("limit_in").get<double>(), 21);
    EXPECT_NEAR(f.at("short_by_in").get<double>(), 3, 1e-4);
    EXPECT_EQ(f.at("compare"), ">=");
    EXPECT_EQ(f.at("grade"), "verified-second-hand");
    EXPECT_FALSE(f.at("places").empty());
    return;
  }
  FAIL() << "no finding about the floor before the toilet";
}

TEST(Report, FiguresThatAreNoLengthsHaveTheirOwnKeys) {
  const Checked c = checkedPlan(kExamplePlan);
  Report report;
  const auto add = [&](Quantity measured, Quantity limit, std::optional<Quantity> by) {
    Finding f;
    f.rule = "toilet-clear-front", f.book = "us-residential";
    f.outcome = Outcome::shortfall;
    f.measured = measured, f.limit = limit, f.short_by = by;
    if (std::holds_alternative<bool>(limit)) f.compare = Compare::isTrue;
    report.findings.push_back(f);
  };
  add(Area::fromSquareInches(800), Area::fromSquareInches(900), Area::fromSquareInches(100));
  add(80_deg, 90_deg, 10_deg);
  add(Count{1}, Count{2}, Count{1});
  add(false, true, {});
  const Json all = Json::parse(checkJson(c.layout, report, "p")).at("findings");
  for (const Json& f : all) {
    EXPECT_TRUE(f.at("measured_in").is_null());
    EXPECT_TRUE(f.at("limit_in").is_null());
    EXPECT_TRUE(f.at("short_by_in").is_null());
  }
  EXPECT_NEAR(all[0].at("measured_sqin").get<double>(), 800, 1e-6);
  EXPECT_NEAR(all[0].at("short_by_sqin").get<double>(), 100, 1e-6);
  EXPECT_EQ(all[1].at("measured_deg").get<double>(), 80);
  EXPECT_EQ(all[1].at("limit_deg").get<double>(), 90);
  EXPECT_EQ(all[2].at("measured_count").get<int>(), 1);
  EXPECT_EQ(all[3].at("measured_ok").get<bool>(), false);
  EXPECT_EQ(all[3].at("limit_ok").get<bool>(), true);
}

TEST(Report, WhatThePlanDoesNotSayIsNullNotZero) {
  const Json j = checkOf(checkedPlan(exampleWith("\"ceiling\": {\"height\": 96}", "\"ceiling\": {}")));
  for (const Json& f : j.at("findings")) {
    if (f.at("rule") != "ceiling-height") continue;
    EXPECT_EQ(f.at("outcome"), "unknown");
    EXPECT_TRUE(f.at("measured_in").is_null());
    EXPECT_TRUE(f.at("short_by_in").is_null());
    EXPECT_EQ(f.at("limit_in").get<double>(), 80);
    return;
  }
  FAIL() << "no finding about the ceiling";
}

// By hand: 8 ft by 5 ft; a quarter circle of 30 in.
TEST(Report, MeasuresAreInFeetAndInches) {
  const Json j = measureOf(checkedPlan(kExamplePlan));
  EXPECT_NEAR(j.at("room_area_sqft").get<double>(), 40, 1e-6);
  const Json& door = j.at("doors").at(0);
  EXPECT_EQ(door.at("id"), "d1");
  EXPECT_NEAR(door.at("sweep_sqft").get<double>(), std::numbers::pi * 6.25 / 4, 1e-4);
  EXPECT_NEAR(door.at("square_sqft").get<double>(), 6.25, 1e-6);
  EXPECT_NEAR(door.at("floor_taken_sqft").get<double>(), std::numbers::pi * 6.25 / 4, 1e-4);
  EXPECT_FALSE(j.at("t_turn").at("fits").get<bool>());  // 60 in by 60 in at least; the bath leaves 66 by 60
  EXPECT_EQ(j.at("routes").size(), 4u);
}

TEST(Report, APlanInMillimetresIsReportedInInchesToo) {
  Checked c = checkedPlan(kExamplePlan);
  Plan metric = c.plan;
  metric.unit = Unit::millimetres;
  const Checked m = checkedPlan(writePlan(metric));
  EXPECT_EQ(measureOf(m), measureOf(c));
  const Json in_inches = checkOf(c), in_mm = checkOf(m);
  ASSERT_EQ(in_inches.at("findings").size(), in_mm.at("findings").size());
  for (std::size_t i = 0; i < in_mm.at("findings").size(); ++i)
    for (const char* key : {"rule", "measured_in", "limit_in", "short_by_in", "places"})
      EXPECT_EQ(in_mm.at("findings")[i].at(key), in_inches.at("findings")[i].at(key)) << key;
}

TEST(Report, NamesThatAreNoUtf8DoNotBreakTheJson) {
  const Checked c = checkedPlan(kExamplePlan);
  EXPECT_NO_THROW(Json::parse(checkJson(c.layout, c.report, "caf\xE9.elbowroom")));
}

TEST(Report, AnOptionWithoutARoomHasNothingToMeasure) {
  const Plan plan = emptyPlan(Unit::inches);
  const Layout layout = deriveLayout(plan, 0);
  const Report report = check(layout, choiceOf(plan));
  const Json j =
      Json::parse(measureJson(layout, report.figures, routeFigures(layout), turningTFigure(layout)));
  EXPECT_EQ(j.at("room_area_sqft").get<double>(), 0);
  EXPECT_FALSE(j.at("t_turn").at("fits").get<bool>());
  EXPECT_NE(checkText(layout, report, "p").find("No room is drawn"), std::string::npos);
}

TEST(Report, EveryRuleOfEveryBookIsListedWithItsSource) {
  const Json j = Json::parse(booksJson());
  ASSERT_EQ(j.at("rules").size(), allRules().size());
  ASSERT_EQ(j.at("books").size(), allBooks().size());
  for (const Json& r : j.at("rules"))
    for (const char* key : {"id", "book", "limit", "source", "grade"})
      EXPECT_FALSE(r.at(key).get<std::string>().empty()) << key << " of " << r.dump();
  for (const Json& r : j.at("rules")) {
    if (r.at("id") != "pocket-needs-wall") continue;
    EXPECT_TRUE(r.at("limit_in").is_null());  // it depends on the leaf
    EXPECT_EQ(r.at("limit"), "twice the leaf plus 1 in");
  }
}

// Undecided points are no findings "not stated": they are told and counted apart, and --json has them all.
TEST(Report, TheWishListIsToldApart) {
  Checked c = checkedPlan(kExamplePlan);
  c.plan.books = {"craft"};
  c.plan.options[0].wishes["makeup-mirror"] = {true, "", {}};
  c.plan.options[0].wishes["sliding-door"] = {false, "Pipes in that wall", {}};
  c.layout = deriveLayout(c.plan, 0);
  c.report = check(c.layout, choiceOf(c.plan));
  const Json j = checkOf(c);
  int undecided = 0, others = 0;
  for (const Json& f : j.at("findings"))
    if (f.at("outcome") == "unknown") ++(f.at("rule").get<std::string>().starts_with("wish-") ? undecided : others);
  EXPECT_GT(undecided, 0);
  EXPECT_EQ(j.at("counts").at("wishes").at("undecided"), undecided);
  EXPECT_EQ(j.at("counts").at("unknown"), others);
  EXPECT_EQ(j.at("counts").at("wishes").at("wanted"), 1);
  EXPECT_EQ(j.at("counts").at("wishes").at("left_out"), 1);
  const std::string text = checkText(c.layout, c.report, "hall.elbowroom");
  EXPECT_NE(text.find("Make-up mirror: wanted, and not in the plan"), std::string::npos);
  EXPECT_NE(text.find("  Wanted, not in the plan: Make-up mirror.\n"), std::string::npos);
  EXPECT_NE(text.find("  Left out: Sliding door (Pipes in that wall).\n"), std::string::npos);
  EXPECT_NE(text.find("  Undecided: "), std::string::npos);
  EXPECT_EQ(text.find("Niche for bottles: undecided"), std::string::npos);
  EXPECT_NE(compareText(c.plan, choiceOf(c.plan)).find("1 wanted, 1 out"), std::string::npos);
  c.plan.books = {"us-residential"};
  EXPECT_EQ(checkText(c.layout, check(c.layout, choiceOf(c.plan)), "x").find("Wish list"), std::string::npos);
}

TEST(Report, EveryTextEndsWithTheCaution) {
  const Checked c = checkedPlan(kExamplePlan);
  std::string caution;
  for (const std::string& line : cautionLines()) caution += line + "\n";
  ASSERT_FALSE(caution.empty());
  EXPECT_TRUE(checkText(c.layout, c.report, "p").ends_with(caution));
  EXPECT_TRUE(
      measureText(c.layout, c.report.figures, routeFigures(c.layout), std::nullopt).ends_with(caution));
  EXPECT_TRUE(compareText(c.plan, choiceOf(c.plan)).ends_with(caution));
  EXPECT_TRUE(booksText().ends_with(caution));
}

}  // namespace
}  // namespace elbowroom
