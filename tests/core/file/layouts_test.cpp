// US Department of Justice, Guidance on the 2010 ADA Standards for Accessible Design: plans 1A to 3 of
// single-user toilet rooms, as plan files, against the verdicts that the guidance prints or draws.
//
// Coordinates below are the drawings': inches from the upper left inside corner, y down. [P] published in
// words, [Pd] shown in the drawing, [D] follows from the printed figures and the text of the standard.
// Figures read off a drawing are good to half an inch.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "core/file/plan_file.h"
#include "core/rules/check.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr double kDrawn = 0.75;  // in: half an inch of the drawing in x and in y

Length in(double v) { return Length::fromInches(v); }

std::string pathOf(const std::string& id) {
  return std::string(SOURCE_DIR) + "/tests/layouts/" + id + ".elbowroom";
}

struct Rect {
  double x0, x1, y0, y1;
};

struct Drawing {
  Plan plan;
  Layout layout;
  Length top;  // y up of the drawing's y = 0

  explicit Drawing(const std::string& id) {
    const Result<Plan> read = loadPlan(pathOf(id));
    if (!read) throw std::runtime_error(read.error().message);
    plan = *read;
    layout = deriveLayout(plan, 0);
    top = boundsOf(layout.room).high.y;
  }
  Option& option() { return plan.options[0]; }
  Fixture& lavatory() { return option().fixtures.at(1); }
  void derive() { layout = deriveLayout(plan, 0); }
  // The wall with the door moves up; the plumbing wall and the fixtures on it stay.
  void makeShallower(Length by) {
    for (Wall& wall : option().room.walls)
      if (wall.from.y == Length{}) wall.from.y += by;
    derive();
  }

  Point at(double x, double y_down) const { return {in(x), top - in(y_down)}; }
  Outline outline(Rect r) const { return {at(r.x0, r.y0), at(r.x0, r.y1), at(r.x1, r.y1), at(r.x1, r.y0)}; }
  Fit fit(const FreeFloor& floor, Rect r) const {
    const Placed place{at((r.x0 + r.x1) / 2, (r.y0 + r.y1) / 2), {}};
    return floor.rectangleFit(in(r.x1 - r.x0), in(r.y1 - r.y0), place);
  }
  bool isFree(Rect r) const { return fit(layout.floor, r).fits; }
  // 2010 Standards 604.3: the space is measured round the water closet, so that one does not count.
  FreeFloor floorWithoutToilet() const {
    std::vector<Outline> others;
    for (const PlacedFixture& f : layout.fixtures)
      if (f.fixture.kind != FixtureKind::toilet) others.push_back(f.footprint);
    return FreeFloor(layout.room, others);
  }
  Fit toiletSpace(Rect r) const { return fit(floorWithoutToilet(), r); }
  Circle circle(double x, double y_down) const { return {at(x, y_down), 30_in}; }
  const Leaf& leaf() const { return layout.openings.at(0).leaves.at(0); }

  // Bare floor less what the door sweeps; for places found on it the sector itself decides.
  FreeFloor floorBeyondDoor() const {
    std::vector<Outline> all = layout.solid_outlines;
    all.push_back(sectorOutline(leaf(), 180));
    return FreeFloor(layout.room, all);
  }

  double largest(const FreeFloor& floor) const { return 2 * floor.largestCircle().radius.inches(); }
  // Met, and not merely for want of something to measure.
  bool meets(const char* rule) const {
    int found = 0, met = 0;
    for (const Finding& f : check(layout, choiceOf(plan)).findings) {
      if (f.rule != rule) continue;
      ++found;
      if (f.outcome == Outcome::clear || f.outcome == Outcome::close) ++met;
    }
    return found == 1 && met == 1;
  }
};

// 2010 Standards 604.3.1; the guidance draws it from the corner of the side wall and the rear wall.
constexpr Rect kToiletSpace{0, 60, 0, 56};
// 1991 Standards figure 28, forward approach.
constexpr Rect kToiletSpace1991{0, 48, 0, 66};

