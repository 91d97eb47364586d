#include "core/works/backed_wall.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kBoard = Length::nanometres(12'700'000);      // 1/2 in
constexpr Length kPlywood = Length::nanometres(12'700'000);    // 1/2 in
constexpr Length kThinBoard = Length::nanometres(9'525'000);   // 3/8 in
constexpr Length kJambProud = Length::nanometres(1'587'500);   // 1/16 in

bool sitsInBox(const WallItem& item) {
  const WallKindInfo* info = findWallKind(item.kind);
  return info != nullptr && (info->electrical || info->use == WallUse::water);
}

}  // namespace

Length backedWallThickness(Length bare, int faces, Length plywood, Length board) {
  return bare + faces * (plywood + board - kBoard);
}
Length backedWallThickness(Length bare, int faces) {
  return backedWallThickness(bare, faces, kPlywood, kThinBoard);
}
Length backingAdds() { return kPlywood + kThinBoard - kBoard; }
Length jambFor(Length wall_thickness) { return wall_thickness + kJambProud; }

std::optional<BackedWall> backedWall(const Layout& layout, const ElementId& id) {
  const Wall* wall = findWall(layout.option, id);
  if (wall == nullptr) return std::nullopt;
  const bool already = yesNo(wall->facts, "backed").value_or(false);
  BackedWall found;
  found.wall = id;
  found.bare = already ? wall->thickness - backingAdds() : wall->thickness;
  found.backed = backedWallThickness(found.bare, 1);
  for (const Opening& o : layout.option.openings)
    if (o.wall == id) found.jambs.push_back(o.id);
  for (const PlacedWallItem& i : layout.on_walls) {
    if (i.item.wall != id || i.item.status == Status::remove) continue;
    if (sitsInBox(i.item))
      found.boxes.push_back(i.item.id);
    else if (i.recessed)
      found.recesses.push_back(i.item.id);
  }
  return found;
}

}  // namespace elbowroom
