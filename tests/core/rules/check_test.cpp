// What a report contains and in which order; what is left out.
#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::met;
using testing_room::TestRoom;

const std::vector<std::string> kAll{"us-residential", "us-uniform", "us-access", "comfort", "craft"};

TestRoom crowded() {
  TestRoom room(80, 60);
  room.toilet(12);
  room.add("bath", FixtureKind::bath, "e", 30, 60, 30);
  room.add("v", FixtureKind::vanity, "s", 55, 30, 21);
  room.door("w", 15, 30, Hand::left);
  room.option().room.ceiling.height.reset();
  return room;
}

int rank(const Finding& f) {
  if (f.outcome == Outcome::shortfall) return static_cast<int>(f.level);
  return f.outcome == Outcome::unknown ? 3 : f.outcome == Outcome::close ? 4 : 5;
}

// A zone that is all there is to show stays: the rectangle to turn in, where it has its place.
TEST(Check, EveryFindingHasAPlace) {
  const TestRoom roomy(120, 120);
  const Report turning = roomy.report({"au-access"});
  const auto half = std::find_if(turning.findings.begin(), turning.findings.end(),
                                 [](const Finding& f) { return f.rule == "turning-half"; });
  ASSERT_NE(half, turning.findings.end());
  EXPECT_EQ(half->outcome, Outcome::clear);
  ASSERT_EQ(half->places.size(), 1u);
  EXPECT_EQ(half->places[0].kind, Place::Kind::zone);
  for (const Report& report : {crowded().report(kAll), turning})
    for (const Finding& f : report.findings)
      if (f.outcome != Outcome::notApplicable) {
        EXPECT_FALSE(f.places.empty()) << f.book << "/" << f.rule;
      }
}

TEST(Check, ShortComesFirstByLevelThenUnknownThenCloseThenClear) {
  const Report report = crowded().report(kAll);
  ASSERT_FALSE(report.findings.empty());
  EXPECT_TRUE(std::is_sorted(report.findings.begin(), report.findings.end(),
                             [](const Finding& a, const Finding& b) { return rank(a) < rank(b); }));
  EXPECT_EQ(report.findings.front().outcome, Outcome::shortfall);
  EXPECT_EQ(report.findings.front().level, Level::required);
}

TEST(Check, SameInputSameReport) {
  const Report a = crowded().report(kAll), b = crowded().report(kAll);
  ASSERT_EQ(a.findings.size(), b.findings.size());
  for (std::size_t i = 0; i < a.findings.size(); ++i) {
    EXPECT_EQ(a.findings[i].rule, b.findings[i].rule);
    EXPECT_EQ(a.findings[i].book, b.findings[i].book);
    EXPECT_EQ(a.findings[i].measured, b.findings[i].measured);
    EXPECT_EQ(a.findings[i].subjects, b.findings[i].subjects);
  }
}

TEST(Check, OnlyChosenBooksSpeakAndUnknownOnesAreIgnored) {
  const TestRoom room = crowded();
  for (const Finding& f : room.report({"comfort", "no-such-book"}).findings) EXPECT_EQ(f.book, "comfort");
  EXPECT_TRUE(room.report({}).findings.empty());
}

TEST(Check, PlacesAreNeverWithoutExtent) {
  for (const Finding& f : crowded().report(kAll).findings) {
    SCOPED_TRACE(f.book + "/" + f.rule);
    EXPECT_FALSE(f.places.empty());
    for (const Place& p : f.places) {
      switch (p.kind) {
        case Place::Kind::point:
          EXPECT_EQ(p.points.size(), 1u);
          break;
        case Place::Kind::line:
          EXPECT_EQ(p.points.size(), 2u);
          break;
        case Place::Kind::zone:
          EXPECT_GE(p.points.size(), 3u);
          EXPECT_GT(areaOf(p.points), Area{});
          EXPECT_EQ(f.outcome, Outcome::shortfall) << "a zone shows what is missing";
          break;
      }
    }
  }
}

TEST(Check, TheMeasuredLineIsAsLongAsTheFigure) {
  int lines = 0;
  for (const Finding& f : crowded().report({"us-residential", "comfort"}).findings) {
    const Length* measured = f.measured ? std::get_if<Length>(&*f.measured) : nullptr;
    if (measured == nullptr || f.rule == "door-clear-opening" || f.places[0].kind != Place::Kind::line)
      continue;
    EXPECT_NEAR(distance(f.places[0].points[0], f.places[0].points[1]).inches(), measured->inches(), 0.02)
        << f.rule;
    ++lines;
  }
  EXPECT_GE(lines, 8);
}

