// Every rule with its two plans in tests/rules/<book>/<rule>/: the quiet one is met, the noisy one is short
// of exactly this rule. Boundary cases: rule_limits_test.cpp.
#include <gtest/gtest.h>

#include <filesystem>
#include <map>
#include <set>
#include <string>

#include "core/file/plan_file.h"
#include "core/rules/text.h"

namespace elbowroom {
namespace {

std::string pathOf(const Rule& rule, const char* kind) {
  return std::string(SOURCE_DIR "/tests/rules/") + std::string(rule.book) + "/" + std::string(rule.id) + "/" +
         kind + ".elbowroom";
}

Plan load(const Rule& rule, const char* kind) {
  const Result<Plan> plan = loadPlan(pathOf(rule, kind));
  EXPECT_TRUE(plan.ok()) << (plan.ok() ? "" : plan.error().message + " " + plan.error().place);
  return plan.ok() ? plan.value() : emptyPlan(Unit::inches);
}

std::vector<Finding> findingsOf(const Plan& plan, const Rule& rule) {
  BookChoice choice = choiceOf(plan);  // with the settings that the plan states
  choice.books = {std::string(rule.book)};
  choice.settings = plan.book_settings;  // for the rules of another edition
  return check(deriveLayout(plan, 0), choice).findings;
}

bool isMet(const Finding& f) { return f.outcome == Outcome::clear || f.outcome == Outcome::close; }

// Rules that cannot be missed alone: a rectangle below 900 sq in is also narrower than 30 in.
const std::map<std::string, std::set<std::string>> kCompanions{
    {"us-residential/shower-area", {"shower-size"}},
    {"us-residential/shower-area-up", {"shower-size-up"}},
    // 900 sq in beside a seat take 30 in each way; a panel for a pump is a panel.
    {"us-residential/shower-seat-area", {"shower-seat-side"}},
    {"us-residential/pump-panel", {"access-panel"}},
    // Nobody's knees, elbows or feet take as much floor as the guidelines keep clear for everybody.
    {"comfort/toilet-knees", {"toilet-clear-front"}},
    {"comfort/toilet-elbows", {"toilet-centreline-side"}},
    {"comfort/bath-kneel", {"bath-clear-front"}},
    {"comfort/basin-wall-per-user", {"basin-spacing"}},
    {"comfort/toilet-compartment-width", {"toilet-centreline-side"}},
    // What is too small for a compartment is too small for the space about its toilet, or to turn in.
    {"us-access/toilet-compartment-width", {"toilet-clearance", "turning-space"}},
    {"us-access/toilet-compartment-depth", {"turning-space"}},
    {"uk-access/toilet-clear-front", {"toilet-clear-front-wide"}},
    {"au-access/turning-quarter", {"turning-half"}},
    // A child and a helper are two who pass each other.
    {"comfort/basin-help-child", {"basin-pass-behind"}}};

TEST(RuleFixtures, TheQuietPlanIsMet) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(pathOf(rule, "quiet"));
    int of_this_rule = 0;
    for (const Finding& f : findingsOf(load(rule, "quiet"), rule)) {
      EXPECT_NE(f.outcome, Outcome::shortfall) << f.rule;
      if (f.rule != rule.id) continue;
      ++of_this_rule;
      EXPECT_TRUE(isMet(f));
      EXPECT_FALSE(f.places.empty());
    }
    EXPECT_GE(of_this_rule, 1) << "the plan does not concern its rule";
  }
}

TEST(RuleFixtures, TheNoisyPlanIsShortOfExactlyThisRule) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(pathOf(rule, "noisy"));
    const Plan plan = load(rule, "noisy");
    const auto companions = kCompanions.find(std::string(rule.book) + "/" + std::string(rule.id));
    int of_this_rule = 0;
    for (const Finding& f : findingsOf(plan, rule)) {
      if (f.outcome != Outcome::shortfall) continue;
      if (f.rule != rule.id) {
        EXPECT_TRUE(companions != kCompanions.end() && companions->second.count(f.rule))
            << "also short: " << f.rule;
        continue;
      }
      ++of_this_rule;
      EXPECT_FALSE(f.places.empty());
      EXPECT_EQ(f.level, rule.level);
      const FindingText text = textOf(f, plan.options[0], Unit::inches);
      EXPECT_EQ(text.detail.empty(), f.detail.empty()) << "no words for " << f.detail;
      for (const ElementId& id : f.subjects) EXPECT_FALSE(subjectName(plan.options[0], id).empty());
    }
    EXPECT_EQ(of_this_rule, 1);
  }
}

TEST(RuleFixtures, NoPlanWithoutARule) {
  for (const auto& entry : std::filesystem::recursive_directory_iterator(SOURCE_DIR "/tests/rules")) {
    if (entry.path().extension() != ".elbowroom") continue;
    const auto folder = entry.path().parent_path();
    const std::string id = folder.filename(), book = folder.parent_path().filename();
    EXPECT_NE(findRule(book, id), nullptr) << entry.path();
  }
}

}  // namespace
}  // namespace elbowroom
