#include <fmt/format.h>

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/in_force.h"
#include "core/rules/text.h"

namespace elbowroom {
namespace {

std::string withUnit(const Quantity& q, const Rule& rule, Unit unit) {
  const bool amount = std::holds_alternative<Amount>(q) && !rule.unit.empty();
  return amount ? fmt::format("{} {}", quantityText(q, unit), rule.unit) : quantityText(q, unit);
}

}  // namespace

std::vector<std::string> changeLines(const Plan& plan) {
  const BookChoice choice = choiceOf(plan);
  std::vector<std::string> lines;
  for (const RuleChange& change : plan.rule_changes) {
    if (std::find(plan.books.begin(), plan.books.end(), change.book) == plan.books.end()) continue;
    const Book* book = findBook(change.book);
    const Rule* rule = findRule(change.book, change.rule);
    if (book == nullptr || rule == nullptr) continue;
    std::string what = "switched off";
    if (!change.off) {
      if (!change.limit) continue;
      const Quantity limit = std::visit([](const auto& v) -> Quantity { return v; }, *change.limit);
      if (limit.index() != rule->limit.index()) continue;
      Quantity before = rule->limit;
      if (const int in = variantInForce(choice, *rule); in >= 0)
        before = rule->variants[static_cast<std::size_t>(in)].limit.value_or(before);
      what = fmt::format("limit {} instead of {}", withUnit(limit, *rule, plan.unit), withUnit(before, *rule, plan.unit));
    }
    lines.push_back(fmt::format("{}, {}: {} ({})", book->title, rule->title, what, change.reason));
  }
  return lines;
}

}  // namespace elbowroom
