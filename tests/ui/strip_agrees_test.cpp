// The plan and the wall strip never disagree about a position: random plans and edits, fixed seeds.
#include <gtest/gtest.h>

#include <random>

#include "core/plan/corners.h"
#include "core/plan/history.h"
#include "tests/core/plan/random_edits.h"
#include "ui/walls/strip_dimensions.h"
#include "ui/walls/strip_scene.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

constexpr Length kRounding = Length::nanometres(4);
constexpr int kSequences = 400;
constexpr int kEdits = 12;

StripScene sceneOf(const Layout& layout) {
  StripScene scene;
  DrawStyle style;
  style.mm = 0.1_in;
  scene.rebuild(layout, {}, style);
  return scene;
}

// The place in the room that an x of the strip stands for, if it lies on that wall.
std::optional<Point> inRoom(const StripScene& scene, const Layout& layout, const ElementId& wall, Length x) {
  const WallFrame* frame = findWallFrame(layout, wall);
  const auto left = scene.leftOf(wall);
  if (!frame || !left || x < *left || x > *left + frame->length) return std::nullopt;
  return frame->at(x - *left);
}

int compared = 0, sides = 0;

void compareAll(const Layout& layout, const std::string& where) {
  const StripScene scene = sceneOf(layout);
  Length x;
  for (const WallFrame& wall : layout.walls) {
    ASSERT_EQ(scene.leftOf(wall.id), x) << where;  // side by side, in the room's order, at true length
    x += wall.length;
  }
  const auto same = [&](const ElementId& id, const ElementId& wall, Length strip_x, Point plan) {
    const auto at = inRoom(scene, layout, wall, strip_x);
    if (!at) return;  // past its wall's end, where the strip shows the next wall
    EXPECT_LE(distance(*at, plan), kRounding) << where << ", " << id.text;
    ++compared;
  };
  for (const PlacedWallItem& i : layout.on_walls) {
    if (i.wall < 0) continue;
    const auto box = scene.boxOf(i.item.id);
    ASSERT_TRUE(box) << where << ", " << i.item.id.text;
    same(i.item.id, i.item.wall, box->low.x, i.left);
    same(i.item.id, i.item.wall, box->high.x, i.right);
    EXPECT_EQ(box->low.y, i.bottom) << where;
    EXPECT_EQ(box->high.y, i.top) << where;
  }
  for (const PlacedOpening& o : layout.openings) {
    if (o.wall < 0) continue;
    const auto box = scene.boxOf(o.opening.id);
    ASSERT_TRUE(box) << where << ", " << o.opening.id.text;
    same(o.opening.id, o.opening.wall, box->low.x, o.left);
    same(o.opening.id, o.opening.wall, box->high.x, o.right);
  }
  for (const PlacedFixture& f : layout.fixtures) {
    if (f.wall < 0) continue;
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(f.wall)];
    const auto box = scene.boxOf(f.fixture.id);
    if (!box) continue;
    const Point back = f.center - dot(f.center - wall.from, wall.inward) * wall.inward;
    // Silhouettes are drawn from doubles in inches.
    const auto at = inRoom(scene, layout, wall.id, (box->low.x + box->high.x) / 2);
    if (!at) continue;
    EXPECT_LE(distance(*at, back), 0.001_in) << where << ", " << f.fixture.id.text;
    ++compared;
  }
  // From its side, what stands there is what the plan shows before that stretch of the wall.
  for (const CornerTouch& touch : cornerTouches(layout)) {
    const Outline* outline = nullptr;
    for (const PlacedFixture& f : layout.fixtures)
      if (f.fixture.id == touch.id) outline = &f.footprint;
    for (const PlacedWallItem& i : layout.on_walls)
      if (i.item.id == touch.id) outline = &i.outline;
    const WallFrame* wall = findWallFrame(layout, touch.wall);
    ASSERT_TRUE(outline && wall) << where;
    for (const Length along : {touch.from, touch.to}) {
      Length nearest = 1000_in;
      for (const Point& p : *outline) nearest = std::min(nearest, abs(dot(p - wall->at(along), wall->along)));
      if (along == Length{} || along == wall->length) continue;  // cut off at the corner
      EXPECT_LE(nearest, kRounding) << where << ", " << touch.id.text;
      ++sides;
    }
  }
}

TEST(StripAndPlan, AgreeAfterAnyEdits) {
  compared = sides = 0;
  for (int seed = 0; seed < kSequences; ++seed) {
    testing::RandomEdits edits(static_cast<unsigned>(seed));
    History history(testing::hallBath());
    for (int i = 0; i < kEdits; ++i) {
      history.perform(edits.next(history.plan()));
      for (std::size_t option = 0; option < history.plan().options.size(); ++option) {
        compareAll(deriveLayout(history.plan(), option),
                   "seed " + std::to_string(seed) + ", edit " + std::to_string(i));
        if (HasFatalFailure() || HasNonfatalFailure()) return;
      }
    }
  }
  EXPECT_GT(compared, 20'000);
  EXPECT_GT(sides, 500);
}

TEST(StripAndPlan, WhatIsPutWhereTheStripShowsItIsThere) {
  std::mt19937 random(11);
  for (int seed = 0; seed < 200; ++seed) {
    testing::RandomEdits edits(static_cast<unsigned>(seed));
    History history(testing::hallBath());
    for (int i = 0; i < 8; ++i) history.perform(edits.next(history.plan()));
    const Layout layout = deriveLayout(history.plan(), 0);
    const StripScene scene = sceneOf(layout);
    if (scene.empty() || layout.option.on_walls.empty()) continue;
    const StripWall& last = scene.drawing().walls.back();
    std::uniform_int_distribution<std::int64_t> along(0, (last.x + last.length).nm());
    for (int k = 0; k < 10; ++k) {
      const Length x = Length::nanometres(along(random));
      const StripScene::Spot spot = scene.spotAt(x);
      WallItem item = layout.option.on_walls.front();
      item.width = 2_in;
      const WallBox box{item.id, spot.wall, spot.along - 1_in, spot.along + 1_in, 40_in, 50_in};
      PutThings put;
      ASSERT_TRUE(putBox(put, layout, box));
      const Result<Plan> next = apply(history.plan(), {0, put, "Move", ""});
      ASSERT_TRUE(next.ok()) << next.error().message;
      const Layout moved = deriveLayout(*next, 0);
      const auto shown = sceneOf(moved).boxOf(item.id);
      ASSERT_TRUE(shown);
      EXPECT_LE(abs((shown->low.x + shown->high.x) / 2 - x), kRounding) << "seed " << seed;
      const WallFrame* wall = findWallFrame(moved, spot.wall);
      const PlacedWallItem& placed = moved.on_walls.front();
      EXPECT_LE(distance(midpoint(placed.left, placed.right), wall->at(spot.along)), kRounding)
          << "seed " << seed;
    }
  }
}

}  // namespace
}  // namespace elbowroom::ui
