#include "core/rules/tally.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

Finding finding(Outcome outcome, const char* subject, const char* fact = "", const char* accepted = "") {
  Finding f;
  f.rule = "toilet-clear-front";
  f.book = "us-residential";
  f.level = Level::advised;
  f.outcome = outcome;
  f.subjects = {{subject}};
  f.fact = fact;
  f.acknowledged = accepted;
  return f;
}

TEST(Tally, AcceptedIsNotShortAndOneQuestionCountsOnce) {
  Report report;
  report.findings = {finding(Outcome::shortfall, "a"),
                     finding(Outcome::shortfall, "a", "", "guests only"),
                     finding(Outcome::unknown, "a", "height"),
                     finding(Outcome::unknown, "a", "height"),
                     finding(Outcome::unknown, "b", "height"),
                     finding(Outcome::unknown, "b", "curb"),
                     finding(Outcome::unknown, "b", "curb", "as it is"),
                     finding(Outcome::unknown, "b"),
                     finding(Outcome::unknown, "b"),
                     finding(Outcome::close, "a"),
                     finding(Outcome::clear, "a"),
                     finding(Outcome::notApplicable, "a")};
  const Tally tally = tallyOf(report);
  EXPECT_EQ(tally.allShort(), 1);
  EXPECT_EQ(tally.shortOf(Level::advised), 1);
  EXPECT_EQ(tally.accepted, 2);
  EXPECT_EQ(tally.unknown, 6);
  EXPECT_EQ(tally.questions, 5) << "what names no fact asks nothing that another asks, too";
  EXPECT_EQ(tally.close, 1);
  EXPECT_EQ(tally.clear, 1);
}

TEST(Tally, TheRoomHasOneCeilingWhateverHangsUnderIt) {
  EXPECT_TRUE(askTheSame(finding(Outcome::unknown, "a", "ceiling.height"), finding(Outcome::unknown, "b", "ceiling.height")));
  EXPECT_FALSE(askTheSame(finding(Outcome::unknown, "a", "height"), finding(Outcome::unknown, "b", "height")));
  EXPECT_FALSE(askTheSame(finding(Outcome::unknown, "a", "height"), finding(Outcome::shortfall, "a", "height")));
}

}  // namespace
}  // namespace elbowroom
