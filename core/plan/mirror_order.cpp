#include "core/plan/mirror_order.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <tuple>

#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kRoundBox = 4_in;
constexpr Length kQuarter = Length::nanometres(6'350'000);
constexpr Length kThreeEighths = Length::nanometres(9'525'000);

bool overlaps(const PlacedWallItem& a, const PlacedWallItem& b) {
  return a.from + kContact < b.to && b.from + kContact < a.to && a.bottom + kContact < b.top &&
         b.bottom + kContact < a.top;
}

// The hole that the thing needs in whatever glass is before it, with its centre from the wall's left end and the
// floor; nullopt: it is screwed on.
std::optional<MirrorHole> holeFor(const PlacedWallItem& i) {
  const WallKindInfo* info = findWallKind(i.item.kind);
  if (info == nullptr) return std::nullopt;
  MirrorHole hole{i.item.id, i.item.along, i.bottom + boxUp(i.item), {}, {}, {}};
  switch (info->use) {
    case WallUse::lamp:
    case WallUse::box:
    case WallUse::mirror:
      if (!info->electrical) return std::nullopt;
      hole.diameter = hole.width = hole.height = kRoundBox;
      return hole;
    case WallUse::receptacle:
    case WallUse::control:
      hole.width = std::max(i.item.width - 2 * kQuarter, Length{});
      hole.height = std::max(i.item.height - 2 * kQuarter, Length{});
      return hole;
    case WallUse::recess:
    case WallUse::panel:
    case WallUse::air:
      if (!i.recessed) return std::nullopt;
      hole.width = i.item.width;
      hole.height = i.item.height;
      return hole;
    default:
      return std::nullopt;
  }
}

Length between(double dx, double dy, Length less) { return Length::fromInches(std::hypot(dx, dy)) - less; }

// Nearest point of a hole's straight extent to a point is at these offsets.
double outside(Length from_centre, Length half) {
  return std::max((abs(from_centre) - half).inches(), 0.0);
}

Length rimToPoint(const MirrorHole& h, Length x, Length y) {
  if (h.diameter > Length{})
    return between((x - h.from_left).inches(), (y - h.from_bottom).inches(), h.diameter / 2);
  return between(outside(x - h.from_left, h.width / 2), outside(y - h.from_bottom, h.height / 2), {});
}

}  // namespace

Length rimToRim(const MirrorHole& a, const MirrorHole& b) {
  if (a.diameter > Length{}) return rimToPoint(b, a.from_left, a.from_bottom) - a.diameter / 2;
  if (b.diameter > Length{}) return rimToRim(b, a);
  return between(outside(a.from_left - b.from_left, (a.width + b.width) / 2),
                 outside(a.from_bottom - b.from_bottom, (a.height + b.height) / 2), {});
}

Length rimToEdge(const MirrorHole& h, const MirrorOrder& order) {
  return std::min({h.from_left - h.width / 2, order.width - h.from_left - h.width / 2,
                   h.from_bottom - h.height / 2, order.height - h.from_bottom - h.height / 2});
}

namespace {

void judgeEdges(MirrorOrder& order, const MirrorHole& h) {
  const Length edge = rimToEdge(h, order), needed = glassToEdge(order.thickness);
  if (edge < Length{}) {
    order.troubles.push_back({MirrorTroubleKind::holeOverEdge, h.item, {}, edge, {}});
    return;
  }
  if (edge < needed) order.troubles.push_back({MirrorTroubleKind::nearEdge, h.item, {}, edge, needed});
  const std::array corners{rimToPoint(h, {}, {}), rimToPoint(h, order.width, {}), rimToPoint(h, {}, order.height),
                           rimToPoint(h, order.width, order.height)};
  const Length corner = *std::min_element(corners.begin(), corners.end());
  const Length tip = glassToCorner(order.thickness);
  if (corner < tip) order.troubles.push_back({MirrorTroubleKind::nearCorner, h.item, {}, corner, tip});
  const Length widest = std::min(order.width, order.height) / 3, size = std::max(h.width, h.height);
  if (size > widest) order.troubles.push_back({MirrorTroubleKind::holeTooLarge, h.item, {}, size, widest});
}

void judge(MirrorOrder& order) {
  for (std::size_t i = 0; i < order.holes.size(); ++i) {
    judgeEdges(order, order.holes[i]);
    for (std::size_t k = 0; k < i; ++k) {
      const Length apart = std::max(rimToRim(order.holes[i], order.holes[k]), Length{});
      const Length needed = glassBetweenHoles(order.thickness);
      if (apart < needed)
        order.troubles.push_back(
            {MirrorTroubleKind::nearHole, order.holes[i].item, order.holes[k].item, apart, needed});
    }
  }
}

}  // namespace

Length glassToEdge(Length thickness) { return std::max(kQuarter, 2 * thickness); }
Length glassBetweenHoles(Length thickness) { return std::max(kThreeEighths, 2 * thickness); }
Length glassToCorner(Length thickness) { return 13 * thickness / 2; }

std::vector<MirrorOrder> mirrorOrders(const Layout& layout) {
  std::vector<MirrorOrder> orders;
  for (const PlacedWallItem& m : layout.on_walls) {
    if (m.item.kind != "mirror" || m.item.status != Status::fresh || m.wall < 0) continue;
    MirrorOrder order{m.item.id, m.item.wall, m.item.width, m.item.height, m.depth, {}, {}};
    for (const PlacedWallItem& i : layout.on_walls) {
      if (&i == &m || i.wall != m.wall || i.item.status == Status::remove || !overlaps(i, m)) continue;
      auto hole = holeFor(i);
      if (!hole) continue;
      hole->from_left -= m.from;
      hole->from_bottom -= m.bottom;
      const bool touches = hole->from_left + hole->width / 2 > Length{} &&
                           hole->from_left - hole->width / 2 < order.width &&
                           hole->from_bottom + hole->height / 2 > Length{} &&
                           hole->from_bottom - hole->height / 2 < order.height;
      if (touches) {
        order.holes.push_back(*hole);
        continue;
      }
      const Length over = std::max({m.from - i.from, i.to - m.to, m.bottom - i.bottom, i.top - m.top});
      order.troubles.push_back({MirrorTroubleKind::itemOverEdge, i.item.id, {}, over, {}});
    }
    std::sort(order.holes.begin(), order.holes.end(), [](const MirrorHole& a, const MirrorHole& b) {
      return std::tie(a.from_left, a.from_bottom) < std::tie(b.from_left, b.from_bottom);
    });
    judge(order);
    orders.push_back(std::move(order));
  }
  return orders;
}

}  // namespace elbowroom
