#include "core/people/body.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

using namespace literals;

Person tall(double stature, bool child = false) {
  Person p;
  p.stature = Length::fromInches(stature);
  p.child = child;
  return p;
}
Person seated(double width, double length) {
  Person p = tall(66);
  p.chair = Chair{Length::fromInches(width), Length::fromInches(length), {}};
  return p;
}

// T14. ANSUR II, standing eye height 0.935 S; measured subjects within 1/2 in of S: 59.71, 65.49, 69.28.
TEST(Body, T14EyeHeightOfAdults) {
  EXPECT_NEAR(eyesOf(tall(64)).high.inches(), 59.84, 0.005);
  EXPECT_NEAR(eyesOf(tall(70)).high.inches(), 65.45, 0.005);
  EXPECT_NEAR(eyesOf(tall(74)).high.inches(), 69.19, 0.005);
  const std::pair<double, double> measured[] = {{64, 59.71}, {70, 65.49}, {74, 69.28}};
  for (const auto& [stature, eye] : measured) EXPECT_NEAR(eyesOf(tall(stature)).high.inches(), eye, 0.14);
}

// T15. The handbook ratio 0.936 (Drillis and Contini, from memory) differs by less than 0.1 in.
TEST(Body, T15TheHandbookRatioAgrees) {
  for (const double stature : {64.0, 74.0})
    EXPECT_NEAR(eyesOf(tall(stature)).high.inches(), 0.936 * stature, 0.1) << stature;
}

// CDC 2000 stature of a 4-year-old, 50th percentile: 40.1 in; eye 35.8 in, not 0.935 S.
TEST(Body, EyeHeightOfChildren) {
  EXPECT_NEAR(eyesOf(tall(40.1, true)).high.inches(), 35.8, 0.005);
  EXPECT_LT(eyesOf(tall(40.1, true)).high, eyesOf(tall(40.1)).high);
}

// T17. Standing elbow 0.617 S (ANSUR II); a work surface 2 to 4 in below it.
TEST(Body, T17ElbowHeightGivesTheVanityBand) {
  const std::tuple<double, double, double> table[] = {
      {60, 33.0, 35.0}, {64, 35.5, 37.5}, {70, 39.2, 41.2}, {74, 41.7, 43.7}};
  for (const auto& [stature, low, high] : table) {
    EXPECT_NEAR(workingHeight(tall(stature)).low.inches(), low, 0.05);
    EXPECT_NEAR(workingHeight(tall(stature)).high.inches(), high, 0.05);
  }
  EXPECT_NEAR(workingHeight(tall(74)).low.inches() - 36, 5.7, 0.05) << "a 36 in counter for 6 ft 2 in";
  EXPECT_EQ(workingHeight(seated(26, 42)).high, 34_in);
}

// T18. Stool = counter - (0.617 S - 2); statures CDC 2000, 50th percentile. 12 years: no stool for 34 in.
TEST(Body, T18StepForAChild) {
  const std::tuple<double, double, double> table[] = {
      {40.1, 36, 13.3}, {50.4, 36, 6.9}, {40.1, 34, 11.3}, {37.3, 34, 13.0}, {45.4, 36, 10.0}, {59.2, 36, 1.5}};
  for (const auto& [stature, counter, step] : table)
    EXPECT_NEAR(stepFor(tall(stature, true), Length::fromInches(counter)).inches(), step, 0.05) << stature;
  EXPECT_EQ(stepFor(tall(59.2, true), 34_in), Length{});
}

// ANSUR II, 50 % of men (S 69.1 in) and women (S 64.0 in) of the measure itself.
TEST(Body, RatiosAgainstTheMeasuredMedians) {
  struct Row {
    Length (*figure)(const Person&);
    double men, women, within;
  };
  for (const Row& row : {Row{shoulderHeight, 56.7, 52.4, 0.12}, Row{elbowHeight, 42.6, 39.5, 0.06},
                         Row{reachAhead, 31.9, 29.2, 0.35}, Row{reachUp, 89.1, 81.8, 0.55},
                         Row{kneelingDepth, 24.3, 22.4, 0.15}, Row{kneelingDepthToesTucked, 19.2, 17.6, 0.15},
                         Row{kneelingHip, 16.2, 15.6, 0.4}}) {
    EXPECT_NEAR(row.figure(tall(69.1)).inches(), row.men, row.within);
    EXPECT_NEAR(row.figure(tall(64.0)).inches(), row.women, row.within);
  }
}

// ADA 1991 Figure A3: 42 in and 6 in of toes make the 48 in of the clear floor space; 26 in wide.
TEST(Body, AWheelchairTakesItsOwnFloor) {
  EXPECT_EQ(bendingDepth(seated(26, 48)), 48_in) << "the toes are counted once";
  EXPECT_EQ(usualChair().length - toesAhead(), 42_in);
  EXPECT_EQ(elbowBreadth(seated(28, 48)), 28_in);
  EXPECT_EQ(reachUp(seated(26, 48)), 48_in);
  EXPECT_FALSE(kneels(seated(26, 48)));
  EXPECT_FALSE(kneels(tall(40, true)));
  EXPECT_TRUE(kneels(tall(64)));
}

// Ticked and unticked in the menu: nobody who was named by hand goes.
TEST(Body, SomebodyUsesAWheelchair) {
  const auto named = [](const char* name, Length stature, std::optional<Chair> chair = {}) {
    Person p;
    p.name = name;
    p.stature = stature;
    p.chair = std::move(chair);
    return p;
  };
  const std::vector<Person> ada{named("Ada", 66_in)};
  const auto on = withChair(ada, "Guest");
  ASSERT_EQ(on.size(), 2u);
  EXPECT_EQ(on[0], ada[0]);
  EXPECT_EQ(on[1], named("Guest", 66_in, usualChair()));
  EXPECT_EQ(withChair(on, "Guest"), ada);
  const std::vector<Person> both{named("Ada", 66_in, Chair{27_in, 45_in, {}}), named("Guest", 66_in, usualChair())};
  EXPECT_EQ(withChair(both, "Guest"), ada);
  // A standing person of that name gets the chair: names are unique.
  EXPECT_EQ(withChair({named("Guest", 70_in)}, "Guest"), (std::vector<Person>{named("Guest", 70_in, usualChair())}));
}

TEST(Body, StandingFloor) {
  EXPECT_EQ(standingDepth(), 18_in);
  EXPECT_EQ(standingWidth(), 26.3_in);
  EXPECT_EQ(bendingDepth(tall(64)), 20_in);
  EXPECT_EQ(standingDepth() + passingDepth(), 48_in);
}

TEST(Body, NamesAreListedAsOneSaysThem) {
  Person a = tall(60), b = tall(61), c = tall(62);
  a.name = "Ada", b.name = "Ben", c.name = "Cy";
  EXPECT_EQ(namesOf({&a}), "Ada");
  EXPECT_EQ(namesOf({&a, &b}), "Ada and Ben");
  EXPECT_EQ(namesOf({&a, &b, &c}), "Ada, Ben and Cy");
}

// 1991 ADA Standards A4.2.4 and Figure A3: 43 to 51 in, whatever the stature.
TEST(Body, EyesOfAWheelchairUserAreThoseOfOneWhoSits) {
  Person p = tall(74);
  p.chair = Chair{26_in, 42_in, {}};
  EXPECT_EQ(eyesOf(p).low, 43_in);
  EXPECT_EQ(eyesOf(p).high, 51_in);
}

}  // namespace
}  // namespace elbowroom
