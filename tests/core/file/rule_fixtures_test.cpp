// Every rule with its two plans in tests/rules/<book>/<rule>/: the quiet one is met, the noisy one is short
// of exactly this rule. Boundary cases: rule_limits_test.cpp.
#include <gtest/gtest.h>

#include <filesystem>
#include <map>
#include <set>
#include <string>

#include "core/file/plan_file.h"
#include "core/rules/text.h"

namespace elbowroom {
namespace {

std::string pathOf(const Rule& rule, const char* kind) {
  return std::string(SOURCE_DIR "/tests/rules/") + std::string(rule.book) + "/" + std::string(rule.id) + "/" +
         kind + ".elbowroom";
}

Plan load(const Rule& rule, const char* kind) {
  const Result<Plan> plan = loadPlan(pathOf(rule, kind));
  EXPECT_TRUE(plan.ok()) << (plan.ok() ? "" : plan.error().message + " " + plan.error().place);
  return plan.ok() ? plan.value() : emptyPlan(Unit::inches);
}

std::vector<Finding> findingsOf(const Plan& plan, const Rule& rule) {
  BookChoice choice = choiceOf(plan);  // with the settings that the plan states
  choice.books = {std::string(rule.book)};
  choice.settings = plan.book_settings;  // for the rules of another edition
  return check(deriveLayout(plan, 0), choice).findings;
}

bool isMet(const Finding& f) { return f.outcome == Outcome::clear || f.outcome == Outcome::close; }

// Rules that cannot be missed alone: a rectangle below 900 sq in is also narrower than 30 in.
const std::map<std::string, std::set<std::string>> kCompanions{
    {"us-residential/shower-area", {"shower-size"}},
    // 900 sq in beside a seat take 30 in each way; a panel for a pump is a panel.
    {"us-residential/shower-seat-area", {"shower-seat-side"}},
    {"us-residential/pump-panel", {"access-panel"}},
    // Nobody's knees, elbows or feet take as much floor as the guidelines keep clear for everybody.
    {"comfort/toilet-knees", {"toilet-clear-front"}},
    {"comfort/toilet-elbows", {"toilet-centreline-side"}},
    {"comfort/bath-kneel", {"bath-clear-front"}},
    {"comfort/basin-wall-per-user", {"basin-spacing"}},
    {"comfort/toilet-compartment-width", {"toilet-centreline-side"}},
    // What is too small for a compartment is too small for the space about its toilet, or to turn in.
    {"us-access/toilet-compartment-width", {"toilet-clearance", "turning-space"}},
    {"us-access/toilet-compartment-depth", {"turning-space"}},
    {"uk-access/toilet-clear-front", {"toilet-clear-front-wide"}},
    {"au-access/turning-quarter", {"turning-half"}},
    // A child and a helper are two who pass each other.
    {"comfort/basin-help-child", {"basin-pass-behind"}}};

TEST(RuleFixtures, TheQuietPlanIsMet) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(pathOf(rule, "quiet"));
    int of_this_rule = 0;
    for (const Finding& f : findingsOf(load(rule, "quiet"), rule)) {
      EXPECT_NE(f.outcome, Outcome::shortfall) << f.rule;
      if (f.rule != rule.id) continue;
      ++of_this_rule;
      EXPECT_TRUE(isMet(f));
      EXPECT_FALSE(f.places.empty());
    }
    EXPECT_GE(of_this_rule, 1) << "the plan does not concern its rule";
  }
}

TEST(RuleFixtures, TheNoisyPlanIsShortOfExactlyThisRule) {
  for (const Rule& rule : allRules()) {
    SCOPED_TRACE(pathOf(rule, "noisy"));
    const Plan plan = load(rule, "noisy");
    const auto companions = kCompanions.find(std::string(rule.book) + "/" + std::string(rule.id));
    int of_this_rule = 0;
    for (const Finding& f : findingsOf(plan, rule)) {
      if (f.outcome != Outcome::shortfall) continue;
      if (f.rule != rule.id) {
        EXPECT_TRUE(companions != kCompanions.end() && companions->second.count(f.rule))
            << "also short: " << f.rule;
        continue;
      }
      ++of_this_rule;
      EXPECT_FALSE(f.places.empty());
      EXPECT_EQ(f.level, rule.level);
      const FindingText text = textOf(f, plan.options[0], Unit::inches);
      EXPECT_EQ(text.detail.empty(), f.detail.empty()) << "no words for " << f.detail;
      for (const ElementId& id : f.subjects) EXPECT_FALSE(subjectName(plan.options[0], id).empty());
    }
    EXPECT_EQ(of_this_rule, 1);
  }
}

