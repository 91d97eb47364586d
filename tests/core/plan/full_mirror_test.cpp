// Expected figures are worked by hand; under slopes a grid search over all rectangles is the oracle.
#include "core/plan/full_mirror.h"

#include <gtest/gtest.h>

#include <random>

#include "core/plan/wall_catalogue.h"
#include "tests/core/plan/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;
using test::in;
using test::RoomMaker;

// 96 x 60 in, 96 in high. On the south wall (its left end is the room's south-east corner): a vanity 30 x 34
// in high with its centre at 60, and a mirror over it.
struct Bath {
  RoomMaker room{96, 60};
  Bath() {
    room.option().room.ceiling.height = 96_in;
    room.fixture("v", FixtureKind::vanity, "s", 60, 30, 21).height = 34_in;
    put("m", "mirror", 60, 40, 24, 30);
  }
  WallItem& put(const char* id, const char* kind, double along, double bottom, double width, double height,
                const char* wall = "s") {
    WallItem i = typicalWallItem(kind, room.option());
    i.id = {id};
    i.wall = {wall};
    i.along = in(along), i.bottom = in(bottom), i.width = in(width), i.height = in(height);
    room.option().on_walls.push_back(i);
    return room.option().on_walls.back();
  }
  std::optional<WallItem> full() const { return fullMirror(room.layout(), room.plan.options[0].on_walls[0]); }
};

void expectRectangle(const std::optional<WallItem>& m, Length left, Length right, Length low, Length high) {
  ASSERT_TRUE(m);
  EXPECT_EQ(m->along - m->width / 2, left);
  EXPECT_EQ(m->along - m->width / 2 + m->width, right);
  EXPECT_EQ(m->bottom, low);
  EXPECT_EQ(m->bottom + m->height, high);
}

TEST(FullMirror, FromCornerToCornerAndRimToCeiling) {
  expectRectangle(Bath().full(), 0_in, 96_in, 34_in, 96_in);
}

TEST(FullMirror, StandsOnTheBacksplash) {
  Bath bath;
  bath.room.option().fixtures[0].facts["backsplash"] = 4_in;
  expectRectangle(bath.full(), 0_in, 96_in, 38_in, 96_in);
}

TEST(FullMirror, EndsAtWhatStandsBesideIt) {
  Bath bath;
  bath.room.fixture("l", FixtureKind::linenCloset, "s", 12, 24, 18);  // 84 in high, 0 to 24
  bath.put("b", "towel-bar", 90, 50, 6, 4);                           // 87 to 93
  expectRectangle(bath.full(), 24_in, 87_in, 34_in, 96_in);
  // A toilet's tank is lower than the counter.
  bath.room.fixture("wc", FixtureKind::toilet, "s", 34, 19, 28).height = 30_in;
  expectRectangle(bath.full(), 24_in, 87_in, 34_in, 96_in);
}

TEST(FullMirror, ADoorAndWhatStandsOutOfTheNeighbourWallEndIt) {
  Bath bath;
  bath.room.door("d", "s", 20, 30, Hand::left, Swing::in);  // 5 to 35
  // On the west wall, which begins at the south wall's right end: 18 in deep, flush in that corner.
  bath.room.fixture("l", FixtureKind::linenCloset, "w", 12, 24, 18);
  expectRectangle(bath.full(), 35_in, 78_in, 34_in, 96_in);
}

TEST(FullMirror, LightsReceptaclesAndSwitchesGetHoles) {
  Bath bath;
  bath.put("l", "side-light", 20, 55, 5, 12);
  bath.put("r", "receptacle", 80, 40, 2.75, 4.5);
  bath.put("s", "switch", 90, 42, 2.75, 4.5);
  bath.put("x", "sconce-box", 60, 80, 4, 4);
  expectRectangle(bath.full(), 0_in, 96_in, 34_in, 96_in);
}

TEST(FullMirror, UnderACabinetItTakesTheLargerOfLowerAndNarrower) {
  Bath bath;
  bath.put("c", "shelf", 20, 80, 10, 4);  // 15 to 25, 80 up
  // To the shelf's right edge: 71 x 62 = 4402; under it: 96 x 46 = 4416.
  expectRectangle(bath.full(), 0_in, 96_in, 34_in, 80_in);
  bath.room.option().on_walls[1].bottom = 79_in;  // 96 x 45 = 4320
  expectRectangle(bath.full(), 25_in, 96_in, 34_in, 96_in);
}

TEST(FullMirror, UnderASlopeTheLargestRectangle) {
  Bath bath;
  // 48 at the south wall's left end, 96 from 48 in on. (96 - l)(48 + l - 34) is largest at l = 41: 55 x 55.
  bath.room.option().room.ceiling.slopes.push_back({{"e"}, 48_in, 48_in});
  expectRectangle(bath.full(), 41_in, 96_in, 34_in, 89_in);
}

TEST(FullMirror, NothingBelowKeepsItsLowerEdgeAndNothingLeftIsNone) {
  Bath bath;
  bath.room.option().fixtures.clear();
  expectRectangle(bath.full(), 0_in, 96_in, 40_in, 96_in);
  bath.room.door("d", "s", 60, 30, Hand::left, Swing::in);
  EXPECT_FALSE(bath.full());
  bath.room.option().openings.clear();
  bath.room.option().room.ceiling.height.reset();
  EXPECT_FALSE(bath.full());
}

TEST(FullMirror, NoGridRectangleUnderRandomSlopesIsLarger) {
  std::mt19937 random(7);
  const auto upTo = [&](int most) {
    return static_cast<double>(std::uniform_int_distribution<int>(0, most)(random));
  };
  int sloped = 0;
  for (int i = 0; i < 200; ++i) {
    Bath bath;
    auto& slopes = bath.room.option().room.ceiling.slopes;
    for (const char* wall : {"e", "w"})
      if (upTo(3) > 0) slopes.push_back({{wall}, in(36 + upTo(50)), in(10 + upTo(80))});
    const Layout layout = bath.room.layout();
    const auto full = bath.full();
    if (!full) continue;
    sloped += slopes.empty() ? 0 : 1;
    const Length left = full->along - full->width / 2, right = left + full->width,
                 top = full->bottom + full->height;
    const Length slack = Length::nanometres(5);
    EXPECT_LE(top, std::min(*ceilingOn(layout, {"s"}, left), *ceilingOn(layout, {"s"}, right)) + slack);
    double best = 0;
    for (int l = 0; l <= 60; ++l)
      for (int r = 60; r <= 96; ++r) {
        const Length h = std::min(*ceilingOn(layout, {"s"}, in(l)), *ceilingOn(layout, {"s"}, in(r))) - 34_in;
        best = std::max(best, (r - l) * h.inches());
      }
    EXPECT_GE(full->width.inches() * full->height.inches(), best - 1e-4) << "room " << i;
  }
  EXPECT_GT(sloped, 100);
}

}  // namespace
}  // namespace elbowroom
