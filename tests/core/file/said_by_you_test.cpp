// What the person has changed, chosen and accepted stays visible wherever findings are listed.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/drawing/sheet.h"
#include "core/file/plan_file.h"
#include "core/file/report_json.h"
#include "core/rules/text.h"
#include "tests/core/file/example_plan.h"

namespace elbowroom {
namespace {

using Json = nlohmann::json;
using namespace literals;

// The example's hamper stands 18 in before the toilet's bowl: short of the 21 in of IRC P2705.1(5).
Plan plan() { return *readPlan(testing::kExamplePlan); }

struct Said {
  std::string text, json, sheets;
};
Said said(const Plan& p) {
  const Layout layout = deriveLayout(p, 0);
  const Report report = check(layout, choiceOf(p));
  return {checkText(layout, report, "x"), checkJson(layout, report, "x"),
          toSvg(makeSheets(layout, report, {"2026-01-01", Paper::letter}))};
}

Json findingIn(const std::string& json, const std::string& book, const std::string& rule) {
  const Json report = Json::parse(json);
  for (const Json& f : report.at("findings"))
    if (f.at("book") == book && f.at("rule") == rule) return f;
  ADD_FAILURE() << "no finding " << rule;
  return {};
}

// Sheets break lines; a phrase of a few words stays whole often enough to be found by its rarest word.
bool has(const std::string& where, const std::string& what) { return where.find(what) != std::string::npos; }

TEST(SaidByYou, AnAcceptedFindingStaysListedEverywhereWithItsReason) {
  Plan p = plan();
  const Layout layout = deriveLayout(p, 0);
  const Report before = check(layout, choiceOf(p));
  for (const Finding& f : before.findings)
    if (f.book == "us-residential" && f.rule == "toilet-clear-front")
      p.options[0].acknowledged.push_back({f.book, f.rule, f.subjects, "the hamper has castors", {}});
  ASSERT_EQ(p.options[0].acknowledged.size(), 1u);
  const Said s = said(p);
  EXPECT_TRUE(has(s.text, "Accepted by you: the hamper has castors")) << s.text;
  EXPECT_TRUE(has(s.sheets, "castors"));
  const Json f = findingIn(s.json, "us-residential", "toilet-clear-front");
  EXPECT_EQ(f.at("outcome"), "short");
  EXPECT_EQ(f.at("acknowledged"), "the hamper has castors");
  const Report after = check(deriveLayout(p, 0), choiceOf(p));
  EXPECT_EQ(after.findings.size(), before.findings.size());
}

TEST(SaidByYou, AChangedLimitSaysSoWithItsReason) {
  Plan p = plan();
  p.rule_changes.push_back({"us-residential", "toilet-clear-front", false, 16_in, "permit office agreed", {}});
  const Said s = said(p);
  const Json f = findingIn(s.json, "us-residential", "toilet-clear-front");
  EXPECT_EQ(f.at("outcome"), "clear");
  EXPECT_EQ(f.at("changed"), "permit office agreed");
  EXPECT_TRUE(has(f.at("source"), "limit changed by you: permit office agreed"));
  EXPECT_TRUE(has(s.text, "limit changed by you: permit office agreed"));
  EXPECT_TRUE(has(s.text, "limit 16\" instead of 21\" (permit office agreed)")) << s.text;
  EXPECT_TRUE(has(s.sheets, "Rules changed by you")) << "also where the finding is clear now";
  EXPECT_TRUE(findingIn(said(plan()).json, "us-residential", "toilet-clear-front").at("changed").is_null());
}

TEST(SaidByYou, ARuleSwitchedOffIsNamed) {
  Plan p = plan();
  p.rule_changes.push_back({"us-residential", "toilet-clear-front", true, {}, "no toilet stays", {}});
  p.rule_changes.push_back({"ca-nothing", "toilet-clear-front", true, {}, "another book", {}});
  const Said s = said(p);
  EXPECT_TRUE(has(s.text, "clear floor in front: switched off (no toilet stays)")) << s.text;
  EXPECT_FALSE(has(s.text, "another book")) << "a book that is not checked";
  const Json report = Json::parse(s.json);
  EXPECT_EQ(report.at("rule_changes").size(), 1u);
  for (const Json& f : report.at("findings"))
    EXPECT_FALSE(f.at("book") == "us-residential" && f.at("rule") == "toilet-clear-front");
}

TEST(SaidByYou, NothingIsSaidOfPlansWithoutChanges) {
  const Said s = said(plan());
  EXPECT_FALSE(has(s.text, "by you"));
  EXPECT_FALSE(has(s.sheets, "by you"));
}

}  // namespace
}  // namespace elbowroom
