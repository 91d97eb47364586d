// What the open door shows: by similar triangles through the depth of the doorway.
#include "core/rules/sightline.h"

#include <gtest/gtest.h>

#include "core/geometry/measure.h"
#include "tests/core/rules/test_room.h"

namespace elbowroom {
namespace {
using namespace literals;
using testing_room::in;
using testing_room::TestRoom;

SightFigure seen(TestRoom& room, double out, Angle opens = 90_deg) {
  const Layout layout = deriveLayout(room.plan(), 0);
  return *sightFigure(layout, layout.openings.at(0), opens, in(out));
}

// A cased opening of 30 in in a wall of 4 1/2, the eye 60 in outside. The rays spread, so the inner jambs, 15 in
// from the axis and 64.5 in from the eye, limit the view: 30 * (64.5 + 96) / 64.5 in of the far wall.
TEST(Sightline, ACasedOpeningShowsThatMuchOfTheFarWall) {
  TestRoom room(200, 96);
  room.door("s", 100, 30, Hand::right).action = DoorAction::cased;
  const SightFigure figure = seen(room, 60);
  EXPECT_EQ(figure.eye, (Point{in(100), in(-64.5)}));
  Length low = in(200), high;
  for (const Point& p : figure.seen)
    if (p.y == in(96)) low = std::min(low, p.x), high = std::max(high, p.x);
  EXPECT_NEAR((high - low).inches(), 30 * 160.5 / 64.5, 1e-6);
}

TEST(Sightline, TheToiletOppositeIsSeenAndTheOneBesideTheDoorIsNot) {
  TestRoom room(96, 96);
  room.door("s", 48, 36, Hand::right);
  room.toilet(48);
  EXPECT_EQ(room.findings("comfort", "toilet-seen").at(0).subjects.at(0).text, "wc");
  EXPECT_NEAR(std::get<Amount>(*room.findings("comfort", "toilet-seen").at(0).measured).value(), 100, 0.01);
  TestRoom beside(96, 96);
  beside.door("s", 30, 36, Hand::right);
  beside.add("wc", FixtureKind::toilet, "s", 75, 20, 28);
  EXPECT_EQ(beside.outcome("comfort", "toilet-seen"), Outcome::clear);
}

// The leaf hides what stands behind it when its hinge is on the toilet's side, and not from the other side.
TEST(Sightline, TheLeafHidesWhatIsBehindIt) {
  for (const auto& [hinge, hides] : {std::pair{Hand::right, true}, {Hand::left, false}}) {
    TestRoom room(96, 96);
    room.door("s", 38, 36, hinge);  // opening x 40 to 76, the right jamb (seen facing it) at 40
    room.add("wc", FixtureKind::toilet, "w", 46, 20, 28);
    EXPECT_EQ(room.outcome("comfort", "toilet-seen") == Outcome::clear, hides);
  }
}

// Open only a little, the leaf leaves the rays of its latch side.
TEST(Sightline, AnArrestedLeafHidesMore) {
  TestRoom room(96, 96);
  room.door("s", 48, 36, Hand::right);
  room.toilet(48);
  const double at_90 = seen(room, 60).toilets.at(0).seen.share;
  const double at_30 = seen(room, 60, 30_deg).toilets.at(0).seen.share;
  EXPECT_EQ(at_90, 1);
  EXPECT_LT(at_30, at_90);
}

// A closet as high as the eye hides, a vanity does not; glass never does.
TEST(Sightline, OnlyHighThingsHide) {
  for (const auto& [kind, height, hides] : {std::tuple{FixtureKind::linenCloset, 84.0, true},
                                            {FixtureKind::linenCloset, 48.0, false},
                                            {FixtureKind::shower, 84.0, false},
                                            {FixtureKind::cabinet, 84.0, true}}) {
    TestRoom room(96, 120);
    room.door("s", 48, 36, Hand::right, Swing::out);
    room.toilet(48);
    Fixture& screen = room.add("screen", kind, "n", 48, 60, 12);
    screen.placement = Standing{{in(48), in(60)}, {}};
    screen.height = in(height);
    EXPECT_EQ(room.outcome("comfort", "toilet-seen") == Outcome::clear, hides) << height;
  }
}

TEST(Sightline, WindowsAndUndrawnRoomsHaveNone) {
  TestRoom room(96, 96);
  room.door("s", 48, 36, Hand::right).kind = OpeningKind::window;
  const Layout layout = deriveLayout(room.plan(), 0);
  EXPECT_FALSE(sightFigure(layout, layout.openings.at(0), 90_deg, 60_in).has_value());
}

}  // namespace
}  // namespace elbowroom
