// Editions, options and local amendments of a book: each variant of a rule changes what is said of some plan. A variant
// that switches a rule off silences its quiet plan; one with another limit turns the verdict on a figure between
// the two limits; one with another source is named as the source.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <optional>

#include "core/file/plan_file.h"
#include "core/rules/text.h"
#include "tests/core/file/rule_knobs.h"

namespace elbowroom {
namespace {
using testing_knobs::knobOf;

std::string nameOf(const Rule& rule) { return std::string(rule.book) + "/" + std::string(rule.id); }

Plan quietPlan(const Rule& rule) {
  const Result<Plan> plan = loadPlan(SOURCE_DIR "/tests/rules/" + nameOf(rule) + "/quiet.elbowroom");
  EXPECT_TRUE(plan.ok());
  return plan.ok() ? plan.value() : emptyPlan(Unit::inches);
}

std::optional<Finding> findingOf(Plan plan, const Rule& rule, const Variant* variant) {
  const std::string book(rule.book);
  if (variant != nullptr) plan.book_settings[book][std::string(variant->setting)] = variant->value;
  BookChoice choice = choiceOf(plan);
  choice.books = {book};
  for (const Finding& f : check(deriveLayout(plan, 0), choice).findings)
    if (f.rule == rule.id) return f;
  return std::nullopt;
}

bool isMet(const std::optional<Finding>& f) {
  return f && (f->outcome == Outcome::clear || f->outcome == Outcome::close);
}

// A value of the variant's setting under which no variant of the rule is in force.
std::string_view otherValue(const Rule& rule, const Variant& variant) {
  for (const Setting& setting : findBook(rule.book)->settings) {
    if (setting.key != variant.setting) continue;
    for (const SettingValue& value : setting.values) {
      const auto taken = [&](const Variant& v) { return v.setting == setting.key && v.value == value.value; };
      if (std::none_of(rule.variants.begin(), rule.variants.end(), taken)) return value.value;
    }
  }
  ADD_FAILURE() << "no value leaves the rule's own limit in force";
  return {};
}

TEST(RuleVariants, OneThatSwitchesOffSilencesTheQuietPlan) {
  int tried = 0;
  for (const Rule& rule : allRules()) {
    for (const Variant& variant : rule.variants) {
      if (!variant.off) continue;
      SCOPED_TRACE(nameOf(rule) + ", " + std::string(variant.setting) + " " + std::string(variant.value));
      const Plan plan = quietPlan(rule);
      EXPECT_TRUE(isMet(findingOf(plan, rule, nullptr)));
      EXPECT_FALSE(findingOf(plan, rule, &variant).has_value());
      ++tried;
    }
  }
  EXPECT_GE(tried, 30);
}

// Lengths of the books whose figures tests/core/file/rule_knobs.h sets.
TEST(RuleVariants, AnotherLimitTurnsTheVerdictBetweenTheTwo) {
  int tried = 0;
  for (const Rule& rule : allRules()) {
    if (rule.book.find("-access") != std::string_view::npos || rule.book == "us-adaptable") continue;
    for (const Variant& variant : rule.variants) {
      if (!variant.limit) continue;
      SCOPED_TRACE(nameOf(rule) + ", " + std::string(variant.setting) + " " + std::string(variant.value));
      Plan plan = quietPlan(rule);
      const Length own = std::get<Length>(rule.limit), other = std::get<Length>(*variant.limit);
      ASSERT_TRUE(knobOf(std::string(rule.id)));
      knobOf(std::string(rule.id))(plan, (own + other) / 2);
      const Variant without{.setting = variant.setting, .value = otherValue(rule, variant)};
      const auto by_rule = findingOf(plan, rule, &without), by_variant = findingOf(plan, rule, &variant);
      ASSERT_TRUE(by_rule && by_variant);
      EXPECT_EQ(by_rule->limit, rule.limit);
      EXPECT_EQ(by_variant->limit, *variant.limit);
      EXPECT_NE(isMet(by_rule), isMet(by_variant));
      ++tried;
    }
  }
  EXPECT_GE(tried, 8);
}

// The books for accessibility: some plan of the book's own turns the verdict, as it stands or without the rule's other
// settings.
std::vector<Plan> plansOf(std::string_view book) {
  std::vector<Plan> plans;
  for (const auto& entry :
       std::filesystem::recursive_directory_iterator(SOURCE_DIR "/tests/rules/" + std::string(book))) {
    if (entry.path().extension() != ".elbowroom") continue;
    if (const Result<Plan> plan = loadPlan(entry.path().string()); plan.ok()) plans.push_back(plan.value());
  }
  return plans;
}

TEST(RuleVariants, SomePlanOfTheBookTellsThemApart) {
  std::map<std::string_view, std::vector<Plan>> plans;
  for (const Rule& rule : allRules()) {
    for (const Variant& variant : rule.variants) {
      if (!variant.limit && !variant.limit_high) continue;
      auto& of_book = plans[rule.book];
      if (of_book.empty()) of_book = plansOf(rule.book);
      const bool told = std::any_of(of_book.begin(), of_book.end(), [&](const Plan& plan) {
        for (const Setting& setting : findBook(rule.book)->settings) {
          if (setting.key != variant.setting) continue;
          for (const SettingValue& value : setting.values) {
            const Variant other{.setting = setting.key, .value = value.value};
            const auto a = findingOf(plan, rule, &other), b = findingOf(plan, rule, &variant);
            if (a && b && a->measured && b->measured && isMet(a) != isMet(b)) return true;
          }
        }
        return false;
      });
      EXPECT_TRUE(told) << nameOf(rule) << ", " << variant.setting << " " << variant.value;
    }
  }
}

TEST(RuleVariants, AnotherSourceIsTheOneThatIsNamed) {
  int tried = 0;
  for (const Rule& rule : allRules()) {
    for (const Variant& variant : rule.variants) {
      if (!variant.source) continue;
      SCOPED_TRACE(nameOf(rule) + ", " + std::string(variant.setting) + " " + std::string(variant.value));
      const Plan plan = quietPlan(rule);
      const auto f = findingOf(plan, rule, &variant);
      ASSERT_TRUE(f);
      const std::string source = textOf(*f, plan.options[0], plan.unit).source;
      EXPECT_NE(source.find(variant.source->document), std::string::npos) << source;
      EXPECT_NE(source.find(variant.source->edition), std::string::npos) << source;
      ++tried;
    }
  }
  EXPECT_GE(tried, 10);
}

}  // namespace
}  // namespace elbowroom
