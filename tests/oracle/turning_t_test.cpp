// Where a turning T fits at any angle, with and without knee space under one of its ends, against brute force
// over all critical places (critical_fit.h) and, for every place given, GEOS on the raw outlines.
//
// The forms are written out here from the texts that name them, so that nothing is shared with the code.
#include <gtest/gtest.h>

#include <map>

#include "tests/oracle/bathrooms.h"
#include "tests/oracle/critical_fit.h"
#include "tests/oracle/lies_clear.h"

namespace elbowroom::oracle {
namespace {

// In inches.
struct Form {
  double across, along, bar, base, chamfer;
  TurningShape shape() const { return {in(across), in(along), in(bar), in(base), in(chamfer)}; }
};
// 2010 ADA Standards 304.3.2: in a 60 x 60 square, bar and base 36 wide.
constexpr Form k2010{60, 60, 36, 36, 0};
// ICC A117.1-2017 304.3.2.1: 68 x 60 with 36 wide bar and base and 8 in chamfers; or 64 x 60 with a bar of 38
// and a base of 42; or 64 x 60 with both 40.
constexpr Form k2017First{68, 60, 36, 36, 8};
constexpr Form k2017Second{64, 60, 38, 42, 0};
constexpr Form k2017Third{64, 60, 40, 40, 0};

// The T as boxes, its middle line along +x from the base to the bar, about a point `ref` along it. What lies
// over knee space is not strict: of an arm what is beyond the base, of the base what is beyond the bar.
std::vector<Part> partsOf(const Form& t, double ref, TurningEnd under = TurningEnd::none) {
  const double x = t.along / 2 - ref, inner = x - t.bar, y = t.across / 2, b = t.base / 2, tail = x - t.along;
  const bool left = under == TurningEnd::leftArm, right = under == TurningEnd::rightArm,
             base = under == TurningEnd::base;
  std::vector<Part> parts{{inner, -y, x, y, 0, !left && !right}, {tail, -b, x, b, 0, !base}};
  if (left) parts.push_back({inner, -y, x, b, 0, true, false});
  if (right) parts.push_back({inner, -b, x, y, 0, true, false});
  if (t.chamfer > 0) {
    // Along the chamfer and 1 in into bar and base at its ends; 6 in deep, past the inner corner.
    const double r = std::sqrt(0.5), half = r * t.chamfer + 1, quarter = std::numbers::pi / 4;
    const double along = r * (inner + b), out = r * (b - inner + t.chamfer);
    parts.push_back({along - half, out - 6, along + half, out, quarter, !left && !base});
    parts.push_back({along - half, -out, along + half, 6 - out, -quarter, !right && !base});
  }
  return parts;
}
Outline partAt(const Part& p, Placed place) {
  const Placed turned{place.center, place.turn + Angle::fromRadians(p.turned)};
  const Direction u = Direction::fromAngle(turned.turn);
  const Point middle = place.center + in((p.x0 + p.x1) / 2) * u + in((p.y0 + p.y1) / 2) * u.left();
  return movedIn(p.x1 - p.x0, p.y1 - p.y0, {middle, turned.turn});
}
std::vector<Outline> outlinesOf(const std::vector<Part>& parts, Placed place, bool strict) {
  std::vector<Outline> out;
  for (const Part& p : parts)
    if (strict ? p.strict : p.loose) out.push_back(partAt(p, place));
  return out;
}

// The outline of the form, somewhere turned, a hair larger or smaller in each measure.
Outline ownRoom(Dice& dice, Form t, double loose) {
  const auto hair = [&] { return loose + dice.whole(-8, 8) * 0.005; };
  t.across += hair(), t.along += hair(), t.bar += hair(), t.base += hair();
  if (t.chamfer > 0) t.chamfer += hair();
  const double x = t.along / 2, inner = x - t.bar, y = t.across / 2, b = t.base / 2, c = t.chamfer;
  Outline ring{at(-x, -b)};
  if (c > 0) ring.push_back(at(inner - c, -b));
  ring.push_back(at(inner, -b - c));
  for (const Point p : {at(inner, -y), at(x, -y), at(x, y), at(inner, y), at(inner, b + c)})
    ring.push_back(p);
  if (c > 0) ring.push_back(at(inner - c, b));
  ring.push_back(at(-x, b));
  ring = turned(ring, Angle::fromDegrees(dice.between(0, 360)));
  return ring;
}
Scene sceneFor(Dice& dice, int i, const Form& form) {
  if (i % 5 == 0) return {ownRoom(dice, form, 0), {}};
  Scene scene = i % 5 == 1 ? flushScene(kFlush[dice.whole(0, std::size(kFlush) - 1)],
                                        static_cast<std::uint64_t>(dice.whole(0, 1'000'000)))
                           : bathroom(dice);
  scene.things.resize(std::min<std::size_t>(scene.things.size(), static_cast<std::size_t>(dice.whole(1, 7))));
  return scene;
}

// Where `ref` lies along the middle line only says from where the reach counts.
constexpr double kRef = 4;

void compareT(const Form& form, std::uint64_t seed, int count) {
  Dice dice(seed);
  int fits = 0, none = 0;
  for (int i = 0; i < count; ++i) {
    const Scene scene = sceneFor(dice, i, form);
    const auto place = FreeFloor(scene.room, scene.things).turningT(form.shape());
    fits += place.has_value(), none += !place;
    if (place) {
      ASSERT_TRUE(liesClear(scene, outlinesOf(partsOf(form, 0), *place, false))) << i;
      continue;
    }
    CriticalFit truth(scene);
    ASSERT_FALSE(truth.find({partsOf(form, kRef), 2 * std::numbers::pi}, 0.01)) << i;
  }
  printf("%d fit, %d do not\n", fits, none);
  EXPECT_GT(fits, count / 8);
  EXPECT_GT(none, count / 8);
}

TEST(TurningTOracle, The2010FormFitsExactlyWhereBruteForceFindsAPlace) { compareT(k2010, 304, rooms() / 2); }
TEST(TurningTOracle, TheChamferedFormOf2017FitsExactlyWhereBruteForceFindsAPlace) {
  compareT(k2017First, 30432, rooms());
}
TEST(TurningTOracle, The42InchFormOf2017FitsExactlyWhereBruteForceFindsAPlace) {
  compareT(k2017Second, 2017, rooms() / 2);
}
TEST(TurningTOracle, The40InchFormOf2017FitsExactlyWhereBruteForceFindsAPlace) {
  compareT(k2017Third, 20173, rooms() / 2);
}

TEST(TurningTOracle, TheFormsAreThoseOfTheTexts) {
  for (const auto& [form, shape] :
       {std::pair{k2010, kTurningT2010}, std::pair{k2017First, kTurningT2017First},
        std::pair{k2017Second, kTurningT2017Second}, std::pair{k2017Third, kTurningT2017Third}}) {
    EXPECT_EQ(form.shape(), shape);
    // The boxes together are the T: bar, base beyond it and the two triangles.
    Shape all;
    for (const Outline& o : outlinesOf(partsOf(form, 0), {at(0, 0), {}}, false))
      all = all ? Shape(all->Union(solid(o).get())) : solid(o);
    const double less = 2 * kMovedIn;
    const double area = (form.across - less) * (form.bar - less) +
                        (form.base - less) * (form.along - form.bar) + form.chamfer * form.chamfer;
    EXPECT_NEAR(all->getArea(), area, less * form.chamfer * 2 + 1e-4);
  }
}

// Things of which a part gives knee space: what is left of them, and what only some parts mind.
struct Kneed {
  Scene strict, loose;
  std::vector<Outline> only_strict;
};
Kneed kneed(Dice& dice, int i, const Form& form) {
  Kneed k;
  k.strict = sceneFor(dice, i, form);
  if (i % 5 == 0) {  // its own room with room to spare, a basin over the end of one arm or of the base
    k.strict = {ownRoom(dice, form, 0.1), {}};
    const double deep = dice.between(2, 16), x = form.along / 2, y = form.across / 2;
    Outline basin;
    switch (dice.whole(0, 2)) {
      case 0:
        basin = rect(x - form.bar - 1, y - deep, x + 1, y + 1);
        break;
      case 1:
        basin = rect(x - form.bar - 1, -y - 1, x + 1, deep - y);
        break;
      default:
        basin = rect(-x - 1, -form.base, deep - x, form.base);
    }
    const Direction along = Direction::between(k.strict.room[0], k.strict.room[1]);
    for (Point& p : basin) p = at(0, 0) + p.x * along + p.y * along.left();
    k.strict.things = {basin};
  }
  k.loose.room = k.strict.room;
  for (const Outline& thing : k.strict.things) {
    const int under = dice.whole(0, 2);
    if (under == 0 && i % 5 != 0) {
      k.loose.things.push_back(thing);
    } else {
      k.only_strict.push_back(thing);
      if (under == 1 && thing.size() == 4) {  // its back half stands on the floor
        const auto middle = [](Point p, Point q) { return Point{(p.x + q.x) / 2, (p.y + q.y) / 2}; };
        k.loose.things.push_back(
            {thing[0], thing[1], middle(thing[1], thing[2]), middle(thing[3], thing[0])});
      }
    }
  }
  return k;
}

void compareWithKnees(const Form& form, std::uint64_t seed, int count) {
  Dice dice(seed);
  int none = 0, bare = 0;
  std::map<TurningEnd, int> under;
  for (int i = 0; i < count; ++i) {
    const Kneed k = kneed(dice, i, form);
    const FreeFloor floor(k.strict.room, k.strict.things), with_knees(k.loose.room, k.loose.things);
    const auto place = floor.turningT(form.shape(), with_knees);
    none += !place, bare += place && place->under_knees == TurningEnd::none;
    if (place) {
      ++under[place->under_knees];
      const std::vector<Part> parts = partsOf(form, 0, place->under_knees);
      ASSERT_TRUE(liesClear(k.loose, outlinesOf(parts, place->place, false))) << i;
      ASSERT_TRUE(liesClear(k.strict, outlinesOf(parts, place->place, true))) << i;
      if (place->under_knees == TurningEnd::none) continue;
    }
    // A bare place is preferred; and where there is none at all, no end helps.
    CriticalFit strict(k.strict);
    ASSERT_FALSE(strict.find({partsOf(form, kRef), 2 * std::numbers::pi}, 0.01)) << i;
    if (place) continue;
    CriticalFit truth(k.loose, k.only_strict);
    for (const TurningEnd end : {TurningEnd::base, TurningEnd::leftArm, TurningEnd::rightArm})
      ASSERT_FALSE(truth.find({partsOf(form, kRef, end), 2 * std::numbers::pi}, 0.01))
          << i << ", end " << static_cast<int>(end);
  }
  printf("%d bare, %d over the base's knees, %d left, %d right, %d nowhere\n", bare, under[TurningEnd::base],
         under[TurningEnd::leftArm], under[TurningEnd::rightArm], none);
  EXPECT_GT(bare, count / 8);
  EXPECT_GT(none, count / 8);
  for (const TurningEnd end : {TurningEnd::base, TurningEnd::leftArm, TurningEnd::rightArm})
    EXPECT_GT(under[end], count / 100);
}

TEST(TurningTOracle, OneEndOfThe2010FormMayLieOverKneeSpace) { compareWithKnees(k2010, 306, rooms()); }
TEST(TurningTOracle, OneEndOfTheChamferedFormMayLieOverKneeSpace) {
  compareWithKnees(k2017First, 3062, rooms() / 2);
}

}  // namespace
}  // namespace elbowroom::oracle
