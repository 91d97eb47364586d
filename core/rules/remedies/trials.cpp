#include "core/rules/remedies/trials.h"

#include <algorithm>
#include <cmath>

#include "core/rules/check_parts.h"

namespace elbowroom::remedies {
namespace {

// What no plan can have, whichever books are chosen: two things on one spot, a pocket without a wall.
bool isPhysical(const Finding& f) {
  return f.book == "craft" && (f.rule == "fixture-own-floor" || f.rule == "pocket-needs-wall" ||
                               f.rule == "pocket-meets-pipes" || f.rule == "slide-needs-wall");
}

double valueOf(const Quantity& q) {
  if (const auto* v = std::get_if<Length>(&q)) return static_cast<double>(v->nm());
  if (const auto* v = std::get_if<Area>(&q)) return static_cast<double>(v->squareMicrometres());
  if (const auto* v = std::get_if<Angle>(&q)) return static_cast<double>(v->microdegrees());
  if (const auto* v = std::get_if<Count>(&q)) return v->value;
  if (const auto* v = std::get_if<Amount>(&q)) return static_cast<double>(v->thousandths);
  return std::get<bool>(q) ? 1 : 0;
}

BookChoice onlyBook(BookChoice choice, const std::string& book) {
  choice.books = {book};
  return choice;
}

bool isShort(const Finding& f) { return f.outcome == Outcome::shortfall; }

// A shortfall that was there before counts as worse only beyond what the searches' own tolerance explains.
bool worse(const Finding& now, const Finding& then) {
  if (!now.short_by || !then.short_by) return false;
  const double slack = std::holds_alternative<Length>(*now.short_by) ? 50'800 : 0;
  return valueOf(*now.short_by) > valueOf(*then.short_by) * (1 + 1e-9) + slack;
}

}  // namespace

Trials::Trials(const Plan& plan, std::size_t option, const Finding& finding, const BookChoice& choice,
               int most_checks)
    : plan_(plan),
      option_(option),
      finding_(finding),
      rule_(findRule(finding.book, finding.rule)),
      all_(choice),
      own_(onlyBook(choice, finding.book)),
      most_(most_checks),
      layout_(deriveLayout(plan, option)) {
  craft_chosen_ = std::find(all_.books.begin(), all_.books.end(), "craft") != all_.books.end();
  if (!craft_chosen_) all_.books.push_back("craft");
  ++used_;
  before_ = stateOf(layout_, check(layout_, all_));
}

bool Trials::ofTarget(const Finding& f) const {
  if (f.rule != finding_.rule || f.book != finding_.book) return false;
  if (finding_.subjects.empty() || f.subjects.empty()) return finding_.subjects.empty() && f.subjects.empty();
  return f.subjects.front() == finding_.subjects.front();
}

// The answer to the finding after a change: the worst one of its rule about its first subject. What it met may have
// changed with it (another neighbour is nearer now); what was short beside it before is another finding.
const Finding* Trials::answering(const std::vector<Finding>& findings) const {
  const Finding* worst = nullptr;
  for (const Finding& f : findings) {
    if (!ofTarget(f)) continue;
    if (f.subjects != finding_.subjects && isShort(f) &&
        before_.shorts.count({f.book + "/" + f.rule, f.subjects}) > 0)
      continue;
    if (worst == nullptr || spareOf(&f) < spareOf(worst)) worst = &f;
  }
  return worst;
}

double Trials::spareOf(const Finding* f) const {
  if (f == nullptr) return kPlenty;
  if (!f->measured || f->outcome == Outcome::failed) return -kPlenty;
  if (const bool* yes = std::get_if<bool>(&*f->measured)) return *yes == std::get<bool>(*f->limit) ? 1 : -1;
  const double m = valueOf(*f->measured), limit = valueOf(*f->limit);
  if (f->compare == Compare::atMost) return limit - m;
  if (f->compare == Compare::between && f->limit_high) return std::min(m - limit, valueOf(*f->limit_high) - m);
  return m - limit;
}

double Trials::metFrom() const {
  const Quantity limit = finding_.limit.value_or(Quantity{true});
  if (std::holds_alternative<Length>(limit)) return -25'400;     // 0.001 in: what rounding of slanted walls leaves
  if (std::holds_alternative<Angle>(limit)) return -1'000;       // a thousandth of a degree
  if (std::holds_alternative<Area>(limit)) return -6'451'600;    // a hundredth of a square inch
  return 0;
}

std::optional<Layout> Trials::layoutAfter(const Change& change) const {
  const Result<Plan> next = apply(plan_, {option_, change, "", ""});
  if (!next) return std::nullopt;
  return deriveLayout(*next, option_);
}

std::vector<Finding> Trials::ofOwnRule(const Layout& layout) const {
  std::vector<Finding> found;
  const Figures figures = figuresOf(layout);
  const std::vector<checks::Around> around = checks::aroundOf(layout);
  Memo memo;
  for (const RuleInForce& in : own_.rules()) {
    if (in.rule->id != finding_.rule || in.rule->book != finding_.book) continue;
    for (Finding& f : findingsOf(in, {layout, figures, around, in.rule, memo}, all_.site_tolerance))
      found.push_back(std::move(f));
  }
  // As in a report.
  std::stable_sort(found.begin(), found.end(),
                   [](const Finding& a, const Finding& b) { return rankOf(a) < rankOf(b); });
  return found;
}

std::optional<double> Trials::spare(const Change& change) {
  if (used_ >= most_) return std::nullopt;
  const std::optional<Layout> next = layoutAfter(change);
  if (!next) return std::nullopt;
  ++used_;
  return spareOf(answering(ofOwnRule(*next)));
}

Trials::State Trials::stateOf(const Layout& layout, const Report& report) const {
  State state;
  for (const Finding& f : report.findings) {
    if (!isShort(f) || (!craft_chosen_ && f.book == "craft" && !isPhysical(f))) continue;
    state.shorts[{f.book + "/" + f.rule, f.subjects}].push_back(f);
  }
  for (auto& [key, list] : state.shorts)
    std::stable_sort(list.begin(), list.end(), [](const Finding& a, const Finding& b) { return worse(a, b); });
  state.meetings = meetings(layout);
  for (const DoorFigures& door : report.figures.doors)
    if (door.hits) state.meetings.insert({door.id, *door.hits});
  return state;
}

Verdict Trials::full(const Change& change) {
  Verdict v;
  if (used_ >= most_) return v;
  const std::optional<Layout> next = layoutAfter(change);
  if (!next) return v;
  ++used_;
  v.possible = true;
  const Report report = check(*next, all_);
  const State after = stateOf(*next, report);
  if (const Finding* answer = answering(report.findings)) v.then = *answer;
  const Key own{finding_.book + "/" + finding_.rule, finding_.subjects};
  const auto count = [&](const Shorts& shorts) {
    const auto at = shorts.find(own);
    return at == shorts.end() ? 0 : at->second.size();
  };
  // Where another neighbour is too near instead, this finding is met and the other one is new.
  v.mended = count(after.shorts) < count(before_.shorts) &&
             (!v.then || (v.then->measured && v.then->outcome != Outcome::failed));
  for (const auto& [key, list] : after.shorts) {
    const auto was = before_.shorts.find(key);
    const std::size_t known = was == before_.shorts.end() ? 0 : was->second.size();
    for (std::size_t i = 0; i < list.size(); ++i) {
      if (i < known && !worse(list[i], was->second[i])) continue;
      if (key == own && !v.mended) continue;  // that it is still short is said by `then`
      const Finding& f = list[i];
      if (isPhysical(f) || (i >= known && f.level <= finding_.level))
        v.breaks.push_back(f);
      else
        (i < known ? v.worsens : v.brings).push_back(f);
    }
  }
  for (const auto& [a, b] : after.meetings)
    if (before_.meetings.count({a, b}) == 0) v.meets.push_back(b);
  return v;
}

}  // namespace elbowroom::remedies
