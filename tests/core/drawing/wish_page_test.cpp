// The Wish list on paper: printed once it is answered, with every point in its part, its reason and its
// source.
#include <gtest/gtest.h>

#include "core/drawing/sheet.h"
#include "core/rules/wishes.h"
#include "tests/core/drawing/plans.h"

namespace elbowroom {
namespace {

std::vector<Sheet> sheetsOf(const Plan& plan) {
  const Layout layout = deriveLayout(plan, 0);
  return makeSheets(layout, check(layout, choiceOf(plan)), {"2026-01-31", Paper::letter});
}

// All words of the pages of the Wish list, in the order in which they stand.
std::string wordsOf(const std::vector<Sheet>& sheets) {
  std::string all;
  for (const Sheet& sheet : sheets) {
    if (sheet.name.find("Wish list") == std::string::npos) continue;
    for (const DrawItem& item : sheet.content)
      if (const auto* text = std::get_if<TextPrim>(&item.prim)) all += text->text + " ";
  }
  return all;
}

Plan answered() {
  Plan plan = testing::planOf(testing::kHallBath);
  plan.options[0].wishes["niche"] = {true, "", {}};
  plan.options[0].wishes["hand-spray"] = {false, "The bath is only for show", {}};
  return plan;
}

TEST(WishPage, NobodyGetsAPageOfAListNotUsed) {
  EXPECT_EQ(wordsOf(sheetsOf(testing::planOf(testing::kHallBath))), "");
}

TEST(WishPage, InOutAndUndecidedAreToldApart) {
  const std::string all = wordsOf(sheetsOf(answered()));
  const auto place = [&](const std::string& words) {
    const std::size_t at = all.find(words);
    EXPECT_NE(at, std::string::npos) << words;
    return at;
  };
  const std::size_t in = place(" In "), out = place(" Out "), undecided = place(" Undecided ");
  EXPECT_LT(in, out);
  EXPECT_LT(out, undecided);
  EXPECT_GT(place("Niche for bottles"), in);
  EXPECT_LT(place("Wanted, not in the plan yet"), out);
  EXPECT_LT(place("Natural light"), out) << "there without having been asked for";
  EXPECT_GT(place("Hand spray"), out);
  EXPECT_LT(place("The bath is only for show"), undecided);
  EXPECT_GT(place("Sliding door"), undecided);
  EXPECT_NE(all.find("Guideline 10"), std::string::npos) << "sources";
  EXPECT_EQ(all.find("Shower without a curb"), std::string::npos) << "no shower, no question";
}

TEST(WishPage, UndecidedPointsAreNotFindings) {
  const Plan plan = answered();
  const Layout layout = deriveLayout(plan, 0);
  for (const Sheet& sheet :
       makeSheets(layout, check(layout, choiceOf(plan)), {"2026-01-31", Paper::letter})) {
    if (sheet.name.find("Findings list") == std::string::npos) continue;
    for (const DrawItem& item : sheet.content)
      if (const auto* text = std::get_if<TextPrim>(&item.prim)) {
        EXPECT_EQ(text->text.find("undecided"), std::string::npos) << text->text;
      }
  }
}

}  // namespace
}  // namespace elbowroom
