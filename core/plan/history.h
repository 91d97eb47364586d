// Undo as snapshots: the plan values themselves with the label of the edit that led to each.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/plan/edit.h"

namespace elbowroom {

class History {
 public:
  explicit History(Plan start);

  const Plan& plan() const;
  // Applies the edit; an edit that changes nothing leaves no step. Error: nothing changed.
  Result<bool> perform(const Edit& edit);  // true: the plan changed
  // Ends merging: the next edit starts a new step even with the same key (call when a drag ends).
  void endMerge();

  bool canUndo() const;
  bool canRedo() const;
  std::string undoLabel() const;  // empty when there is none
  std::string redoLabel() const;
  void undo();  // no-op when there is none
  void redo();
  // Drops the step that is still merging, for a drag that is cancelled: back to before it, and it cannot be
  // redone. No-op when no step is merging (no key, merging ended, or the drag changed nothing), so that
  // cancelling never takes an older step with it.
  void abandon();

  void markSaved();
  void markUnsaved();  // the present plan is on no disk, for instance a recovered copy
  bool savedIsCurrent() const;
  // Counts up with every change of plan(); equal numbers mean the same plan.
  long revision() const;

 private:
  struct Step { std::shared_ptr<const Plan> plan; std::string label; std::string key; };
  std::vector<Step> steps_;
  std::size_t at_ = 0;
  std::shared_ptr<const Plan> saved_;
  bool merging_ = false;
  long revision_ = 0;
};

}  // namespace elbowroom
