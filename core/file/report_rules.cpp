#include "core/file/report_rules.h"

namespace elbowroom {

Tally tallyOf(const Report& report) {
  Tally tally;
  for (const Finding& f : report.findings) {
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
  return rule != nullptr ? keyOf(rule->grade) : std::string_view{};
}

FindingText textOfRule(const Rule& rule, Unit unit) {
  Finding f;
  f.rule = rule.id;
  f.book = rule.book;
  f.outcome = Outcome::unknown;
  f.limit = rule.limit;
  f.limit_high = rule.limit_high;
  f.compare = rule.compare;
  return textOf(f, Option{}, unit);
}

bool hasOwnLimit(const Rule& rule) { return rule.limit_words.empty() || rule.limit != Quantity(Length{}); }

std::string limitWords(const Rule& rule, Unit unit) {
  if (!rule.limit_words.empty()) return std::string(rule.limit_words);
  if (const bool* yes = std::get_if<bool>(&rule.limit)) return *yes ? "yes" : "no";
  return textOfRule(rule, unit).needed;
}

}  // namespace elbowroom
