// Clearances and overlaps against GEOS.
#include <gtest/gtest.h>

#include "core/geometry/measure.h"
#include "tests/oracle/flush_scenes.h"
#include "tests/oracle/geos_shapes.h"

namespace elbowroom::oracle {
namespace {

constexpr double kRounding = 2e-7;  // a few nanometres in inches
const double kDeep = kContact.inches();

struct Pair {
  Outline a, b;
};

// A third apart or crossing at random, the rest flush, nearly flush, touching at corners, turned, nested.
Pair pairOf(Dice& dice) {
  switch (dice.whole(0, 8)) {
    case 0:
    case 1:
      return {star(dice, 0, 0, 5, 30, dice.whole(3, 12)),
              star(dice, dice.between(-60, 60), dice.between(-60, 60), 5, 30, dice.whole(3, 12))};
    case 2: {  // flush on a 1/4 in grid
      const double w = dice.whole(8, 200) / 4.0, shift = dice.whole(-40, 40) / 4.0;
      return {rect(0, 0, w, 20), rect(w, shift, w + 12, shift + 9.25)};
    }
    case 3: {  // flush, then both turned: edges equal up to a nanometre
      const double w = dice.between(2, 50), shift = dice.between(-10, 10);
      const Angle turn = Angle::fromDegrees(dice.between(0, 360));
      return {turned(rect(0, 0, w, 20), turn), turned(rect(w, shift, w + 12, shift + 9), turn)};
    }
    case 4: {  // around contact, from a gap to too much
      const double depth = dice.between(-2, 2) * kDeep;
      const Angle turn = Angle::fromDegrees(dice.between(0, 360));
      return {turned(rect(0, 0, 20, 20), turn), turned(rect(20 - depth, 3, 30, 12), turn)};
    }
    case 5: {  // corner on an edge
      const double y = dice.between(1, 19);
      return {rect(0, 0, 20, 20),
              {at(20, y), at(30, y - dice.between(1, 9)), at(30, y + dice.between(1, 9))}};
    }
    case 6:
      return {rect(0, 0, 20, 20), rect(20, 20, 30, 30)};
    case 7: {  // nested, or one filling the other's niche
      const Outline niche{at(0, 0),   at(40, 0),  at(40, 30), at(30, 30),
                          at(30, 10), at(10, 10), at(10, 30), at(0, 30)};
      if (dice.chance(0.5)) return {niche, rect(10, 10, 30, dice.between(12, 40))};
      return {niche, rect(dice.between(11, 15), dice.between(11, 15), dice.between(16, 29), 40)};
    }
    default:
      return {oval(0, 0, dice.between(8, 30), dice.between(8, 30)),
              star(dice, dice.between(-50, 50), dice.between(-50, 50), 3, 40, dice.whole(3, 9))};
  }
}

// The meaning of overlap: a boundary reaches `depth` into the other, or they coincide that deep.
bool sharesDepth(const geos::geom::Geometry& a, const geos::geom::Geometry& b, double depth) {
  return a.getBoundary()->intersects(b.buffer(-depth, 64).get()) ||
         b.getBoundary()->intersects(a.buffer(-depth, 64).get()) ||
         !a.intersection(&b)->buffer(-depth, 64)->isEmpty();
}

TEST(GapAgainstGeos, TwoThousandPairs) {
  Dice dice(11);
  int apart = 0, touching = 0, overlapping = 0;
  for (int i = 0; i < 2000; ++i) {
    const Pair pair = pairOf(dice);
    const Shape a = solid(pair.a), b = solid(pair.b);
    for (const bool swapped : {false, true}) {
      const Gap gap = swapped ? gapBetween(pair.b, pair.a) : gapBetween(pair.a, pair.b);
      ASSERT_NEAR(gap.distance.inches(), a->distance(b.get()), kRounding) << i;
      ASSERT_NEAR(distance(gap.from, gap.to).inches(), gap.distance.inches(), kRounding) << i;
      ASSERT_LT(dot(gap.from)->distance((swapped ? b : a).get()), kRounding) << i;
      ASSERT_LT(dot(gap.to)->distance((swapped ? a : b).get()), kRounding) << i;
      if (sharesDepth(*a, *b, 1.01 * kDeep)) {
        ASSERT_TRUE(gap.overlap) << i;
      }
      if (!sharesDepth(*a, *b, 0.99 * kDeep)) {
        ASSERT_FALSE(gap.overlap) << i;
      }
      overlapping += gap.overlap;
      touching += !gap.overlap && gap.distance < Length::nanometres(5);
      apart += gap.distance > Length::nanometres(5);
    }
  }
  EXPECT_GT(apart, 600);
  EXPECT_GT(touching, 600);
  EXPECT_GT(overlapping, 500);
}

TEST(GapAgainstGeos, ToTheRoomsBoundary) {
  Dice dice(12);
  int inside = 0, through = 0;
  for (int i = 0; i < 1000; ++i) {
    const Outline ring = star(dice, 60, 60, 40, 90, dice.whole(4, 12));
    const Outline thing = star(dice, dice.between(20, 100), dice.between(20, 100), 3, 20, dice.whole(3, 9));
    const Shape room = solid(ring), walls = boundary(ring), body = solid(thing);
    const Gap gap = gapToBoundary(thing, ring);
    const auto leaves = [&](double depth) {
      return !body->difference(room->buffer(depth, 64).get())->isEmpty() ||
             walls->intersects(body->buffer(-depth, 64).get());
    };
    if (leaves(1.01 * kDeep)) {
      ASSERT_TRUE(gap.overlap) << i;
    }
    if (!leaves(0.99 * kDeep)) {
      ASSERT_FALSE(gap.overlap) << i;
    }
    ASSERT_NEAR(gap.distance.inches(), gap.overlap ? 0 : body->distance(walls.get()), kRounding) << i;
    (gap.overlap ? through : inside) += 1;
  }
  EXPECT_GT(inside, 200);
  EXPECT_GT(through, 200);
}

TEST(GapAgainstGeos, FromPointsAndBetweenSegments) {
  Dice dice(13);
  const auto spot = [&dice] { return at(dice.between(-50, 50), dice.between(-50, 50)); };
  const auto node = [&dice] { return at(dice.whole(-4, 4), dice.whole(-4, 4)); };
  for (int i = 0; i < 2000; ++i) {
    const Outline ring = star(dice, 0, 0, 5, 45, dice.whole(3, 12));
    const Point p = spot();
    ASSERT_NEAR(gapFromPoint(p, ring).distance.inches(), dot(p)->distance(solid(ring).get()), kRounding) << i;

    const bool grid = dice.chance(0.5);  // there segments touch, cross and run along each other
    Segment s{grid ? node() : spot(), grid ? node() : spot()},
        t{grid ? node() : spot(), grid ? node() : spot()};
    const Gap gap = gapBetween(s, t);
    ASSERT_NEAR(gap.distance.inches(), line(s)->distance(line(t).get()), kRounding) << i;
    ASSERT_LT(dot(gap.from)->distance(line(s).get()), kRounding) << i;
    ASSERT_LT(dot(gap.to)->distance(line(t).get()), kRounding) << i;
  }
}

// The strip ahead, as wide as what counts, must be free up to the distance given and blocked just beyond it.
TEST(ClearAheadAgainstGeos, StripIsFreeUpToThereAndNoFurther) {
  Dice dice(14);
  int walls = 0, things = 0;
  for (int i = 0; i < 1000; ++i) {
    const Outline room = star(dice, 0, 0, 60, 90, dice.whole(5, 12));
    const Direction ahead = Direction::fromAngle(Angle::fromDegrees(dice.between(0, 360)));
    const Point middle = at(dice.between(-10, 10), dice.between(-10, 10));
    const Length half = Length::fromInches(dice.between(3, 15));
    const Segment front{middle + half * ahead.left(), middle + half * ahead.right()};
    std::vector<Outline> obstacles;
    std::vector<Shape> blocks;
    for (int k = dice.whole(0, 4); k > 0; --k) {
      obstacles.push_back(star(dice, dice.between(-60, 60), dice.between(-60, 60), 3, 15, dice.whole(3, 9)));
      blocks.push_back(solid(obstacles.back()));
    }
    const Shape floor = solid(room);
    const auto stripFree = [&](double narrower, double from, double to) {
      const Length h = half - Length::fromInches(narrower);
      const Point start = middle + Length::fromInches(from) * ahead;
      const Outline strip = {start + h * ahead.right(), start + h * ahead.left(),
                             start + h * ahead.left() + Length::fromInches(to - from) * ahead,
                             start + h * ahead.right() + Length::fromInches(to - from) * ahead};
      const Shape shape = solid(strip);
      if (!floor->covers(shape.get())) return false;
      return std::none_of(blocks.begin(), blocks.end(),
                          [&](const Shape& b) { return b->intersects(shape.get()); });
    };
    const Ahead found = clearAhead(front, ahead, room, {obstacles.begin(), obstacles.end()});
    const double d = found.distance.inches();
    const double slightly = 1e-5;
    if (d > kDeep + slightly) {
      ASSERT_TRUE(stripFree(kDeep + slightly, kDeep + slightly, d - slightly)) << i;
      ASSERT_FALSE(stripFree(kDeep - slightly, kDeep - slightly, d + slightly)) << i;
      const Shape hit = found.hit < 0 ? boundary(room) : boundary(obstacles[found.hit]);
      ASSERT_LT(dot(found.at)->distance(hit.get()), kRounding) << i;
      (found.hit < 0 ? walls : things) += 1;
    } else {
      ASSERT_FALSE(stripFree(kDeep - slightly, kDeep - slightly, 2 * kDeep)) << i;
    }
  }
  EXPECT_GT(walls, 200);
  EXPECT_GT(things, 200);
}

}  // namespace
}  // namespace elbowroom::oracle
