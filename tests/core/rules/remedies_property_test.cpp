// Over random plans: every remedy that is offered, applied as an edit, does what it says. The report before and the
// report after are compared here on their own, not by the code under test.
#include <gtest/gtest.h>

#include <map>
#include <random>
#include <set>

#include "core/plan/catalogue.h"
#include "core/plan/history.h"
#include "core/rules/remedies.h"
#include "core/rules/text.h"

namespace elbowroom {
namespace {

using namespace literals;

class RandomRooms {
 public:
  explicit RandomRooms(unsigned seed) : random_(seed) {}

  Plan next() {
    Plan plan = emptyPlan(upTo(3) == 0 ? Unit::millimetres : Unit::inches);
    for (const Book& book : allBooks())
      if (upTo(2) > 0) plan.books.push_back(std::string(book.id));
    std::sort(plan.books.begin(), plan.books.end());
    plan.books.erase(std::unique(plan.books.begin(), plan.books.end()), plan.books.end());
    Option& o = plan.options[0];
    const Length w = between(60, 130), d = between(56, 110), lean = upTo(4) == 0 ? between(0, 12) : Length{};
    const auto wall = [&](const char* id, Point from) {
      Wall each;
      each.id = {id};
      each.from = from;
      each.thickness = 4.5_in;
      o.room.walls.push_back(each);
    };
    wall("n", {{}, d}), wall("e", {w - lean, d}), wall("s", {w, {}}), wall("w", {lean, {}});
    o.room.ceiling.height = 96_in;
    Opening door = typicalDoor(static_cast<DoorAction>(upTo(5)), o);
    door.wall = {std::string(1, "nesw"[upTo(3)])};
    door.along = between(20, 40);
    door.hinge = upTo(1) ? Hand::left : Hand::right;
    door.swing = upTo(2) ? Swing::in : Swing::out;
    o.openings.push_back(door);
    const int count = 2 + upTo(4);
    for (int i = 0; i < count; ++i) {
      Fixture f = typicalFixture(fixtureKinds()[static_cast<std::size_t>(upTo(11))].kind, o);
      f.id = freshId(o, std::string(infoOf(f.kind).id_stem));
      if (upTo(5) == 0) {
        f.placement = Standing{{between(20, 100), between(20, 90)}, Angle::microdegrees(90'000'000LL * upTo(3))};
      } else {
        f.placement = OnWall{{std::string(1, "nesw"[upTo(3)])}, between(10, 90), upTo(5) == 0 ? between(0, 3) : Length{}};
      }
      f.status = upTo(2) == 0 ? Status::keep : Status::fresh;
      o.fixtures.push_back(f);
    }
    WallItem mirror;
    mirror.id = {"m"};
    mirror.kind = "mirror";
    mirror.wall = {std::string(1, "nesw"[upTo(3)])};
    mirror.along = between(12, 60), mirror.bottom = between(30, 60), mirror.width = 24_in, mirror.height = 30_in;
    o.on_walls.push_back(mirror);
    return plan;
  }

