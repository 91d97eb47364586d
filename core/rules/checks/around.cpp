#include "core/rules/checks/around.h"

namespace elbowroom::checks {

namespace {

void name(Ahead& found, const Obstacles& obstacles) {
  if (found.hit >= 0) found.hit = obstacles.fixture[static_cast<std::size_t>(found.hit)];
}

}  // namespace

Ahead aheadOf(Segment front, Direction ahead, const Layout& layout, const Obstacles& obstacles) {
  Ahead found = clearAhead(front, ahead, layout.room, obstacles.outlines);
  name(found, obstacles);
  return found;
}

AheadBoth aheadOfBoth(Segment front, Direction ahead, const Layout& layout, const Obstacles& obstacles) {
  AheadBoth found = clearAheadBoth(front, ahead, layout.room, obstacles.outlines);
  name(found.all, obstacles);
  return found;
}

std::vector<Around> aroundOf(const Layout& layout) {
  std::vector<Around> found(layout.fixtures.size());
  if (layout.room.empty()) return found;
  for (std::size_t i = 0; i < layout.fixtures.size(); ++i) {
    const PlacedFixture& f = layout.fixtures[i];
    if (f.fixture.status == Status::remove) continue;
    const Obstacles others = obstaclesWhere(layout, [&](const PlacedFixture& o) { return &o != &f; });
    found[i] = {aheadOf(centreline(f), leftOf(f), layout, others),
                aheadOf(centreline(f), rightOf(f), layout, others),
                aheadOf(f.front, f.facing, layout, others)};
  }
  return found;
}

}  // namespace elbowroom::checks
