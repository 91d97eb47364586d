#include "core/rules/tally.h"

#include <algorithm>

#include "core/rules/wishes.h"

namespace elbowroom {

bool askTheSame(const Finding& a, const Finding& b) {
  if (a.outcome != Outcome::unknown || b.outcome != Outcome::unknown || a.fact.empty() || a.fact != b.fact) return false;
  if (a.fact == "ceiling.height") return true;  // the room has one
  if (a.subjects.empty() || b.subjects.empty()) return a.subjects.empty() && b.subjects.empty();
  return a.subjects.front() == b.subjects.front();
}

std::vector<std::vector<const Finding*>> questionsOf(const std::vector<const Finding*>& findings) {
  std::vector<std::vector<const Finding*>> questions;
  for (const Finding* f : findings) {
    const auto asked = std::find_if(questions.begin(), questions.end(),
                                    [&](const auto& question) { return askTheSame(*question.front(), *f); });
    if (asked != questions.end())
      asked->push_back(f);
    else
      questions.push_back({f});
  }
  return questions;
}

Tally tallyOf(const Report& report) {
  Tally tally;
  std::vector<const Finding*> asking;
  for (const Finding& f : report.findings) {
    if (onlyWished(f)) continue;
    const bool accepted = !f.acknowledged.empty();
    switch (f.outcome) {
      case Outcome::shortfall:
        ++(accepted ? tally.accepted : tally.short_by_level.at(static_cast<std::size_t>(f.level)));
        break;
      case Outcome::unknown:
        ++(accepted ? tally.accepted : tally.unknown);
        if (!accepted) asking.push_back(&f);
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
  tally.questions = static_cast<int>(questionsOf(asking).size());
  return tally;
}

}  // namespace elbowroom