// A 30 x 48 as drawn: no axis-parallel one lies beyond the door's arc [D], the drawn one does [Pd].
void expectTurnedSpaceBeyondArc(const Drawing& d, const Outline& drawn, Angle turn) {
  EXPECT_FALSE(gapToSector(d.leaf(), drawn).overlap) << "as drawn, beyond the arc";
  const Point center = centroidOf(drawn);
  const FreeFloor floor = d.floorBeyondDoor();
  for (const Angle axis : {0_deg, 90_deg})
    EXPECT_FALSE(floor.nearestRectangle(48_in, 30_in, {center, axis})) << axis.degrees();
  const auto placed = floor.nearestRectangle(48_in, 30_in, {center, turn});
  ASSERT_TRUE(placed);
  EXPECT_LE(distance(placed->center, center), in(kDrawn));
  EXPECT_FALSE(gapToSector(d.leaf(), rectangleOutline(48_in, 30_in, *placed)).overlap);
}

// Tilts of the long side from the y axis, in steps of 5 degrees, that find a place beyond the arc.
std::vector<int> tiltsThatFit(const Drawing& d) {
  const FreeFloor floor = d.floorBeyondDoor();
  std::vector<int> tilts;
  for (int tilt = -90; tilt < 90; tilt += 5) {
    const Placed near{d.at(42, 39), Angle::fromDegrees(90 + tilt)};
    if (floor.nearestRectangle(48_in, 30_in, near)) tilts.push_back(tilt);
  }
  return tilts;
}

