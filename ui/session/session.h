// The open document: history, current option, selection, and the layout and report that belong to exactly the
// plan shown. Everything is recomputed before `changed` is emitted, so no view ever shows an older result.
#pragma once

#include <QObject>
#include <QString>
#include <optional>
#include <set>

#include "core/plan/copies.h"
#include "core/plan/history.h"
#include "core/rules/recheck.h"

namespace elbowroom::ui {

class Session : public QObject {
  Q_OBJECT
 public:
  explicit Session(Plan plan, QObject* parent = nullptr);

  const Plan& plan() const { return history_.plan(); }
  const Option& option() const { return layout_.option; }
  std::size_t optionIndex() const { return option_; }
  const Layout& layout() const { return layout_; }
  const Report& report() const { return checked_.report; }
  // What the check of this layout has searched for already.
  Memo& memo() { return checked_.memo; }
  const History& history() const { return history_; }

  // Applies the edit to the current option (its `option` is set here). A drag that nobody has ended is cancelled
  // first: what is only carried is not in the plan. False: refused; lastError() says why
  // and `refused` is emitted.
  bool perform(Change change, const QString& label, const QString& mergeKey = {});
  // The same for another option, by index: the one shown stays shown.
  bool performOn(std::size_t option, Change change, const QString& label);
  void endMerge();
  // Both keep showing the option that is shown, wherever it stands then.
  void undo();
  void redo();
  const QString& lastError() const { return last_error_; }

  // A drag: every dragTo starts again from the plan at beginDrag, so that clamped elements come back when the
  // mouse does. One history step at the end, none when cancelled. A refused dragTo keeps the last good state
  // and does not emit `refused`. Nested drags do not exist: beginDrag ends a running one.
  void beginDrag();
  bool dragTo(Change change, const QString& label);
  void endDrag();
  void cancelDrag();
  // Ends the drag with this change instead of where the mouse left it, as the drag's one step (a figure typed
  // while dragging). Not dragging: the same as perform.
  bool finishDragWith(Change change, const QString& label);
  bool dragging() const { return drag_base_.has_value(); }
  // Layout at beginDrag (the present one when not dragging): what snapping and offsets refer to.
  const Layout& dragBaseLayout() const { return drag_base_ ? base_layout_ : layout_; }

  void setOption(std::size_t index);
  const std::set<ElementId>& selection() const { return selection_; }
  void select(std::set<ElementId> ids);
  // What was copied last; it outlives the option and the plan it came from.
  const Copies& copied() const { return copied_; }
  void setCopied(Copies copies);
  // The finding under the mouse or chosen in Advice; index into report().findings, -1 for none.
  int litFinding() const { return lit_; }
  void lightFinding(int index);

  // A change that is shown and not made, a remedy under the mouse: the plan stays as it is. Gone with the next
  // change of the plan.
  struct Preview {
    Layout layout;
    std::vector<ElementId> moved;
    std::optional<Finding> then;  // the finding that it would mend, as it would be
  };
  const std::optional<Preview>& preview() const { return preview_; }
  void setPreview(const Change&, std::optional<Finding> then);
  void clearPreview();

  // Starts over with another plan (open, new).
  void replace(Plan plan);
  // The same, but the plan counts as not saved (a recovered copy).
  void adoptUnsaved(Plan plan);
  void markSaved();
  // The books themselves have changed: checks again and says so.
  void recheck();
  bool dirty() const { return !history_.savedIsCurrent(); }

 signals:
  void changed();            // plan, layout or report
  void optionChanged();      // also when the list of options changes
  void selectionChanged();
  void copiedChanged();
  void litChanged();
  void previewChanged();
  void savedChanged();
  void refused(const QString& why);
  void showFinding(int index);  // somebody asked to go to it

 private:
  // `moved`: things were moved; what that cannot change is taken over.
  void recompute(bool moved = false);
  void restart(Plan plan, bool saved);
  bool performIn(std::size_t option, Change change, const QString& label, const QString& mergeKey);
  // After a change of the options: the one of this name, or, when there is none (a new name), the one at its place.
  void keepOption(const std::string& name);
  void planReplaced(bool moved = false);  // after undo, redo, option edits: clamps option and selection, then recompute
  History history_;
  std::optional<History> drag_base_;
  Layout base_layout_;
  std::size_t option_ = 0;
  Layout layout_;
  Checked checked_;
  std::set<ElementId> selection_;
  Copies copied_;
  int lit_ = -1;
  std::optional<Preview> preview_;
  QString last_error_;
};

}  // namespace elbowroom::ui
