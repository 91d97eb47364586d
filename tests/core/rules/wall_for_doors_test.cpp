// How much wall a pocket or a sliding leaf has and needs, by hand from the framing rule 2W + 1 in
// (pocket door rough opening: a 36 in leaf needs 73 in).
#include <gtest/gtest.h>

#include <algorithm>

#include "test_room.h"

namespace elbowroom {
namespace {

using namespace testing_room;

const Finding* findingOf(const Report& report, const std::string& rule) {
  const auto at = std::find_if(report.findings.begin(), report.findings.end(),
                               [&](const Finding& f) { return f.rule == rule; });
  return at == report.findings.end() ? nullptr : &*at;
}

Report pocketIn(double wall, double along, double leaf) {
  TestRoom room(wall, 80);
  Opening& door = room.door("s", along, leaf, Hand::left);
  door.action = DoorAction::pocket;
  door.toward = Hand::right;
  return room.report({"craft"});
}

// A 30 in leaf centred 20 in from the left corner of 96 in: jambs at 5 and 35, 61 in free beyond the right jamb.
// Needed 61 in with the opening; there: the opening's 30, the rough opening's 1 and 61 beside it = 92.
TEST(WallForDoors, APocketWithRoomToSpareSaysHowMuch) {
  const Report report = pocketIn(96, 20, 30);
  const Finding* f = findingOf(report, "pocket-needs-wall");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->outcome, Outcome::clear);
  EXPECT_EQ(*f->limit, Quantity{Length{61_in}});
  ASSERT_TRUE(f->measured);
  const double spare = (std::get<Length>(*f->measured) - 61_in).inches();
  EXPECT_GE(spare, 30);
  EXPECT_LE(spare, 31);
}

// The same leaf in a wall that ends 25 in beyond the jamb: 5 in (or 6 with the jamb's inch) are missing.
TEST(WallForDoors, APocketThatMeetsTheCornerIsShortByWhatIsMissing) {
  const Report report = pocketIn(60, 20, 30);
  const Finding* f = findingOf(report, "pocket-needs-wall");
  ASSERT_TRUE(f);
  EXPECT_EQ(f->outcome, Outcome::shortfall);
  const double missing = (61_in - std::get<Length>(*f->measured)).inches();
  EXPECT_GE(missing, 5);
  EXPECT_LE(missing, 6);
  ASSERT_EQ(report.figures.doors[0].troubles.size(), 1u);
  EXPECT_NEAR(report.figures.doors[0].troubles[0].short_by.inches(), missing, 1e-6);
}

TEST(WallForDoors, OneInchMoreWallIsOneInchMoreMeasured) {
  const auto measured = [](double wall) {
    const Report report = pocketIn(wall, 20, 30);
    return std::get<Length>(*findingOf(report, "pocket-needs-wall")->measured);
  };
  EXPECT_EQ(measured(90) - measured(89), 1_in);
  EXPECT_EQ(measured(59) - measured(58), 1_in);
}

}  // namespace
}  // namespace elbowroom
