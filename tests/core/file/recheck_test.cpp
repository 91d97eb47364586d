// A check after a move is the same as one made anew: over random drags in rooms of four shapes, and over the
// plans of all rules, where each rule has something to say.
#include "core/rules/recheck.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <random>
#include <set>
#include <sstream>

#include "core/file/plan_file.h"
#include "core/plan/catalogue.h"
#include "core/plan/wall_catalogue.h"
#include "core/plan/wall_line.h"
#include "core/rules/checks/named.h"
#include "core/rules/reads.h"

namespace elbowroom {
namespace {

using namespace literals;

bool same(const Place& a, const Place& b) { return a.kind == b.kind && a.points == b.points; }

bool same(const Finding& a, const Finding& b) {
  return a.rule == b.rule && a.book == b.book && a.level == b.level && a.outcome == b.outcome &&
         a.subjects == b.subjects && a.measured == b.measured && a.limit == b.limit &&
         a.limit_high == b.limit_high && a.compare == b.compare && a.short_by == b.short_by &&
         std::equal(a.places.begin(), a.places.end(), b.places.begin(), b.places.end(),
                    [](const Place& x, const Place& y) { return same(x, y); }) &&
         a.detail == b.detail && a.fact == b.fact && a.variant == b.variant && a.changed == b.changed &&
         a.changed_reason == b.changed_reason && a.acknowledged == b.acknowledged;
}

bool same(const Figures& a, const Figures& b) {
  if (a.room_area != b.room_area || a.free_floor != b.free_floor || a.doors.size() != b.doors.size() ||
      a.turning.largest != b.turning.largest || a.turning.with_knees != b.turning.with_knees) {
    return false;
  }
  for (std::size_t i = 0; i < a.doors.size(); ++i)
    if (a.doors[i].opens != b.doors[i].opens || a.doors[i].hits != b.doors[i].hits ||
        a.doors[i].clear_opening != b.doors[i].clear_opening || a.doors[i].hits_at != b.doors[i].hits_at)
      return false;
  return true;
}

// Empty when they are the same, else what differs first.
std::string difference(const Report& after, const Report& anew) {
  if (!same(after.figures, anew.figures)) return "the figures";
  if (after.findings.size() != anew.findings.size()) return "the number of findings";
  for (std::size_t i = 0; i < anew.findings.size(); ++i)
    if (!same(after.findings[i], anew.findings[i]))
      return anew.findings[i].book + "/" + anew.findings[i].rule + " (after the move " +
             after.findings[i].rule + ")";
  return {};
}

class Mover {
 public:
  explicit Mover(unsigned seed) : random_(seed) {}
  double between(double low, double high) {
    return std::uniform_real_distribution<double>(low, high)(random_);
  }
  std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_); }
  Length inches(double low, double high) { return Length::fromInches(between(low, high)); }

  void move(Option& o, Fixture& f) {
    const Box box = boundsOf(roomOutline(o.room));
    auto* standing = std::get_if<Standing>(&f.placement);
    if (standing != nullptr && below(3) == 0) {  // one step of a drag
      standing->at = standing->at + Vector{inches(-2, 2), inches(-2, 2)};
    } else if (below(2) == 0) {
      f.placement = OnWall{o.room.walls[below(o.room.walls.size())].id, inches(0, 120), {}};
    } else {
      const Angle turn =
          Angle::fromDegrees(below(2) == 0 ? 90.0 * static_cast<double>(below(4)) : between(0, 360));
      f.placement = Standing{
          {inches(box.low.x.inches(), box.high.x.inches()), inches(box.low.y.inches(), box.high.y.inches())},
          turn};
    }
  }
  void move(Option& o, WallItem& item) {
    item.along = inches(4, 90);
    if (below(2) == 0) item.bottom = inches(0, 90);
    if (below(4) == 0) item.wall = o.room.walls[below(o.room.walls.size())].id;
  }

 private:
  std::mt19937 random_;
};

enum class Shape { rectangle, ell, angled, sloped };

