// Books as files: what is read, and each way in which a bad one is refused, with rule and reason.
#include "core/file/book_file.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "core/file/plan_file.h"
#include "core/file/report_json.h"
#include "core/rules/checks/named.h"
#include "core/rules/text_rules.h"
#include "tests/core/file/json_schema.h"

namespace elbowroom {
namespace {

using namespace literals;
using testing::Json;
using testing::JsonSchema;

const char* const kSample = SOURCE_DIR "/samples/books/grandparents.json";

const Json& schema() {
  static const Json root = Json::parse(std::ifstream(SOURCE_DIR "/resources/book.schema.json"));
  return root;
}

Json sample() { return Json::parse(std::ifstream(kSample)); }

bool validates(const Json& book) { return JsonSchema(schema(), true).errorsOf(book).empty(); }

// Takes the book away again, whatever the test does.
struct Added {
  explicit Added(SharedBook book) : id(book->book.id) { EXPECT_TRUE(addBook(std::move(book)).ok()); }
  ~Added() { removeBook(id); }
  std::string id;
};

TEST(BookFile, TheSampleIsReadAsItIsWritten) {
  EXPECT_TRUE(validates(sample()));
  const Result<SharedBook> read = loadBook(kSample);
  ASSERT_TRUE(read.ok()) << read.error().message;
  const AddedBook& book = **read;
  EXPECT_EQ(book.book.id, "grandparents");
  EXPECT_EQ(book.file, kSample);
  ASSERT_EQ(book.book.settings.size(), 1u);
  EXPECT_EQ(book.book.settings[0].values[1].value, "used");
  ASSERT_EQ(book.rules.size(), 3u);
  const Rule& door = book.rules[0];
  EXPECT_EQ(door.book, "grandparents");
  EXPECT_EQ(door.measure, checks::findMeasure("door-clear-openings")->measure);
  EXPECT_EQ(door.limit, Quantity(28_in));
  EXPECT_EQ(door.level, Level::craft);
  EXPECT_EQ(door.mends, (std::vector<Mend>{Mend::wider, Mend::otherAction}));
  ASSERT_EQ(door.variants.size(), 1u);
  EXPECT_EQ(door.variants[0].limit, Quantity(32_in));
  EXPECT_EQ(book.rules[1].limit, Quantity(410_mm));
  EXPECT_EQ(book.rules[1].limit_high, Quantity(460_mm));
  EXPECT_EQ(book.rules[2].limit, Quantity(true));
}

TEST(BookFile, AnAddedBookIsCheckedListedAndTakenAway) {
  const std::size_t books = allBooks().size(), rules = allRules().size();
  const std::span<const Rule> before = allRules();
  {
    const Added added(*loadBook(kSample));
    EXPECT_EQ(allBooks().size(), books + 1);
    EXPECT_EQ(allRules().size(), rules + 3);
    ASSERT_NE(findRule("grandparents", "door-clear-opening"), nullptr);
    EXPECT_NE(booksText({"grandparents"}).find("walker used: at least 32\""), std::string::npos)
        << booksText({"grandparents"});
    EXPECT_EQ(booksText({"grandparents"}).find("us-residential"), std::string::npos);
    const Json listed = Json::parse(booksJson({"grandparents"}));
    EXPECT_EQ(listed.at("rules").size(), 3u);
    EXPECT_EQ(listed.at("rules")[0].at("measure"), "door-clear-openings");
    EXPECT_EQ(listed.at("books")[0].at("added"), true);

    // A 30 in leaf leaves 30 - 1.875 in = 28.125 in (worked example T03): enough without a walking frame only.
    Plan plan = *loadPlan(SOURCE_DIR "/samples/hall-bath.elbowroom");
    plan.books = {"grandparents"};
    const auto doorOf = [](const Plan& p) {
      for (const Finding& f : check(deriveLayout(p, 0), choiceOf(p)).findings)
        if (f.rule == "door-clear-opening") return f;
      ADD_FAILURE() << "no finding";
      return Finding{};
    };
    EXPECT_EQ(doorOf(plan).outcome, Outcome::close);
    plan.book_settings["grandparents"]["walker"] = "used";
    const Finding f = doorOf(plan);
    EXPECT_EQ(f.outcome, Outcome::shortfall);
    EXPECT_EQ(textOf(f, plan.options[0], Unit::inches).edition, "Walking frame: Somebody uses one");
    bool yes_no = false;
    for (const Finding& each : check(deriveLayout(plan, 0), choiceOf(plan)).findings)
      if (each.rule == "door-meets-person") {
        yes_no = true;
        EXPECT_NE(textOf(each, plan.options[0], Unit::inches).headline.find("whoever washes"), std::string::npos);
      }
    EXPECT_TRUE(yes_no);
  }
  EXPECT_EQ(allBooks().size(), books);
  EXPECT_EQ(allRules().size(), rules);
  EXPECT_EQ(findRule("grandparents", "door-clear-opening"), nullptr);
  EXPECT_EQ(before.front().id, allRules().front().id) << "lists of before stay readable";
}

TEST(BookFile, WhatWasGivenStaysReadableAfterTheBookIsGone) {
  std::string_view why;
  const Rule* rule = nullptr;
  {
    const Added added(*loadBook(kSample));
    rule = findRule("grandparents", "door-clear-opening");
    why = rule->why;
  }
  const Added again(*loadBook(kSample));
  EXPECT_EQ(why, "Two people arm in arm get through, one behind the other.");
  EXPECT_EQ(rule->id, "door-clear-opening");
}

TEST(BookFile, TwoBooksOfOneIdAreRefused) {
  const Added added(*loadBook(kSample));
  const Result<SharedBook> again = loadAndAddBook(kSample);
  ASSERT_FALSE(again.ok());
  EXPECT_EQ(again.error().code, "book-there");
  EXPECT_NE(again.error().message.find("grandparents.json: "), std::string::npos) << again.error().message;
  Json other = sample();
  other["id"] = "comfort";
  EXPECT_FALSE(addBook(*readBook(other.dump())).ok()) << "nor that of a built-in book";
}

// One thing wrong each: JSON pointer, value (null: taken away), code, what the sentence names. `schema`: whether the
// schema already says so.
struct Bad {
  const char* pointer;
  const char* value;
  const char* code;
  const char* named;
  bool schema = true;
};

class BadBook : public ::testing::TestWithParam<Bad> {};

TEST_P(BadBook, IsRefusedWithRuleAndReason) {
  const Bad& bad = GetParam();
  Json book = sample();
  const Json::json_pointer pointer(bad.pointer);
  const Json value = Json::parse(bad.value);
  if (value.is_null()) book[pointer.parent_pointer()].erase(pointer.back());
  else book[pointer] = value;
  const Result<SharedBook> read = readBook(book.dump());
  ASSERT_FALSE(read.ok()) << bad.pointer;
  EXPECT_EQ(read.error().code, bad.code) << read.error().message;
  EXPECT_NE(read.error().message.find(bad.named), std::string::npos) << read.error().message;
  if (std::string(bad.pointer).rfind("/rules/0/", 0) == 0 && std::string(bad.pointer) != "/rules/0/id") {
    EXPECT_NE(read.error().message.find("rule \"door-clear-opening\""), std::string::npos) << read.error().message;
  }
  EXPECT_EQ(validates(book), !bad.schema) << "the schema and the reader part";
}

INSTANTIATE_TEST_SUITE_P(
    BookFile, BadBook,
    ::testing::Values(
        Bad{"/format", "\"elbowroom-plan\"", "format", "no book"}, Bad{"/version", "2", "version", "newer"},
        Bad{"/id", "\"My Book\"", "text", "no id"}, Bad{"/title", "null", "missing-key", "title"},
        Bad{"/rules", "[]", "missing-key", "no rule"}, Bad{"/titel", "\"x\"", "unknown-key", "titel"},
        Bad{"/rules/0/measure", "\"door-clear-opening\"", "measure", "\"door-clear-openings\"?", false},
        Bad{"/rules/0/measure", "\"shower-areas\"", "limit", "gives an area, but this is a length", false},
        Bad{"/rules/0/measure", "\"door-pairs\"", "compare", "\"is\"", false},
        Bad{"/rules/0/compare", "\"=\"", "value", ">="},
        Bad{"/rules/0/compare", "\"is\"", "compare", "does not suit", false},
        Bad{"/rules/0/compare", "\"between\"", "compare", "limit_high", false},
        Bad{"/rules/0/limit", "24", "type", "object"},
        Bad{"/rules/0/limit", "{\"value\": 24}", "missing-key", "unit"},
        Bad{"/rules/0/limit", "{\"value\": 24, \"unit\": \"cfm\"}", "limit", "an amount", false},
        Bad{"/rules/0/limit", "{\"value\": 0, \"unit\": \"in\"}", "limit", "nothing", false},
        Bad{"/rules/0/limit", "null", "missing-key", "limit"},
        Bad{"/rules/0/sizes", "[{\"value\": 3, \"unit\": \"in\"}]", "measure", "takes no sizes", false},
        Bad{"/rules/0/source", "null", "missing-key", "source"},
        Bad{"/rules/0/source/document", "\"\"", "text", "no text"},
        Bad{"/rules/0/grade", "null", "missing-key", "grade"},
        Bad{"/rules/0/grade", "\"verified\"", "source", "read_at", false},
        Bad{"/rules/0/level", "\"required\"", "source", "requires nothing", false},
        Bad{"/rules/0/why", "null", "missing-key", "why"}, Bad{"/rules/0/why", "\"\"", "text", "no text"},
        Bad{"/rules/0/why", "\"a\\nb\"", "text", "one line", false},
        Bad{"/rules/0/lmit", "1", "unknown-key", "lmit"}, Bad{"/rules/0/mends", "[\"pray\"]", "value", "slide"},
        Bad{"/rules/0/met", "\"x\"", "compare", "figure", false},
        Bad{"/rules/0/variants/0/setting", "\"edition\"", "setting", "edition", false},
        Bad{"/rules/0/variants/0/value", "\"2020\"", "setting", "2020", false},
        Bad{"/rules/0/variants/0/limit", "true", "limit", "a yes or no", false},
        Bad{"/rules/1/id", "\"door-clear-opening\"", "twice", "door-clear-opening", false},
        Bad{"/rules/1/limit_high", "{\"value\": 400, \"unit\": \"mm\"}", "limit", "less than", false},
        Bad{"/rules/2/missed", "null", "missing-key", "missed", false},
        Bad{"/settings/0/values", "[{\"value\": \"a\", \"title\": \"A\"}]", "setting", "two values"}));

TEST(BookFile, ASectionFromMemoryThatNobodySawIsRefused) {
  Json book = sample();
  book["rules"][0]["source"] = {{"document", "Town code"}, {"section", "12.3"}};
  book["rules"][0]["grade"] = "memory";
  const auto read = readBook(book.dump());
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.error().code, "source");
  book["rules"][0]["source"]["read_at"] = "letter of the permit office";
  EXPECT_TRUE(readBook(book.dump()).ok());
}

TEST(BookFile, FiguresInEveryUnit) {
  const auto limitOf = [](const char* measure, const Json& limit) -> Result<Quantity> {
    Json book = sample();
    book["rules"][0]["measure"] = measure;
    book["rules"][0]["limit"] = limit;
    book["rules"][0].erase("variants");
    const auto read = readBook(book.dump());
    if (!read) return read.error();
    return (*read)->rules[0].limit;
  };
  EXPECT_EQ(limitOf("door-clear-openings", {{"value", 812.8}, {"unit", "mm"}}).value(), Quantity(32_in));
  EXPECT_EQ(limitOf("shower-areas", {{"value", 900}, {"unit", "sq in"}}).value(), Quantity(Area::fromSquareInches(900)));
  EXPECT_EQ(limitOf("shower-areas", {{"value", 6.25}, {"unit", "sq ft"}}).value(), Quantity(Area::fromSquareInches(900)));
  EXPECT_EQ(limitOf("shower-areas", {{"value", 0.9}, {"unit", "m2"}}).value(),
            Quantity(Area::squareMicrometres(900'000'000'000)));
  EXPECT_EQ(limitOf("door-swings", {{"value", 90}, {"unit", "degrees"}}).value(), Quantity(90_deg));
}

TEST(BookFile, FilesThatCannotBeReadAreNamed) {
  for (const char* path : {"/no/such/book.json", SOURCE_DIR "/samples"}) {
    const auto read = loadBook(path);
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().message.rfind(std::string(path) + ": ", 0), 0u) << read.error().message;
  }
  EXPECT_EQ(readBook("{").error().code, "json");
}

}  // namespace
}  // namespace elbowroom
