#include "core/plan/layout.h"

#include <algorithm>

#include "core/plan/layout_parts.h"
#include "core/plan/wall_line.h"

namespace elbowroom {

Layout deriveLayout(const Plan& plan, std::size_t option_index) {
  const Option& option = plan.options[option_index];
  Layout layout;
  layout.settings = {.unit = plan.unit,
                     .title = plan.title,
                     .books = plan.books,
                     .book_settings = plan.book_settings,
                     .rule_changes = plan.rule_changes,
                     .people = plan.people,
                     .options = {},
                     .north = plan.north,
                     .site_tolerance = plan.site_tolerance,
                     .extra = plan.extra};
  layout.option = option;
  layout.walls = layout_parts::wallFrames(option);
  layout.room = roomOutline(option.room);
  layout.room_area = areaOf(layout.room);

  std::vector<Outline> blocks;
  layout.fixtures.reserve(option.fixtures.size());
  for (const Fixture& fixture : option.fixtures) {
    PlacedFixture placed = layout_parts::placeFixture(option, fixture);
    if (placed.solid && !placed.footprint.empty()) {
      layout.solid.push_back(static_cast<int>(layout.fixtures.size()));
      layout.solid_outlines.push_back(placed.footprint);
      layout.solid_boxes.push_back(boundsOf(placed.footprint));
      blocks.push_back(placed.floor_block);
      if (placed.floor_block != placed.footprint) layout.knee_space_counts = true;
    }
    layout.fixtures.push_back(std::move(placed));
  }
  layout.openings.reserve(option.openings.size());
  for (const Opening& opening : option.openings)
    layout.openings.push_back(layout_parts::placeOpening(option, layout.walls, opening));
  layout.on_walls.reserve(option.on_walls.size());
  for (const WallItem& item : option.on_walls)
    layout.on_walls.push_back(layout_parts::placeWallItem(layout.walls, item));
  layout.on_ceiling.reserve(option.on_ceiling.size());
  for (const CeilingItem& item : option.on_ceiling)
    layout.on_ceiling.push_back(layout_parts::placeCeilingItem(item));

  layout.floor = FreeFloor(layout.room, layout.solid_outlines);
  layout.floor_with_knees = layout.knee_space_counts ? FreeFloor(layout.room, std::move(blocks)) : layout.floor;
  return layout;
}

const WallFrame* findWallFrame(const Layout& layout, const ElementId& wall) {
  const auto at = std::find_if(layout.walls.begin(), layout.walls.end(),
                               [&](const WallFrame& frame) { return frame.id == wall; });
  return at == layout.walls.end() ? nullptr : &*at;
}

}  // namespace elbowroom
