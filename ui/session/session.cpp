#include "ui/session/session.h"

#include <algorithm>
#include <utility>

namespace elbowroom::ui {
namespace {

std::vector<std::string> optionNames(const Plan& plan) {
  std::vector<std::string> names;
  for (const Option& option : plan.options) names.push_back(option.name);
  return names;
}

}  // namespace

Session::Session(Plan plan, QObject* parent) : QObject(parent), history_(std::move(plan)) {
  history_.markSaved();
  recompute();
}

void Session::recompute(bool moved) {
  clearPreview();
  // The report reorders as outcomes change; what is lit stays the same finding, not the same row.
  std::optional<Finding> lit;
  if (lit_ >= 0) lit = report().findings[static_cast<std::size_t>(lit_)];
  const Layout was = std::exchange(layout_, deriveLayout(plan(), option_));
  const BookChoice choice = choiceOf(plan());
  checked_ = moved ? elbowroom::recheck(std::move(checked_), was, layout_, choice) : checkAnew(layout_, choice);
  lit_ = -1;
  if (!lit) return;
  for (std::size_t i = 0; i < report().findings.size() && lit_ < 0; ++i) {
    const Finding& finding = report().findings[i];
    if (finding.rule == lit->rule && finding.book == lit->book && finding.subjects == lit->subjects)
      lit_ = static_cast<int>(i);
  }
}

bool Session::perform(Change change, const QString& label, const QString& mergeKey) {
  cancelDrag();
  return performIn(option_, std::move(change), label, mergeKey);
}

bool Session::performOn(std::size_t option, Change change, const QString& label) {
  cancelDrag();
  return performIn(option, std::move(change), label, {});
}

void Session::keepOption(const std::string& name) {
  const auto& options = plan().options;
  const auto same = std::find_if(options.begin(), options.end(), [&](const Option& o) { return o.name == name; });
  if (same != options.end()) option_ = static_cast<std::size_t>(same - options.begin());
}

bool Session::performIn(std::size_t option, Change change, const QString& label, const QString& mergeKey) {
  const auto names = optionNames(plan());
  const bool adds_option = std::holds_alternative<AddOption>(change);
  const auto outcome = history_.perform({option, std::move(change), label.toStdString(), mergeKey.toStdString()});
  if (!outcome) {
    last_error_ = QString::fromStdString(outcome.error().message);
    emit refused(last_error_);
    return false;
  }
  last_error_.clear();
  if (*outcome) {
    keepOption(names[option_]);
    if (adds_option) option_ = plan().options.size() - 1;
    planReplaced();
    if (names != optionNames(plan())) emit optionChanged();
  }
  return true;
}

void Session::endMerge() { history_.endMerge(); }

void Session::planReplaced(bool moved) {
  option_ = std::min(option_, plan().options.size() - 1);
  recompute(moved);
  const std::size_t before = selection_.size();
  std::erase_if(selection_, [&](const ElementId& id) { return !hasElement(option(), id); });
  emit changed();
  if (selection_.size() != before) emit selectionChanged();
}

void Session::undo() {
  cancelDrag();
  const auto names = optionNames(plan());
  history_.undo();
  keepOption(names[option_]);
  planReplaced();
  if (names != optionNames(plan())) emit optionChanged();
}

void Session::redo() {
  endDrag();
  const auto names = optionNames(plan());
  history_.redo();
  keepOption(names[option_]);
  planReplaced();
  if (names != optionNames(plan())) emit optionChanged();
}

void Session::beginDrag() {
  endDrag();
  history_.endMerge();
  drag_base_ = history_;
  base_layout_ = layout_;
}

bool Session::dragTo(Change change, const QString& label) {
  if (!drag_base_) beginDrag();
  History next = *drag_base_;
  const auto outcome = next.perform({option_, std::move(change), label.toStdString(), {}});
  if (!outcome) {
    last_error_ = QString::fromStdString(outcome.error().message);
    return false;
  }
  last_error_.clear();
  history_ = std::move(next);
  planReplaced(true);
  return true;
}

void Session::endDrag() {
  if (!drag_base_) return;
  drag_base_.reset();
  history_.endMerge();
}

bool Session::finishDragWith(Change change, const QString& label) {
  if (!drag_base_) return perform(std::move(change), label);
  if (!dragTo(std::move(change), label)) {
    emit refused(last_error_);
    return false;
  }
  endDrag();
  return true;
}

void Session::cancelDrag() {
  if (!drag_base_) return;
  history_ = std::move(*drag_base_);
  drag_base_.reset();
  planReplaced();
}

void Session::setOption(std::size_t index) {
  if (index >= plan().options.size() || index == option_) return;
  cancelDrag();
  history_.endMerge();
  option_ = index;
  selection_.clear();
  lit_ = -1;
  recompute();
  emit optionChanged();
  emit changed();
  emit selectionChanged();
}

void Session::select(std::set<ElementId> ids) {
  std::erase_if(ids, [&](const ElementId& id) { return !hasElement(option(), id); });
  if (ids == selection_) return;
  selection_ = std::move(ids);
  emit selectionChanged();
}

void Session::setCopied(Copies copies) {
  copied_ = std::move(copies);
  emit copiedChanged();
}

void Session::lightFinding(int index) {
  if (index < -1 || index >= static_cast<int>(report().findings.size())) index = -1;
  if (index == lit_) return;
  lit_ = index;
  emit litChanged();
}

void Session::setPreview(const Change& change, std::optional<Finding> then) {
  const Result<Plan> next = apply(plan(), {option_, change, "", ""});
  if (!next) return clearPreview();
  Preview preview{deriveLayout(*next, option_), {}, std::move(then)};
  const auto add = [&](const auto& things) {
    for (const auto& thing : things) preview.moved.push_back(thing.id);
  };
  if (const auto* put = std::get_if<PutFixtures>(&change)) add(put->fixtures);
  if (const auto* put = std::get_if<PutOpenings>(&change)) add(put->openings);
  if (const auto* put = std::get_if<PutWallItems>(&change)) add(put->items);
  if (const auto* put = std::get_if<PutCeilingItems>(&change)) add(put->items);
  if (const auto* put = std::get_if<PutThings>(&change))
    add(put->fixtures), add(put->openings), add(put->on_walls), add(put->on_ceiling);
  preview_ = std::move(preview);
  emit previewChanged();
}

void Session::clearPreview() {
  if (!preview_) return;
  preview_.reset();
  emit previewChanged();
}

void Session::replace(Plan plan) { restart(std::move(plan), true); }

void Session::adoptUnsaved(Plan plan) { restart(std::move(plan), false); }

void Session::restart(Plan plan, bool saved) {
  drag_base_.reset();
  history_ = History(std::move(plan));
  if (saved) history_.markSaved();
  else history_.markUnsaved();
  option_ = 0;
  selection_.clear();
  lit_ = -1;
  recompute();
  emit optionChanged();
  emit changed();
  emit selectionChanged();
  emit savedChanged();
}

void Session::recheck() {
  recompute();
  emit changed();
}

void Session::markSaved() {
  history_.markSaved();
  emit savedChanged();
}

}  // namespace elbowroom::ui