Plan furnished(Shape shape, Mover& by) {
  Plan plan = emptyPlan(Unit::inches);
  plan.people = {Person{"Tall adult", 74_in, false, {}, {}}, Person{"Child", 42_in, true, {}, {}}};
  Option& o = plan.options.front();
  std::vector<Point> corners{{0_in, 120_in}, {110_in, 120_in}, {110_in, 0_in}, {0_in, 0_in}};
  if (shape == Shape::ell)
    corners = {{0_in, 120_in},  {70_in, 120_in}, {70_in, 76_in},
               {110_in, 76_in}, {110_in, 0_in},  {0_in, 0_in}};
  if (shape == Shape::angled)
    corners = {{0_in, 120_in}, {74_in, 120_in}, {110_in, 84_in}, {110_in, 0_in}, {0_in, 0_in}};
  for (std::size_t i = 0; i < corners.size(); ++i) {
    Wall wall;
    wall.id = {"w" + std::to_string(i)};
    wall.from = corners[i];
    wall.thickness = 4.5_in;
    wall.studs = Studs{8_in, 16_in, {}};
    o.room.walls.push_back(wall);
  }
  o.room.ceiling.height = 96_in;
  if (shape == Shape::sloped) {
    CeilingSlope slope;
    slope.wall = o.room.walls.front().id;
    slope.low = 50_in;
    slope.run = 60_in;
    o.room.ceiling.slopes.push_back(slope);
  }
  for (const DoorAction action : {DoorAction::hinged, DoorAction::pocket}) {
    Opening door = typicalDoor(action, o);
    door.wall = o.room.walls.back().id;
    door.along = action == DoorAction::hinged ? 26_in : 92_in;
    o.openings.push_back(door);
  }
  for (int kind = 0; kind <= static_cast<int>(FixtureKind::heater); ++kind) {
    if (by.below(4) == 0) continue;
    Fixture f = typicalFixture(static_cast<FixtureKind>(kind), o);
    by.move(o, f);
    o.fixtures.push_back(f);
  }
  for (const char* kind : {"mirror", "side-light", "receptacle", "towel-bar", "niche", "grab-bar",
                           "shower-head", "control", "switch", "paper-holder"}) {
    WallItem item = typicalWallItem(kind, o);
    item.wall = o.room.walls.front().id;
    by.move(o, item);
    o.on_walls.push_back(item);
  }
  return plan;
}

// Moves anything and compares; returns what differs.
std::string moveAndCompare(Plan& plan, Layout& layout, Checked& checked, const BookChoice& choice,
                           Mover& by) {
  Option& o = plan.options.front();
  if (!o.on_walls.empty() && (o.fixtures.empty() || by.below(4) == 0))
    by.move(o, o.on_walls[by.below(o.on_walls.size())]);
  else
    by.move(o, o.fixtures[by.below(o.fixtures.size())]);
  const Layout now = deriveLayout(plan, 0);
  checked = recheck(std::move(checked), layout, now, choice);
  layout = now;
  return difference(checked.report, checkAnew(now, choice).report);
}

