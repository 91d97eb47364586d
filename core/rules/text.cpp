#include "core/rules/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>

#include "core/plan/asked.h"
#include "core/rules/text_quantity.h"
#include "core/rules/text_rules.h"
#include "core/rules/text_words.h"
#include "core/rules/wishes.h"

namespace elbowroom {

namespace {

using words::Toward;

std::string wordOf(Outcome outcome) {
  switch (outcome) {
    case Outcome::clear:
      return "Clear";
    case Outcome::close:
      return "Close";
    case Outcome::shortfall:
      return "Short";
    case Outcome::unknown:
      return "Not stated";
    case Outcome::notApplicable:
      return "Does not apply";
    case Outcome::failed:
      return "Could not be checked";
  }
  return {};
}

// The measured figure, the figure it is held against and what lies between them, rounded so that the three
// printed figures agree and none of them flatters the plan.
struct Printed {
  Quantity measured, limit, between;
  bool missed = false;  // the printed figures show a miss
};

bool heldAgainstHigh(const Finding& f) {
  if (f.compare == Compare::atMost) return true;
  if (f.compare != Compare::between || !f.limit_high) return false;
  if (const auto* m = std::get_if<Amount>(&*f.measured))
    return std::get<Amount>(*f.limit_high) - *m < *m - std::get<Amount>(*f.limit);
  const auto* m = std::get_if<Length>(&*f.measured);
  const auto* low = std::get_if<Length>(&*f.limit);
  const auto* high = std::get_if<Length>(&*f.limit_high);
  return m != nullptr && low != nullptr && high != nullptr && *high - *m < *m - *low;
}

Printed printedOf(const Finding& f, Unit unit) {
  const bool upper = heldAgainstHigh(f);
  const Quantity limit = upper && f.compare == Compare::between ? *f.limit_high : *f.limit;
  const Toward against = upper ? Toward::higher : Toward::lower;
  Printed p{
      words::rounded(*f.measured, unit, Toward::nearest), words::rounded(limit, unit, Toward::nearest), {}};
  const bool is_short = f.outcome == Outcome::shortfall;
  if (is_short) {
    p.measured = words::rounded(*f.measured, unit, against);
    if (p.measured == p.limit)  // a limit between two steps of the rule
      p.limit = words::rounded(limit, unit, upper ? Toward::lower : Toward::higher);
  } else if (f.outcome == Outcome::close && (upper ? p.measured > p.limit : p.measured < p.limit)) {
    p.measured = p.limit;  // missed by no more than rounding counts as met
  } else if (!upper ? p.measured > p.limit : p.measured < p.limit) {
    p.measured = words::rounded(*f.measured, unit, against);
    if (upper ? p.measured > p.limit : p.measured < p.limit) p.measured = p.limit;
  }
  p.between =
      upper == is_short ? words::difference(p.measured, p.limit) : words::difference(p.limit, p.measured);
  p.missed = is_short;
  return p;
}

std::string neededText(const Finding& f, const Printed& p, Unit unit) {
  const std::string limit = quantityText(p.limit, unit);
  switch (f.compare) {
    case Compare::atLeast:
      return "at least " + limit;
    case Compare::atMost:
      return "at most " + limit;
    case Compare::between:
      if (*f.limit == *f.limit_high) return "exactly " + limit;
      return fmt::format("{} to {}", quantityText(words::rounded(*f.limit, unit, Toward::nearest), unit),
                         quantityText(words::rounded(*f.limit_high, unit, Toward::nearest), unit));
    case Compare::isTrue:
      return {};
  }
  return limit;
}

// A figure below nothing lies on the other side of where it is measured from.
std::string measuredText(const Quantity& measured, Unit unit) {
  const Length* length = std::get_if<Length>(&measured);
  if (length == nullptr || *length >= Length{}) return quantityText(measured, unit);
  return quantityText(-*length, unit) + " the other way";
}

// "3 sones", "1 sone".
std::string withUnit(const std::string& figure, std::string_view unit) {
  const bool one = figure == "1" || figure.ends_with(" 1");
  const bool several = unit.size() > 2 && unit.ends_with('s');
  return fmt::format("{} {}", figure, one && several ? unit.substr(0, unit.size() - 1) : unit);
}

std::string byText(const Finding& f, const Printed& p, Unit unit) {
  const std::string between = quantityText(p.between, unit);
  if (p.missed) return (heldAgainstHigh(f) ? "over by " : "short by ") + between;
  const bool none = p.measured == p.limit;
  return none ? "nothing to spare" : between + " to spare";
}

// "Edition: 2020", as the book words its setting.
std::string editionText(const Rule& rule, const Variant& variant) {
  if (const Book* book = findBook(rule.book)) {
    for (const Setting& setting : book->settings) {
      if (setting.key != variant.setting) continue;
      for (const SettingValue& value : setting.values)
        if (value.value == variant.value) return fmt::format("{}: {}", setting.title, value.title);
    }
  }
  return fmt::format("{}: {}", variant.setting, variant.value);
}

std::string saidByYou(std::string_view what, const std::string& reason) {
  return reason.empty() ? std::string(what) : fmt::format("{}: {}", what, reason);
}

std::string subjectsText(const Finding& f, const Option& option) {
  if (f.subjects.empty()) return "Room";
  return subjectName(option, f.subjects.front());
}

// A point of the Wish list is no property of a subject: its own title heads it.
std::string wishHeadline(const Finding& f, const Rule& rule) {
  if (!f.measured) return fmt::format("{}: {}", rule.title, f.fact.empty() ? "undecided" : "wanted, not stated");
  if (f.outcome == Outcome::shortfall) return fmt::format("{}: {}", rule.title, rule.missed);
  return fmt::format("{}: {}", rule.title, f.detail.empty() ? "in the plan" : "left out");
}

words::YesNo sentencesOf(const Finding& f, const Rule* rule) {
  if (rule != nullptr && !rule->met.empty()) return {rule->met, rule->missed};
  return words::yesNoOf(f.rule);
}

// What the plan does not state, as a sentence goes on after the name of the thing.
std::string notStated(const Finding& f, const Option& option, const Rule* rule, const std::string& title) {
  const ElementId id = f.subjects.empty() ? ElementId{} : f.subjects.front();
  if (const std::optional<Asked> asked = askedOf(factOn(option, id), f.fact)) {
    std::string question(asked->question);
    question[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(question[0])));
    return fmt::format("the plan does not say: {}", question);
  }
  if (f.fact.empty() || f.compare != Compare::isTrue) return fmt::format("{} cannot be told yet", title);
  const std::string_view met = sentencesOf(f, rule).met;
  constexpr std::array kVerbs{"has", "is", "opens", "can", "stands", "takes", "shuts", "drains", "does", "leaves", "unlocks"};
  const std::string_view first = met.substr(0, met.find(' '));
  const bool verb = std::any_of(kVerbs.begin(), kVerbs.end(), [&](const char* v) { return first == v; });
  return fmt::format("the plan does not say whether {}{}", verb ? "it " : "", met);
}

}  // namespace

