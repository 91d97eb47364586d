// resources/plan.schema.json against the plans there are, the reader and the words of the program.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>

#include "core/file/plan_file.h"
#include "core/file/words.h"
#include "core/plan/catalogue.h"
#include "tests/core/file/example_plan.h"
#include "tests/core/file/json_schema.h"

namespace elbowroom {
namespace {

namespace fs = std::filesystem;
using testing::changed;
using testing::exampleWith;
using testing::Json;
using testing::JsonSchema;
using testing::kExamplePlan;

const Json& schema() {
  static const Json root = Json::parse(std::ifstream(SOURCE_DIR "/resources/plan.schema.json"));
  return root;
}

std::string errorsIn(const Json& document, bool strict) {
  std::string all;
  for (const std::string& error : JsonSchema(schema(), strict).errorsOf(document)) all += error + "\n";
  return all;
}

std::vector<fs::path> plansUnder(const char* folder) {
  std::vector<fs::path> found;
  const fs::path root = fs::path(SOURCE_DIR) / folder;
  if (!fs::exists(root)) return found;
  for (const auto& entry : fs::recursive_directory_iterator(root))
    if (entry.path().extension() == ".elbowroom") found.push_back(entry.path());
  return found;
}

// Strictly: every key that our own plans use is described.
TEST(Schema, EveryPlanOfTheRepositoryIsValidAndDescribed) {
  int plans = 0;
  for (const char* folder : {"samples", "tests/rules", "tests/layouts"}) {
    for (const fs::path& path : plansUnder(folder)) {
      EXPECT_EQ(errorsIn(Json::parse(std::ifstream(path)), true), "") << path;
      ++plans;
    }
  }
  EXPECT_GE(plans, 80);
  EXPECT_EQ(errorsIn(Json::parse(kExamplePlan), true), "");
}

// A plan with everything set that the program models: the writer knows no key that the schema does not.
TEST(Schema, DescribesEveryKeyThatIsWritten) {
  Result<Plan> read = readPlan(kExamplePlan);
  ASSERT_TRUE(read.ok());
  Plan plan = *read;
  const Length one = Length::fromInches(1);
  plan.north = Angle::fromDegrees(30);
  plan.site_tolerance = one;
  Option& o = plan.options[0];
  for (const DoorAction action : {DoorAction::pocket, DoorAction::surfaceSliding, DoorAction::bifold}) {
    Opening door = o.openings[0];
    door.action = action;
    if (action != DoorAction::bifold) door.toward = Hand::left;
    door.hinge = Hand::left;
    door.swing = Swing::out;
    door.sill = Length{};
    door.leaf_thickness = door.stop = one;
    door.closer = door.latch = true;
    o.openings.push_back(door);
  }
  Fixture& f = o.fixtures[1];
  f.name = "Named";
  f.height = f.bowl_width = f.tank_width = f.tank_depth = f.curb = one;
  f.basins = 2;
  f.status = Status::move;
  f.knee_space = KneeSpace{one, one, one, {}};
  std::get<OnWall>(f.placement).gap = one;
  EXPECT_EQ(errorsIn(Json::parse(writePlan(plan)), true), "");
  EXPECT_EQ(errorsIn(Json::parse(writePlan(emptyPlan(Unit::millimetres))), true), "");
}

TEST(Schema, HasTheWordsOfTheProgram) {
  const auto words = [](const char* definition, const char* key) {
    const Json& all = schema().at("$defs").at(definition).at("properties").at(key).at("enum");
    return std::set<std::string>(all.begin(), all.end());
  };
  std::set<std::string> kinds, actions, statuses;
  for (const KindInfo& info : fixtureKinds()) kinds.emplace(info.key);
  for (int i = 0; i <= static_cast<int>(DoorAction::cased); ++i)
    actions.emplace(keyOf(static_cast<DoorAction>(i)));
  for (int i = 0; i <= static_cast<int>(Status::remove); ++i) statuses.emplace(keyOf(static_cast<Status>(i)));
  EXPECT_EQ(words("fixture", "kind"), kinds);
  EXPECT_EQ(words("opening", "action"), actions);
  EXPECT_EQ(words("fixture", "status"), statuses);
  EXPECT_EQ(schema().at("properties").at("version").at("enum")[0], kFormatVersion);
}

TEST(Schema, UnknownKeysAreAllowed) {
  const Json document =
      Json::parse(exampleWith("\"child\": true", "\"child\": true, \"favourite_colour\": \"blue\""));
  EXPECT_EQ(errorsIn(document, false), "");
  EXPECT_NE(errorsIn(document, true), "");
}

// Each is refused by the schema and by the reader.
TEST(Schema, RefusesWhatTheReaderRefuses) {
  const std::pair<const char*, const char*> broken[] = {
      {"\"format\": \"elbowroom-plan\"", "\"format\": \"another-plan\""},
      {"\"format\": \"elbowroom-plan\", ", ""},
      {"\"version\": 1", "\"version\": 2"},
      {"\"version\": 1", "\"version\": 1.5"},
      {"\"version\": 1", "\"version\": \"1\""},
      {"\"unit\": \"in\"", "\"unit\": \"ft\""},
      {"\"unit\": \"in\", ", ""},
      {"\"title\": \"Hall bath (invented example)\"", "\"title\": null"},
      {"\"books\": [", "\"books\": [7, "},
      {"\"books\": [", "\"north\": \"up\", \"books\": ["},
      {"\"books\": [", "\"site_tolerance\": -0.5, \"books\": ["},
      {"\"stature\": 74", "\"stature\": 0"},
      {", \"stature\": 74", ""},
      {"\"child\": true", "\"child\": 1"},
      {"\"chair\": {\"width\": 26, \"length\": 48}", "\"chair\": {\"width\": 26}"},
      {"\"chair\": {\"width\": 26, \"length\": 48}", "\"chair\": \"26x48\""},
      {"\"name\": \"As found\"", "\"name\": \"\""},
      {"\"ceiling\": {\"height\": 96}", "\"ceiling\": {\"height\": 0}"},
      {"\"ceiling\": {\"height\": 96}", "\"ceiling\": 96"},
      {"\"from\": [0,60]", "\"from\": [0,60,0]"},
      {"\"from\": [0,60]", "\"from\": [0]"},
      {"\"from\": [0,60]", "\"from\": {\"x\": 0, \"y\": 60}"},
      {"\"thickness\": 6.5", "\"thickness\": -6.5"},
      {"\"exterior\": true", "\"exterior\": \"yes\""},
      {"\"studs\": {\"first\": 8, \"spacing\": 16}", "\"studs\": {\"first\": 8, \"spacing\": 0}"},
      {"\"kind\": \"door\"", "\"kind\": \"hatch\""},
      {"\"action\": \"hinged\"", "\"action\": \"revolving\""},
      {"\"action\": \"hinged\", ", ""},
      {"\"hinge\": \"right\", ", ""},
      {"\"swing\": \"in\"", "\"swing\": \"both\""},
      {"\"swing\": \"in\"", "\"swing\": \"in\", \"stop\": -1"},
      {"\"swing\": \"in\"", "\"swing\": \"in\", \"latch\": \"no\""},
      {"\"swing\": \"in\"", "\"swing\": \"in\", \"pocket_toward\": \"left\", \"slides_toward\": \"left\""},
      {"\"sill\": 44", "\"sill\": -44"},
      {"\"kind\": \"toilet\"", "\"kind\": \"loo\""},
      {"\"along\": 45, \"width\": 20", "\"along\": 45, \"width\": -20"},
      {"\"along\": 45, ", ""},
      {"\"along\": 45", "\"along\": \"45\""},
      {"\"along\": 45", "\"along\": 45, \"turn\": 90"},
      {"\"at\": [50,53], ", ""},
      {"\"at\": [50,53], ", "\"at\": [50,53], \"gap\": 1, "},
      {"\"status\": \"keep\"", "\"status\": \"maybe\""},
      {"\"basins\": 1", "\"basins\": 0"},
      {"\"basins\": 1", "\"basins\": 9"},
      {"\"basins\": 1", "\"basins\": 1.5"},
      {"\"basins\": 1", "\"basins\": 1, \"knee_space\": {\"height\": 27}"},
      {"\"basins\": 1", "\"basins\": 1, \"curb\": -1"},
      {"\"bottom\": 36, ", ""},
      {"\"bottom\": 36, \"width\": 30", "\"bottom\": 36, \"width\": -30"},
      {"\"kind\": \"fan\"", "\"kind\": 3"},
      {"\"at\": [48,30]", "\"at\": \"middle\""},
  };
  for (const auto& [was, now] : broken) {
    SCOPED_TRACE(std::string(was) + " -> " + now);
    const std::string text = exampleWith(was, now);
    EXPECT_NE(errorsIn(Json::parse(text), false), "");
    EXPECT_FALSE(readPlan(text).ok());
  }
}

TEST(Schema, RefusesDocumentsThatAreNoPlans) {
  for (
      const char* text :
      {"[]", "{}", "null", R"({"format": "elbowroom-plan", "version": 1, "unit": "in"})",
       R"({"format": "elbowroom-plan", "version": 1, "unit": "in", "options": []})",
       R"({"format": "elbowroom-plan", "version": 1, "unit": "in", "options": {}})",
       R"({"format": "elbowroom-plan", "version": 1, "unit": "in", "options": [{"name": "A"}]})",
       R"({"format": "elbowroom-plan", "version": 1, "unit": "in", "options": [{"name": "A", "room": {"walls":
            [{"id": "a", "from": [0,0], "thickness": 4}, {"id": "b", "from": [9,0], "thickness": 4}]}}]})"}) {
    EXPECT_NE(errorsIn(Json::parse(text), false), "") << text;
    EXPECT_FALSE(readPlan(text).ok()) << text;
  }
}

