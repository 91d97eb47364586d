// Every rule is complete, and no rule names a section that the sources of its figures do not name.
#include <gtest/gtest.h>

#include <map>
#include <set>
#include <string>

#include "core/rules/rule.h"

namespace elbowroom {
namespace {

std::string nameOf(const Rule& rule) { return std::string(rule.book) + "/" + std::string(rule.id); }

// Sections that were read (or, where the rule says so, remembered) for each document.
const std::map<std::string, std::set<std::string>>& knownSections() {
  static const std::map<std::string, std::set<std::string>> sections{
      {"IRC", {"P2705.1(5)", "P2705.1 item 6", "Figure R307.1", "P2708.1", "R305.1", "P2708.1.1", "P2709.1", "P2709.2", "R307.2",
        "P2708.4", "P2708.3", "P2713.3", "R305.1 exception 1", "R305.1 exception 2", "R303.3", "M1507.4",
        "R303.3, M1507.2", "M1504.3", "R308.4.5", "Table P3105.1", "", "P3201.6", "Table P3201.7", "P2603.5",
        "P2704.1", "P2706.1.2", "P2720.1", "R502.8.1", "R602.6", "R306.1", "G2406.2, M2005.2",
        "P2722.2", "R314.3(4)", "R502.8.2"}},
      {"IPC", {"417.4.1", "405.3.1"}},
      {"NEC",
       {"210.8(A)(1)", "210.8(A)(9)", "210.11(C)(3)", "210.52(D)", "210.70(A)(1)", "240.24(E)", "404.4(C)", "406.5",
        "406.9(C)", "406.9(C) exception 4", "406.12", "410.4(D)", "410.10(D)", "424.44(G)", "680.71", "680.73"}},
      {"Plan review of a Californian town", {""}},
      {"Trade articles on electric toilet seats", {""}},
      {"780 CMR (Massachusetts)", {""}},
      {"Chicago Municipal Code", {""}},
      {"CRC (California)", {"R327.1.1 and R327.1.3"}},
      {"CPC (California, after the UPC)", {""}},
      {"R305.1 as amended by a state", {""}},
      {"IRC, as some read it", {"P2705.1(5)"}},
      {"UPC",
       {"402.5", "408.7", "408.5", "408.9", "Table 1002.2", "1001", "Table 702.1", "312.6", "404.2", "804.1", ""}},
      {"CSA C22.1", {"26-720 f)", "26-704", "appendix B to 26-700", "30-320(3)"}},
      {"2010 ADA Standards",
       {"", "304.2 and 305.2", "304.3.1 or 304.3.2", "306.2.3", "306.3", "306.3.3", "404.2.3", "404.2.4", "404.2.5", "404.2.7", "603.2.3",
        "604.2", "604.3.1", "604.3.2", "604.4", "604.6", "604.8.1.1", "606.2, 305.3 and 305.7.1", "606.3", "606.5",
        "607.2", "304.3, 403.5.1 and 404.2.3", "608.2", "608.2.1", "608.2.2", "608.2.2.1", "608.2.3", "608.6", "608.7", "610.3",
        "307.2", "308.2 and 308.3", "308.2.2 and 308.3.2", "308.3.2", "403.5.1", "603.3", "advisory 603.3",
        "603.4", "603.4 and 308", "604.5", "604.5.1", "604.5.2", "604.7", "607.4.1.1 and 607.4.2.1",
        "607.4.1.2 and 607.4.2.2", "607.4.2.1", "607.4.2.3", "607.5", "607.6 and 608.6", "607.7",
        "608.3.1", "608.3.2", "608.5.1", "608.5.2 and 608.5.3", "609.2", "609.3", "609.4", "610.2"}},
      {"1991 ADA Standards", {"4.22.2", "A4.2.3", "figure 28", "figure 32"}},
      {"Uniform Federal Accessibility Standards", {"4.23.3"}},
      {"ICC A117.1",
       {"304.3.1.1 or 304.3.2.1", "304.3.1.2", "305.3", "404.2.2", "404.2.3.2", "608.2.1", "1004.11.2.1", "1004.11.3.1.1",
        "1004.11.3.1.2", "1004.11.3.1.3.1 and 1004.11.3.1.3.2", "1004.11.3.1.3.3", "1004.11.3.2.1.1",
        "1004.11.3.2.3.1", "1103.11.2.1", "1103.11.2.2", "1103.11.2.4", "1103.11.2.5.1", "1104.5",
        "", "1004.11.1.1", "604.5.1"}},
      {"Fair Housing Accessibility Guidelines", {"", "7(2)(b)(iv)", "7(2)(b)(vi)"}},
      {"Fair Housing Act Design Manual", {"chapter 6"}},
      {"Ontario Building Code", {"3.8.3.12(1)(f)", "3.8.3.12(1)(h)", "3.8.3.12(1)(j)", "3.8.3.3(1)", "3.8.3.9"}},
      {"CSA B651", {""}},
      {"Canadian clear floor area", {""}},
      {"Approved Document M", {"", "3.36h", "3.43e", "diagram 2.5"}},
      {"DIN 18040-2", {""}},
      {"AS 1428.1", {""}},
      {"Livable Housing Design Standard", {""}},
      {"Bathroom planning guidelines of the US kitchen and bath trade association",
       {"Guideline 1", "Guideline 2", "Guideline 4", "Guideline 5", "Guideline 6", "Guideline 7", "Guideline 8",
        "Guideline 9", "Guideline 10", "Guideline 12", "Guideline 13", "Guideline 14", "Guideline 16", "Guideline 17",
        "Guideline 18", "Guideline 19", "Guideline 20", "Guideline 21",
        "Guideline 22", "Guideline 23", "Guideline 24", "Guideline 25", "Guideline 27"}},
      {"Body sizes of the US Army survey ANSUR II", {""}},
      {"Ergonomics course on work heights", {""}},
      {"Remodeling guides on privacy", {""}},
      {"Trade articles on shower glass", {""}},
      {"Home ventilation guidance", {""}},
      {"Trade articles on sliding doors", {""}},
      {"Trade articles on door casings", {""}},
      {"Trade article on the placement of bath fixtures", {""}},
      {"Framing practice for pocket doors", {""}},
      {"Geometry of a sliding leaf", {""}},
      {"Trade article on bathroom accessories", {""}},
      {"Trade article on basin sizes", {""}},
      {"Trade articles on bathroom lighting", {""}},
      {"Trade article on bathroom measurements", {""}},
      {"Trade article on bathroom lighting heights", {""}},
      {"Trade article on vanity lights", {""}},
      {"Trade article on shower niches", {""}},
      {"Optics of a mirror and body sizes", {""}},
      {"Trade article on framing a shower niche", {""}},
      {"Trade article on backing for grab bars", {""}},
      {"Glazier's page on frameless details", {""}},
      {"Trade article on pipes in exterior walls", {""}},
      {"Home Ventilating Institute", {""}},
      {"Building America Solution Center", {""}},
      {"Trade article on baths for two", {""}},
      {"Usual rough-in of toilets", {""}},
      {"Trade article on double vanities", {""}},
      {"Trade articles on toe kicks", {""}},
      {"Trade articles on curbless showers", {""}},
      {"Trade articles on showers without a door", {""}},
      {"Arithmetic of a floor that falls to its middle", {""}},
      {"Trade articles on side lights", {""}},
      {"Trade article on waiting for hot water", {""}},
      {"Fabricator's table for toughened glass", {""}},
      {"Geometry of a hose", {""}},
      {"Trade articles on washing seats", {""}},
      {"Common practice, no source", {""}},
  };
  return sections;
}

TEST(Registry, EveryRuleIsComplete) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(nameOf(rule));
    EXPECT_FALSE(rule.id.empty());
    EXPECT_FALSE(rule.title.empty());
    EXPECT_FALSE(rule.source.document.empty());
    EXPECT_FALSE(rule.source.read_at.empty());
    EXPECT_NE(rule.measure, nullptr);
    ASSERT_FALSE(rule.why.empty());
    EXPECT_EQ(rule.why.back(), '.') << "a sentence";
    EXPECT_EQ(rule.why.find(". "), std::string_view::npos) << "one sentence";
    EXPECT_FALSE(wordsOf(rule.grade).empty());
    EXPECT_FALSE(keyOf(rule.grade).empty());
    EXPECT_FALSE(keyOf(rule.level).empty());
    EXPECT_FALSE(keyOf(rule.compare).empty());
    EXPECT_EQ(rule.compare == Compare::between, rule.limit_high.has_value());
    EXPECT_EQ(rule.compare == Compare::isTrue, std::holds_alternative<bool>(rule.limit));
    const bool has_limit = rule.limit != Quantity{Length{}};
    EXPECT_TRUE(has_limit || !rule.limit_words.empty()) << "says nothing about its limit";
  }
}

