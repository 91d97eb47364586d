// Boundary cases of the books for accessibility: the one figure that a rule measures is set in its quiet plan to
// the limit and 1/16 in to either side. Limits with two ends are tried at both.
#include <gtest/gtest.h>

#include <functional>
#include <map>
#include <set>
#include <string>

#include "core/file/plan_file.h"
#include "core/rules/check.h"

namespace elbowroom {
namespace {
using namespace literals;

// Sets the measured figure of a quiet plan.
using Knob = std::function<void(Plan&, Length)>;

Fixture& fixture(Plan& plan, std::size_t i) { return plan.options[0].fixtures.at(i); }
OnWall& place(Plan& plan, std::size_t i) { return std::get<OnWall>(fixture(plan, i).placement); }
void setDepth(Plan& plan, Length depth) {
  plan.options[0].room.walls.at(0).from.y = depth;
  plan.options[0].room.walls.at(1).from.y = depth;
}
void setWidth(Plan& plan, Length width) {
  plan.options[0].room.walls.at(1).from.x = width;
  plan.options[0].room.walls.at(2).from.x = width;
}
Length in(double v) { return Length::fromInches(v); }
Length mm(double v) { return Length::fromMillimetres(v); }

Knob along(std::size_t i, double plus_mm = 0) {
  return [=](Plan& p, Length x) { place(p, i).along = x + mm(plus_mm); };
}
Knob besideFirst(double plus) {
  return [=](Plan& p, Length x) { place(p, 1).along = x + in(plus); };
}
Knob besideFirstMm(double half_first, double half_second) {
  return [=](Plan& p, Length x) { place(p, 1).along = place(p, 0).along + mm(half_first + half_second) + x; };
}
Knob alongAndRoom(double other) {
  return [=](Plan& p, Length x) {
    place(p, 0).along = x;
    setWidth(p, x + in(other));
  };
}
Knob roomBeside(double along) {
  return [=](Plan& p, Length x) {
    place(p, 0).along = in(along);
    setWidth(p, x + in(along));
  };
}
Knob leaf(double more) {  // clear = W - 1.875 in with the usual leaf and stop (worked example T03)
  return [=](Plan& p, Length x) { p.options[0].openings.at(0).width = x + in(more); };
}
Knob doorHigh() {
  return [](Plan& p, Length x) { p.options[0].openings.at(0).height = x; };
}
Knob doorAlongEnd() {
  return [](Plan& p, Length x) {
    Opening& door = p.options[0].openings.at(0);
    door.along = mm(3000) - door.width / 2 - x;
  };
}
Knob roomDeep(double more = 0) {
  return [=](Plan& p, Length x) { setDepth(p, x + in(more)); };
}
Knob roomWide() {
  return [](Plan& p, Length x) { setWidth(p, x); };
}
Knob depthBefore() {
  return [](Plan& p, Length x) { setDepth(p, fixture(p, 0).depth + x); };
}
Knob depthFrom(std::size_t i, double base) {
  return [=](Plan& p, Length x) { fixture(p, i).depth = in(base) - x; };
}
Knob fact(const char* key) {
  return [=](Plan& p, Length x) { fixture(p, 0).facts[key] = x; };
}
Knob openingFact(const char* key) {
  return [=](Plan& p, Length x) { p.options[0].openings.at(0).facts[key] = x; };
}
Knob high(std::size_t i) {
  return [=](Plan& p, Length x) { fixture(p, i).height = x; };
}
Knob wide(std::size_t i) {
  return [=](Plan& p, Length x) { fixture(p, i).width = x; };
}
Knob deep(std::size_t i) {
  return [=](Plan& p, Length x) { fixture(p, i).depth = x; };
}
Knob curb() {
  return [](Plan& p, Length x) { fixture(p, 0).curb = x; };
}
Knob paneDoor() {
  return [](Plan& p, Length x) { fixture(p, 0).glass.at(0).door = x; };
}
// Things on walls; `plus` and `base` in inches.
WallItem& item(Plan& plan, std::size_t i) { return plan.options[0].on_walls.at(i); }
Knob itemBottom(std::size_t i, double plus = 0) {
  return [=](Plan& p, Length x) { item(p, i).bottom = x + in(plus); };
}
Knob itemTop(std::size_t i, double plus = 0) {
  return [=](Plan& p, Length x) { item(p, i).bottom = x + in(plus) - item(p, i).height; };
}
Knob itemMiddle(std::size_t i) {
  return [=](Plan& p, Length x) { item(p, i).bottom = x - item(p, i).height / 2; };
}
Knob itemAlong(std::size_t i, double base, int sign = 1) {
  return [=](Plan& p, Length x) { item(p, i).along = in(base) + sign * x; };
}
Knob itemWide(std::size_t i) {
  return [=](Plan& p, Length x) { item(p, i).width = x; };
}
Knob itemHigh(std::size_t i) {
  return [=](Plan& p, Length x) { item(p, i).height = x; };
}
Knob itemDeep(std::size_t i) {
  return [=](Plan& p, Length x) { item(p, i).depth = x; };
}
Knob itemFact(std::size_t i, const char* key) {
  return [=](Plan& p, Length x) { item(p, i).facts[key] = x; };
}
Knob kneeHigh() {
  return [](Plan& p, Length x) { fixture(p, 0).knee_space->height = x; };
}
Knob kneeDeep() {
  return [](Plan& p, Length x) { fixture(p, 0).knee_space->depth = x; };
}
Knob toeDeep() {
  return [](Plan& p, Length x) { fixture(p, 0).knee_space->toe = x; };
}


const std::map<std::string, Knob>& knobs() {
  static const std::map<std::string, Knob> all{
      {"us-access/toilet-centreline-side", along(0)},
      {"us-access/toilet-clearance", besideFirst(9)},
      {"us-access/toilet-clearance-strict", besideFirst(9)},
      {"us-access/toilet-clearance-1991", besideFirst(9)},
      {"us-access/door-clear-opening", leaf(1.875)},
      {"us-access/door-clear-opening-deep", leaf(1.875)},
      {"us-access/shower-seat-from-entry", fact("seat_from_entry")},
      {"us-access/shower-seat-from-wall", fact("seat_from_wall")},
      {"us-access/basin-clear-floor-strict", roomDeep(1)},
      {"us-access/basin-clear-floor-1991", roomDeep(1)},
      {"us-adaptable/basin-rim-height", high(0)},
      {"uk-access/room-length", roomWide()},
      {"us-access/turning-space", roomWide()},
      {"us-access/door-manoeuvring", roomDeep()},
      {"us-access/door-threshold", openingFact("threshold")},
      {"us-access/door-handle-height", openingFact("handle_height")},
      {"us-access/basin-clear-floor", roomDeep(1)},
      {"us-access/basin-knee-height", kneeHigh()},
      {"us-access/basin-knee-depth", kneeDeep()},
      {"us-access/basin-toe-depth", toeDeep()},
      {"us-access/basin-height", high(0)},
      {"us-access/toilet-seat-height", fact("seat_height")},
      {"us-access/toilet-compartment-width", roomWide()},
      {"us-access/toilet-compartment-depth", roomDeep()},
      {"us-access/bath-clear-floor", depthFrom(1, 90)},
      {"us-access/shower-transfer-size", wide(0)},
      {"us-access/shower-roll-in-size", deep(0)},
      {"us-access/shower-alternate-depth", deep(0)},
      {"us-access/shower-alternate-length", wide(0)},
      {"us-access/shower-entry", paneDoor()},
      {"us-access/shower-transfer-clear-floor", depthFrom(1, 84)},
      {"us-access/shower-roll-in-clear-floor", depthFrom(1, 84)},
      {"us-access/shower-threshold", curb()},
      {"us-access/shower-seat-height", fact("seat_height")},
      {"us-access/toilet-side-bar-start", itemAlong(0, 120 - 21, -1)},
      {"us-access/toilet-side-bar-end", itemAlong(0, 120 + 21, -1)},
      {"us-access/toilet-rear-bar-near", itemAlong(0, 17 + 18, -1)},
      {"us-access/toilet-rear-bar-far", itemAlong(0, 17 - 18)},
      {"us-access/grab-bar-height", itemTop(0)},
      {"us-access/grab-bar-gap", itemFact(0, "wall_gap")},
      {"us-access/grab-bar-diameter", itemFact(0, "bar_diameter")},
      {"us-access/grab-bar-clear-above", itemBottom(1, 34.75)},
      {"us-access/grab-bar-clear-below", itemAlong(1, 61)},
      {"us-access/paper-holder-ahead", itemAlong(0, 92, -1)},
      {"us-access/paper-holder-height", itemMiddle(0)},
      {"us-access/mirror-over-basin", itemBottom(0)},
      {"us-access/mirror-bottom", itemBottom(0)},
      {"us-access/mirror-top", itemTop(0)},
      {"us-access/shelf-height", itemTop(0)},
      {"us-access/hook-reach", itemMiddle(0)},
      {"us-access/control-reach", itemMiddle(0)},
      {"us-access/control-reach-depth", deep(0)},
      {"us-access/control-reach-over", high(0)},
      {"us-access/protrusion", itemDeep(0)},
      {"us-access/bath-back-bar-length", itemWide(0)},
      {"us-access/bath-back-bar-head", itemAlong(0, 60 - 12, -1)},
      {"us-access/bath-back-bar-control", itemAlong(0, 12)},
      {"us-access/bath-lower-bar", itemBottom(1, 18 - 1.25)},
      {"us-access/bath-control-bar", itemWide(0)},
      {"us-access/bath-head-bar", itemWide(0)},
      {"us-access/hand-spray-hose", itemFact(0, "hose")},
      {"us-access/bath-seat-height", fact("seat_height")},
      {"us-access/bath-seat-depth", fact("seat_depth")},
      {"us-access/shower-control-height-transfer", itemMiddle(0)},
      {"us-access/shower-control-reach", itemAlong(0, 120 - 18, -1)},
      {"us-access/shower-control-height", itemMiddle(0)},
      {"us-access/shower-control-from-seat", itemAlong(0, 0)},
      {"us-access/shower-back-bar", itemAlong(0, -9)},
      {"us-access/shower-bar-from-wall", itemAlong(0, 24)},
      {"us-access/shower-seat-depth", fact("seat_depth")},
      {"us-access/route-width", depthFrom(2, 70)},
      {"us-access-2017/turning-space", roomWide()},
      {"us-access-2017/turning-space-existing", roomWide()},
      {"us-access-2017/toilet-centreline-side", along(0)},
      {"us-access-2017/toilet-clearance", besideFirst(9)},
      {"us-access-2017/toilet-seat-height", fact("seat_height")},
      {"us-access-2017/basin-clear-floor", roomDeep(1)},
      {"us-access-2017/basin-height", high(0)},
      {"us-access-2017/bath-clear-floor", depthFrom(1, 90)},
      {"us-access-2017/shower-transfer-clear-floor", depthFrom(1, 84)},
      {"us-access-2017/door-clear-opening", leaf(1.875)},
      {"us-access-2017/door-manoeuvring", roomDeep()},
      {"us-access-2017/door-manoeuvring-existing", roomDeep()},
      {"us-access-2017/toilet-upright-bar-length", itemHigh(0)},
      {"us-access-2017/toilet-upright-bar-bottom", itemBottom(0)},
      {"us-access-2017/toilet-upright-bar-place", itemAlong(0, 120, -1)},
      {"us-access-2017/mirror-over-basin", itemBottom(0)},
      {"us-access-2017/route-width", depthFrom(2, 70)},
      {"us-adaptable/toilet-space", besideFirst(9)},
      {"us-adaptable/toilet-near-side", along(0)},
      {"us-adaptable/basin-clear-floor", roomDeep(21)},
      {"us-adaptable/basin-height", high(0)},
      {"us-adaptable/bath-clear-floor", depthFrom(1, 50)},
      {"us-adaptable/bath-control-floor", depthFrom(1, 50)},
      {"us-adaptable/bath-foot-floor", depthFrom(1, 50)},
      {"us-adaptable/shower-size", wide(0)},
      {"us-adaptable/shower-clear-floor", depthFrom(1, 44)},
      {"us-adaptable/door-clear-opening", leaf(1.875)},
      {"us-adaptable/toilet-grab-side", alongAndRoom(16)},
      {"us-adaptable/toilet-other-side", roomBeside(19)},
      {"us-adaptable/basin-centreline-side", along(0)},
      {"us-adaptable/toilet-fold-bar-length", itemDeep(0)},
      {"us-adaptable/toilet-fold-bar-place", itemAlong(0, 17)},
      {"us-adaptable/toilet-fold-bar-side", roomBeside(40)},
      {"us-adaptable/grab-bar-height", itemMiddle(0)},
      {"ca-access/door-clear-opening", leaf(1.875)},
      {"ca-access/room-span", roomDeep()},
      {"ca-access/turning-space", roomWide()},
      {"ca-access/toilet-seat-height", fact("seat_height")},
      {"ca-access/basin-clear-floor", roomDeep()},
      {"ca-access/toilet-transfer-side", besideFirstMm(250, 200)},
      {"ca-access/toilet-centreline-side", along(0)},
      {"ca-access/mirror-bottom", itemBottom(0)},
      {"uk-access/door-clear-opening", leaf(1.875)},
      {"uk-access/door-nib", doorAlongEnd()},
      {"uk-access/toilet-clear-front", depthBefore()},
      {"uk-access/toilet-clear-front-wide", depthBefore()},
      {"uk-access/toilet-near-side", along(0)},
      {"uk-access/toilet-access-zone", depthBefore()},
      {"uk-access/basin-access-zone", depthBefore()},
      {"uk-access/bath-access-zone", depthBefore()},
      {"uk-access/turning-space", roomWide()},
      {"uk-access/basin-clear-under", kneeHigh()},
      {"uk-access/room-span", roomDeep()},
      {"uk-access/toilet-centreline-side", along(0)},
      {"uk-access/toilet-projection", deep(0)},
      {"uk-access/toilet-seat-height", fact("seat_height")},
      {"de-access/toilet-clear-floor", depthBefore()},
      {"de-access/basin-clear-floor", depthBefore()},
      {"de-access/bath-clear-floor", depthBefore()},
      {"de-access/shower-size", wide(0)},
      {"de-access/shower-threshold", curb()},
      {"de-access/door-clear-opening", leaf(1.875)},
      {"de-access/door-height", doorHigh()},
      {"de-access/toilet-near-side", along(0, 200)},
      {"de-access/toilet-far-side", besideFirstMm(200, 200)},
      {"de-access/basin-side-gap", along(0, 300)},
      {"de-access/toilet-seat-height", fact("seat_height")},
      {"de-access/basin-height", high(0)},
      {"de-access/support-bar-height", itemTop(0, 18.503937)},
      {"au-access/toilet-circulation", roomDeep()},
      {"au-access/toilet-circulation-existing", roomDeep()},
      {"au-access/door-clear-opening", leaf(1.875)},
      {"au-access/toilet-projection", deep(0)},
      {"au-access/toilet-centreline-side", along(0)},
      {"au-access/basin-projection", deep(0)},
      {"au-access/toilet-clear-front", depthBefore()},
      {"au-access/route-width", depthFrom(2, 70.866142)},
  };
  return all;
}

const std::set<std::string_view> kBooks{"us-access", "us-access-2017", "us-adaptable", "ca-access",
                                        "uk-access", "de-access",      "au-access"};

// Searched figures (circles) come within 1/64 in; the others are exact.
constexpr double kSearched = 0.0165;

Finding findingAt(const Rule& rule, const Knob& knob, Length figure) {
  const std::string path = std::string(SOURCE_DIR "/tests/rules/") + std::string(rule.book) + "/" +
                           std::string(rule.id) + "/quiet.elbowroom";
  Result<Plan> read = loadPlan(path);
  EXPECT_TRUE(read.ok()) << path;
  Plan plan = *read;
  knob(plan, figure);
  BookChoice choice = choiceOf(plan);
  choice.books = {std::string(rule.book)};
  for (const Finding& f : check(deriveLayout(plan, 0), choice).findings)
    if (f.rule == rule.id) {
      EXPECT_TRUE(f.measured.has_value()) << "not measured: " << f.fact;
      if (f.measured) {
        EXPECT_NEAR(std::get<Length>(*f.measured).inches(), figure.inches(), kSearched);
      }
      return f;
    }
  ADD_FAILURE() << "no finding";
  return {};
}

bool isMet(const Finding& f) { return f.outcome == Outcome::clear || f.outcome == Outcome::close; }

TEST(AccessLimits, EveryLengthHasAKnob) {
  for (const Rule& rule : allRules())
    if (kBooks.count(rule.book) != 0 && std::holds_alternative<Length>(rule.limit)) {
      EXPECT_TRUE(knobs().count(std::string(rule.book) + "/" + std::string(rule.id))) << rule.book << "/" << rule.id;
    }
}

TEST(AccessLimits, AtTheLimitAndASixteenthToEitherSide) {
  for (const auto& [name, knob] : knobs()) {
    SCOPED_TRACE(name);
    const std::size_t slash = name.find('/');
    const Rule* rule = findRule(name.substr(0, slash), name.substr(slash + 1));
    ASSERT_NE(rule, nullptr);
    const Length limit = std::get<Length>(rule->limit);
    const Length step = 0.0625_in;
    std::vector<std::pair<Length, int>> ends;  // the limit, and which way is the good one
    if (rule->compare == Compare::atMost) ends = {{limit, -1}};
    if (rule->compare == Compare::atLeast) ends = {{limit, 1}};
    if (rule->compare == Compare::between) ends = {{limit, 1}, {std::get<Length>(*rule->limit_high), -1}};
    const bool exact = rule->compare == Compare::between && ends[0].first == ends[1].first;
    for (const auto& [end, good] : ends) {
      EXPECT_EQ(findingAt(*rule, knob, end).outcome, Outcome::close) << "the exact limit is met";
      if (!exact) {
        EXPECT_TRUE(isMet(findingAt(*rule, knob, end + step * good)));
      }
      const Finding missed = findingAt(*rule, knob, end - step * good);
      EXPECT_EQ(missed.outcome, Outcome::shortfall);
      ASSERT_TRUE(missed.short_by.has_value());
      EXPECT_NEAR(std::get<Length>(*missed.short_by).inches(), 0.0625, kSearched);
    }
  }
}

}  // namespace
}  // namespace elbowroom
