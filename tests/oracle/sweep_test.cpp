// Door leaves against GEOS: the swept sector as a polygon inscribed in the true one, and one around it, so
// that the truth lies between two answers.
#include <gtest/gtest.h>

#include "core/geometry/sweep.h"
#include "tests/oracle/flush_scenes.h"
#include "tests/oracle/geos_shapes.h"

namespace elbowroom::oracle {
namespace {

constexpr double kRounding = 2e-7;
const double kDeep = kContact.inches();
constexpr int kChords = 256;

// All places of a leaf between two opening angles, in degrees, `radius` long.
Shape swept(const Leaf& leaf, double radius, double from, double to, bool around) {
  const double sign = leaf.sweep < Angle{} ? -1 : 1;
  const double chord = (to - from) / kChords * std::numbers::pi / 180;
  const double r = around ? radius / std::cos(chord / 2) : radius;
  Outline ring{leaf.hinge};
  const auto add = [&](double degrees, double length) {
    ring.push_back(leaf.hinge +
                   Length::fromInches(length) * leaf.closed.turned(Angle::fromDegrees(sign * degrees)));
  };
  // Around: corners of the tangents at the middles of the chords, their ends on the true rays.
  for (int i = 0; i <= kChords; ++i) add(from + (to - from) * i / kChords, r);
  return solid(ring);
}

Leaf leafOf(Dice& dice) {
  const double sweep = dice.chance(0.6) ? 90 : dice.between(20, 180);
  const bool straight = dice.chance(0.5);
  const Angle turn =
      straight ? Angle::fromDegrees(90 * dice.whole(0, 3)) : Angle::fromDegrees(dice.between(0, 360));
  return {at(dice.between(-5, 5), dice.between(-5, 5)), Length::fromInches(dice.between(18, 36)),
          Direction::fromAngle(turn), Angle::fromDegrees(dice.chance(0.5) ? sweep : -sweep)};
}

// Things around the swing: random, and flush to the closed leaf, the open leaf and the arc.
Outline thingNear(Dice& dice, const Leaf& leaf, double reach) {
  const double sign = leaf.sweep < Angle{} ? -1 : 1;
  const Direction out = leaf.closed.turned(Angle::fromDegrees(sign * 90));
  const auto box = [&](double x, double y, double w, double d) {
    const auto corner = [&](double u, double v) {
      return leaf.hinge + Length::fromInches(u) * leaf.closed + Length::fromInches(v) * out;
    };
    return Outline{corner(x, y), corner(x + w, y), corner(x + w, y + d), corner(x, y + d)};
  };
  switch (dice.whole(0, 7)) {
    case 0:
      return box(reach, 0, dice.between(5, 30), dice.between(5, 30));  // at the latch side
    case 1:
      return box(-20, 0, 20, dice.between(5, 30));  // at the hinge side
    case 2:
      return box(-10, reach, 50, 10);  // tangent to the arc
    case 3:
      return box(-10, -10, 60, 10);  // behind the closed leaf
    case 4:
      return box(dice.between(-20, 30), dice.between(0, 30), dice.between(1, 20), dice.between(1, 20));
    default: {
      const double a = dice.between(0, 2 * std::numbers::pi), r = dice.between(20, 50);
      return star(dice, leaf.hinge.x.inches() + r * std::cos(a), leaf.hinge.y.inches() + r * std::sin(a), 2,
                  18, dice.whole(3, 9));
    }
  }
}

// Smallest angle up to which the swept sector meets the thing, by bisection; nothing when it never does.
template <typename Meets>
std::optional<double> bisect(double full, const Meets& meets) {
  if (!meets(full)) return std::nullopt;
  double free = 0, met = full;
  while (met - free > 1e-6) {
    const double middle = (free + met) / 2;
    (meets(middle) ? met : free) = middle;
  }
  return met;
}

struct Bounds {
  std::optional<double> early, late;  // degrees
};

// Never later than the part of the swing deeper than contact meets a solid, never earlier than the whole of
// it.
Bounds boundsOf(const Leaf& leaf, double reach, const std::vector<Shape>& solids) {
  const double full = std::abs(leaf.sweep.degrees());
  const auto meetsAny = [](const Shape& part, const std::vector<const Shape*>& things) {
    return !part->isEmpty() && std::any_of(things.begin(), things.end(),
                                           [&](const Shape* s) { return (*s)->intersects(part.get()); });
  };
  const auto deep = swept(leaf, reach, 0, full, false)->buffer(-kDeep - 1e-6);
  // What only touches is forgiven altogether.
  std::vector<const Shape*> in_the_way;
  for (const Shape& s : solids) {
    if (s->intersects(deep.get())) in_the_way.push_back(&s);
  }
  Bounds bounds;
  bounds.late = bisect(full, [&](double angle) {
    return meetsAny(swept(leaf, reach, 0, angle, false)->intersection(deep.get()), in_the_way);
  });
  // The closed leaf lies on its wall up to a nanometre of rounding either way: start a hair off it.
  Leaf off = leaf;
  const Direction side = leaf.closed.turned(Angle::fromDegrees(leaf.sweep < Angle{} ? -90 : 90));
  off.hinge = leaf.hinge + Length::nanometres(25) * side;
  bounds.early =
      bisect(full, [&](double angle) { return meetsAny(swept(off, reach, 0, angle, true), in_the_way); });
  return bounds;
}

void expectTouch(const Leaf& leaf, Length reach, const Touch& found, const Bounds& bounds,
                 const Shape& thing) {
  ASSERT_TRUE(bounds.early);
  const double opened = found.opened.degrees();
  ASSERT_GE(opened, *bounds.early - 1e-3);
  // A thing flush with the closed leaf is met by the whole one at 0, which is forgiven.
  if (*bounds.early > 1e-3) {
    ASSERT_LE(opened, *bounds.early + 0.01);
  }
  if (bounds.late) {
    ASSERT_LE(opened, *bounds.late + 1e-4);
  }
  // The place is on the thing named, and on the leaf at that angle.
  ASSERT_LT(dot(found.at)->distance(thing.get()), kRounding);
  const Direction d = leaf.closed.turned(leaf.sweep < Angle{} ? -found.opened : found.opened);
  const Segment there{leaf.hinge, leaf.hinge + reach * d};
  ASSERT_LT(dot(found.at)->distance(line(there).get()), opened == 0 ? kDeep + 1e-5 : 1e-5);
}

TEST(FirstTouchAgainstGeos, BisectionOnFiveHundredScenes) {
  Dice dice(21);
  int touched = 0, open = 0, on_the_way = 0;
  for (int i = 0; i < 500; ++i) {
    SCOPED_TRACE(i);
    const Leaf leaf = leafOf(dice);
    const Length reach = leaf.width + Length::fromInches(dice.chance(0.5) ? 1 : 0);
    std::vector<Outline> things;
    std::vector<Shape> solids;
    for (int k = dice.whole(1, 4); k > 0; --k) {
      things.push_back(thingNear(dice, leaf, reach.inches()));
      solids.push_back(solid(things.back()));
    }
    const Bounds bounds = boundsOf(leaf, reach.inches(), solids);
    const auto found = firstTouch(leaf, reach, things);
    if (bounds.late) {
      ASSERT_TRUE(found);
    }
    if (found) {
      ASSERT_NO_FATAL_FAILURE(expectTouch(leaf, reach, *found, bounds, solids[found->obstacle]));
      on_the_way += *bounds.early > 1e-3;
    }
    (found ? touched : open) += 1;
  }
  EXPECT_GT(touched, 150);
  EXPECT_GT(on_the_way, 80);
  EXPECT_GT(open, 100);
}

TEST(FirstWallTouchAgainstGeos, BisectionInFiveHundredRooms) {
  Dice dice(24);
  int touched = 0, open = 0;
  for (int i = 0; i < 500; ++i) {
    SCOPED_TRACE(i);
    const Outline room = star(dice, 0, 0, 20, 70, dice.whole(4, 9));
    const std::size_t wall = static_cast<std::size_t>(dice.whole(0, static_cast<int>(room.size()) - 1));
    const Point from = room[wall], to = room[(wall + 1) % room.size()];
    const double run = distance(from, to).inches(), width = dice.between(0.3, 0.8) * run;
    if (width < 8) continue;
    // Rooms run counter-clockwise: from the wall's start the leaf turns left into the room.
    const Direction along = Direction::between(from, to);
    const double away = dice.chance(0.3) ? 0 : dice.between(0, run - width);
    const Leaf leaf{from + Length::fromInches(away) * along, Length::fromInches(width), along,
                    Angle::fromDegrees(90)};
    std::vector<Shape> walls;
    walls.push_back(solid(rect(-500, -500, 500, 500))->difference(solid(room).get()));
    const Bounds bounds = boundsOf(leaf, width, walls);
    const auto found = firstWallTouch(leaf, room);
    if (bounds.late) {
      ASSERT_TRUE(found);
    }
    if (found) {
      ASSERT_NO_FATAL_FAILURE(expectTouch(leaf, leaf.width, *found, bounds, walls[0]));
    }
    (found ? touched : open) += 1;
  }
  EXPECT_GT(touched, 80);
  EXPECT_GT(open, 80);
}

TEST(GapToSectorAgainstGeos, DistanceLiesBetweenTheTwoPolygons) {
  Dice dice(22);
  int apart = 0, shared = 0;
  for (int i = 0; i < 2000; ++i) {
    const Leaf leaf = leafOf(dice);
    const double r = leaf.width.inches(), full = std::abs(leaf.sweep.degrees());
    const Outline thing = thingNear(dice, leaf, r);
    const Shape body = solid(thing), inscribed = swept(leaf, r, 0, full, false);
    const Gap gap = gapToSector(leaf, thing);
    ASSERT_LE(gap.distance.inches(), body->distance(inscribed.get()) + kRounding) << i;
    ASSERT_GE(gap.distance.inches(), body->distance(swept(leaf, r, 0, full, true).get()) - kRounding) << i;
    ASSERT_NEAR(distance(gap.from, gap.to).inches(), gap.distance.inches(), kRounding) << i;
    ASSERT_LT(dot(gap.to)->distance(body.get()), kRounding) << i;
    ASSERT_LE(distance(gap.from, leaf.hinge).inches(), r + kRounding) << i;
    if (body->intersects(inscribed->buffer(-kDeep - 1e-6).get())) {
      ASSERT_TRUE(gap.overlap) << i;
    }
    if (!body->intersects(swept(leaf, r, 0, full, true)->buffer(-0.99 * kDeep).get())) {
      ASSERT_FALSE(gap.overlap) << i;
    }
    ASSERT_EQ(gap.overlap, firstTouch(leaf, leaf.width, {thing}).has_value()) << i;
    (gap.overlap ? shared : apart) += 1;
  }
  EXPECT_GT(apart, 300);
  EXPECT_GT(shared, 200);
}

TEST(SectorsMeetAgainstGeos, OneThousandPairsOfLeaves) {
  Dice dice(23);
  int meeting = 0, apart = 0;
  for (int i = 0; i < 1000; ++i) {
    const Leaf a = leafOf(dice);
    Leaf b = leafOf(dice);
    if (dice.chance(0.7)) {
      const double away = dice.between(0, 2 * std::numbers::pi), far = dice.between(10, 70);
      b.hinge = a.hinge + Length::fromInches(far) * Direction{std::cos(away), std::sin(away)};
    } else if (dice.chance(0.5)) {  // a pair of doors, tip to tip
      b.closed = a.closed.opposite();
      b.hinge = a.hinge + (a.width + b.width) * a.closed;
    } else {  // back to back
      b.closed = a.closed.opposite();
      b.hinge = a.hinge;
      b.sweep = a.sweep < Angle{} ? Angle::fromDegrees(90) : Angle::fromDegrees(-90);
    }
    const double full_a = std::abs(a.sweep.degrees()), full_b = std::abs(b.sweep.degrees());
    const Shape in_a = swept(a, a.width.inches(), 0, full_a, false);
    const Shape in_b = swept(b, b.width.inches(), 0, full_b, false);
    const Shape over_a = swept(a, a.width.inches(), 0, full_a, true);
    const Shape over_b = swept(b, b.width.inches(), 0, full_b, true);
    const auto meet = sectorsMeet(a, b);
    ASSERT_EQ(meet.has_value(), sectorsMeet(b, a).has_value()) << i;
    if (in_a->intersects(in_b->buffer(-kDeep - 1e-6).get()) ||
        in_b->intersects(in_a->buffer(-kDeep - 1e-6).get())) {
      ASSERT_TRUE(meet) << i;
    }
    if (!over_a->intersects(over_b->buffer(-0.99 * kDeep).get()) &&
        !over_b->intersects(over_a->buffer(-0.99 * kDeep).get())) {
      ASSERT_FALSE(meet) << i;
    }
    if (meet) {
      ASSERT_LT(dot(*meet)->distance(over_a.get()), kRounding) << i;
      ASSERT_LT(dot(*meet)->distance(over_b.get()), kRounding) << i;
    }
    (meet ? meeting : apart) += 1;
  }
  EXPECT_GT(meeting, 200);
  EXPECT_GT(apart, 200);
}

}  // namespace
}  // namespace elbowroom::oracle
