// Whatever a person does to a plan, saving and opening it changes nothing. Fixed seeds, so a failure can be
// repeated.
#include <gtest/gtest.h>

#include "core/file/plan_file.h"
#include "tests/core/plan/hall_bath.h"
#include "tests/core/plan/random_edits.h"

namespace elbowroom {
namespace {

using testing::hallBath;
using testing::RandomEdits;

constexpr int kSequences = 2000;
constexpr int kEdits = 15;

std::size_t elementsOf(const Plan& plan) {
  std::size_t count = 0;
  for (const Option& o : plan.options)
    count += o.openings.size() + o.fixtures.size() + o.on_walls.size() + o.on_ceiling.size();
  return count;
}

class SavedPlan : public ::testing::TestWithParam<Unit> {};

TEST_P(SavedPlan, ReadsBackEqualAfterAnyEdits) {
  int accepted = 0, changed = 0;
  std::size_t elements = 0;
  for (int seed = 0; seed < kSequences; ++seed) {
    RandomEdits edits(static_cast<unsigned>(seed) + 2'000'000);
    Plan plan = seed % 4 == 0 ? emptyPlan(GetParam()) : hallBath();
    plan.unit = GetParam();
    const Plan start = plan;
    for (int i = 0; i < kEdits; ++i) {
      const Result<Plan> next = apply(plan, edits.next(plan));
      if (!next.ok()) continue;
      plan = *next;
      ++accepted;
    }
    // The edits may have switched it; every sequence is to be saved in this unit.
    plan.unit = GetParam();
    changed += plan != start;
    elements += elementsOf(plan);
    const std::string text = writePlan(plan);
    const Result<Plan> back = readPlan(text);
    ASSERT_TRUE(back.ok()) << "seed " << seed << ": " << back.error().message;
    ASSERT_EQ(*back, plan) << "seed " << seed << "\n" << text;
    ASSERT_EQ(writePlan(*back), text) << "seed " << seed;
  }
  EXPECT_GE(accepted, kSequences * 5);
  EXPECT_GE(changed, kSequences * 9 / 10);
  EXPECT_GE(elements, static_cast<std::size_t>(kSequences) * 3);
}

INSTANTIATE_TEST_SUITE_P(BothUnits, SavedPlan, ::testing::Values(Unit::inches, Unit::millimetres),
                         [](const auto& unit) {
                           return unit.param == Unit::inches ? "inches" : "millimetres";
                         });

}  // namespace
}  // namespace elbowroom