TEST(Registry, IdsAreKebabCaseAndUniqueWithinABook) {
  std::set<std::string> seen;
  for (const Rule& rule : allRules()) {
    EXPECT_TRUE(seen.insert(nameOf(rule)).second) << nameOf(rule);
    for (const char c : rule.id)
      EXPECT_TRUE((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-') << nameOf(rule);
    EXPECT_EQ(findRule(rule.book, rule.id), &rule);
  }
  EXPECT_EQ(findRule("us-residential", "no-such-rule"), nullptr);
  EXPECT_EQ(findRule("no-such-book", "toilet-clear-front"), nullptr);
}

TEST(Registry, NoInventedSections) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(nameOf(rule));
    const auto known = knownSections().find(std::string(rule.source.document));
    ASSERT_NE(known, knownSections().end()) << rule.source.document;
    EXPECT_TRUE(known->second.count(std::string(rule.source.section))) << rule.source.section;
  }
}

TEST(Registry, BooksAndTheirRules) {
  std::set<std::string_view> ids;
  for (const Book& book : allBooks()) {
    EXPECT_TRUE(ids.insert(book.id).second);
    EXPECT_FALSE(book.title.empty());
    EXPECT_FALSE(book.authority.empty());
    EXPECT_FALSE(book.note.empty());
    EXPECT_EQ(findBook(book.id), &book);
  }
  std::set<std::string_view> used;
  for (const Rule& rule : allRules()) {
    EXPECT_TRUE(ids.count(rule.book)) << nameOf(rule);
    used.insert(rule.book);
  }
  for (const Book& book : allBooks()) {
    const bool says_so = book.note.find("Nothing is checked") != std::string_view::npos;
    EXPECT_NE(used.count(book.id) > 0, says_so) << book.id << ": a book without rules must say so";
  }
  EXPECT_EQ(findBook("no-such-book"), nullptr);
}

// The access book is a benchmark in a home, whatever its rules' level.
TEST(Registry, TheAccessBookSaysThatItDoesNotBindAHouse) {
  EXPECT_NE(findBook("us-access")->note.find("do not bind a private house"), std::string_view::npos);
}

TEST(Registry, LevelsFollowTheKindOfText) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(nameOf(rule));
    EXPECT_EQ(rule.book == "craft", rule.level == Level::craft);
    EXPECT_FALSE(rule.book == "comfort" && rule.level == Level::required);
    EXPECT_FALSE(rule.grade == Grade::memory && rule.level == Level::required) << "a memory requires nothing";
  }
}

}  // namespace
}  // namespace elbowroom
