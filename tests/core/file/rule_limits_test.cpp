// Boundary cases of every rule with a length as its limit: the figure that it measures is set in its quiet
// plan to the limit and 1/16 in to either side; limits with two ends are tried at both. The books for
// accessibility: access_limits_test.cpp.
#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "core/file/plan_file.h"
#include "core/rules/check.h"
#include "tests/core/file/rule_knobs.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_knobs::knobOf;

bool isElsewhere(const Rule& rule) {
  return rule.book.find("-access") != std::string_view::npos || rule.book == "us-adaptable";
}
std::string nameOf(const Rule& rule) { return std::string(rule.book) + "/" + std::string(rule.id); }

// Rules with a length as their limit that have no boundary case, and why.
const std::map<std::string, std::string>& exempt() {
  static const std::map<std::string, std::string> rules{
      {"comfort/grab-bar-gap", "one exact figure: nothing to spare to either side; tried below"},
      {"comfort/grab-bar-diameter", "its ends are nearer than twice the site tolerance; tried below"}};
  return rules;
}

Plan quietPlan(const Rule& rule) {
  const Result<Plan> plan = loadPlan(SOURCE_DIR "/tests/rules/" + nameOf(rule) + "/quiet.elbowroom");
  EXPECT_TRUE(plan.ok());
  return plan.ok() ? plan.value() : emptyPlan(Unit::inches);
}

Finding findingOf(const Plan& plan, const Rule& rule) {
  BookChoice choice = choiceOf(plan);
  choice.books = {std::string(rule.book)};
  for (const Finding& f : check(deriveLayout(plan, 0), choice).findings)
    if (f.rule == rule.id) return f;
  ADD_FAILURE() << "no finding";
  return {};
}

Length lengthIn(const std::optional<Quantity>& quantity) {
  const Length* length = quantity ? std::get_if<Length>(&*quantity) : nullptr;
  EXPECT_NE(length, nullptr);
  return length ? *length : Length{};
}

// Searched figures (circles, swings) come within 1/64 in; the others are exact.
constexpr double kSearched = 0.0165;

// At one end of the limit; `good` is the direction in which there is more to spare.
void tryAt(const Rule& rule, Length limit, int good) {
  SCOPED_TRACE("limit " + std::to_string(limit.inches()));
  const auto at = [&](Length off) {
    Plan plan = quietPlan(rule);
    const Length figure = limit + good * off;
    knobOf(std::string(rule.id))(plan, figure);
    const Finding f = findingOf(plan, rule);
    EXPECT_NEAR(lengthIn(f.measured).inches(), figure.inches(), kSearched);
    return f;
  };
  EXPECT_EQ(at(Length{}).outcome, Outcome::close) << "the exact limit is met";
  EXPECT_EQ(at(0.0625_in).outcome, Outcome::close) << "met with less than the site tolerance";
  EXPECT_EQ(at(0.75_in).outcome, Outcome::clear);
  const Finding missed = at(-0.0625_in);
  EXPECT_EQ(missed.outcome, Outcome::shortfall);
  EXPECT_NEAR(lengthIn(missed.short_by).inches(), 0.0625, kSearched);
}

TEST(RuleLimits, EveryLengthHasABoundaryCaseOrAReason) {
  for (const Rule& rule : allRules()) {
    if (isElsewhere(rule) || !std::holds_alternative<Length>(rule.limit)) continue;
    const bool has = static_cast<bool>(knobOf(std::string(rule.id)));
    EXPECT_NE(has, exempt().count(nameOf(rule)) > 0) << nameOf(rule) << ": no knob in rule_knobs.h";
  }
  for (const auto& [name, why] : exempt()) {
    const std::size_t slash = name.find('/');
    EXPECT_NE(findRule(name.substr(0, slash), name.substr(slash + 1)), nullptr) << name;
    EXPECT_FALSE(why.empty()) << name;
  }
}

TEST(RuleLimits, AtTheLimitAndASixteenthToEitherSide) {
  int tried = 0;
  for (const Rule& rule : allRules()) {
    if (isElsewhere(rule) || !std::holds_alternative<Length>(rule.limit) || exempt().count(nameOf(rule)))
      continue;
    if (!knobOf(std::string(rule.id))) continue;
    SCOPED_TRACE(nameOf(rule));
    const Finding quiet = findingOf(quietPlan(rule), rule);
    tryAt(rule, lengthIn(quiet.limit), rule.compare == Compare::atMost ? -1 : 1);
    if (rule.compare == Compare::between) tryAt(rule, lengthIn(quiet.limit_high), -1);
    ++tried;
  }
  EXPECT_GE(tried, 110);
}

// Guideline 14 quoting A117.1: 1 1/2 in off the wall, 1 1/4 to 2 in in diameter.
TEST(RuleLimits, WhatAHandClosesRound) {
  const auto outcome = [](const char* id, const char* fact, Length figure) {
    const Rule& rule = *findRule("comfort", id);
    Plan plan = quietPlan(rule);
    plan.options[0].on_walls.at(0).facts[fact] = figure;
    return findingOf(plan, rule).outcome;
  };
  EXPECT_EQ(outcome("grab-bar-gap", "wall_gap", 1.5_in), Outcome::close);
  EXPECT_EQ(outcome("grab-bar-gap", "wall_gap", 1.4375_in), Outcome::shortfall);
  EXPECT_EQ(outcome("grab-bar-gap", "wall_gap", 1.5625_in), Outcome::shortfall);
  EXPECT_EQ(outcome("grab-bar-diameter", "bar_diameter", 1.25_in), Outcome::close);
  EXPECT_EQ(outcome("grab-bar-diameter", "bar_diameter", 2_in), Outcome::close);
  EXPECT_EQ(outcome("grab-bar-diameter", "bar_diameter", 1.1875_in), Outcome::shortfall);
  EXPECT_EQ(outcome("grab-bar-diameter", "bar_diameter", 2.0625_in), Outcome::shortfall);
}

// Figures that are exact, not searched: a miss of less than 0.02 in counts as met.
TEST(RuleLimits, AMissByRoundingIsMet) {
  for (const Rule& rule : allRules()) {
    if (rule.id != "toilet-clear-front" && rule.id != "toilet-centreline-side" && rule.id != "shower-size")
      continue;
    SCOPED_TRACE(nameOf(rule));
    const Length limit = std::get<Length>(rule.limit);
    for (const auto& [off, outcome] :
         {std::pair{-0.019_in, Outcome::close}, {-0.021_in, Outcome::shortfall}}) {
      Plan plan = quietPlan(rule);
      knobOf(std::string(rule.id))(plan, limit + off);
      EXPECT_EQ(findingOf(plan, rule).outcome, outcome) << off.inches();
    }
  }
}

}  // namespace
}  // namespace elbowroom