TEST(RuleFixtures, NoPlanWithoutARule) {
  for (const auto& entry : std::filesystem::recursive_directory_iterator(SOURCE_DIR "/tests/rules")) {
    if (entry.path().extension() != ".elbowroom") continue;
    const auto folder = entry.path().parent_path();
    const std::string id = folder.filename(), book = folder.parent_path().filename();
    EXPECT_NE(findRule(book, id), nullptr) << entry.path();
  }
}

// ---- boundary cases
// -----------------------------------------------------------------------------------------------

Fixture& first(Plan& plan) { return plan.options[0].fixtures.at(0); }

// Sets the measured figure of a quiet plan to the given length.
using Knob = std::function<void(Plan&, Length)>;

void roomDepth(Plan& plan, Length depth) {
  plan.options[0].room.walls.at(0).from.y = depth;
  plan.options[0].room.walls.at(1).from.y = depth;
}
void roomWidth(Plan& plan, Length width) {
  plan.options[0].room.walls.at(1).from.x = width;
  plan.options[0].room.walls.at(2).from.x = width;
}
void alongFromTheLeft(Plan& plan, Length along) { std::get<OnWall>(first(plan).placement).along = along; }
void depthBeforeFirst(Plan& plan, Length ahead) { roomDepth(plan, first(plan).depth + ahead); }

void centreOnWall(Plan& plan, Length centre) {
  WallItem& item = plan.options[0].on_walls.at(0);
  item.bottom = centre - item.height / 2;
}

void receptacleBeforeBath(Plan& plan, Length off) { plan.options[0].on_walls.at(0).along = 60_in - 1.375_in - off; }

const std::map<std::string, Knob>& knobs() {
  static const std::map<std::string, Knob> all{
      {"toilet-centreline-side", alongFromTheLeft},
      {"toilet-clear-front", depthBeforeFirst},
      {"basin-centreline-side", alongFromTheLeft},
      {"basin-edge-side", [](Plan& p, Length edge) { alongFromTheLeft(p, first(p).width / 2 + edge); }},
      {"basin-clear-front", depthBeforeFirst},
      {"basin-spacing",
       [](Plan& p, Length apart) {  // a counter from wall to wall: the ends keep 15 in (20 in)
         const Length ends = p.books[0] == "comfort" ? 40_in : 30_in;
         first(p).width = apart + ends;
         roomWidth(p, first(p).width);
         alongFromTheLeft(p, first(p).width / 2);
       }},
      {"bath-clear-front", depthBeforeFirst},
      {"shower-clear-front", depthBeforeFirst},
      {"shower-size",
       [](Plan& p, Length side) {
         first(p).width = side;
         alongFromTheLeft(p, side / 2);
       }},
      {"fixture-centre-to-centre",
       [](Plan& p, Length apart) {
         std::get<OnWall>(p.options[0].fixtures.at(1).placement).along = 20_in + apart;
       }},
      {"door-crowds-front", [](Plan& p, Length ahead) { roomDepth(p, first(p).depth + 30_in + ahead); }},
      {"ceiling-height", [](Plan& p, Length height) { p.options[0].room.ceiling.height = height; }},
      {"toilet-clearance",
       [](Plan& p, Length wide) {
         std::get<OnWall>(p.options[0].fixtures.at(1).placement).along = wide + 9_in;
       }},
      // Leaf 1 3/8 in, stop 7/16 in: clear = W - 1.875 in (worked example T03).
      {"door-clear-opening",
       [](Plan& p, Length clear) { p.options[0].openings.at(0).width = clear + 1.875_in; }},
      {"turning-space", [](Plan& p, Length across) { roomWidth(p, across); }},
      {"dressing-circle", [](Plan& p, Length across) { roomWidth(p, across); }},
      {"door-clear-opening-deep",
       [](Plan& p, Length clear) { p.options[0].openings.at(0).width = clear + 1.875_in; }},
      {"door-undercut", [](Plan& p, Length gap) { p.options[0].openings.at(0).facts["undercut"] = gap; }},
      {"door-threshold", [](Plan& p, Length high) { p.options[0].openings.at(0).facts["threshold"] = high; }},
      {"door-casing-room",
       [](Plan& p, Length beside) {
         Opening& door = p.options[0].openings.at(0);
         door.along = door.width / 2 + beside;
       }},
      {"pocket-screws", [](Plan& p, Length deep) { p.options[0].on_walls.at(0).facts["screw_length"] = deep; }},
      {"pocket-wall-thickness", [](Plan& p, Length thick) { p.options[0].room.walls.at(2).thickness = thick; }},
      {"basin-pass-behind", depthBeforeFirst},
      {"basin-help-child", depthBeforeFirst},
      {"toilet-helper",
       [](Plan& p, Length beside) {  // the left side is the roomier one
         alongFromTheLeft(p, first(p).width / 2 + beside);
         roomWidth(p, first(p).width + beside);
       }},
      {"basin-height-seated", [](Plan& p, Length height) { first(p).height = height; }},
      {"towel-bar-height", centreOnWall},
      {"hook-height", centreOnWall},
      {"shower-head-height", centreOnWall},
      {"shower-control-height", centreOnWall},
      {"side-light-height", centreOnWall},
      {"light-over-mirror-height", centreOnWall},
      {"niche-height", [](Plan& p, Length edge) { p.options[0].on_walls.at(0).bottom = edge; }},
      {"hand-spray-hose", [](Plan& p, Length hose) { p.options[0].on_walls.at(0).facts["hose"] = hose; }},
      // Bowl of 16 in whose right edge is 32 in along the wall; counter 34 in high, receptacle 4.5 in.
      {"basin-receptacle-distance", [](Plan& p, Length off) { p.options[0].on_walls.at(0).along = 32_in + off; }},
      {"basin-receptacle-drop", [](Plan& p, Length below) { centreOnWall(p, 34_in - below); }},
      {"basin-receptacle-rise", [](Plan& p, Length above) { centreOnWall(p, 34_in + above); }},
      {"bath-pump-receptacle", [](Plan& p, Length off) { first(p).facts["pump_receptacle"] = off; }},
      // Bath from 60 in along the wall; receptacle 2 3/4 in wide, lamp 6 in.
      {"receptacle-off-water", receptacleBeforeBath},
      {"receptacle-off-water-2020", receptacleBeforeBath},
      {"receptacle-below-rim", receptacleBeforeBath},
      {"light-off-water", [](Plan& p, Length off) { p.options[0].on_ceiling.at(0).at.x = 57_in - off; }},
      {"toilet-seat-reach", [](Plan& p, Length off) { p.options[0].on_walls.at(0).along = 50_in + off; }},
      {"toilet-clear-front-wide",
       [](Plan& p, Length ahead) { p.options[0].fixtures.at(1).depth = 72_in - 28_in - ahead; }},
  };
  return all;
}

