// Where a rectangle fits at any angle, yes or no and how near, against brute force over all
// critical places (critical_fit.h) and, for every place given, GEOS on the raw outlines.
// ELBOWROOM_ORACLE_ROOMS: see lies_clear.h.
#include <gtest/gtest.h>

#include "core/geometry/free_floor.h"
#include "tests/oracle/bathrooms.h"
#include "tests/oracle/critical_fit.h"
#include "tests/oracle/lies_clear.h"

namespace elbowroom::oracle {
namespace {

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

}  // namespace
}  // namespace elbowroom::oracle