FindingText textOf(const Finding& f, const Option& option, Unit unit) {
  FindingText text;
  text.outcome = wordOf(f.outcome);
  text.detail = words::detailWith(f.detail);
  const std::string who = subjectsText(f, option);
  const Rule* rule = findRule(f.book, f.rule);
  const std::string title(rule != nullptr ? rule->title : std::string_view(f.rule));
  if (rule != nullptr) {
    text.why = rule->why;
    const auto number = static_cast<std::size_t>(f.variant);
    const Variant* variant = f.variant < 0 || number >= rule->variants.size() ? nullptr : &rule->variants[number];
    text.source = sourceWords(variant && variant->source ? *variant->source : rule->source);
    text.grade = wordsOf(variant && variant->grade ? *variant->grade : rule->grade);
    if (variant != nullptr) text.edition = editionText(*rule, *variant);
  }
  if (f.changed) text.source += (text.source.empty() ? "" : "; ") + saidByYou("limit changed by you", f.changed_reason);
  if (!f.acknowledged.empty()) text.accepted = saidByYou("Accepted by you", f.acknowledged);
  if (f.outcome == Outcome::failed) {
    text.headline = fmt::format("{}: {} could not be checked", who, title);
    return text;
  }
  const bool wish = rule != nullptr && wishOf(f) != nullptr;
  if (!f.measured) {
    text.headline =
        wish ? wishHeadline(f, *rule) : fmt::format("{}: {}", who, notStated(f, option, rule, title));
    text.measured = "not stated";
    if (f.limit && f.compare != Compare::isTrue) {
      Printed p{*f.limit, words::rounded(*f.limit, unit, Toward::nearest), {}, false};
      text.needed = neededText(f, p, unit);
      if (std::holds_alternative<Amount>(*f.limit) && rule != nullptr && !rule->unit.empty())
        text.needed = withUnit(text.needed, rule->unit);
    }
    return text;
  }
  if (const bool* yes = std::get_if<bool>(&*f.measured)) {
    const words::YesNo sentences = sentencesOf(f, rule);
    const bool met = f.outcome != Outcome::shortfall;
    const std::string other =
        f.subjects.size() > 1 ? fmt::format(" and {}", subjectName(option, f.subjects[1])) : std::string();
    text.headline = wish ? wishHeadline(f, *rule)
                         : fmt::format("{}{}: {}", who, other, met ? sentences.met : sentences.missed);
    text.measured = *yes ? "yes" : "no";
    text.needed = std::get<bool>(*f.limit) ? "yes" : "no";
    return text;
  }
  const Printed p = printedOf(f, unit);
  text.measured = measuredText(p.measured, unit);
  text.needed = neededText(f, p, unit);
  text.by = byText(f, p, unit);
  if (std::holds_alternative<Amount>(p.measured) && rule != nullptr && !rule->unit.empty()) {
    text.measured = withUnit(text.measured, rule->unit);
    text.needed = withUnit(text.needed, rule->unit);
    if (p.missed) text.by = withUnit(text.by, rule->unit);
  }
  // Things are counted: "bars behind it: 1", since "is" and "are" would depend on the title.
  const std::string_view is = std::holds_alternative<Count>(p.measured) ? ":" : " is";
  text.headline = p.missed ? fmt::format("{}: {}{} {}, needs {}", who, title, is, text.measured, text.needed)
                           : fmt::format("{}: {}{} {}", who, title, is, text.measured);
  return text;
}

}  // namespace elbowroom
