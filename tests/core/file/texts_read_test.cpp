// What a person reads of all rules' own plans and all samples: no key in the place of words, no figure below nothing, no
// word twice, and every question in the plan's own words.
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>

#include "core/file/plan_file.h"
#include "core/file/report_json.h"
#include "core/rules/check.h"
#include "core/rules/text.h"
#include "core/rules/wishes.h"

namespace elbowroom {
namespace {

namespace fs = std::filesystem;

std::vector<Plan> allPlans() {
  std::vector<Plan> plans;
  for (const char* folder : {"/tests/rules", "/samples"})
    for (const auto& entry : fs::recursive_directory_iterator(std::string(SOURCE_DIR) + folder)) {
      if (entry.path().extension() != ".elbowroom") continue;
      const Result<Plan> plan = loadPlan(entry.path().string());
      EXPECT_TRUE(plan.ok()) << entry.path();
      if (plan.ok()) plans.push_back(plan.value());
    }
  return plans;
}

TEST(Texts, OfAllPlansReadWell) {
  const std::regex below_nothing(R"((^|[ (])-\d)"), twice(R"(\b([A-Za-z]+) \1\b)", std::regex::icase),
      kept_key(R"(\b[a-z]+_[a-z_]+\b)");
  int read = 0;
  for (const Plan& plan : allPlans())
    for (std::size_t i = 0; i < plan.options.size(); ++i)
      for (const Finding& f : check(deriveLayout(plan, i), choiceOf(plan)).findings) {
        if (f.outcome == Outcome::notApplicable) continue;
        const FindingText text = textOf(f, plan.options[i], plan.unit);
        for (const std::string* said : {&text.headline, &text.measured, &text.needed, &text.by, &text.detail}) {
          EXPECT_FALSE(std::regex_search(*said, below_nothing)) << *said;
          EXPECT_FALSE(std::regex_search(*said, twice)) << *said;
          EXPECT_FALSE(std::regex_search(*said, kept_key)) << *said;
          EXPECT_EQ(said->find("is not known"), std::string::npos) << *said;
        }
        ++read;
      }
  EXPECT_GT(read, 5000);
}

// A length that is not stated names what to measure: none is "not stated" under the name of what is worked out from it.
TEST(Texts, EveryMissingFactHasItsQuestion) {
  for (const Plan& plan : allPlans())
    for (std::size_t i = 0; i < plan.options.size(); ++i)
      for (const Finding& f : check(deriveLayout(plan, i), choiceOf(plan)).findings) {
        if (f.outcome != Outcome::unknown || f.fact.empty() || onlyWished(f) || wishOf(f) != nullptr) continue;
        const std::string said = textOf(f, plan.options[i], plan.unit).headline;
        EXPECT_NE(said.find("the plan does not say: "), std::string::npos) << f.rule << " asks for " << f.fact << ": " << said;
      }
}

TEST(Texts, AReportAsksEachQuestionOnce) {
  const Result<Plan> plan = loadPlan(std::string(SOURCE_DIR) + "/samples/hall-bath.elbowroom");
  ASSERT_TRUE(plan.ok());
  const Layout layout = deriveLayout(plan.value(), 0);
  const std::string text = checkText(layout, check(layout, choiceOf(plan.value())), "plan");
  std::map<std::string, int> lines;
  std::size_t at = 0;
  while ((at = text.find("  ", at)) != std::string::npos) {
    const std::size_t end = text.find('\n', at);
    const std::string line = text.substr(at, end - at);
    if (line.find("the plan does not say: ") != std::string::npos) ++lines[line];
    at = end == std::string::npos ? text.size() : end;
  }
  EXPECT_GT(lines.size(), 5u);
  for (const auto& [line, times] : lines) EXPECT_EQ(times, 1) << line;
}

}  // namespace
}  // namespace elbowroom