 private:
  int upTo(int most) { return std::uniform_int_distribution<int>(0, most)(random_); }
  Length between(int low, int high) {
    return Length::nanometres(std::uniform_int_distribution<int>(low * 16, high * 16)(random_) * 1'587'500LL);
  }
  std::mt19937 random_;
};

Report reportOf(const Plan& plan) { return check(deriveLayout(plan, 0), choiceOf(plan)); }

// How much each rule is short about each set of subjects, summed; a yes/no counts 1.
std::map<std::string, double> shortfalls(const Report& report, Level worst) {
  std::map<std::string, double> all;
  for (const Finding& f : report.findings) {
    if (f.outcome != Outcome::shortfall || f.level > worst) continue;
    std::string key = f.book + "/" + f.rule;
    for (const ElementId& id : f.subjects) key += " " + id.text;
    double by = 1;
    if (f.short_by) {
      if (const auto* l = std::get_if<Length>(&*f.short_by)) by = l->inches();
      if (const auto* a = std::get_if<Angle>(&*f.short_by)) by = a->degrees();
      if (const auto* a = std::get_if<Area>(&*f.short_by)) by = a->squareInches();
      if (const auto* a = std::get_if<Amount>(&*f.short_by)) by = a->value();
    }
    all[key] += by;
  }
  return all;
}

std::string keyOf(const Finding& f) {
  std::string key = f.book + "/" + f.rule;
  for (const ElementId& id : f.subjects) key += " " + id.text;
  return key;
}

// Empty when the change meets the finding and brings no new shortfall at its level or above, and none that is worse
// without being named so.
std::string trouble(const Report& first, const Plan& after, const Finding& finding, const Remedy& remedy) {
  const auto was = shortfalls(first, finding.level), is = shortfalls(reportOf(after), finding.level);
  const auto own = is.find(keyOf(finding));
  if (own != is.end() && own->second > was.at(keyOf(finding)) - 1e-6) return "not met: " + own->first;
  const auto alike = [&](const Finding& f) {
    return f.outcome == Outcome::shortfall && keyOf(f) == keyOf(finding);
  };
  if (own != is.end() && std::count_if(first.findings.begin(), first.findings.end(), alike) == 1)
    return "still short: " + own->first;
  for (const auto& [key, by] : is) {
    const auto known = was.find(key);
    if (known == was.end()) return "new: " + key;
    const auto named = [&, key = key](const Finding& f) { return keyOf(f) == key; };
    if (by > known->second + 0.01 && std::none_of(remedy.worsens.begin(), remedy.worsens.end(), named))
      return "worse: " + key;
  }
  return {};
}

// The slide with a sixteenth more or less of it left out; nullopt for other changes.
std::optional<Change> shortened(const Plan& plan, const Remedy& r, Length by) {
  if (r.move.way != Mend::slide || r.move.by <= by) return std::nullopt;
  const double share = (r.move.by - by) / r.move.by;
  const auto* put = std::get_if<PutFixtures>(&r.change);
  if (put == nullptr || put->fixtures.size() != 1) return std::nullopt;
  Fixture f = put->fixtures.front();
  const Fixture& now = *findFixture(plan.options[0], f.id);
  if (auto* on = std::get_if<OnWall>(&f.placement)) {
    const auto& from = std::get<OnWall>(now.placement);
    on->along = from.along + (on->along - from.along).scaled(share);
    on->gap = from.gap + (on->gap - from.gap).scaled(share);
  } else {
    const Point from = std::get<Standing>(now.placement).at;
    auto& standing = std::get<Standing>(f.placement);
    standing.at = {from.x + (standing.at.x - from.x).scaled(share), from.y + (standing.at.y - from.y).scaled(share)};
  }
  return PutFixtures{{f}};
}

bool same(const Remedies& a, const Remedies& b, const Plan& plan) {
  if (a.offered.size() != b.offered.size() || a.conflicts.size() != b.conflicts.size() || a.checks != b.checks) return false;
  for (std::size_t i = 0; i < a.offered.size(); ++i) {
    const Result<Plan> x = apply(plan, {0, a.offered[i].change, "", ""}), y = apply(plan, {0, b.offered[i].change, "", ""});
    if (!x || !y || !(*x == *y)) return false;
  }
  return true;
}

// 120 plans, dealt to hands that may be tried at the same time.
constexpr int kHands = 4;
class RemediesProperty : public ::testing::TestWithParam<int> {};

TEST_P(RemediesProperty, EveryOfferMeetsItsFindingAndBringsNothingNew) {
  RandomRooms rooms(20'251);
  int plans = 0, searched = 0, offers = 0, slides = 0, none = 0;
  while (plans < 120) {
    const Plan plan = rooms.next();
    if (!apply(plan, {0, SetTitle{"Random"}, "", ""})) continue;  // integrity
    if (plans++ % kHands != GetParam()) continue;
    const Report report = reportOf(plan);
    int of_plan = 0;
    for (const Finding& f : report.findings) {
      if (f.outcome != Outcome::shortfall || ++of_plan > 4) continue;
      SCOPED_TRACE(std::to_string(plans) + " " + textOf(f, plan.options[0], plan.unit).headline);
      const Remedies found = remediesFor(plan, 0, f, choiceOf(plan));
      ++searched;
      EXPECT_LE(found.checks, kRemedyChecks);
      EXPECT_LE(found.offered.size(), 3U);
      EXPECT_LE(found.conflicts.size(), 3U);
      EXPECT_TRUE(found.offered.empty() || found.conflicts.empty());
      if (searched % 7 == 0) {
        EXPECT_TRUE(same(found, remediesFor(plan, 0, f, choiceOf(plan)), plan));
      }
      none += found.offered.empty() ? 1 : 0;
      for (const Remedy& r : found.offered) {
        ++offers;
        History history(plan);
        const auto changed = history.perform({0, r.change, "Remedy", ""});
        ASSERT_TRUE(changed) << changed.error().message;
        EXPECT_TRUE(*changed);
        EXPECT_EQ(trouble(report, history.plan(), f, r), "");
        if (const auto less = shortened(plan, r, Length::fromInches(0.125))) {
          const Result<Plan> almost = apply(plan, {0, *less, "", ""});
          if (almost) {
            ++slides;
            EXPECT_NE(trouble(report, *almost, f, r), "") << "less would do: " << r.move.by.inches();
          }
        }
        history.undo();
        EXPECT_EQ(history.plan(), plan);
      }
    }
  }
  // The test is of no use where nothing is found or everything is. All hands together: 300, 200, 40, 20; one of them
  // may have a little less than its quarter.
  EXPECT_GT(searched, 75);
  EXPECT_GE(offers, 45);
  EXPECT_GT(slides, 10);
  EXPECT_GT(none, 5);
}

INSTANTIATE_TEST_SUITE_P(Hands, RemediesProperty, ::testing::Range(0, kHands));

}  // namespace
}  // namespace elbowroom
