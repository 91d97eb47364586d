// Where a rectangle or a turning T fits at any angle, yes or no and how near, against brute force over all
// critical places (critical_fit.h) and, for every place given, GEOS on the raw outlines.
//
// ELBOWROOM_ORACLE_ROOMS sets how many random rooms are tried.
#include <gtest/gtest.h>

#include <cstdlib>

#include "core/geometry/free_floor.h"
#include "tests/oracle/bathrooms.h"
#include "tests/oracle/critical_fit.h"

namespace elbowroom::oracle {
namespace {

int rooms() {
  const char* asked = std::getenv("ELBOWROOM_ORACLE_ROOMS");
  return asked ? std::max(1, std::atoi(asked)) : 2000;
}
Length in(double v) { return Length::fromInches(v); }

// An alley between two things, a hair wider or narrower than the 30 in that are looked for, somewhere turned.
Scene alley(Dice& dice) {
  const double wide = 30 + dice.whole(-12, 12) * 0.005, deep = 48 + dice.whole(-12, 12) * 0.005;
  Scene scene{rect(0, 0, 60 + wide, 20 + deep),
              {rect(0, 0, 30, 20 + deep), rect(30 + wide, 0, 60 + wide, 20 + deep)}};
  if (dice.chance(0.5)) scene.things.push_back(rect(30, deep, 60 + wide, 20 + deep));
  if (dice.chance(0.5)) scene.things.push_back(star(dice, 45, deep + 14, 2, 6, 5));
  const Angle turn = Angle::fromDegrees(dice.between(0, 360));
  scene.room = turned(scene.room, turn);
  for (Outline& o : scene.things) o = turned(o, turn);
  return scene;
}
Scene sceneFor(Dice& dice, int i, int most) {
  if (i % 5 == 0) return alley(dice);
  Scene scene = bathroom(dice);
  scene.things.resize(
      std::min<std::size_t>(scene.things.size(), static_cast<std::size_t>(dice.whole(2, most))));
  return scene;
}

// Every part, moved in by kContact, lies in the room and shares nothing with any thing.
bool liesClear(const Scene& scene, const std::vector<Outline>& parts) {
  const Shape room = solid(scene.room);
  for (const Outline& part : parts) {
    const Shape shape = solid(part);
    if (!room->covers(shape.get())) return false;
    for (const Outline& thing : scene.things)
      if (solid(thing)->intersects(shape.get())) return false;
  }
  return true;
}
const double kMovedIn = kContact.inches() + 2e-6;  // and the rounding of turns and places
Outline movedIn(double along, double across, Placed place) {
  return rectangleOutline(in(along - 2 * kMovedIn), in(across - 2 * kMovedIn), place);
}

Figure rectangle(double along, double across) {
  return {{{-along / 2, -across / 2, along / 2, across / 2}}, std::numbers::pi};
}

TEST(RectangleOracle, FitsAtSomeAngleExactlyWhereBruteForceFindsAPlace) {
  Dice dice(305);
  int fits = 0, none = 0;
  for (int i = 0; i < rooms(); ++i) {
    const Scene scene = sceneFor(dice, i, 11);
    const FreeFloor floor(scene.room, scene.things);
    const bool large = dice.chance(0.25);
    const double along = large ? 60 : 48, across = large ? 56 : 30;
    const auto place = floor.rectangleSomewhere(in(along), in(across));
    fits += place.has_value(), none += !place;
    if (place) {
      ASSERT_TRUE(liesClear(scene, {movedIn(along, across, *place)})) << i;
    } else {
      CriticalFit truth(scene);
      ASSERT_FALSE(truth.find(rectangle(along, across), 0.01)) << i;
    }
  }
  printf("%d fit, %d do not\n", fits, none);
  EXPECT_GT(fits, rooms() / 5);
  EXPECT_GT(none, rooms() / 5);
}

TEST(RectangleOracle, NearestPlaceIsWithinTwoHundredths) {
  Dice dice(48);
  int found = 0;
  for (int i = 0; i < rooms() / 4; ++i) {
    const Scene scene = sceneFor(dice, i, 8);
    const FreeFloor floor(scene.room, scene.things);
    const Box box = boundsOf(scene.room);
    const Placed near{{box.low.x + (box.high.x - box.low.x).scaled(dice.between(0, 1)),
                       box.low.y + (box.high.y - box.low.y).scaled(dice.between(0, 1))},
                      Angle::fromDegrees(dice.between(0, 180))};
    const auto place = floor.nearestRectangleAnyTurn(in(48), in(30), near);
    CriticalFit truth(scene);
    const Flat wanted{near.center.x.inches(), near.center.y.inches()};
    if (!place) {
      ASSERT_FALSE(truth.find(rectangle(48, 30), 0.01)) << i;
      continue;
    }
    ++found;
    ASSERT_TRUE(liesClear(scene, {movedIn(48, 30, *place)})) << i;
    const double away = distance(place->center, near.center).inches();
    const auto nearer = truth.findWithin(rectangle(48, 30), 0, wanted, away - 0.02);
    ASSERT_FALSE(nearer) << i << ": " << std::hypot(nearer->at.x - wanted.x, nearer->at.y - wanted.y)
                         << " in, not " << away;
  }
  printf("%d found of %d\n", found, rooms() / 4);
  EXPECT_GT(found, rooms() / 20);
}

struct TParts {
  Part bar, base;
};
// About a point of the middle line; +x from the base to the bar.
TParts partsOf(const TurningShape& s, double ref) {
  const double x = s.along.inches() / 2, y = s.across.inches() / 2, b = s.base_width.inches() / 2;
  return {{x - s.bar_width.inches() - ref, -y, x - ref, y}, {-x - ref, -b, x - ref, b}};
}
Outline partAt(const Part& p, Placed place) {
  const Direction u = Direction::fromAngle(place.turn);
  const Point middle = place.center + in((p.x0 + p.x1) / 2) * u + in((p.y0 + p.y1) / 2) * u.left();
  return movedIn(p.x1 - p.x0, p.y1 - p.y0, {middle, place.turn});
}

void compareT(const TurningShape& shape, std::uint64_t seed, int count) {
  Dice dice(seed);
  int fits = 0, none = 0;
  for (int i = 0; i < count; ++i) {
    Scene scene = bathroom(dice);
    scene.things.resize(
        std::min<std::size_t>(scene.things.size(), static_cast<std::size_t>(dice.whole(1, 7))));
    if (i % 4 == 0) {  // the T itself as a room, a hair larger or smaller
      TurningShape room = shape;
      room.base_width += in(dice.whole(-8, 8) * 0.005);
      room.across += in(dice.whole(-8, 8) * 0.005);
      scene = {turningOutline(room, {at(50, 50), Angle::fromDegrees(dice.between(0, 360))}), {}};
    }
    const auto place = FreeFloor(scene.room, scene.things).turningT(shape);
    fits += place.has_value(), none += !place;
    if (place) {
      const TParts parts = partsOf(shape, 0);
      ASSERT_TRUE(liesClear(scene, {partAt(parts.bar, *place), partAt(parts.base, *place)})) << i;
      continue;
    }
    const TParts parts = partsOf(shape, 4);
    CriticalFit truth(scene);
    ASSERT_FALSE(truth.find({{parts.bar, parts.base}, 2 * std::numbers::pi}, 0.01)) << i;
  }
  printf("%d fit, %d do not\n", fits, none);
  EXPECT_GT(fits, count / 8);
  EXPECT_GT(none, count / 8);
}

TEST(TurningTOracle, The2010FormFitsExactlyWhereBruteForceFindsAPlace) {
  compareT(kTurningT2010, 304, rooms() / 2);
}
TEST(TurningTOracle, AWiderFormOf2017FitsExactlyWhereBruteForceFindsAPlace) {
  compareT(kTurningT2017Second, 2017, rooms() / 2);
}

}  // namespace
}  // namespace elbowroom::oracle
