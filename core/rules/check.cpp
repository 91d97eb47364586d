#include "core/rules/check.h"

#include <algorithm>
#include <cstdlib>

#include "core/rules/check_parts.h"
#include "core/rules/recheck.h"

namespace elbowroom {

namespace {

template <typename T>
T shortOf(T measured, Compare compare, T limit, std::optional<T> high) {
  if (compare == Compare::atMost) return measured - limit;
  if (compare == Compare::between && high && measured > *high) return measured - *high;
  return limit - measured;
}

std::optional<Quantity> shortBy(const Finding& f) {
  if (const auto* m = std::get_if<Length>(&*f.measured)) {
    std::optional<Length> high;
    if (f.limit_high) high = std::get<Length>(*f.limit_high);
    return shortOf(*m, f.compare, std::get<Length>(*f.limit), high);
  }
  if (const auto* m = std::get_if<Area>(&*f.measured))
    return shortOf<Area>(*m, f.compare, std::get<Area>(*f.limit), {});
  if (const auto* m = std::get_if<Angle>(&*f.measured))
    return shortOf<Angle>(*m, f.compare, std::get<Angle>(*f.limit), {});
  if (const auto* m = std::get_if<Amount>(&*f.measured)) {
    std::optional<Amount> high;
    if (f.limit_high) high = std::get<Amount>(*f.limit_high);
    return shortOf(*m, f.compare, std::get<Amount>(*f.limit), high);
  }
  if (const auto* m = std::get_if<Count>(&*f.measured))
    return Count{std::abs(std::get<Count>(*f.limit).value - m->value)};
  return std::nullopt;
}

// A zone shows what is missing; what is met or not known keeps its line or point alone.
void withoutZones(std::vector<Place>& places) {
  const auto zone = [](const Place& p) { return p.kind == Place::Kind::zone; };
  if (!std::all_of(places.begin(), places.end(), zone)) std::erase_if(places, zone);
}

Finding findingOf(const Rule& rule, Measurement m, Length site_tolerance) {
  Finding f;
  f.rule = rule.id;
  f.book = rule.book;
  f.level = rule.level;
  f.subjects = std::move(m.subjects);
  f.measured = m.measured;
  f.limit = m.limit ? m.limit : rule.limit;
  f.limit_high = m.limit_high ? m.limit_high : rule.limit_high;
  f.compare = rule.compare;
  f.places = std::move(m.places);
  f.detail = std::move(m.detail);
  if (!f.measured) {
    f.fact = std::move(m.fact);
    f.outcome = Outcome::unknown;
    withoutZones(f.places);
    return f;
  }
  f.outcome = judge(*f.measured, f.compare, *f.limit, f.limit_high, site_tolerance);
  if (f.outcome == Outcome::shortfall) {
    f.short_by = shortBy(f);
  } else {
    withoutZones(f.places);
  }
  return f;
}

std::string reasonFor(const Option& option, const Finding& f) {
  for (const Acknowledged& a : option.acknowledged)
    if (a.rule == f.rule && a.book == f.book && a.subjects == f.subjects) return a.reason;
  return {};
}

}  // namespace

int rankOf(const Finding& f) {
  switch (f.outcome) {
    case Outcome::shortfall:
      return static_cast<int>(f.level);
    case Outcome::unknown:
      return 3;
    case Outcome::close:
      return 4;
    case Outcome::clear:
      return 5;
    case Outcome::notApplicable:
      return 6;
    case Outcome::failed:
      return 7;
  }
  return 7;
}

std::vector<Finding> findingsOf(const RuleInForce& in, const CheckInput& input, Length site_tolerance) {
  std::vector<Finding> found;
  std::vector<Measurement> measurements = in.rule->measure(input);
  found.reserve(measurements.size());
  for (Measurement& m : measurements) {
    Finding& f = found.emplace_back(findingOf(*in.rule, std::move(m), site_tolerance));
    f.variant = in.variant;
    f.changed = in.changed;
    f.changed_reason = in.reason;
    f.acknowledged = reasonFor(input.layout.option, f);
  }
  return found;
}

BookChoice choiceOf(const Plan& plan) {
  BookChoice choice;
  choice.books = plan.books;
  choice.settings = plan.book_settings;
  choice.changes = plan.rule_changes;
  if (plan.site_tolerance) choice.site_tolerance = *plan.site_tolerance;
  return choice;
}

Report check(const Layout& layout, const BookChoice& choice) { return checkAnew(layout, choice).report; }

}  // namespace elbowroom
