// Editions, options and local amendments of a book: each variant of a rule changes what is said of some plan.
// A variant that switches a rule off silences its quiet plan; one with another limit turns the verdict on a
// figure between the two limits; one with another source is named as the source.
#include <gtest/gtest.h>

#include <algorithm>
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

// The quiet plan and what comes of it when a door, the room, the first fixture or a stated figure is a little
// larger, smaller or elsewhere.
std::vector<Plan> plansNear(const Plan& quiet) {
  std::vector<Plan> plans{quiet};
  const auto add = [&](auto change) {
    plans.push_back(quiet);
    change(plans.back().options[0]);
  };
  for (int k = -192; k <= 192; ++k) {
    const Length by = Length::fromInches(k / 4.0);
    add([&](Option& o) {
      for (Opening& opening : o.openings) opening.width = opening.width + by;
    });
    add([&](Option& o) {
      for (Opening& opening : o.openings)
        for (auto& [key, value] : opening.facts)
          if (Length* figure = std::get_if<Length>(&value)) *figure = *figure + by;
    });
    add([&](Option& o) {  // the north wall
      o.room.walls.at(0).from.y = o.room.walls.at(0).from.y + by;
      o.room.walls.at(1).from.y = o.room.walls.at(1).from.y + by;
    });
    add([&](Option& o) {  // the east wall
      o.room.walls.at(1).from.x = o.room.walls.at(1).from.x + by;
      o.room.walls.at(2).from.x = o.room.walls.at(2).from.x + by;
    });
    if (quiet.options[0].fixtures.empty()) continue;
    add([&](Option& o) {
      if (auto* on = std::get_if<OnWall>(&o.fixtures[0].placement)) on->along = on->along + by;
    });
    add([&](Option& o) {
      for (auto& [key, value] : o.fixtures[0].facts)
        if (Length* figure = std::get_if<Length>(&value)) *figure = *figure + by;
    });
  }
  return plans;
}

// Any book: some plan near the quiet one is met under one value of the setting and short under the other.
TEST(RuleVariants, SomePlanTellsThemApart) {
  int tried = 0;
  for (const Rule& rule : allRules()) {
    for (const Variant& variant : rule.variants) {
      if (!variant.limit && !variant.limit_high) continue;
      const std::vector<Plan> plans = plansNear(quietPlan(rule));
      const auto tells = [&](const Plan& plan, const SettingValue& value) {
        const Variant other{.setting = variant.setting, .value = value.value};
        const auto a = findingOf(plan, rule, &other), b = findingOf(plan, rule, &variant);
        return a && b && a->measured && b->measured && isMet(a) != isMet(b);
      };
      const auto& settings = findBook(rule.book)->settings;
      const auto setting = std::find_if(settings.begin(), settings.end(),
                                        [&](const Setting& s) { return s.key == variant.setting; });
      ASSERT_NE(setting, settings.end());
      const bool told =
          std::any_of(setting->values.begin(), setting->values.end(), [&](const SettingValue& value) {
            return std::any_of(plans.begin(), plans.end(),
                               [&](const Plan& plan) { return tells(plan, value); });
          });
      EXPECT_TRUE(told) << nameOf(rule) << ", " << variant.setting << " " << variant.value;
      ++tried;
    }
  }
  EXPECT_GE(tried, 25);
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
