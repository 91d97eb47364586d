// The plan and the wall strip never disagree about a position: what the strip draws of a thing on a wall is
// measured and laid on the plan again.
#include <gtest/gtest.h>

#include "core/drawing/draw_elevation.h"
#include "core/plan/edit.h"
#include "tests/core/plan/random_edits.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr int kSequences = 600;
constexpr int kEdits = 25;

std::optional<Box> drawnBox(const WallStripDrawing& strip, const ElementId& id) {
  DisplayList list;
  for (const DrawItem& item : strip.list)
    if (item.source == id && !std::holds_alternative<TextPrim>(item.prim)) list.push_back(item);
  if (list.empty()) return std::nullopt;
  return boundsOf(list);
}

// One nanometre of rounding for each of the two ends, more on walls at an angle.
constexpr double kRounding = 1e-6;

TEST(StripProperty, PlanAndStripNeverDisagreeAboutAPosition) {
  int compared = 0, at_an_angle = 0;
  for (int seed = 0; seed < kSequences; ++seed) {
    testing::RandomEdits edits(static_cast<unsigned>(seed) + 5'000'000);
    Plan plan = testing::hallBath();
    for (int i = 0; i < kEdits; ++i) {
      const Result<Plan> result = apply(plan, edits.next(plan));
      if (result.ok()) plan = *result;
    }
    for (std::size_t k = 0; k < plan.options.size(); ++k) {
      const Layout layout = deriveLayout(plan, k);
      const WallStripDrawing strip = drawWallStrip(layout, {2_in});
      ASSERT_EQ(strip.walls.size(), layout.walls.size());
      for (const PlacedWallItem& placed : layout.on_walls) {
        const std::optional<Box> drawn = drawnBox(strip, placed.item.id);
        ASSERT_TRUE(drawn) << "seed " << seed << ": " << placed.item.kind << " is not on the strip";
        const StripWall& at = strip.walls[static_cast<std::size_t>(placed.wall)];
        ASSERT_EQ(at.id, placed.item.wall);
        const WallFrame& wall = layout.walls[static_cast<std::size_t>(placed.wall)];
        const Point left = wall.at(drawn->low.x - at.x), right = wall.at(drawn->high.x - at.x);
        EXPECT_LT(distance(left, placed.left).inches(), kRounding)
            << "seed " << seed << " " << placed.item.kind;
        EXPECT_LT(distance(right, placed.right).inches(), kRounding)
            << "seed " << seed << " " << placed.item.kind;
        EXPECT_NEAR(drawn->low.y.inches(), placed.item.bottom.inches(), kRounding) << placed.item.kind;
        EXPECT_NEAR(drawn->high.y.inches(), (placed.item.bottom + placed.item.height).inches(), kRounding)
            << placed.item.kind;
        // And the plan's own figure: the centreline lies `along` from the wall's left end.
        const Point middle = midpoint(placed.left, placed.right);
        EXPECT_NEAR(distance(middle, wall.at(placed.item.along)).inches(), 0, kRounding);
        ++compared;
        at_an_angle += wall.along.x != 0 && wall.along.y != 0 ? 1 : 0;
      }
    }
  }
  EXPECT_GT(compared, 500);
  EXPECT_GT(at_an_angle, 100);
}

}  // namespace
}  // namespace elbowroom
