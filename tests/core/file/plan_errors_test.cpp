// Everything that can be wrong with a plan file is refused with a sentence that says where and why.
#include <gtest/gtest.h>

#include <ostream>

#include "core/file/plan_file.h"
#include "tests/core/file/example_plan.h"

namespace elbowroom {
namespace {

using testing::exampleWith;

struct Broken {
  std::string name, text, code, place, words;
};
void PrintTo(const Broken& broken, std::ostream* out) { *out << broken.name; }

Broken swapped(std::string name, const std::string& was, const std::string& now, std::string code, std::string place,
               std::string words) {
  return {std::move(name), exampleWith(was, now), std::move(code), std::move(place), std::move(words)};
}

const std::string kDoor = "/options/0/openings/0", kWalls = "/options/0/room/walls", kWc = "/options/0/fixtures/1";

std::vector<Broken> brokenPlans() {
  const auto cut = testing::kExamplePlan.substr(0, 200);
  std::string deep = R"({"format": "elbowroom-plan", "x": )" + std::string(5000, '[') + std::string(5000, ']') + "}";
  return {
      {"empty", "", "json", "1:1", "not JSON (the file is empty)"},
      {"prose", "This is a letter.", "json", "1:1", "not JSON but some other kind of file"},
      {"photo", std::string("\xFF\xD8\xFF\xE0\0\x10JFIF", 10), "json", "1:1", "not JSON but some other kind of file"},
      {"cut_off", cut, "json", "4:23", "not JSON (the file ends too early"},
      {"cut_off_in_a_text", testing::kExamplePlan.substr(0, 22), "json", "2:12", "not JSON (the file ends too early"},
      {"bad_utf8", "{\"format\": \"\xFF\"}", "json", "1:12", "not JSON"},
      {"trailing", testing::kExamplePlan + "{", "json", "23:1", "not JSON"},
      {"nested", deep, "json", "", "100 levels"},
      swapped("comma", "\"version\": 1,", "\"version\": 1", "json", "2:43", "not JSON"),
      swapped("duplicate_key", R"("id": "wc",)", R"("id": "wc", "id": "wc2",)", "duplicate-key", kWc + "/id", "twice"),
      {"list", "[]", "type", "", "object"},
      {"no_format", "{}", "missing-key", "", "\"format\""},
      swapped("other_format", "elbowroom-plan", "shopping-list", "format", "/format", "shopping-list"),
      swapped("newer", R"("version": 1)", R"("version": 2)", "version", "/version", "newer program"),
      {"newer_and_strange", R"({"format": "elbowroom-plan", "version": 7, "rooms": {}})", "version", "/version", "7"},
      swapped("version_0", R"("version": 1)", R"("version": 0)", "version", "/version", "no file version 0"),
      swapped("version_half", R"("version": 1)", R"("version": 1.5)", "type", "/version", "whole number"),
      swapped("version_text", R"("version": 1)", R"("version": "1")", "type", "/version", "a number"),
      swapped("no_unit", R"("unit": "in", )", "", "missing-key", "", "\"unit\""),
      swapped("unit", R"("unit": "in")", R"("unit": "cm")", "value", "/unit", "in, mm"),
      swapped("no_width", R"("width": 20, )", "", "missing-key", kWc, "\"width\" is missing (id \"wc\")"),
      swapped("no_place", R"("wall": "s", "along": 45, )", "", "missing-key", kWc, "\"at\""),
      swapped("no_hinge", R"("hinge": "right", )", "", "missing-key", kDoor, "\"hinge\""),
      swapped("no_action", R"("action": "hinged", )", "", "missing-key", kDoor, "\"action\""),
      swapped("no_room", R"("room": {)", R"("rom": {)", "missing-key", "/options/0", "\"room\""),
      swapped("no_stature", R"(, "stature": 74)", "", "missing-key", "/people/0", "\"stature\""),
      swapped("text_width", R"("width": 20)", R"("width": "20 in")", "type", kWc + "/width", "a number, not a text"),
      swapped("null_width", R"("width": 20)", R"("width": null)", "type", kWc + "/width", "not null"),
      swapped("text_flag", R"("exterior": true)", R"("exterior": "yes")", "type", kWalls + "/0/exterior", "true or false"),
      swapped("wall_list", R"("walls": [)", R"("walls": 4, "w2": [)", "type", kWalls, "a list"),
      swapped("point_3", "[96,60]", "[96,60,0]", "type", kWalls + "/1/from", "two numbers"),
      swapped("half_basin", R"("basins": 1)", R"("basins": 1.5)", "type", "/options/0/fixtures/2/basins", "whole"),
      swapped("book_number", R"("craft"])", "7]", "type", "/books/3", "a text"),
      swapped("nan", R"("along": 45)", R"("along": NaN)", "number", "17:71", "NaN"),
      swapped("infinity", R"("along": 45)", R"("along": -Infinity)", "number", "17:72", "Infinity"),
      swapped("overflow", R"("along": 45)", R"("along": 1e999)", "number", "17:71", "1e999"),
      swapped("huge", R"("along": 45)", R"("along": 1e300)", "number", kWc + "/along", "100 metres"),
      swapped("far", R"("along": 45)", R"("along": -3937.1)", "number", kWc + "/along", "100 metres"),
      swapped("huge_whole", R"("basins": 1)", R"("basins": 99999999999999999999)", "number",
              "/options/0/fixtures/2/basins", "too large"),
      swapped("huge_angle", R"("turn": 0)", R"("turn": 1e7)", "number", "/options/0/fixtures/3/turn", "too large"),
      swapped("kind", R"("kind": "toilet")", R"("kind": "throne")", "value", kWc + "/kind", "bath"),
      swapped("opening_kind", R"("kind": "door")", R"("kind": "hatch")", "value", kDoor + "/kind", "door, window"),
      swapped("action", R"("action": "hinged")", R"("action": "revolving")", "value", kDoor + "/action", "pocket"),
      swapped("hinge", R"("hinge": "right")", R"("hinge": "top")", "value", kDoor + "/hinge", "left, right"),
      swapped("swing", R"("swing": "in")", R"("swing": "IN")", "value", kDoor + "/swing", "in, out"),
      swapped("status", R"("status": "keep")", R"("status": "gone")", "value", "/options/0/fixtures/0/status", "remove"),
      swapped("both_places", R"("at": [50,53])", R"("at": [50,53], "along": 3)", "value", "/options/0/fixtures/3/along",
              "stands free"),
      swapped("turn_on_wall", R"("along": 45)", R"("along": 45, "turn": 90)", "value", kWc + "/turn", "on a wall"),
      swapped("two_towards", R"("swing": "in")", R"("swing": "in", "pocket_toward": "left", "slides_toward": "left")",
              "value", kDoor + "/slides_toward", "not both"),
      // What core/plan/integrity.h promises, with the place in the file.
      swapped("duplicate_id", R"("id": "wc")", R"("id": "v")", "integrity/duplicate-id", "/options/0/fixtures/2",
              "\"v\""),
      swapped("walls_cross", "[96,60]", "[96,-40]", "integrity/walls-cross", "*", "cross"),
      swapped("counter_clockwise", R"("id": "n", "from": [0,60])", R"("id": "n", "from": [192,30])",
              "integrity/*", "*", ""),
      swapped("long_opening", R"("width": 24)", R"("width": 97)", "integrity/opening-too-long",
              "/options/0/openings/1", ""),
      swapped("opening_off_wall", R"("along": 40)", R"("along": 10)", "integrity/opening-off-wall", kDoor, ""),
      swapped("opening_no_wall", R"("wall": "w")", R"("wall": "x")", "integrity/no-such-wall", kDoor, "\"x\""),
      swapped("fixture_no_wall", R"("wall": "s", "along": 45)", R"("wall": "x", "along": 45)",
              "integrity/no-such-wall", kWc, "\"x\""),
      swapped("item_no_wall", R"("wall": "s", "along": 75, "bottom")", R"("wall": "x", "along": 75, "bottom")",
              "integrity/no-such-wall", "/options/0/on_walls/0", "\"x\""),
      swapped("no_size", R"("width": 20)", R"("width": 0)", "integrity/size", kWc, ""),
      {"no_options", R"({"format": "elbowroom-plan", "version": 1, "unit": "in", "options": []})",
       "integrity/no-option", "*", ""},
  };
}

// A * matches anything.
bool matches(const std::string& text, const std::string& pattern) {
  const std::size_t star = pattern.find('*');
  return star == std::string::npos ? text == pattern : text.compare(0, star, pattern, 0, star) == 0;
}

class BrokenPlan : public ::testing::TestWithParam<Broken> {};

TEST_P(BrokenPlan, IsRefusedWithASentenceThatSaysWhereAndWhy) {
  const Broken& broken = GetParam();
  const Result<Plan> plan = readPlan(broken.text);
  ASSERT_FALSE(plan.ok());
  const Error& error = plan.error();
  EXPECT_TRUE(matches(error.code, broken.code)) << error.code << ": " << error.message;
  if (broken.name != "nested") {
    EXPECT_TRUE(matches(error.place, broken.place)) << error.place << ": " << error.message;
  }
  EXPECT_NE(error.message.find(broken.words), std::string::npos) << error.message;
  EXPECT_EQ(error.message.back(), '.') << error.message;
  if (const std::size_t colon = error.place.find(':'); colon != std::string::npos) {
    EXPECT_EQ(error.message.find("line " + error.place.substr(0, colon)), 0u) << error.message;
  } else {
    EXPECT_EQ(error.message.find("at "), 0u) << error.message;
    EXPECT_NE(error.message.find(error.place), std::string::npos) << error.message;
  }
}

INSTANTIATE_TEST_SUITE_P(Table, BrokenPlan, ::testing::ValuesIn(brokenPlans()),
                         [](const auto& info) { return info.param.name; });

TEST(BrokenPlanFile, TheUnbrokenExampleIsRead) { EXPECT_TRUE(readPlan(testing::kExamplePlan).ok()); }

// Whatever is cut off or flipped, the reader answers; it neither crashes nor hands back a plan without options.
TEST(BrokenPlanFile, EveryCutAndEveryFlippedByteIsAnswered) {
  const std::string& whole = testing::kExamplePlan;
  int refused = 0;
  for (std::size_t i = 0; i + 2 < whole.size(); ++i) {
    EXPECT_FALSE(readPlan(whole.substr(0, i)).ok()) << i;
    std::string flipped = whole;
    flipped[i] = static_cast<char>(flipped[i] ^ 0x15);
    const Result<Plan> plan = readPlan(flipped);
    if (!plan) {
      ++refused;
      EXPECT_FALSE(plan.error().message.empty());
    } else {
      EXPECT_FALSE(plan->options.empty());
    }
  }
  EXPECT_GT(refused, 1000);
}

}  // namespace
}  // namespace elbowroom
