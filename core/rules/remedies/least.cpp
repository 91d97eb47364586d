#include "core/rules/remedies/least.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace elbowroom::remedies {
namespace {

constexpr Length kFine = Length::nanometres(198'437);    // 1/128 in
constexpr Length kBracket = Length::nanometres(396'875);  // 1/64 in
constexpr int kSecants = 2;
constexpr int kSteps = 16;

class Samples {
 public:
  Samples(Trials& trials, const Family& family) : trials_(trials), family_(family) {}

  // A place that the plan refuses, and any when no checks are left, counts as not met.
  bool met(Length by) {
    auto known = spares_.find(by);
    if (known == spares_.end())
      known = spares_.emplace(by, trials_.spare(family_.at(by)).value_or(-Trials::kPlenty)).first;
    return known->second >= trials_.metFrom();
  }
  double spare(Length by) { return met(by), spares_.at(by); }
  const std::map<Length, double>& all() const { return spares_; }
  void know(Length by, double spare) { spares_[by] = spare; }

 private:
  Trials& trials_;
  const Family& family_;
  std::map<Length, double> spares_;
};

Length quantumOf(Unit unit) {
  return unit == Unit::inches ? Length::nanometres(1'587'500) : Length::nanometres(1'000'000);
}

Length upTo(Length value, Length quantum) {
  const std::int64_t q = quantum.nm();
  return Length::nanometres((value.nm() + q - 1) / q * q);
}

// Closes in on where not met (low) turns into met (high).
void closeIn(Samples& samples, Length& low, Length& high) {
  for (int i = 0; i < kSteps && high - low > kBracket; ++i) {
    const double at_low = samples.spare(low), at_high = samples.spare(high);
    const bool secant = i < kSecants && std::abs(at_low) < 1e290 && std::abs(at_high) < 1e290 && at_high > at_low;
    const Length tried =
        secant ? low + (high - low).scaled(std::clamp(at_low / (at_low - at_high), 0.0, 1.0)) : (low + high) / 2;
    const bool met = tried >= high || samples.met(tried);
    if (tried > low) (met ? high : low) = std::min(tried, high);
    if (!secant) continue;
    // The secant hits a straight figure at once; the fine step beside it proves that less does not do.
    const Length beside = met ? std::max(low, high - kFine) : std::min(high, low + kFine);
    if (beside > low && beside < high) (samples.met(beside) ? high : low) = beside;
  }
}

}  // namespace

Length roundedUp(Length value, Unit unit, Length most) { return std::min(upTo(value, quantumOf(unit)), most); }

Least leastShift(Trials& trials, const Family& family) {
  Least answer;
  Samples samples(trials, family);
  const Length most = family.most;
  const double base = trials.asItStands();
  samples.know({}, base);
  std::vector<Length> places;
  const Finding& finding = trials.finding();
  if (finding.short_by)
    if (const auto* by = std::get_if<Length>(&*finding.short_by); by != nullptr && *by > Length{} && *by <= most)
      places.push_back(*by);
  places.push_back(most);
  for (const int part : {4, 2, 6, 1, 7}) places.push_back(most.scaled(part / 8.0));
  const double better = base + 25'400;  // 0.001 in
  bool any_better = false;
  const bool figures = std::abs(base) < 1e290 && !std::holds_alternative<bool>(*finding.measured);
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (samples.met(places[i])) break;
    any_better = any_better || samples.spare(places[i]) > (figures ? better : base);
    if (figures && !any_better && i >= 2) break;  // it has nothing to do with the finding
    if (trials.exhausted()) break;
  }
  Length low;
  std::optional<Length> high;
  double best = figures ? better : base;
  for (const auto& [by, spare] : samples.all()) {
    if (spare >= trials.metFrom()) {
      high = by;
      break;
    }
    low = by;
    if (spare > best) best = spare, answer.best = by;
  }
  if (!high) return answer;
  closeIn(samples, low, *high);
  const Length quantum = quantumOf(trials.plan().unit);
  Length rounded = upTo(low + Length::nanometres(1), quantum);
  if (rounded < *high && !samples.met(rounded)) rounded = rounded + quantum;
  answer.by = std::min(rounded, most);
  return answer;
}

}  // namespace elbowroom::remedies
