#include "core/rules/checks/floor.h"

#include "core/geometry/measure.h"
#include "core/geometry/near_things.h"
#include "core/rules/checks/common.h"

namespace elbowroom::checks {

std::vector<Measurement> ownFloor(const CheckInput& in) {
  std::vector<const PlacedFixture*> standing;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && !f.footprint.empty()) standing.push_back(&f);
  if (standing.empty() || in.layout.room.empty()) return {};

  std::vector<Measurement> clashes;
  const auto add = [&](std::vector<ElementId> subjects, Point at) {
    Measurement clash;
    clash.subjects = std::move(subjects);
    clash.measured = false;
    clash.places = {pointAt(at)};
    clashes.push_back(std::move(clash));
  };
  std::vector<Box> boxes;
  for (const PlacedFixture* f : standing) boxes.push_back(boundsOf(f->footprint));
  const NearThings things(boxes);
  std::vector<int> near;
  for (std::size_t i = 0; i < standing.size(); ++i) {
    const PlacedFixture& one = *standing[i];
    if (const Gap gap = gapToBoundary(one.footprint, in.layout.room); gap.overlap)
      add({one.fixture.id}, gap.from);
    things.within(boxes[i], {}, near);
    for (const int k : near) {
      if (k <= static_cast<int>(i)) continue;
      const PlacedFixture& other = *standing[static_cast<std::size_t>(k)];
      if (const auto at = overlapOf(one.footprint, other.footprint))
        add({one.fixture.id, other.fixture.id}, *at);
    }
  }
  if (clashes.empty()) {
    Measurement clear;
    clear.measured = true;
    clear.places = {pointAt(in.figures.turning.largest.center)};
    clashes.push_back(std::move(clear));
  }
  return clashes;
}

}  // namespace elbowroom::checks
