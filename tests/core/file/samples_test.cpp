// The plans in samples/: what the program opens first must be sound, and tell what it is meant to tell.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <set>

#include "core/file/plan_file.h"
#include "core/plan/integrity.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/check.h"

namespace elbowroom {
namespace {

const std::string kFolder = SOURCE_DIR "/samples/";
const std::set<std::string> kNames{"attic", "bath-metric", "ensuite-l", "family-walls",
                                  "hall-bath"};

std::string textOfFile(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

std::string pathOf(const std::string& name) { return kFolder + name + ".elbowroom"; }

Plan sample(const std::string& name) {
  const Result<Plan> plan = loadPlan(pathOf(name));
  EXPECT_TRUE(plan.ok()) << (plan.ok() ? "" : plan.error().message);
  return plan.ok() ? *plan : emptyPlan(Unit::inches);
}

std::size_t optionNamed(const Plan& plan, const std::string& name) {
  for (std::size_t i = 0; i < plan.options.size(); ++i)
    if (plan.options[i].name == name) return i;
  ADD_FAILURE() << "no option " << name;
  return 0;
}

std::vector<std::string> requiredShortfalls(const Plan& plan, std::size_t option) {
  std::vector<std::string> rules;
  for (const Finding& f : check(deriveLayout(plan, option), choiceOf(plan)).findings)
    if (f.outcome == Outcome::shortfall && f.level == Level::required) rules.push_back(f.rule);
  return rules;
}

TEST(Samples, TheFolderHoldsExactlyThese) {
  std::set<std::string> found;
  for (const auto& entry : std::filesystem::directory_iterator(kFolder))
    if (entry.path().extension() == ".elbowroom") found.insert(entry.path().stem());
  EXPECT_EQ(found, kNames);
}

TEST(Samples, EachIsWrittenBackByteForByte) {
  for (const std::string& name : kNames) EXPECT_EQ(writePlan(sample(name)), textOfFile(pathOf(name))) << name;
}

TEST(Samples, TitlesSayThatTheyAreInvented) {
  for (const std::string& name : kNames) {
    EXPECT_TRUE(sample(name).title.ends_with(" (invented example)")) << name;
  }
}

TEST(Samples, IntegrityHoldsInEveryOption) {
  for (const std::string& name : kNames) {
    const Plan plan = sample(name);
    EXPECT_GE(plan.options.size(), 2u) << name;
    EXPECT_EQ(plan.options.front().name, "As found") << name;
    for (const Option& option : plan.options) {
      Plan alone = plan;
      alone.options = {option};
      const auto broken = integrity(alone);
      EXPECT_FALSE(broken) << name << " " << option.name << ": " << broken->message;
    }
  }
}

// "As found" may only clash by its door's swing, so this holds in every option.
TEST(Samples, NothingOverlapsOrLeavesTheRoom) {
  int pairs = 0;
  for (const std::string& name : kNames) {
    const Plan plan = sample(name);
    for (std::size_t i = 0; i < plan.options.size(); ++i) {
      const Layout layout = deriveLayout(plan, i);
      SCOPED_TRACE(name + " / " + layout.option.name);
      const auto idOf = [&](std::size_t k) {
        return layout.fixtures[static_cast<std::size_t>(layout.solid[k])].fixture.id.text;
      };
      for (std::size_t a = 0; a < layout.solid_outlines.size(); ++a)
        for (std::size_t b = 0; b < a; ++b, ++pairs)
          EXPECT_FALSE(gapBetween(layout.solid_outlines[a], layout.solid_outlines[b]).overlap)
              << idOf(a) << " and " << idOf(b);
      // Also what is taken away or open to the floor lies in the room.
      for (const PlacedFixture& f : layout.fixtures)
        EXPECT_FALSE(gapToBoundary(f.footprint, layout.room).overlap) << f.fixture.id.text;
    }
  }
  EXPECT_GE(pairs, 20);
}

// A curbless shower is no obstacle, but nothing is built into it either.
TEST(Samples, NothingStandsInAShower) {
  for (const std::string& name : kNames) {
    const Plan plan = sample(name);
    for (std::size_t i = 0; i < plan.options.size(); ++i) {
      const Layout layout = deriveLayout(plan, i);
      for (const PlacedFixture& a : layout.fixtures)
        for (const PlacedFixture& b : layout.fixtures)
          if (a.fixture.kind == FixtureKind::shower && a.fixture.id != b.fixture.id) {
            EXPECT_FALSE(gapBetween(a.footprint, b.footprint).overlap)
                << name << " / " << layout.option.name << ": " << b.fixture.id.text;
          }
    }
  }
}

TEST(Samples, ThingsOnWallsAndCeilingLieWithinThem) {
  for (const std::string& name : kNames) {
    const Plan plan = sample(name);
    for (std::size_t i = 0; i < plan.options.size(); ++i) {
      const Layout layout = deriveLayout(plan, i);
      SCOPED_TRACE(name + " / " + layout.option.name);
      const auto& items = layout.option.on_walls;
      const auto meet = [](Length a, Length a_half, Length b, Length b_half) {
        return abs(a - b) < a_half + b_half;
      };
      for (const WallItem& item : items) {
        const auto wall = std::find_if(layout.walls.begin(), layout.walls.end(),
                                       [&](const WallFrame& w) { return w.id == item.wall; });
        ASSERT_NE(wall, layout.walls.end()) << item.id.text;
        EXPECT_GE(item.along - item.width / 2, Length{}) << item.id.text;
        EXPECT_LE(item.along + item.width / 2, wall->length) << item.id.text;
        EXPECT_LE(item.bottom + item.height, layout.option.room.ceiling.height.value()) << item.id.text;
        const Length middle = item.bottom + item.height / 2;
        const auto throughMirror = [](const WallItem& a, const WallItem& b) {
          return is(a, WallUse::mirror) && (is(b, WallUse::lamp) || is(b, WallUse::box));
        };
        for (const WallItem& other : items) {
          if (other.id == item.id || other.wall != item.wall) continue;
          if (throughMirror(item, other) || throughMirror(other, item)) continue;  // its box is a hole in the mirror
          EXPECT_FALSE(meet(item.along, item.width / 2, other.along, other.width / 2) &&
                       meet(middle, item.height / 2, other.bottom + other.height / 2, other.height / 2))
              << item.id.text << " covers " << other.id.text;
        }
        for (const Opening& o : layout.option.openings) {
          if (o.wall != item.wall) continue;
          EXPECT_FALSE(meet(item.along, item.width / 2, o.along, o.width / 2) &&
                       meet(middle, item.height / 2, o.sill.value_or(Length{}) + o.height / 2, o.height / 2))
              << item.id.text << " covers " << o.id.text;
        }
      }
      for (const CeilingItem& item : layout.option.on_ceiling)
        EXPECT_TRUE(contains(layout.room, item.at)) << item.id.text;
    }
  }
}

TEST(Samples, TheBooks) {
  int with_access = 0;
  for (const std::string& name : kNames) {
    const std::vector<std::string> books = sample(name).books;
    const auto has = [&](const char* id) { return std::count(books.begin(), books.end(), id) == 1; };
    for (const char* id : {"us-residential", "us-electrical", "comfort", "craft"})
      EXPECT_TRUE(has(id)) << name << id;
    with_access += has("us-access");
  }
  EXPECT_EQ(with_access, 1);
}

TEST(Samples, TogetherTheyShowWhatAPlanCanSay) {
  std::set<Status> statuses;
  std::set<std::string> on_walls, on_ceiling;
  bool slanted = false, metric = false, notched = false, exterior = false, plumbing = false, north = false;
  for (const std::string& name : kNames) {
    const Plan plan = sample(name);
    metric = metric || plan.unit == Unit::millimetres;
    north = north || plan.north.has_value();
    EXPECT_GE(plan.people.size(), 2u) << name;
    for (std::size_t i = 0; i < plan.options.size(); ++i) {
      const Layout layout = deriveLayout(plan, i);
      notched = notched || layout.walls.size() >= 6;
      for (const WallFrame& w : layout.walls) {
        slanted = slanted || (std::abs(w.along.x) > 0.1 && std::abs(w.along.y) > 0.1);
        exterior = exterior || w.exterior;
        plumbing = plumbing || w.plumbing;
      }
      for (const Fixture& f : layout.option.fixtures) statuses.insert(f.status);
      for (const WallItem& item : layout.option.on_walls) on_walls.insert(item.kind);
      for (const CeilingItem& item : layout.option.on_ceiling) on_ceiling.insert(item.kind);
    }
  }
  EXPECT_TRUE(slanted && metric && notched && exterior && plumbing && north);
  EXPECT_EQ(statuses.size(), 4u) << "keep, move, new, remove";
  for (const char* kind : {"mirror", "light", "receptacle", "grab-bar"})
    EXPECT_TRUE(on_walls.count(kind)) << kind;
  EXPECT_TRUE(on_ceiling.count("fan"));
}

TEST(Samples, TheHallBathAsFoundHasRealConflicts) {
  const Plan plan = sample("hall-bath");
  const std::vector<std::string> rules = requiredShortfalls(plan, optionNamed(plan, "As found"));
  EXPECT_GE(rules.size(), 2u);
  const auto is = [&](const char* rule) { return std::count(rules.begin(), rules.end(), rule) > 0; };
  EXPECT_TRUE(is("door-swing-clash"));
  EXPECT_TRUE(is("toilet-centreline-side"));
}

TEST(Samples, ThePocketDoorOfTheHallBathWorks) {
  const Plan plan = sample("hall-bath");
  const std::size_t found = optionNamed(plan, "As found"), pocket = optionNamed(plan, "Pocket door");
  // Books on access are guidance in this home, and hopeless in a hall bath.
  const auto rules = [&](std::size_t option) {
    std::set<std::string> all;
    for (const Finding& f : check(deriveLayout(plan, option), choiceOf(plan)).findings)
      if (f.outcome == Outcome::shortfall && f.level == Level::required && f.book.find("access") == std::string::npos)
        all.insert(f.book + "/" + f.rule);
    return all;
  };
  EXPECT_LT(rules(pocket).size(), rules(found).size());
  const Layout layout = deriveLayout(plan, pocket);
  int pockets = 0;
  for (const PlacedOpening& o : layout.openings) {
    if (o.opening.action != DoorAction::pocket) continue;
    ++pockets;
    EXPECT_TRUE(doorTroubles(layout, o).empty());
    // Boxes and brackets reach into the cavity.
    for (const WallItem& item : layout.option.on_walls) EXPECT_NE(item.wall, o.opening.wall) << item.id.text;
  }
  EXPECT_EQ(pockets, 1);
}

TEST(Samples, EasierAccessWidensTheDoorway) {
  const Plan plan = sample("hall-bath");
  const std::size_t found = optionNamed(plan, "As found"), easier = optionNamed(plan, "Easier access");
  const auto clear = [&](std::size_t option) {
    return figuresOf(deriveLayout(plan, option)).doors.at(0).clear_opening;
  };
  EXPECT_GT(clear(easier), clear(found));
  EXPECT_GE(clear(easier), Length::fromInches(32));  // 2010 ADA Standards 404.2.3
  const auto rules = requiredShortfalls(plan, easier);
  EXPECT_LT(rules.size(), requiredShortfalls(plan, found).size());
  EXPECT_EQ(std::count(rules.begin(), rules.end(), "turning-space"), 0);
}

// A person who follows the proposals ends with no code shortfall.
TEST(Samples, ProposalsMeetTheResidentialCode) {
  for (const std::string& name : kNames) {
    const Plan plan = sample(name);
    BookChoice code;
    code.books = {"us-residential"};
    for (std::size_t i = 1; i < plan.options.size(); ++i)
      for (const Finding& f : check(deriveLayout(plan, i), code).findings)
        EXPECT_NE(f.outcome, Outcome::shortfall) << name << " / " << plan.options[i].name << ": " << f.rule;
    int found = 0;
    for (const Finding& f : check(deriveLayout(plan, 0), code).findings)
      found += f.outcome == Outcome::shortfall;
    EXPECT_GE(found, 1) << name << ": nothing to improve as found";
  }
}

}  // namespace
}  // namespace elbowroom
