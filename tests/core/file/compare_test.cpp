// Options side by side, on a bath of 60 x 96 with a swing door and its copy with a pocket door.
#include "core/file/compare.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/file/plan_file.h"
#include "core/file/report_json.h"
#include "core/file/report_rules.h"
#include "core/plan/edit.h"
#include "tests/core/file/example_plan.h"

namespace elbowroom {
namespace {

class CompareTest : public ::testing::Test {
 protected:
  CompareTest() {
    plan = loadPlan(SOURCE_DIR "/samples/hall-bath.elbowroom").value();
    compared = compareOptions(plan, choiceOf(plan));
  }
  const CompareLine* figure(std::string_view label) const {
    for (const CompareLine& line : compared.figures)
      if (line.label == label) return &line;
    return nullptr;
  }
  Plan plan;
  Comparison compared;
};

TEST_F(CompareTest, CountsAreThoseOfTheReports) {
  ASSERT_EQ(compared.options.size(), plan.options.size());
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    const Tally tally = tallyOf(check(deriveLayout(plan, i), choiceOf(plan)));
    EXPECT_EQ(figure("Short, required")->cells.at(i).text, std::to_string(tally.shortOf(Level::required)));
    EXPECT_EQ(figure("Short, craft")->cells.at(i).text, std::to_string(tally.shortOf(Level::craft)));
    EXPECT_EQ(figure("Not stated")->cells.at(i).text, std::to_string(tally.questions));
    EXPECT_EQ(figure("Clear")->cells.at(i).text, std::to_string(tally.clear));
  }
}

// The leaf of 30 in: 30 less 1 3/8 leaf and 1/2 stop in the swing, less 1/2 in the pocket (DEVELOPERS.md, door_clear.cpp).
TEST_F(CompareTest, ADoorStandsWithItsFiguresInEachOption) {
  const CompareLine* door = figure("Door d1");
  ASSERT_NE(door, nullptr);
  EXPECT_TRUE(door->differs);
  EXPECT_EQ(door->cells[0].text, "Hinged, clear 2'-4 1/8\", takes 4.9 sq ft");
  EXPECT_EQ(door->cells[1].text, "Pocket, clear 2'-5 1/2\", takes no floor");
  EXPECT_EQ(door->cells[0].subjects, std::vector{ElementId{"d1"}});
}

// Every shortfall of every option is told once: no line without one, and as many short cells as shortfalls.
TEST_F(CompareTest, EveryShortfallHasALine) {
  std::vector<int> told(plan.options.size());
  for (const CompareLine& line : compared.shortfalls) {
    EXPECT_FALSE(line.why.empty());
    bool any = false;
    for (std::size_t i = 0; i < line.cells.size(); ++i)
      if (line.cells[i].outcome == Outcome::shortfall) ++told[i], any = true;
    EXPECT_TRUE(any) << line.label;
  }
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    const Tally tally = tallyOf(check(deriveLayout(plan, i), choiceOf(plan)));
    EXPECT_GE(told[i], tally.shortOf(Level::required) + tally.shortOf(Level::advised) + tally.shortOf(Level::craft))
        << plan.options[i].name;
  }
  EXPECT_TRUE(std::is_sorted(compared.shortfalls.begin(), compared.shortfalls.end(),
                             [](const CompareLine& a, const CompareLine& b) { return a.level < b.level; }));
}

TEST_F(CompareTest, WhatOneOptionIsShortOfTheOthersAnswer) {
  const auto line = std::find_if(compared.shortfalls.begin(), compared.shortfalls.end(), [](const CompareLine& each) {
    return each.book == "us-residential" && each.label == "Toilet: centreline to the nearest side, at least 15\"";
  });
  ASSERT_NE(line, compared.shortfalls.end());
  EXPECT_EQ(line->cells[0].text, "13\": short by 2\"");
  EXPECT_EQ(line->cells[1].text, "18\": clear");
  EXPECT_TRUE(line->differs);
  plan.options[1].fixtures.clear();
  const Comparison without = compareOptions(plan, choiceOf(plan));
  for (const CompareLine& each : without.shortfalls)
    if (each.label == line->label && each.book == line->book) {
      EXPECT_EQ(each.cells[1].text, "not there");
    }
}

// In the third option the toilet has another neighbour than the vanity: the same matter all the same.
TEST_F(CompareTest, WhatAThingIsMeasuredAgainstMayBeAnotherOne) {
  const auto is = [](const CompareLine& each) {
    return each.book == "us-access" && each.label.starts_with("Toilet: clear space about it");
  };
  ASSERT_EQ(std::count_if(compared.shortfalls.begin(), compared.shortfalls.end(), is), 1);
  for (const CompareCell& cell : std::find_if(compared.shortfalls.begin(), compared.shortfalls.end(), is)->cells)
    EXPECT_EQ(cell.outcome, Outcome::shortfall);
}

TEST_F(CompareTest, CopiesDifferInNothing) {
  plan.options.resize(1);
  plan.options.push_back(plan.options[0]);
  plan.options[1].name = "Copy";
  const Comparison same = compareOptions(plan, choiceOf(plan));
  for (const auto* lines : {&same.figures, &same.shortfalls})
    for (const CompareLine& line : *lines) EXPECT_FALSE(line.differs) << line.label;
}

TEST_F(CompareTest, TheVerbPrintsTheSameLines) {
  const std::string text = compareText(plan, choiceOf(plan));
  for (const CompareLine& line : compared.shortfalls) EXPECT_NE(text.find(line.label), std::string::npos) << line.label;
  for (const CompareLine& line : compared.figures) EXPECT_NE(text.find("\n" + line.label), std::string::npos) << line.label;
}

TEST(Compare, AnEmptyPlanIsComparedToo) {
  const Plan plan = emptyPlan(Unit::inches);
  const Comparison compared = compareOptions(plan, choiceOf(plan));
  EXPECT_EQ(compared.options.size(), 1u);
  EXPECT_TRUE(compared.shortfalls.empty());
}

}  // namespace
}  // namespace elbowroom
