#include "core/rules/remedies/ways.h"

#include "core/rules/remedies/belongings.h"

namespace elbowroom::remedies {

bool isKept(const Option& option, const ElementId& id) {
  if (const Fixture* f = findFixture(option, id)) return f->status == Status::keep;
  if (const WallItem* i = findWallItem(option, id)) return i->status == Status::keep;
  return false;
}

Ways waysFor(const Layout& layout, const ElementId& id) {
  Ways ways;
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.id == id && f.fixture.status != Status::remove && !f.footprint.empty())
      addFixtureWays(layout, f, ways);
  for (const PlacedOpening& o : layout.openings)
    if (o.opening.id == id && o.wall >= 0) addOpeningWays(layout, o, ways);
  if (const WallItem* item = findWallItem(layout.option, id); item != nullptr && item->status != Status::remove)
    addWallItemWays(layout, *item, ways);
  if (const CeilingItem* item = findCeilingItem(layout.option, id)) addCeilingItemWays(layout, *item, ways);
  for (Family& f : ways.families)
    f.at = [&layout, alone = std::move(f.at)](Length by) { return withBelongings(layout, alone(by)); };
  for (Candidate& c : ways.candidates) c.change = withBelongings(layout, std::move(c.change));
  const bool kept = isKept(layout.option, id);
  for (Family& f : ways.families) f.kept = f.kept || kept;
  for (Candidate& c : ways.candidates) c.kept = c.kept || kept;
  return ways;
}

}  // namespace elbowroom::remedies
