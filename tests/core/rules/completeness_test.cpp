// Nothing enters the books half done: each rule has a text behind it, a grade, a reason, both of its plans and a
// measure that books in files can name. Says what is missing, rule by rule.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>

#include "core/rules/checks/named.h"

namespace elbowroom {
namespace {

std::string nameOf(const Rule& rule) { return std::string(rule.book) + "/" + std::string(rule.id); }

// A section number is a claim about a text: somebody has read it there, or the note on where says so.
void expectSource(const Source& source, Grade grade) {
  EXPECT_FALSE(source.document.empty()) << "no document; the least is \"common practice, no source\"";
  EXPECT_FALSE(wordsOf(grade).empty()) << "no grade";
  const bool invented = grade == Grade::memory && !source.section.empty() && source.read_at.empty();
  EXPECT_FALSE(invented) << "section " << source.section << " from memory, and nothing says where it was seen";
  const bool claims = grade == Grade::verified || grade == Grade::verifiedSecondHand;
  EXPECT_FALSE(claims && source.read_at.empty()) << "verified, but not where";
}

TEST(Completeness, EveryRuleHasSourceGradeAndWhy) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(nameOf(rule));
    expectSource(rule.source, rule.grade);
    EXPECT_FALSE(rule.why.empty()) << "no why";
    EXPECT_FALSE(rule.title.empty()) << "no title";
    for (const Variant& variant : rule.variants) {
      SCOPED_TRACE("variant " + std::string(variant.setting) + " " + std::string(variant.value));
      expectSource(variant.source.value_or(rule.source), variant.grade.value_or(rule.grade));
    }
  }
}

TEST(Completeness, EveryRuleHasBothOfItsPlans) {
  for (const Rule& rule : allRules()) {
    const std::string folder = std::string(SOURCE_DIR "/tests/rules/") + nameOf(rule) + "/";
    for (const char* plan : {"quiet", "noisy"})
      EXPECT_TRUE(std::filesystem::exists(folder + plan + ".elbowroom")) << folder << plan;
  }
}

// core/rules/checks/named.cpp is the table; add a line there for a new measure.
TEST(Completeness, EveryMeasureThatARuleUsesHasAName) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(nameOf(rule));
    const checks::NamedMeasure* named = checks::nameOf(rule.measure);
    ASSERT_NE(named, nullptr) << "its measure has no line in core/rules/checks/named.cpp";
    SCOPED_TRACE(named->name);
    EXPECT_EQ(checks::wordsOf(named->gives), checks::wordsOf(checks::kindOf(rule.limit)))
        << "the table says what the measure gives, the rule's limit is of another kind";
    EXPECT_EQ(named->unit, rule.unit) << "the unit of an amount stands in both places";
    EXPECT_EQ(named->gives == checks::Gives::amount, !named->unit.empty());
    const checks::SizeCount sizes = checks::sizesOf(*named);
    EXPECT_GE(rule.sizes.size(), sizes.least) << "sizes: " << named->sizes;
    EXPECT_LE(rule.sizes.size(), sizes.most) << "sizes: " << named->sizes;
    std::vector<Quantity> others;
    if (rule.limit_high) others.push_back(*rule.limit_high);
    for (const Variant& variant : rule.variants) {
      if (variant.limit) others.push_back(*variant.limit);
      if (variant.limit_high) others.push_back(*variant.limit_high);
    }
    for (const Quantity& other : others) EXPECT_EQ(checks::kindOf(other), checks::kindOf(rule.limit));
  }
}

TEST(Completeness, NamesOfMeasuresAreUniqueAndKebabCase) {
  std::set<std::string_view> names;
  for (const checks::NamedMeasure& named : checks::namedMeasures()) {
    EXPECT_TRUE(names.insert(named.name).second) << named.name << " twice";
    EXPECT_EQ(checks::findMeasure(named.name), &named);
    EXPECT_TRUE(std::all_of(named.name.begin(), named.name.end(), [](char c) {
      return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    })) << named.name;
  }
  EXPECT_EQ(checks::findMeasure("no-such-measure"), nullptr);
}

TEST(Completeness, EverySettingOfAVariantIsInItsBook) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(nameOf(rule));
    const Book* book = findBook(rule.book);
    ASSERT_NE(book, nullptr);
    for (const Variant& variant : rule.variants) {
      const auto setting = std::find_if(book->settings.begin(), book->settings.end(),
                                        [&](const Setting& s) { return s.key == variant.setting; });
      ASSERT_NE(setting, book->settings.end()) << "the book has no setting " << variant.setting;
      EXPECT_TRUE(std::any_of(setting->values.begin(), setting->values.end(),
                              [&](const SettingValue& v) { return v.value == variant.value; }))
          << variant.setting << " has no value " << variant.value;
    }
  }
}

TEST(Completeness, SettingsOfABookHaveValuesAndTitles) {
  for (const Book& book : allBooks()) {
    std::set<std::string_view> keys;
    for (const Setting& setting : book.settings) {
      SCOPED_TRACE(std::string(book.id) + " " + std::string(setting.key));
      EXPECT_TRUE(keys.insert(setting.key).second) << "twice";
      EXPECT_FALSE(setting.title.empty());
      EXPECT_GE(setting.values.size(), 2u) << "nothing to choose";
      std::set<std::string_view> values;
      for (const SettingValue& value : setting.values) {
        EXPECT_TRUE(values.insert(value.value).second) << value.value << " twice";
        EXPECT_FALSE(value.title.empty());
      }
    }
  }
}

}  // namespace
}  // namespace elbowroom