Finding onlyFinding(const Plan& plan, const Rule& rule) {
  for (const Finding& f : findingsOf(plan, rule))
    if (f.rule == rule.id) return f;
  ADD_FAILURE() << "no finding";
  return {};
}

// Searched figures (circles, swings) come within 1/64 in; the others are exact.
constexpr double kSearched = 0.0165;

TEST(RuleFixtures, AtTheLimitAndASixteenthToEitherSide) {
  int tried = 0;
  for (const Rule& rule : allRules()) {
    const auto knob = knobs().find(std::string(rule.id));
    if (knob == knobs().end()) continue;
    if (rule.book.find("-access") != std::string_view::npos || rule.book == "us-adaptable")
      continue;  // access_limits_test.cpp
    SCOPED_TRACE(std::string(rule.book) + "/" + std::string(rule.id));
    const Length limit = std::get<Length>(rule.limit);
    // `off` to the good side: above a least figure, below a greatest one.
    const auto at = [&](Length off) {
      Plan plan = load(rule, "quiet");
      const Length figure = rule.compare == Compare::atMost ? limit - off : limit + off;
      knob->second(plan, figure);
      Finding f = onlyFinding(plan, rule);
      if (f.measured) {
        EXPECT_NEAR(std::get<Length>(*f.measured).inches(), figure.inches(), kSearched);
      }
      return f;
    };
    EXPECT_EQ(at(Length{}).outcome, Outcome::close) << "the exact limit is met";
    EXPECT_EQ(at(0.0625_in).outcome, Outcome::close) << "met with less than the site tolerance";
    EXPECT_EQ(at(0.75_in).outcome, Outcome::clear);
    const Finding missed = at(-0.0625_in);
    EXPECT_EQ(missed.outcome, Outcome::shortfall);
    ASSERT_TRUE(missed.short_by.has_value());
    EXPECT_NEAR(std::get<Length>(*missed.short_by).inches(), 0.0625, kSearched);
    ++tried;
  }
  EXPECT_GE(tried, 30);
}

// Figures that are exact, not searched: a miss of less than 0.02 in counts as met.
TEST(RuleFixtures, AMissByRoundingIsMet) {
  for (const Rule& rule : allRules()) {
    if (rule.id != "toilet-clear-front" && rule.id != "toilet-centreline-side" && rule.id != "shower-size")
      continue;
    SCOPED_TRACE(std::string(rule.book) + "/" + std::string(rule.id));
    const Length limit = std::get<Length>(rule.limit);
    for (const auto& [off, outcome] :
         {std::pair{-0.019_in, Outcome::close}, {-0.021_in, Outcome::shortfall}}) {
      Plan plan = load(rule, "quiet");
      knobs().at(std::string(rule.id))(plan, limit + off);
      EXPECT_EQ(onlyFinding(plan, rule).outcome, outcome) << off.inches();
    }
  }
}

}  // namespace
}  // namespace elbowroom