// What only the schema says: keys that the program keeps without reading them.
TEST(Schema, RefusesWrongValuesOfKeysThatAreOnlyKept) {
  for (const char* now :
       {R"("drain": "middle")", R"("drain": {"type": "round"})", R"("drain": {"side": "back"})",
        R"("glass": "front")", R"("glass": [{"height": 78}])", R"("glass": [{"side": "top"}])",
        R"("floor_recess": -1)", R"("shape": 1)"}) {
    EXPECT_NE(errorsIn(Json::parse(exampleWith("\"basins\": 1", now)), false), "") << now;
  }
  EXPECT_NE(errorsIn(Json::parse(exampleWith("\"flow_cfm\": 80", "\"flow_cfm\": -80")), false), "");
  EXPECT_NE(errorsIn(Json::parse(exampleWith("\"comfort\"", "\"Comfort Book\"")), false), "");
}

TEST(Schema, EveryKeyHasItsWords) {
  int keys = 0;
  const auto visit = [&](const auto& self, const Json& node, const std::string& place,
                         bool constraint) -> void {
    if (!node.is_object()) return;
    if (node.contains("properties") && !constraint) {
      for (const auto& [key, rule] : node.at("properties").items()) {
        ++keys;
        const bool refers = rule.contains("$ref") || rule.contains("enum") || rule.contains("properties");
        EXPECT_TRUE(rule.contains("description") || refers) << place << "/" << key;
      }
    }
    for (const auto& [key, below] : node.items()) {
      const bool branch = key == "anyOf" || key == "oneOf" || key == "not";
      if (below.is_object()) self(self, below, place + "/" + key, constraint || branch);
    }
  };
  visit(visit, schema(), "", false);
  EXPECT_GE(keys, 80);
}

}  // namespace
}  // namespace elbowroom
