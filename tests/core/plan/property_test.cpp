// Properties that must hold for any sequence of edits: fixed seeds, so a failure can be repeated.
#include <gtest/gtest.h>

#include <map>

#include "core/plan/history.h"
#include "core/plan/integrity.h"
#include "core/plan/wall_line.h"
#include "tests/core/plan/hall_bath.h"
#include "tests/core/plan/random_edits.h"

namespace elbowroom {
namespace {

using testing::hallBath;
using testing::RandomEdits;

constexpr int kSequences = 2000;
constexpr int kEdits = 15;

Plan startOf(int seed) { return seed % 4 == 0 ? emptyPlan(Unit::inches) : hallBath(); }

TEST(EditProperty, IntegrityHoldsAndUndoAndRedoReturnEqualPlans) {
  std::map<std::size_t, int> accepted, refused;
  for (int seed = 0; seed < kSequences; ++seed) {
    RandomEdits edits(static_cast<unsigned>(seed));
    const Plan start = startOf(seed);
    History history(start);
    // The plan after each step of the history, kept apart from it.
    std::vector<Plan> states{start};
    for (int i = 0; i < kEdits; ++i) {
      const Edit edit = edits.next(history.plan());
      const Plan before = history.plan();
      const Plan given = before;
      const Result<Plan> direct = apply(given, edit);
      ASSERT_EQ(given, before) << "apply changed what it was given, seed " << seed;
      const long revision = history.revision();
      const Result<bool> changed = history.perform(edit);
      ASSERT_EQ(changed.ok(), direct.ok());
      if (!changed.ok()) {
        ++refused[edit.change.index()];
        ASSERT_EQ(history.plan(), before)
            << "a refused edit changed the plan, seed " << seed << ", edit " << i;
        ASSERT_EQ(history.revision(), revision);
        ASSERT_EQ(changed.error(), direct.error());
        ASSERT_FALSE(changed.error().message.empty());
        continue;
      }
      ++accepted[edit.change.index()];
      const std::optional<Error> broken = integrity(history.plan());
      ASSERT_FALSE(broken) << "seed " << seed << ", edit " << i << ": " << broken->message;
      ASSERT_EQ(history.plan(), *direct);
      ASSERT_EQ(*changed, history.plan() != before);
      if (i % 5 == 4) history.endMerge();
    }
    const Plan end = history.plan();
    std::vector<Plan> way_back{end};
    while (history.canUndo()) {
      history.undo();
      ASSERT_NE(history.plan(), way_back.back()) << "a step that changes nothing, seed " << seed;
      way_back.push_back(history.plan());
    }
    ASSERT_EQ(history.plan(), start) << "seed " << seed;
    for (std::size_t k = way_back.size() - 1; k-- > 0;) {
      history.redo();
      ASSERT_EQ(history.plan(), way_back[k]) << "seed " << seed;
    }
    ASSERT_FALSE(history.canRedo());
    ASSERT_EQ(history.plan(), end) << "seed " << seed;
  }
  // The sequences are worth something only if every kind of edit is both accepted and (where it can be)
  // refused.
  for (std::size_t kind = 0; kind < std::variant_size_v<Change>; ++kind) {
    EXPECT_GE(accepted[kind], 20) << "kind " << kind;
    RecordProperty("kind" + std::to_string(kind), std::to_string(accepted[kind]) + " accepted, " +
                                                      std::to_string(refused[kind]) + " refused");
  }
  const std::size_t may_fail = Change(SetCeiling{}).index();
  for (std::size_t kind = 0; kind < may_fail; ++kind) EXPECT_GE(refused[kind], 5) << "kind " << kind;
}

// A wall moved, split or joined leaves every opening within its wall, and a fixture whose wall did not change
// exactly where it stood.
TEST(EditProperty, ElementsOfUntouchedWallsStayExactlyWhereTheyWere) {
  int compared = 0;
  for (int seed = 0; seed < kSequences; ++seed) {
    RandomEdits edits(static_cast<unsigned>(seed) + 1'000'000);
    Plan plan = hallBath();
    for (int i = 0; i < kEdits; ++i) {
      const Edit edit = edits.next(plan);
      const Result<Plan> result = apply(plan, edit);
      if (!result.ok()) continue;
      const bool moves = std::holds_alternative<MoveCorner>(edit.change) ||
                         std::holds_alternative<MoveWall>(edit.change) ||
                         std::holds_alternative<RemoveCorner>(edit.change);
      if (moves) {
        const Option& before = plan.options[edit.option];
        const Option& after = result->options[edit.option];
        ASSERT_EQ(after.fixtures.size(), before.fixtures.size());
        ASSERT_EQ(after.openings.size(), before.openings.size());
        for (std::size_t k = 0; k < before.fixtures.size(); ++k) {
          const Fixture& f = before.fixtures[k];
          const auto* on = std::get_if<OnWall>(&f.placement);
          const bool untouched = !on || wallLine(before, on->wall) == wallLine(after, on->wall);
          if (!untouched) continue;
          ASSERT_EQ(after.fixtures[k], f) << "seed " << seed;
          ++compared;
        }
      }
      plan = *result;
    }
  }
  EXPECT_GT(compared, 2000);
}

}  // namespace
}  // namespace elbowroom
