#include "core/plan/history.h"

#include <utility>

namespace elbowroom {

History::History(Plan start) {
  steps_.push_back({std::make_shared<const Plan>(std::move(start)), "", ""});
  saved_ = steps_[0].plan;
}

const Plan& History::plan() const { return *steps_[at_].plan; }

Result<bool> History::perform(const Edit& edit) {
  Result<Plan> after = apply(plan(), edit);
  if (!after) return after.error();
  if (*after == plan()) return false;
  ++revision_;
  const auto next = std::make_shared<const Plan>(std::move(after).value());
  const bool merges = merging_ && !edit.merge_key.empty() && steps_[at_].key == edit.merge_key;
  if (!merges) {
    steps_.resize(at_ + 1);
    steps_.push_back({next, edit.label, edit.merge_key});
    ++at_;
    merging_ = !edit.merge_key.empty();
    return true;
  }
  // A drag that comes back to where it began has changed nothing: its step goes, and what it does from
  // here on must not merge into an older step with the same key.
  if (*next == *steps_[at_ - 1].plan) {
    steps_.pop_back();
    --at_;
    merging_ = false;
    return true;
  }
  steps_[at_].plan = next;
  steps_[at_].label = edit.label;
  return true;
}

void History::endMerge() { merging_ = false; }

bool History::canUndo() const { return at_ > 0; }
bool History::canRedo() const { return at_ + 1 < steps_.size(); }
std::string History::undoLabel() const { return canUndo() ? steps_[at_].label : ""; }
std::string History::redoLabel() const { return canRedo() ? steps_[at_ + 1].label : ""; }

void History::undo() {
  merging_ = false;
  if (!canUndo()) return;
  --at_;
  ++revision_;
}

void History::redo() {
  merging_ = false;
  if (!canRedo()) return;
  ++at_;
  ++revision_;
}

void History::abandon() {
  if (!merging_) return;
  merging_ = false;
  steps_.pop_back();
  --at_;
  ++revision_;
}

void History::markUnsaved() { saved_.reset(); }

void History::markSaved() { saved_ = steps_[at_].plan; }

bool History::savedIsCurrent() const { return saved_ && (saved_ == steps_[at_].plan || *saved_ == plan()); }

long History::revision() const { return revision_; }

}  // namespace elbowroom
