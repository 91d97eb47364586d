#include "core/rules/text_rules.h"

#include <fmt/format.h>

namespace elbowroom {

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
  if (const bool* yes = std::get_if<bool>(&rule.limit)) return *yes ? "must be so" : "must not be so";
  return textOfRule(rule, unit).needed;
}

std::string limitWords(const Rule& rule, const Quantity& instead, Unit unit) {
  Rule varied = rule;
  varied.limit = instead;
  varied.limit_words = {};
  return limitWords(varied, unit);
}

std::string sourceWords(const Source& source) {
  std::string text(source.document);
  if (!source.edition.empty()) {
    const bool a_year = source.edition.front() >= '0' && source.edition.front() <= '9';
    text += fmt::format("{}{}", a_year ? " " : ", ", source.edition);
  }
  if (!source.section.empty()) text += fmt::format(", {}", source.section);
  return text;
}

std::string variantWords(const Rule& rule, const Variant& variant, Unit unit) {
  if (variant.off) return "no such rule";
  if (!variant.limit && !variant.limit_high)
    return variant.source ? fmt::format("the same, from {}", sourceWords(*variant.source)) : "the same";
  Rule varied = rule;
  if (variant.limit) varied.limit = *variant.limit;
  if (variant.limit_high) varied.limit_high = variant.limit_high;
  varied.limit_words = {};
  return limitWords(varied, unit);
}

}  // namespace elbowroom
