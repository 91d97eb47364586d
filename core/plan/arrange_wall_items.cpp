#include "core/plan/arrange_wall_items.h"

#include <algorithm>

#include "core/plan/bays.h"

namespace elbowroom {
namespace {

using namespace literals;

std::vector<WallItem> itemsOf(const Layout& layout, std::span<const ElementId> ids) {
  std::vector<WallItem> items;
  for (const ElementId& id : ids)
    if (const WallItem* item = findWallItem(layout.option, id)) items.push_back(*item);
  return items;
}

bool oneWall(const std::vector<WallItem>& items) {
  return std::all_of(items.begin(), items.end(), [&](const WallItem& i) { return i.wall == items.front().wall; });
}

Length leftOf(const WallItem& i) { return i.along - i.width / 2; }
Length rightOf(const WallItem& i) { return leftOf(i) + i.width; }
Length topOf(const WallItem& i) { return i.bottom + i.height; }

std::vector<WallItem> changedOnly(const Layout& layout, std::vector<WallItem> items) {
  std::erase_if(items, [&](const WallItem& i) { return *findWallItem(layout.option, i.id) == i; });
  return items;
}

}  // namespace

std::vector<WallItem> arranged(const Layout& layout, std::span<const ElementId> ids, Arrange how) {
  std::vector<WallItem> items = itemsOf(layout, ids);
  if (items.size() < 2 || !oneWall(items)) return {};
  Length left = leftOf(items[0]), right = rightOf(items[0]), low = items[0].bottom, top = topOf(items[0]);
  for (const WallItem& i : items) {
    left = std::min(left, leftOf(i)), right = std::max(right, rightOf(i));
    low = std::min(low, i.bottom), top = std::max(top, topOf(i));
  }
  for (WallItem& i : items) switch (how) {
      case Arrange::lefts: i.along = left + i.width / 2; break;
      case Arrange::centres: i.along = (left + right) / 2; break;
      case Arrange::rights: i.along = right - i.width / 2; break;
      case Arrange::tops: i.bottom = top - i.height; break;
      case Arrange::middles: i.bottom = (low + top) / 2 - i.height / 2; break;
      case Arrange::bottoms: i.bottom = low; break;
    }
  return changedOnly(layout, std::move(items));
}

std::vector<WallItem> spacedEvenly(const Layout& layout, std::span<const ElementId> ids) {
  std::vector<WallItem> items = itemsOf(layout, ids);
  if (items.size() < 3 || !oneWall(items)) return {};
  std::stable_sort(items.begin(), items.end(), [](const WallItem& a, const WallItem& b) { return a.along < b.along; });
  Length widths;
  for (const WallItem& i : items) widths += i.width;
  const Length room = rightOf(items.back()) - leftOf(items.front()) - widths;
  const int gaps = static_cast<int>(items.size()) - 1;
  Length at = leftOf(items.front()), used;
  for (int k = 0; k <= gaps; ++k) {
    WallItem& item = items[static_cast<std::size_t>(k)];
    // From the whole, so that no rounding adds up and the last one stays where it was.
    if (k > 0 && k < gaps) item.along = at + used + room.scaled(static_cast<double>(k) / gaps) + item.width / 2;
    used += item.width;
  }
  return changedOnly(layout, std::move(items));
}

std::vector<WallItem> mirroredAbout(const Layout& layout, std::span<const ElementId> ids, Length along) {
  std::vector<WallItem> items = itemsOf(layout, ids);
  if (items.empty() || !oneWall(items)) return {};
  const WallFrame* wall = findWallFrame(layout, items.front().wall);
  for (WallItem& i : items) {
    i.along = along * 2 - i.along;
    if (!wall || leftOf(i) < Length{} || rightOf(i) > wall->length) return {};
  }
  return changedOnly(layout, std::move(items));
}

std::vector<WallItem> wallToWall(const Layout& layout, const ElementId& id) {
  const WallItem* item = findWallItem(layout.option, id);
  const WallFrame* wall = item ? findWallFrame(layout, item->wall) : nullptr;
  if (!wall) return {};
  Length left, right = wall->length;
  for (const Opening& o : layout.option.openings) {
    const auto box = wallBoxOf(layout, o.id);
    if (!box || box->wall != item->wall || box->high <= item->bottom || topOf(*item) <= box->low) continue;
    if (box->right <= item->along) left = std::max(left, box->right);
    if (box->left >= item->along) right = std::min(right, box->left);
  }
  WallItem wide = *item;
  wide.width = right - left;
  wide.along = (left + right) / 2;
  return changedOnly(layout, {wide});
}

std::vector<WallItem> counterToCeiling(const Layout& layout, const ElementId& id) {
  const WallItem* item = findWallItem(layout.option, id);
  const auto box = wallBoxOf(layout, id);
  if (!item || !box) return {};
  const auto a = ceilingOn(layout, item->wall, box->left), b = ceilingOn(layout, item->wall, box->right);
  if (!a || !b) return {};
  WallItem high = *item;
  bool rim = false;
  for (const WallBox& other : wallBoxesOn(layout, item->wall)) {
    const Fixture* f = findFixture(layout.option, other.id);
    const bool basin = f && (f->kind == FixtureKind::basin || f->kind == FixtureKind::vanity);
    if (!basin || other.right <= box->left || other.left >= box->right) continue;
    high.bottom = rim ? std::max(high.bottom, other.high) : other.high;
    rim = true;
  }
  high.height = std::min(*a, *b) - high.bottom;
  if (high.height < 1_in) return {};
  return changedOnly(layout, {high});
}

std::vector<WallItem> atHeight(const Layout& layout, std::span<const ElementId> ids, const HeightLine& line) {
  std::vector<WallItem> items = itemsOf(layout, ids);
  for (WallItem& i : items) {
    const auto a = ceilingOn(layout, i.wall, leftOf(i)), b = ceilingOn(layout, i.wall, rightOf(i));
    i.bottom = line.height - i.height / 2;
    if (a && b) i.bottom = std::min(i.bottom, std::min(*a, *b) - i.height);
    i.bottom = std::max(i.bottom, Length{});
    i.person = line.name;
  }
  return changedOnly(layout, std::move(items));
}

std::vector<WallItem> intoBay(const Layout& layout, const ElementId& id) {
  const auto placed = std::find_if(layout.on_walls.begin(), layout.on_walls.end(),
                                   [&](const PlacedWallItem& i) { return i.item.id == id; });
  if (placed == layout.on_walls.end()) return {};
  const auto fit = bayFit(layout, *placed);
  if (!fit || !fit->move) return {};
  WallItem moved = placed->item;
  moved.along += *fit->move;
  return changedOnly(layout, {moved});
}

}  // namespace elbowroom