TEST(Recheck, IsTheSameAsACheckAnewOver10000Drags) {
  int drags = 0, findings = 0;
  for (unsigned seed = 0; seed < 200; ++seed) {
    Mover by(seed);
    Plan plan = furnished(static_cast<Shape>(seed % 4), by);
    if (seed % 16 >= 14) {
      plan.books.clear();
      for (const Book& book : allBooks()) plan.books.push_back(std::string(book.id));
    }
    const BookChoice choice = choiceOf(plan);
    Layout layout = deriveLayout(plan, 0);
    Checked checked = checkAnew(layout, choice);
    for (int i = 0; i < 50; ++i, ++drags) {
      ASSERT_EQ(moveAndCompare(plan, layout, checked, choice, by), "") << "seed " << seed << ", drag " << i;
      findings += static_cast<int>(checked.report.findings.size());
    }
  }
  EXPECT_EQ(drags, 10'000);
  EXPECT_GT(findings, 500'000);
}

// In each rule's own plans one more thing of every kind is moved about, and what is there of that kind.
TEST(Recheck, IsTheSameInThePlansOfAllRules) {
  int compared = 0;
  for (const Rule& rule : allRules()) {
    const std::string folder =
        std::string(SOURCE_DIR "/tests/rules/") + std::string(rule.book) + "/" + std::string(rule.id);
    for (const char* file : {"/quiet.elbowroom", "/noisy.elbowroom"}) {
      const Result<Plan> loaded = loadPlan(folder + file);
      ASSERT_TRUE(loaded.ok()) << folder;
      if (loaded->options.front().room.walls.empty()) continue;
      for (int kind = 0; kind <= static_cast<int>(FixtureKind::heater) + 1; ++kind) {
        Plan plan = *loaded;
        Option& o = plan.options.front();
        plan.books = {std::string(rule.book)};
        Mover by(static_cast<unsigned>(compared));
        const bool items = kind > static_cast<int>(FixtureKind::heater);
        if (items && o.on_walls.empty()) continue;
        if (!items) {
          Fixture f = typicalFixture(static_cast<FixtureKind>(kind), o);
          by.move(o, f);
          o.fixtures.push_back(f);
        }
        const BookChoice choice = choiceOf(plan);
        Layout layout = deriveLayout(plan, 0);
        Checked checked = checkAnew(layout, choice);
        for (int i = 0; i < 8; ++i, ++compared) {
          if (items) by.move(o, o.on_walls[by.below(o.on_walls.size())]);
          for (Fixture& f : o.fixtures)
            if (!items && f.kind == static_cast<FixtureKind>(kind) && (i == 0 || by.below(2) == 0))
              by.move(o, f);
          const Layout now = deriveLayout(plan, 0);
          checked = recheck(std::move(checked), layout, now, choice);
          layout = now;
          ASSERT_EQ(difference(checked.report, checkAnew(now, choice).report), "")
              << folder << file << ", kind " << kind;
        }
      }
    }
  }
  EXPECT_GT(compared, 60'000);
}

TEST(Recheck, AnythingElseThanAMoveIsCheckedAnew) {
  Mover by(7);
  Plan plan = furnished(Shape::rectangle, by);
  const Layout was = deriveLayout(plan, 0);
  EXPECT_EQ(movedBetween(was, was), Reads{0});
  const auto after = [&](auto edit) {
    Plan next = plan;
    edit(next.options.front(), next);
    return movedBetween(was, deriveLayout(next, 0));
  };
  EXPECT_EQ(after([](Option& o, Plan&) { o.on_walls[0].along = 33_in; }), kReadsItems);
  EXPECT_EQ(after([](Option& o, Plan&) { o.fixtures[0].width = o.fixtures[0].width + 1_in; }), std::nullopt);
  EXPECT_EQ(after([](Option& o, Plan&) { o.fixtures.pop_back(); }), std::nullopt);
  EXPECT_EQ(after([](Option& o, Plan&) { o.on_walls[0].width = 3_in; }), std::nullopt);
  EXPECT_EQ(after([](Option& o, Plan&) { o.openings[0].along = 30_in; }), std::nullopt);
  EXPECT_EQ(after([](Option& o, Plan&) { o.room.ceiling.height = 90_in; }), std::nullopt);
  EXPECT_EQ(after([](Option&, Plan& p) { p.people.pop_back(); }), std::nullopt);
  EXPECT_EQ(after([](Option&, Plan& p) { p.north = Angle::fromDegrees(20); }), std::nullopt);
}

TEST(Recheck, TheTableNamesMeasuresThatThereAreOnce) {
  std::set<std::string> seen;
  for (const ReadsLine& line : readsTable()) {
    std::istringstream words{std::string(line.measures)};
    for (std::string word; words >> word;) {
      EXPECT_NE(checks::findMeasure(word), nullptr) << word;
      EXPECT_TRUE(seen.insert(word).second) << word << " stands there twice";
    }
  }
}

}  // namespace
}  // namespace elbowroom