TEST(Check, ShortByIsWhatIsMissing) {
  for (const Finding& f : crowded().report(kAll).findings) {
    EXPECT_EQ(f.short_by.has_value(), f.outcome == Outcome::shortfall && f.compare != Compare::isTrue)
        << f.rule;
    if (!f.short_by || !std::holds_alternative<Length>(*f.short_by) || f.compare != Compare::atLeast)
      continue;
    EXPECT_EQ(std::get<Length>(*f.short_by), std::get<Length>(*f.limit) - std::get<Length>(*f.measured))
        << f.rule;
  }
}

// A fixture that will be taken out is neither checked nor in anybody's way.
TEST(Check, RemovedFixturesDoNotCount) {
  TestRoom room(60, 72);
  room.toilet(30);
  room.add("old", FixtureKind::cabinet, "n", 50, 20, 20).status =
      Status::remove;  // 10 in from the centreline
  EXPECT_TRUE(met(room.outcome("us-residential", "toilet-centreline-side")));
  room.option().fixtures[1].status = Status::keep;
  EXPECT_EQ(room.outcome("us-residential", "toilet-centreline-side"), Outcome::shortfall);
  room.option().fixtures[0].status = Status::remove;
  EXPECT_EQ(room.outcome("us-residential", "toilet-centreline-side"), Outcome::notApplicable);
}

// Mirrors and paper holders are no obstruction (the uniform code names paper holders as an exception).
TEST(Check, ThingsOnWallsAreNoObstruction) {
  TestRoom room(60, 72);
  room.toilet(16);
  const double before = room.measured("us-uniform", "toilet-centreline-side");
  WallItem holder;
  holder.id = {"paper"};
  holder.kind = "paper-holder";
  holder.wall = {"w"};
  holder.along = 50_in;
  holder.width = 6_in;
  room.option().on_walls = {holder};
  EXPECT_EQ(room.measured("us-uniform", "toilet-centreline-side"), before);
}

// 5 x 8 rooms have the toilet beside the bath, before part of its open side; that is accepted everywhere.
TEST(Check, TheBathIsMeasuredWhereItsOpenSideIsClearest) {
  TestRoom room(96, 60);
  room.add("bath", FixtureKind::bath, "e", 30, 60, 30);
  room.toilet(45);  // 11 in from the bath, over 28 in of its side
  const auto found = room.findings("us-residential", "bath-clear-front");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].outcome, Outcome::clear);
  EXPECT_EQ(found[0].detail, "clearest-30");
  room.add("cab", FixtureKind::cabinet, "s", 45, 18, 20);  // leaves 12 in between
  EXPECT_EQ(room.outcome("us-residential", "bath-clear-front"), Outcome::shortfall);
}

TEST(Check, AVanityOfUnknownBasinsIsNotJudged) {
  TestRoom room(90, 90);
  Fixture& v = room.add("v", FixtureKind::vanity, "n", 40, 60, 21);
  EXPECT_EQ(room.outcome("us-residential", "basin-centreline-side"), Outcome::unknown);
  EXPECT_EQ(room.outcome("us-residential", "basin-spacing"), Outcome::notApplicable);
  v.basins = 1;
  EXPECT_EQ(room.outcome("us-residential", "basin-centreline-side"), Outcome::clear);
}

TEST(Check, AnEmptyRoomHasNoFindings) {
  Plan plan;
  plan.options.resize(1);
  BookChoice choice;
  choice.books = kAll;
  EXPECT_TRUE(check(deriveLayout(plan, 0), choice).findings.empty());
}

TEST(Check, ChoiceComesFromThePlan) {
  Plan plan;
  plan.books = {"comfort"};
  EXPECT_EQ(choiceOf(plan).books, plan.books);
  EXPECT_EQ(choiceOf(plan).site_tolerance, 0.5_in);
  plan.site_tolerance = 10_mm;
  EXPECT_EQ(choiceOf(plan).site_tolerance, 10_mm);
}

}  // namespace
}  // namespace elbowroom
