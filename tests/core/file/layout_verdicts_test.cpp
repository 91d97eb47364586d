// US Department of Justice, Guidance on the 2010 ADA Standards for Accessible Design, plans 1A to 3: what
// every rule of the book says about them, against what the guidance says. [P] published in words, [Pd] shown
// in the drawing, [D] follows from the printed figures and the text of the standard.
#include <gtest/gtest.h>

#include <map>
#include <string>

#include "core/file/plan_file.h"
#include "core/rules/check.h"

namespace elbowroom {
namespace {
using namespace literals;

using Settings = std::map<std::string, std::string>;
const Settings kDwelling{}, kOther{{"unit", "other"}}, k1991{{"edition", "1991"}, {"unit", "other"}};

struct Published {
  Plan plan;
  explicit Published(const std::string& id) {
    const Result<Plan> read = loadPlan(std::string(SOURCE_DIR) + "/tests/layouts/" + id + ".elbowroom");
    if (!read) throw std::runtime_error(read.error().message);
    plan = *read;
  }
  Option& option() { return plan.options[0]; }
  Opening& door() { return option().openings.at(0); }
  void makeShallower(Length by) {
    for (Wall& wall : option().room.walls)
      if (wall.from.y == Length{}) wall.from.y += by;
  }
  std::vector<Finding> findings(const Settings& settings) const {
    BookChoice choice;
    choice.books = {"us-access"};
    choice.settings["us-access"] = settings;
    return check(deriveLayout(plan, 0), choice).findings;
  }
  // The only finding of a rule.
  Finding of(const std::string& rule, const Settings& settings = kDwelling) const {
    std::vector<Finding> found;
    for (const Finding& f : findings(settings))
      if (f.rule == rule) found.push_back(f);
    EXPECT_EQ(found.size(), 1u) << rule;
    return found.empty() ? Finding{} : found[0];
  }
  bool meets(const std::string& rule, const Settings& settings = kDwelling) const {
    const Outcome o = of(rule, settings).outcome;
    return o == Outcome::clear || o == Outcome::close;
  }
  // What is required, not what an appendix advises.
  std::string shorts(const Settings& settings) const {
    std::string all;
    for (const Finding& f : findings(settings))
      if (f.outcome == Outcome::shortfall && f.level == Level::required) all += f.rule + " ";
    return all;
  }
};

// [P] 1B, 1C, 2B, 2C and 3 are drawn to the 2010 Standards: nothing of the whole book is short, with and
// without the exceptions for dwellings.
TEST(PublishedVerdicts, PlansOf2010MeetThe2010Standards) {
  for (const char* id : {"T1B", "T1C", "T2B", "T2C", "T3"}) {
    EXPECT_EQ(Published(id).shorts(kOther), "") << id;
    EXPECT_EQ(Published(id).shorts(kDwelling), "") << id;
  }
}

// [P] 1A and 2A are drawn to the 1991 Standards, 3 meets both. The drawing of 3 has the toilet 16 in off the wall by
// its scale, where figure 28 of 1991 has 18; the rule goes by the figure.
TEST(PublishedVerdicts, PlansOf1991MeetThe1991Standards) {
  for (const char* id : {"T1A", "T2A"}) EXPECT_EQ(Published(id).shorts(k1991), "") << id;
  EXPECT_EQ(Published("T3").shorts(k1991), "toilet-centreline-side ");
}

// [D] By 604.3.2 the lavatory of 1A and 2A may stand in the toilet's space in a dwelling alone.
TEST(PublishedVerdicts, PlansOf1991MissThe2010ToiletSpace) {
  for (const char* id : {"T1A", "T2A"}) {
    const Published d(id);
    EXPECT_TRUE(d.meets("toilet-clearance")) << id;
    EXPECT_EQ(d.of("toilet-clearance-strict", kOther).outcome, Outcome::shortfall) << id;
    EXPECT_TRUE(d.meets("toilet-clearance-1991", k1991)) << id;
  }
}

TEST(PublishedVerdicts, Plan1B) {
  Published d("T1B");
  EXPECT_TRUE(d.meets("toilet-clearance-strict", kOther)) << "[P] 604.3.1";
  EXPECT_TRUE(d.meets("door-manoeuvring")) << "[P] 36 x 48";
  EXPECT_TRUE(d.meets("basin-clear-floor"));
  EXPECT_EQ(d.of("turning-space").detail, "knee-space-used") << "[P] 304.3.1";
  // [P] with closer and latch more is needed beside the latch.
  d.door().closer = true;
  EXPECT_TRUE(d.meets("door-manoeuvring"));
  d.door().latch = true;
  EXPECT_EQ(d.of("door-manoeuvring").outcome, Outcome::shortfall);
}

TEST(PublishedVerdicts, Plan1C) {
  Published d("T1C");
  EXPECT_TRUE(d.meets("door-manoeuvring")) << "[P] 48 x 48 with closer and latch";
  d.makeShallower(1_in);
  EXPECT_EQ(d.of("door-manoeuvring").outcome, Outcome::shortfall) << "[D] the depth is 48 + 18";
}

TEST(PublishedVerdicts, Plan2A) {
  const Published d("T2A");
  EXPECT_TRUE(d.meets("door-swing-clear-floor-1991", k1991)) << "[Pd] the arc just clears the toilet's space";
  EXPECT_TRUE(d.meets("turning-space", k1991)) << "[P] crossed by the door, which it may be";
  EXPECT_TRUE(d.meets("door-manoeuvring")) << "[D] 54 x 60";
}

TEST(PublishedVerdicts, Plan2B) {
  Published d("T2B");
  EXPECT_TRUE(d.meets("door-swing-clear-floor")) << "[P] 603.2.3 exception 2";
  EXPECT_EQ(d.of("door-swing-clear-floor").detail, "floor-beyond-door");
  EXPECT_EQ(d.of("door-swing-clear-floor-1991", k1991).outcome, Outcome::shortfall)
      << "[D] 1991 had no exception";
  EXPECT_TRUE(d.meets("door-manoeuvring")) << "[Pd] 54 x 60";
  EXPECT_TRUE(d.meets("basin-clear-floor"));
  d.makeShallower(1_in);
  EXPECT_EQ(d.of("door-manoeuvring").outcome, Outcome::shortfall) << "[D] the depth is 60 + 18";
}

TEST(PublishedVerdicts, Plan2C) {
  Published d("T2C");
  EXPECT_EQ(d.of("door-swing-clear-floor").detail, "floor-beyond-door") << "[P]";
  EXPECT_TRUE(d.meets("door-manoeuvring")) << "[Pd]";
  EXPECT_TRUE(d.meets("basin-clear-floor")) << "[P] recessed";
  EXPECT_TRUE(d.meets("toilet-clearance-strict", kOther)) << "[Pd]";
  // [Pd] The rear bar runs from 2 to 40.
  WallItem bar;
  bar.id = {"bar"};
  bar.kind = "grab-bar";
  for (const WallFrame& wall : deriveLayout(d.plan, 0).walls)
    if (const auto* on = std::get_if<OnWall>(&d.option().fixtures.at(0).placement); on->wall == wall.id)
      bar.wall = wall.id;
  bar.along = 21_in;
  bar.width = 38_in;
  bar.height = 1.25_in;
  bar.bottom = 33.5_in;
  d.option().on_walls.push_back(bar);
  EXPECT_TRUE(d.meets("toilet-rear-bar"));
  EXPECT_TRUE(d.meets("toilet-rear-bar-near"));
  EXPECT_TRUE(d.meets("toilet-rear-bar-far"));
}

TEST(PublishedVerdicts, Plan3) {
  const Published d("T3");
  EXPECT_TRUE(d.meets("turning-space")) << "[P] by a T";
  EXPECT_TRUE(d.meets("toilet-clearance-strict", kOther)) << "[P]";
  EXPECT_TRUE(d.meets("toilet-clearance-1991", k1991)) << "[P]";
  EXPECT_TRUE(d.meets("door-manoeuvring")) << "[D] 36 x 48";
}

// [D] Plans that meet the standard have a way to each fixture (403.5.1).
TEST(PublishedVerdicts, WaysToTheFixtures) {
  for (const char* id : {"T1A", "T1B", "T1C", "T2A", "T2B", "T2C", "T3"}) {
    int ways = 0;
    for (const Finding& f : Published(id).findings(kOther)) {
      if (f.rule != "route-width") continue;
      ++ways;
      EXPECT_TRUE(f.outcome == Outcome::clear || f.outcome == Outcome::close)
          << id << " " << std::get<Length>(*f.measured).inches();
    }
    EXPECT_GE(ways, 1) << id;
  }
}

}  // namespace
}  // namespace elbowroom
