#include "core/file/report_rules.h"

namespace elbowroom {

Tally tallyOf(const Report& report) {
  Tally tally;
  for (const Finding& f : report.findings) {
    if (onlyWished(f)) continue;
    switch (f.outcome) {
      case Outcome::shortfall:
        ++tally.short_by_level.at(static_cast<std::size_t>(f.level));
        break;
      case Outcome::unknown:
        ++tally.unknown;
        break;
      case Outcome::close:
        ++tally.close;
        break;
      case Outcome::clear:
        ++tally.clear;
        break;
      case Outcome::failed:
        ++tally.failed;
        break;
      case Outcome::notApplicable:
        break;
    }
  }
  return tally;
}

std::string_view gradeOf(const Finding& f) {
  const Rule* rule = findRule(f.book, f.rule);
  if (rule == nullptr) return {};
  const auto number = static_cast<std::size_t>(f.variant);
  if (f.variant >= 0 && number < rule->variants.size() && rule->variants[number].grade)
    return keyOf(*rule->variants[number].grade);
  return keyOf(rule->grade);
}

}  // namespace elbowroom
