#include "core/rules/recheck.h"

#include <algorithm>

#include "core/geometry/measure.h"
#include "core/rules/check_parts.h"
#include "core/rules/reads.h"

namespace elbowroom {
namespace {

using checks::Around;

bool sameChoice(const BookChoice& a, const BookChoice& b) {
  return a.books == b.books && a.site_tolerance == b.site_tolerance && a.settings == b.settings &&
         a.changes == b.changes;
}

// What stands before `front` in that direction is what it was: it does not hang on anything that has moved.
bool holds(const Ahead& found, Segment front, Direction ahead, const std::vector<char>& moved,
           const std::vector<Box>& now_at) {
  if (found.hit < 0 && found.distance == Length{}) return false;  // may have met nothing at all
  if (found.hit >= 0 && moved[static_cast<std::size_t>(found.hit)]) return false;
  const Vector reach = found.distance * ahead;
  const Box strip =
      grown(boundsOf(Outline{front.a, front.b, front.a + reach, front.b + reach}), 2 * kContact);
  return std::none_of(now_at.begin(), now_at.end(), [&](const Box& box) { return touch(box, strip); });
}

std::vector<Around> aroundAfter(std::vector<Around> around, const Layout& was, const Layout& now) {
  const std::size_t count = now.fixtures.size();
  if (now.room.empty() || around.size() != count) return checks::aroundOf(now);
  std::vector<char> moved(count);
  std::vector<Box> now_at;
  for (std::size_t i = 0; i < count; ++i) {
    moved[i] = was.fixtures[i].fixture.placement != now.fixtures[i].fixture.placement;
    if (moved[i] && now.fixtures[i].solid && !now.fixtures[i].footprint.empty())
      now_at.push_back(boundsOf(now.fixtures[i].footprint));
  }
  for (std::size_t i = 0; i < count; ++i) {
    const PlacedFixture& f = now.fixtures[i];
    if (f.fixture.status == Status::remove) continue;
    Around& a = around[i];
    const Segment middle = checks::centreline(f);
    const bool left = !moved[i] && holds(a.left, middle, checks::leftOf(f), moved, now_at);
    const bool right = !moved[i] && holds(a.right, middle, checks::rightOf(f), moved, now_at);
    const bool front = !moved[i] && holds(a.front, f.front, f.facing, moved, now_at);
    if (left && right && front) continue;
    const checks::Obstacles others =
        checks::obstaclesWhere(now, [&](const PlacedFixture& o) { return &o != &f; });
    if (!left) a.left = checks::aheadOf(middle, checks::leftOf(f), now, others);
    if (!right) a.right = checks::aheadOf(middle, checks::rightOf(f), now, others);
    if (!front) a.front = checks::aheadOf(f.front, f.facing, now, others);
  }
  return around;
}

// The findings by rank, within one rank in registry order, each with the rule it comes from.
void arrange(Checked& checked, std::vector<std::vector<Finding>> by_rule) {
  constexpr int kRanks = 8;
  std::size_t count[kRanks + 1] = {}, all = 0;
  for (const auto& found : by_rule)
    for (const Finding& f : found) ++count[rankOf(f) + 1], ++all;
  for (int r = 0; r < kRanks; ++r) count[r + 1] += count[r];
  std::vector<Finding*> at(all);
  checked.origins.resize(all);
  std::uint32_t place = 0;
  for (std::size_t rule = 0; rule < by_rule.size(); ++rule)
    for (Finding& f : by_rule[rule]) {
      const std::size_t to = count[rankOf(f)]++;
      at[to] = &f;
      checked.origins[to] = {static_cast<std::uint32_t>(rule), place++};
    }
  checked.report.findings.clear();
  checked.report.findings.reserve(all);
  for (Finding* f : at) checked.report.findings.push_back(std::move(*f));
}

// The findings of `report` by rule, in their order within it; only of the rules that `wanted` names.
std::vector<std::vector<Finding>> takenApart(Checked& before, const std::vector<char>& wanted) {
  std::vector<std::vector<Finding>> by_rule(wanted.size());
  std::vector<std::uint32_t> order(before.origins.size());
  for (std::uint32_t i = 0; i < order.size(); ++i) order[before.origins[i].place] = i;
  for (const std::uint32_t i : order) {
    const std::uint32_t rule = before.origins[i].rule;
    if (wanted[rule]) by_rule[rule].push_back(std::move(before.report.findings[i]));
  }
  return by_rule;
}

}  // namespace

Checked checkAnew(const Layout& now, const BookChoice& choice) {
  Checked checked;
  checked.choice = choice;
  checked.in_force = std::make_shared<const RulesInForce>(choice);
  checked.report.figures = figuresOf(now);
  checked.around = checks::aroundOf(now);
  const auto& rules = checked.in_force->rules();
  std::vector<std::vector<Finding>> by_rule(rules.size());
  for (std::size_t i = 0; i < rules.size(); ++i)
    by_rule[i] =
        findingsOf(rules[i], {now, checked.report.figures, checked.around, rules[i].rule, checked.memo},
                   choice.site_tolerance);
  arrange(checked, std::move(by_rule));
  return checked;
}

Checked recheck(Checked before, const Layout& was, const Layout& now, const BookChoice& choice) {
  if (!before.in_force || !sameChoice(before.choice, choice)) return checkAnew(now, choice);
  const std::optional<Reads> moved = movedBetween(was, now);
  if (!moved) return checkAnew(now, choice);
  const auto& rules = before.in_force->rules();
  std::vector<char> keep(rules.size());
  for (std::size_t i = 0; i < rules.size(); ++i) keep[i] = (readsOf(rules[i].rule->measure) & *moved) == 0;
  std::vector<std::vector<Finding>> by_rule = takenApart(before, keep);

  Checked checked;
  checked.choice = std::move(before.choice);
  checked.in_force = before.in_force;
  if ((*moved & kReadsFixtures) != 0) {
    checked.report.figures = figuresOf(now);
    checked.around = aroundAfter(std::move(before.around), was, now);
  } else {
    checked.report.figures = std::move(before.report.figures);
    checked.around = std::move(before.around);
  }
  for (std::size_t i = 0; i < rules.size(); ++i)
    if (!keep[i])
      by_rule[i] =
          findingsOf(rules[i], {now, checked.report.figures, checked.around, rules[i].rule, checked.memo},
                     choice.site_tolerance);
  arrange(checked, std::move(by_rule));
  return checked;
}

}  // namespace elbowroom
