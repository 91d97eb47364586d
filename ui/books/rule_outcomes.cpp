#include "ui/books/rule_outcomes.h"

#include <QCoreApplication>

#include "core/rules/text.h"

namespace elbowroom::ui {
namespace {

int rankOf(Outcome outcome) {
  switch (outcome) {
    case Outcome::failed:
      return 5;
    case Outcome::shortfall:
      return 4;
    case Outcome::unknown:
      return 3;
    case Outcome::close:
      return 2;
    case Outcome::clear:
      return 1;
    case Outcome::notApplicable:
      return 0;
  }
  return 0;
}

}  // namespace

bool RuleOutcomes::refresh(const Plan& plan) {
  if (plan_ && *plan_ == plan) return false;
  plan_ = plan;
  options_.clear();
  const BookChoice choice = choiceOf(plan);
  for (std::size_t i = 0; i < plan.options.size(); ++i) {
    auto& rules = options_.emplace_back();
    for (const Finding& f : check(deriveLayout(plan, i), choice).findings) {
      RuleOutcome& out = rules[{f.book, f.rule}];
      if (out.findings > 0 && rankOf(f.outcome) < rankOf(out.outcome)) continue;
      if (out.findings > 0 && f.outcome == out.outcome) {
        ++out.findings;
        continue;
      }
      out = {f.outcome, 1, QString::fromStdString(textOf(f, plan.options[i], plan.unit).headline)};
    }
  }
  return true;
}

const RuleOutcome* RuleOutcomes::of(std::size_t option, std::string_view book, std::string_view rule) const {
  if (option >= options_.size()) return nullptr;
  const auto at = options_[option].find({std::string(book), std::string(rule)});
  return at == options_[option].end() ? nullptr : &at->second;
}

QString outcomeWord(Outcome outcome) {
  const auto tr = [](const char* text) { return QCoreApplication::translate("RuleOutcomes", text); };
  switch (outcome) {
    case Outcome::clear:
      return tr("Clear");
    case Outcome::close:
      return tr("Close");
    case Outcome::shortfall:
      return tr("Short");
    case Outcome::unknown:
      return tr("Not stated");
    case Outcome::notApplicable:
      return {};
    case Outcome::failed:
      return tr("Not checked");
  }
  return {};
}

}  // namespace elbowroom::ui
