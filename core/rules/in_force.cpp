#include "core/rules/in_force.h"

#include <algorithm>

namespace elbowroom {
namespace {

Quantity quantityOf(const decltype(RuleChange::limit)::value_type& limit) {
  return std::visit([](const auto& value) -> Quantity { return value; }, limit);
}

void take(Rule& rule, const Variant& v) {
  if (v.limit) rule.limit = *v.limit;
  if (v.limit_high) rule.limit_high = v.limit_high;
  if (v.source) rule.source = *v.source;
  if (v.grade) rule.grade = *v.grade;
}

}  // namespace

std::string_view settingOf(const BookChoice& choice, const Book& book, std::string_view key) {
  const auto setting =
      std::find_if(book.settings.begin(), book.settings.end(), [&](const Setting& s) { return s.key == key; });
  if (setting == book.settings.end() || setting->values.empty()) return {};
  const auto of_book = choice.settings.find(std::string(book.id));
  if (of_book != choice.settings.end()) {
    const auto chosen = of_book->second.find(std::string(key));
    if (chosen != of_book->second.end())
      for (const SettingValue& v : setting->values)
        if (v.value == chosen->second) return v.value;
  }
  return setting->values.front().value;
}

int variantInForce(const BookChoice& choice, const Rule& rule) {
  const Book* book = rule.variants.empty() ? nullptr : findBook(rule.book);
  if (book == nullptr) return -1;
  int found = -1;
  for (std::size_t i = 0; i < rule.variants.size(); ++i)
    if (settingOf(choice, *book, rule.variants[i].setting) == rule.variants[i].value) found = static_cast<int>(i);
  return found;
}

const RuleChange* changeOf(const BookChoice& choice, const Rule& rule) {
  const auto it = std::find_if(choice.changes.begin(), choice.changes.end(),
                               [&](const RuleChange& c) { return c.book == rule.book && c.rule == rule.id; });
  return it == choice.changes.end() ? nullptr : &*it;
}

RulesInForce::RulesInForce(const BookChoice& choice) {
  for (const Rule& rule : allRules()) {
    if (std::find(choice.books.begin(), choice.books.end(), rule.book) == choice.books.end()) continue;
    RuleInForce in{&rule, variantInForce(choice, rule), false, {}};
    const Variant* variant = in.variant < 0 ? nullptr : &rule.variants[static_cast<std::size_t>(in.variant)];
    const RuleChange* change = changeOf(choice, rule);
    if ((variant != nullptr && variant->off) || (change != nullptr && change->off)) continue;
    // A limit of another kind cannot be held against what is measured; the book's own stands.
    const bool changed =
        change != nullptr && change->limit && quantityOf(*change->limit).index() == rule.limit.index();
    if (variant != nullptr || changed) {
      own_.push_back(rule);
      if (variant != nullptr) take(own_.back(), *variant);
      if (changed) own_.back().limit = quantityOf(*change->limit);
      in.rule = &own_.back();
      in.changed = changed;
      if (changed) in.reason = change->reason;
    }
    rules_.push_back(in);
  }
}

}  // namespace elbowroom