TEST(PublishedLayouts, AreWrittenAsTheyAreRead) {
  for (const char* id : {"T1A", "T1B", "T1C", "T2A", "T2B", "T2C", "T3"}) {
    std::ifstream file(pathOf(id), std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    const Result<Plan> plan = readPlan(text.str());
    ASSERT_TRUE(plan) << id << ": " << plan.error().message;
    EXPECT_EQ(writePlan(*plan), text.str()) << id;
    EXPECT_NE(plan->extra.at("note").find("US Department of Justice"), std::string::npos) << id;
  }
}

// Rooms as printed in feet and inches; 2C prints 40.0 sq ft for its outline with the alcove.
TEST(PublishedLayouts, RoomAreasAreThePrintedOnes) {
  const std::pair<const char*, double> printed[] = {
      {"T1A", 60 * 87 / 144.0}, {"T1B", 84 * 60 / 144.0}, {"T1C", 84 * 66 / 144.0}, {"T2A", 42.5},
      {"T2B", 84 * 78 / 144.0}, {"T2C", 40.0},            {"T3", 84 * 69 / 144.0}};
  for (const auto& [id, square_feet] : printed)
    EXPECT_NEAR(Drawing(id).layout.room_area.squareFeet(), square_feet, 1e-9) << id;
  // [P] 2C is given as 6.25 % smaller than 2A; that is the difference over 2C's own area.
  const double a = Drawing("T2A").layout.room_area.squareFeet();
  const double c = Drawing("T2C").layout.room_area.squareFeet();
  EXPECT_NEAR((a - c) / c, 0.0625, 1e-9);
}

// [P] Every plan meets what it is drawn for. 1A and 2A do so for the toilet's space by the exception for
// dwellings alone (604.3.2), see below.
TEST(PublishedLayouts, MeetTheRulesOfTheStandard) {
  const char* const rules[] = {"turning-space", "toilet-clearance", "toilet-centreline-side",
                               "door-clear-opening"};
  for (const char* id : {"T1A", "T1B", "T1C", "T2A", "T2B", "T2C", "T3"}) {
    const Drawing d(id);
    for (const char* rule : rules)
      EXPECT_TRUE(d.meets(rule)) << id << " " << rule;
  }
}

// Plan 1A: 1991 Standards minimum, out-swinging door.
TEST(Plan1A, SixtyInchCircleFitsWithoutOverlap) {
  const Drawing d("T1A");
  EXPECT_NEAR(d.largest(d.layout.floor), 60.0, 0.02) << "[Pd] touches both side walls";
  EXPECT_TRUE(d.layout.floor.circleFit(d.circle(30, 57)).fits) << "[Pd] as drawn";
  EXPECT_TRUE(d.layout.floor.nearestCircle(60_in, d.at(30, 57)));
}

TEST(Plan1A, LavatoryStandsInTheToiletsSpace) {
  const Drawing d("T1A");
  const Fit fit = d.toiletSpace(kToiletSpace);
  EXPECT_FALSE(fit.fits) << "[D] 604.3.2, other than dwellings";
  EXPECT_EQ(fit.misses_by, 18_in) << "its whole depth";
  EXPECT_EQ(fit.obstacle, 0) << "the lavatory";
  EXPECT_TRUE(d.meets("toilet-clearance")) << "[D] dwelling: edge 18.3 from the centreline, 66 deep";
}
TEST(Plan1A, DwellingExceptionNeedsItsFigures) {
  Drawing near("T1A");
  std::get<OnWall>(near.lavatory().placement).along -= 0.5_in;  // edge 17.8 from the centreline
  near.derive();
  EXPECT_FALSE(near.meets("toilet-clearance"));
}

// [P] "would be larger if the door were in-swinging": the leaf would cross the 48 x 66 space of 1991.
TEST(Plan1A, InSwingingDoorWouldNeedALargerRoom) {
  Drawing d("T1A");
  d.option().openings[0].swing = Swing::in;
  d.derive();
  EXPECT_TRUE(gapToSector(d.leaf(), d.outline(kToiletSpace1991)).overlap);
}

// Plan 1B: 2010 Standards minimum, out-swinging door.
TEST(Plan1B, CircleFitsOnlyUnderTheLavatory) {
  Drawing d("T1B");
  // [P] 304.3.1. The figure 48.0 that can be derived for the bare floor depends on the front of the bowl, of
  // which the plan prints the projection alone; ours gives 48.9. The verdict does not depend on it.
  EXPECT_FALSE(d.layout.floor.nearestCircle(60_in, d.at(52.8, 30)));
  EXPECT_LT(d.largest(d.layout.floor), 50);
  EXPECT_FALSE(d.layout.floor.circleFit(d.circle(52.8, 30)).fits);
  EXPECT_TRUE(d.layout.floor_with_knees.circleFit(d.circle(52.8, 30)).fits) << "[Pd] as drawn";
  EXPECT_GE(d.largest(d.layout.floor_with_knees), 59.98);
  const Figures figures = figuresOf(d.layout);
  EXPECT_TRUE(figures.turning.knee_space_used);

  // [D] With 10 in of overlap at most 54.1, again depending on the bowl.
  d.lavatory().knee_space->toe = 10_in;
  d.derive();
  EXPECT_FALSE(d.layout.floor_with_knees.nearestCircle(60_in, d.at(52.8, 30)));
  EXPECT_LT(d.largest(d.layout.floor_with_knees), 55.5);
  EXPECT_GT(d.largest(d.layout.floor_with_knees), d.largest(d.layout.floor) + 3);
  EXPECT_FALSE(d.meets("turning-space"));
}
TEST(Plan1B, ToiletsSpaceIsClear) {
  const Drawing d("T1B");
  EXPECT_TRUE(d.toiletSpace(kToiletSpace).fits) << "[P] 604.3.1";
  EXPECT_FALSE(d.toiletSpace({0, 61, 0, 56}).fits) << "the lavatory's edge is printed at 5'-0\"";
}
TEST(Plan1B, DoorHasItsPushSideSpaceWithoutACloser) {
  const Drawing d("T1B");
  EXPECT_TRUE(d.isFree({24, 60, 12, 60})) << "[P] 36 x 48";
  const Fit fit = d.fit(d.layout.floor, {24, 72, 12, 60});
  EXPECT_FALSE(fit.fits) << "[P] with closer and latch, 12 more beside the latch";
  EXPECT_EQ(fit.misses_by, 6_in) << "lavatory 18 deep, space to 12 from the rear wall";
}

// Plan 1C: as 1B with closer and latch.
TEST(Plan1C, DoorHasItsPushSideSpaceWithCloserAndLatch) {
  Drawing d("T1C");
  EXPECT_EQ(d.option().openings[0].closer, true);
  EXPECT_EQ(d.option().openings[0].latch, true);
  EXPECT_TRUE(d.isFree({24, 72, 18, 66})) << "[P] 48 x 48";
  EXPECT_TRUE(d.toiletSpace(kToiletSpace).fits) << "[P] 604.3.1";
  d.makeShallower(1_in);
  EXPECT_EQ(d.layout.room_area, 84_in * 65_in);
  const Fit fit = d.fit(d.layout.floor, {24, 72, 17, 65});
  EXPECT_FALSE(fit.fits) << "[D] the depth is exactly 48 + 18";
  EXPECT_EQ(fit.misses_by, 1_in);
}
TEST(Plan1C, CircleRunsTwelveInchesUnderTheLavatory) {
  Drawing d("T1C");
  EXPECT_TRUE(d.layout.floor_with_knees.circleFit(d.circle(50.7, 36)).fits) << "[Pd] as drawn";
  EXPECT_FALSE(d.layout.floor.circleFit(d.circle(50.7, 36)).fits);
  EXPECT_FALSE(d.layout.floor.nearestCircle(60_in, d.at(50.7, 36)));
  d.lavatory().knee_space->toe = 12_in;
  d.derive();
  EXPECT_TRUE(d.layout.floor_with_knees.circleFit(d.circle(50.7, 36)).fits);
}

// Plan 2A: 1991 Standards minimum, in-swinging door.
TEST(Plan2A, CircleAsDrawnIsCrossedByTheDoorOnly) {
  const Drawing d("T2A");
  const Circle drawn = d.circle(30, 57.4);
  EXPECT_TRUE(d.layout.floor.circleFit(drawn).fits) << "[Pd]";
  const Outline ring = arcPoints(drawn.center, drawn.radius, {1, 0}, 360_deg, 180);
  EXPECT_TRUE(gapToSector(d.leaf(), ring).overlap) << "[P] the door may cross it (304.4)";
}
TEST(Plan2A, DoorArcJustClearsTheToiletsSpace) {
  const Drawing d("T2A");
  const Gap gap = gapToSector(d.leaf(), d.outline(kToiletSpace1991));
  EXPECT_FALSE(gap.overlap) << "[Pd] 48 x 66 of the 1991 Standards";
  EXPECT_NEAR(gap.distance.inches(), 0, 1e-6);
  EXPECT_TRUE(gapToSector(d.leaf(), d.outline({0, 48, 0, 67})).overlap);
}
TEST(Plan2A, DoorHasItsPullSideSpace) {
  const Drawing d("T2A");
  EXPECT_TRUE(d.isFree({4, 58, 42, 102})) << "[D] 54 x 60";
  const Fit fit = d.toiletSpace(kToiletSpace);
  EXPECT_FALSE(fit.fits) << "[D] 604.3.2, other than dwellings";
  EXPECT_EQ(fit.obstacle, 0) << "the lavatory";
}

// Plan 2B: 2010 Standards minimum, in-swinging door.
TEST(Plan2B, CircleIsFreeOfTheLavatory) {
  const Drawing d("T2B");
  EXPECT_TRUE(d.layout.floor.circleFit(d.circle(46.3, 46.7)).fits) << "[Pd] as drawn";
  EXPECT_GE(d.largest(d.layout.floor), 60);
}
TEST(Plan2B, DoorEntersTheToiletsSpace) {
  const Drawing d("T2B");
  EXPECT_TRUE(d.toiletSpace(kToiletSpace).fits) << "[P] 604.3.1, the door aside";
  const Outline space = d.outline(kToiletSpace);
  EXPECT_TRUE(gapToSector(d.leaf(), space).overlap) << "[P] allowed by 603.2.3 exception 2 alone";
  EXPECT_NEAR(commonArea(sectorOutline(d.leaf(), 180), space).squareInches(), 278, 3);
}
TEST(Plan2B, ClearFloorSpaceBeyondTheArcOnlyTurned) {
  const Drawing d("T2B");
  const Outline drawn{d.at(48.8, 6), d.at(27.6, 27), d.at(61.5, 60.5), d.at(82.6, 39.5)};
  expectTurnedSpaceBeyondArc(d, drawn, -45_deg);
  EXPECT_EQ(tiltsThatFit(d), (std::vector{40, 45, 50, 55, 60, 65, 70, 75})) << "[D]";
}
TEST(Plan2B, DoorHasItsPullSideSpace) {
  Drawing d("T2B");
  EXPECT_TRUE(d.isFree({24.4, 78.4, 18, 78})) << "[Pd] 54 x 60";
  d.makeShallower(1_in);
  EXPECT_EQ(d.layout.room_area, 84_in * 77_in);
  const Fit fit = d.fit(d.layout.floor, {24.4, 78.4, 17, 77});
  EXPECT_FALSE(fit.fits) << "[D] the depth is exactly 60 + 18";
  EXPECT_EQ(fit.misses_by, 1_in);
}

// Plan 2C: 2010 Standards minimum, in-swinging door, recessed lavatory.
TEST(Plan2C, CircleAndSpacesAsDrawn) {
  const Drawing d("T2C");
  EXPECT_TRUE(d.layout.floor.circleFit(d.circle(53.2, 48)).fits) << "[Pd]";
  EXPECT_TRUE(d.toiletSpace({0, 60, 18, 74}).fits) << "[Pd] 604.3.1";
  EXPECT_TRUE(d.isFree({26, 80, 18, 78})) << "[Pd] pull side, 54 x 60";
  EXPECT_FALSE(d.isFree({26, 80, 17, 77})) << "the lavatory's front is at 18";
  EXPECT_EQ(d.leaf().hinge, d.at(80, 78));
}
TEST(Plan2C, ClearFloorSpaceBeyondTheArcOnlyTurned) {
  const Drawing d("T2C");
  const Outline drawn{d.at(42, 19.5), d.at(65.2, 37.5), d.at(36, 75), d.at(12, 57)};
  // Long side as drawn, from (42,19.5) to (12,57): 38 degrees from the y axis.
  expectTurnedSpaceBeyondArc(d, drawn, 52_deg);
  EXPECT_EQ(tiltsThatFit(d), (std::vector{-40, -35, -30, -25, -20})) << "[D]";
}

// Plan 3: meets both standards, with a T.
TEST(Plan3, TFitsWhereTheCircleDoesNot) {
  const Drawing d("T3");
  // The figure 55.2 that can be derived depends on the unprinted front of the bowl; ours gives 56.1.
  EXPECT_FALSE(d.layout.floor.nearestCircle(60_in, d.at(42, 30))) << "[D] without knee space";
  EXPECT_LT(d.largest(d.layout.floor), 57);
  EXPECT_TRUE(d.layout.floor.turningT()) << "[P]";
  EXPECT_TRUE(d.isFree({24.6, 60.4, 8.5, 32.5})) << "[Pd] stem as drawn";
  EXPECT_TRUE(d.isFree({13, 72.5, 32.5, 68.5})) << "[Pd] bar as drawn";
  // 36 wide stem, 60 x 36 bar: the full T within the drawing's half inch.
  EXPECT_TRUE(d.isFree({24.4, 60.4, 8.5, 32.5}));
  EXPECT_TRUE(d.isFree({12.4, 72.4, 32.5, 68.5}));
  EXPECT_TRUE(d.toiletSpace(kToiletSpace).fits) << "[P] 604.3.1";
}
TEST(Plan3, PassesByTheTWithoutKneeSpace) {
  Drawing d("T3");
  d.lavatory().knee_space.reset();
  d.derive();
  EXPECT_TRUE(d.meets("turning-space"));
}

}  // namespace
}  // namespace elbowroom
