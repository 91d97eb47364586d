#include "core/plan/history.h"

#include <gtest/gtest.h>

#include "tests/core/plan/hall_bath.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::hallBath;

Edit titled(const char* title) { return {0, SetTitle{title}, std::string("Call it ") + title, ""}; }

Edit wcAt(const Plan& plan, Length along, const char* key = "drag wc", const char* label = "Move toilet") {
  Fixture wc = *findFixture(plan.options[0], {"wc"});
  std::get<OnWall>(wc.placement).along = along;
  return {0, PutFixtures{{wc}}, label, key};
}

class HistoryTest : public ::testing::Test {
 protected:
  const Plan start = hallBath();
  History history{start};
  bool perform(const Edit& edit) {
    const Result<bool> result = history.perform(edit);
    EXPECT_TRUE(result.ok());
    return result.ok() && *result;
  }
  void drag(std::initializer_list<Length> places) {
    for (const Length along : places) perform(wcAt(history.plan(), along));
  }
};

TEST_F(HistoryTest, StartsWithNothingToUndo) {
  EXPECT_EQ(history.plan(), start);
  EXPECT_FALSE(history.canUndo() || history.canRedo());
  EXPECT_EQ(history.undoLabel() + history.redoLabel(), "");
  history.undo();
  history.redo();
  history.abandon();
  EXPECT_EQ(history.plan(), start);
  EXPECT_EQ(history.revision(), 0);
}

TEST_F(HistoryTest, UndoAndRedoWalkThroughTheStepsWithTheirLabels) {
  EXPECT_TRUE(perform(titled("A")));
  EXPECT_TRUE(perform(titled("B")));
  EXPECT_EQ(history.undoLabel(), "Call it B");
  history.undo();
  EXPECT_EQ(history.plan().title, "A");
  EXPECT_EQ(history.undoLabel(), "Call it A");
  EXPECT_EQ(history.redoLabel(), "Call it B");
  history.undo();
  EXPECT_EQ(history.plan(), start);
  history.redo();
  history.redo();
  EXPECT_EQ(history.plan().title, "B");
  EXPECT_FALSE(history.canRedo());
}

TEST_F(HistoryTest, ADragIsOneStep) {
  drag({44_in, 43_in, 42_in});
  EXPECT_EQ(history.undoLabel(), "Move toilet");
  history.undo();
  EXPECT_EQ(history.plan(), start);
  EXPECT_FALSE(history.canUndo());
  history.redo();
  EXPECT_EQ(history.plan(), *apply(start, wcAt(start, 42_in)));
}

TEST_F(HistoryTest, MergingEndsWithTheDragAnotherKeyAndUndo) {
  drag({44_in});
  history.endMerge();
  drag({43_in});
  perform(wcAt(history.plan(), 42_in, "other"));
  perform(titled("A"));
  perform(wcAt(history.plan(), 41_in));
  history.undo();
  history.redo();
  perform(wcAt(history.plan(), 40_in));
  int steps = 0;
  for (; history.canUndo(); history.undo()) ++steps;
  EXPECT_EQ(steps, 6);
}

TEST_F(HistoryTest, EditsWithoutAKeyNeverMerge) {
  perform(titled("A"));
  perform(titled("B"));
  history.undo();
  EXPECT_EQ(history.plan().title, "A");
}

TEST_F(HistoryTest, AnEditThatChangesNothingLeavesNoStep) {
  EXPECT_FALSE(perform(titled(start.title.c_str())));
  EXPECT_FALSE(history.canUndo());
  EXPECT_EQ(history.revision(), 0);
  perform(titled("A"));
  history.undo();
  EXPECT_FALSE(perform(titled(start.title.c_str())));
  EXPECT_TRUE(history.canRedo()) << "a no-op must not clear what can be redone";
}

TEST_F(HistoryTest, ADragThatComesBackLeavesNoStepAndSparesTheOneBefore) {
  drag({44_in});
  history.endMerge();
  const Plan placed = history.plan();
  drag({43_in, 44_in});
  EXPECT_EQ(history.plan(), placed);
  // The same drag goes on: it must not merge into the finished one.
  drag({40_in});
  history.undo();
  EXPECT_EQ(history.plan(), placed);
  history.undo();
  EXPECT_EQ(history.plan(), start);
}

TEST_F(HistoryTest, RefusedEditsChangeNothing) {
  drag({44_in});
  const long revision = history.revision();
  const Result<bool> result = history.perform({0, RemoveOption{}, "", "drag wc"});
  ASSERT_FALSE(result.ok());
  EXPECT_EQ(history.revision(), revision);
  drag({43_in});  // still the same drag
  history.undo();
  EXPECT_EQ(history.plan(), start);
}

TEST_F(HistoryTest, ANewStepClearsWhatCouldBeRedone) {
  perform(titled("A"));
  perform(titled("B"));
  history.undo();
  perform(titled("C"));
  EXPECT_FALSE(history.canRedo());
  history.undo();
  EXPECT_EQ(history.plan().title, "A");
}

TEST_F(HistoryTest, ACancelledDragIsGoneAndCannotBeRedone) {
  perform(titled("A"));
  const Plan before = history.plan();
  drag({44_in, 43_in});
  history.abandon();
  EXPECT_EQ(history.plan(), before);
  EXPECT_FALSE(history.canRedo());
  EXPECT_EQ(history.undoLabel(), "Call it A");
}

TEST_F(HistoryTest, CancellingADragThatChangedNothingSparesOlderSteps) {
  perform(titled("A"));
  history.abandon();
  EXPECT_EQ(history.plan().title, "A");
  drag({44_in});
  history.endMerge();
  drag({43_in, 44_in});
  history.abandon();
  EXPECT_EQ(history.undoLabel(), "Move toilet");
}

TEST_F(HistoryTest, TheSavedMarkFollowsThePlanNotTheStep) {
  EXPECT_TRUE(history.savedIsCurrent());
  perform(titled("A"));
  EXPECT_FALSE(history.savedIsCurrent());
  history.markSaved();
  EXPECT_TRUE(history.savedIsCurrent());
  history.undo();
  EXPECT_FALSE(history.savedIsCurrent());
  history.redo();
  EXPECT_TRUE(history.savedIsCurrent());
  perform(titled("B"));
  EXPECT_FALSE(history.savedIsCurrent());
  perform(titled("A"));
  EXPECT_TRUE(history.savedIsCurrent());
  drag({44_in});
  history.markSaved();
  drag({43_in});
  EXPECT_FALSE(history.savedIsCurrent());
}

TEST_F(HistoryTest, TheRevisionCountsEveryChangeOfThePlan) {
  long last = history.revision();
  const auto counts = [&] { return std::exchange(last, history.revision()) < history.revision(); };
  drag({44_in});
  EXPECT_TRUE(counts());
  drag({43_in});
  EXPECT_TRUE(counts());
  drag({43_in});
  EXPECT_FALSE(counts());
  history.endMerge();
  history.markSaved();
  EXPECT_FALSE(counts());
  history.undo();
  EXPECT_TRUE(counts());
  history.redo();
  EXPECT_TRUE(counts());
  drag({40_in});
  history.abandon();
  EXPECT_TRUE(counts());
}

}  // namespace
}  // namespace elbowroom
