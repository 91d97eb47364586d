// Figure cases of the 2010 ADA Standards and the plans of the DOJ "Guidance on the 2010 ADA Standards".
#include <gtest/gtest.h>

#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::met;
using testing_room::TestRoom;

const char* const kBook = "us-access";

// F1, figure 604.3.1: 60 x 56 empty passes; a cabinet at x 59 or y 55 fails.
TEST(AccessCases, F1ToiletClearance) {
  const auto with = [](const char* wall, double along, double width, double depth) {
    TestRoom room(100, 100);
    room.toilet(17);
    if (width > 0) room.add("cab", FixtureKind::cabinet, wall, along, width, depth);
    return room;
  };
  EXPECT_TRUE(met(with("n", 0, 0, 0).outcome(kBook, "toilet-clearance")));
  EXPECT_EQ(with("n", 70, 20, 20).outcome(kBook, "toilet-clearance"), Outcome::close) << "cabinet from x 60";
  const TestRoom beside = with("n", 69, 20, 20);
  EXPECT_EQ(beside.outcome(kBook, "toilet-clearance"), Outcome::shortfall) << "cabinet from x 59";
  EXPECT_NEAR(beside.measured(kBook, "toilet-clearance"), 59, 1e-6);
  EXPECT_NEAR(beside.shortBy(kBook, "toilet-clearance"), 1, 1e-6);
  EXPECT_TRUE(met(with("w", 30, 28, 50).outcome(kBook, "toilet-clearance")))
      << "cabinet 56 in from the rear wall";
  const TestRoom before = with("w", 31, 28, 50);
  EXPECT_EQ(before.outcome(kBook, "toilet-clearance"), Outcome::shortfall) << "cabinet at y 55";
  EXPECT_NEAR(before.measured(kBook, "toilet-clearance"), 55, 1e-6);
}

TEST(AccessCases, ToiletClearanceInRoomsTooSmall) {
  for (const auto& [width, depth, lacks] :
       {std::tuple{60.0, 56.0, 0.0}, {50.0, 80.0, 10.0}, {80.0, 50.0, 6.0}, {50.0, 50.0, 6.0}}) {
    TestRoom room(width, depth);
    room.toilet(17);
    EXPECT_NEAR(room.shortBy(kBook, "toilet-clearance"), lacks, 1e-6) << width << " x " << depth;
  }
}

// F2, 604.3.2 exception for dwellings: basin edge 18 in from the centreline and 66 in of depth.
TEST(AccessCases, F2BasinBesideToilet) {
  const auto with = [](double edge, double depth, bool knees) {
    TestRoom room(100, depth);
    room.toilet(16);
    Fixture& basin = room.add("b", FixtureKind::basin, "n", edge + 10, 20, 18);
    if (knees) basin.knee_space = KneeSpace{27_in, 11_in, 17_in};
    return met(room.outcome(kBook, "toilet-clearance"));
  };
  EXPECT_TRUE(with(34, 66, true));
  EXPECT_FALSE(with(33.5, 66, true));
  EXPECT_FALSE(with(34, 65, true));
  EXPECT_FALSE(with(34, 66, false)) << "a basin without knee space is no 606 lavatory";
}

// F3, 604.2: 16, 17, 18 pass; 15.5 and 18.5 fail; a bath is no side wall.
TEST(AccessCases, F3CentrelineToSideWall) {
  for (const auto& [along, passes] :
       {std::pair{16.0, true}, {17.0, true}, {18.0, true}, {15.5, false}, {18.5, false}}) {
    TestRoom room(100, 100);
    room.toilet(along);
    EXPECT_EQ(met(room.outcome(kBook, "toilet-centreline-side")), passes) << along;
  }
}

// The published plans, y turned upwards. Projection 29.2 in, the stated way round an exact tie in plan 1A.
TestRoom publishedPlan(double width, double depth, double wc, double basin_left, double basin_right) {
  TestRoom room(width, depth);
  room.toilet(wc, 29.2);
  Fixture& basin =
      room.add("b", FixtureKind::basin, "n", (basin_left + basin_right) / 2, basin_right - basin_left, 18);
  basin.knee_space = KneeSpace{27_in, 11_in, 17_in};
  return room;
}

// Plan 1A: the circle fits without overlap; the basin is allowed beside the toilet in a dwelling.
TEST(AccessCases, Plan1A) {
  const TestRoom room = publishedPlan(60, 87, 18, 36.3, 56.8);
  EXPECT_TRUE(met(room.outcome(kBook, "turning-space")));
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-clearance")));
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-centreline-side")));
}

// Plan 1B: the circle fits only because it extends into the knee and toe space. Without, it is about 48 in,
// which depends on the shape of the bowl; even 10 in of overlap would give no more than 54.1 in.
TEST(AccessCases, Plan1B) {
  TestRoom room = publishedPlan(84, 60, 16, 60.2, 80.7);
  EXPECT_TRUE(met(room.outcome(kBook, "turning-space")));
  EXPECT_EQ(room.findings(kBook, "turning-space")[0].detail, "knee-space-used");
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-clearance")));
  room.option().fixtures[1].knee_space.reset();
  EXPECT_EQ(room.outcome(kBook, "turning-space"), Outcome::shortfall);
  EXPECT_LT(room.measured(kBook, "turning-space"), 54.1);
}

// Plan 2B: circle free of the basin.
TEST(AccessCases, Plan2B) {
  const TestRoom room = publishedPlan(84, 78, 16, 60.2, 80.7);
  EXPECT_TRUE(met(room.outcome(kBook, "turning-space")));
  EXPECT_TRUE(met(room.outcome(kBook, "toilet-clearance")));
}

// Plan 3 passes by the T; a rule that knows circles alone would fail it.
TEST(AccessCases, Plan3PassesByTheT) {
  TestRoom room = publishedPlan(84, 69, 16, 60.4, 80.9);
  room.option().fixtures[1].knee_space.reset();
  EXPECT_TRUE(met(room.outcome(kBook, "turning-space")));
  EXPECT_EQ(room.findings(kBook, "turning-space")[0].detail, "turning-by-t");
}

// In a home the comfort book asks for turning only where the plan names a person with a wheelchair.
TEST(AccessCases, TurningIsAskedForWhereAWheelchairIsNamed) {
  TestRoom room(58, 80);
  EXPECT_EQ(room.outcome("comfort", "turning-space"), Outcome::notApplicable);
  Person visitor;
  visitor.chair = Chair{26_in, 48_in};
  room.plan().people = {visitor};
  EXPECT_EQ(room.outcome("comfort", "turning-space"), Outcome::shortfall);
}

}  // namespace
}  // namespace elbowroom
