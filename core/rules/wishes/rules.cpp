#include <deque>
#include <utility>

#include "core/rules/wishes/looks.h"

namespace elbowroom::wishes {
namespace {

template <std::size_t... I>
constexpr std::array<Measure, kWishCount> measuresOf(std::index_sequence<I...>) {
  return {wished<static_cast<Wished>(I)>...};
}

// Ids live as long as the program: a rule only points at its texts.
std::string_view idOf(const WishPoint& point) {
  static const auto ids = [] {
    std::deque<std::string> all;
    for (const WishPoint& p : wishPoints()) all.push_back("wish-" + std::string(p.key));
    return all;
  }();
  return ids.at(static_cast<std::size_t>(point.wished));
}

// A door can be tried with another leaf; everything else is put in by the person.
std::vector<Mend> mendsOf(Wished wished) {
  if (wished == Wished::slidingDoor) return {Mend::otherAction};
  if (wished == Wished::wideDoor) return {Mend::wider, Mend::otherAction};
  return {Mend::state};
}

}  // namespace

// From the table, so that a point is told in one place only.
std::vector<Rule> rules() {
  static constexpr auto kMeasures = measuresOf(std::make_index_sequence<kWishCount>());
  std::vector<Rule> all;
  for (const WishPoint& point : wishPoints()) {
    Rule rule{.id = idOf(point),
              .book = "craft",
              .title = point.title,
              .level = Level::craft,
              .compare = Compare::isTrue,
              .limit = true,
              .measure = kMeasures.at(static_cast<std::size_t>(point.wished)),
              .source = point.source,
              .grade = point.grade,
              .why = point.why};
    rule.met = "in the plan, or left out with a reason";
    rule.missed = "wanted, and not in the plan";
    rule.mends = mendsOf(point.wished);
    all.push_back(std::move(rule));
  }
  return all;
}

}  // namespace elbowroom::wishes
