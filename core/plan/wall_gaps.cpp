#include <algorithm>

#include "core/plan/snap_wall_item.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr double kSmall = 6;  // inches

bool overlapsInHeight(const WallBox& a, const WallBox& b) { return a.low < b.high && b.low < a.high; }

// The nearest thing wholly beside `box` on that side that shares some of its height.
const WallBox* neighbour(const std::vector<WallBox>& all, const WallBox& box, WallSide side) {
  const WallBox* best = nullptr;
  for (const WallBox& other : all) {
    if (other.id == box.id || !overlapsInHeight(other, box)) continue;
    const bool left = side == WallSide::left;
    if (left ? other.right > box.left : other.left < box.right) continue;
    if (!best || (left ? other.right > best->right : other.left < best->left)) best = &other;
  }
  return best;
}

}  // namespace

std::vector<WallGap> wallGaps(const Layout& layout, const ElementId& id) {
  const std::optional<WallBox> found = wallBoxOf(layout, id);
  const WallFrame* wall = found ? findWallFrame(layout, found->wall) : nullptr;
  if (!wall) return {};
  const WallBox& box = *found;
  const bool item = findWallItem(layout.option, id) != nullptr;
  const Opening* opening = findOpening(layout.option, id);
  const bool small = item && (box.right - box.left).inches() <= kSmall && (box.high - box.low).inches() <= kSmall;
  const bool moves_up = item || (opening && opening->kind == OpeningKind::window);
  const Length left = small ? box.middle() : box.left, right = small ? box.middle() : box.right;
  const Length middle = box.middle(), level = box.centreHeight();
  const std::vector<WallBox> all = wallBoxesOn(layout, box.wall);
  std::vector<WallGap> gaps;
  if (moves_up) {
    const Length low = small ? level : box.low;
    gaps.push_back({WallSide::below, {}, low, {{middle, low}, {middle, Length{}}}, small});
  }
  gaps.push_back({WallSide::left, {}, left, {{left, level}, {Length{}, level}}, small});
  gaps.push_back({WallSide::right, {}, wall->length - right, {{right, level}, {wall->length, level}}, small});
  for (const WallSide side : {WallSide::left, WallSide::right}) {
    const WallBox* other = neighbour(all, box, side);
    if (!other) continue;
    const Length from = side == WallSide::left ? box.left : box.right;
    const Length to = side == WallSide::left ? other->right : other->left;
    // A level that both share, so that the line meets what limits it.
    const Length shared = (std::max(box.low, other->low) + std::min(box.high, other->high)) / 2;
    gaps.push_back({side, other->id, abs(to - from), {{from, shared}, {to, shared}}, false});
  }
  if (moves_up) {
    const auto a = ceilingOn(layout, box.wall, box.left), b = ceilingOn(layout, box.wall, box.right);
    if (a && b) {
      const Length x = *a <= *b ? box.left : box.right, top = std::min(*a, *b);
      const Length at = *a == *b ? middle : x;
      gaps.push_back({WallSide::above, {}, top - box.high, {{at, box.high}, {at, top}}, false});
    }
  }
  return gaps;
}

std::optional<WallBox> boxForWallGap(const Layout& layout, const ElementId& id, const WallGap& gap, Length wanted) {
  std::optional<WallBox> box = wallBoxOf(layout, id);
  const WallFrame* wall = box ? findWallFrame(layout, box->wall) : nullptr;
  if (!wall || wanted < Length{}) return std::nullopt;
  const Length more = wanted - gap.distance;
  const bool along = gap.side == WallSide::left || gap.side == WallSide::right;
  const Length by = gap.side == WallSide::left || gap.side == WallSide::below ? more : -more;
  if (along) {
    box->left += by;
    box->right += by;
  } else {
    box->low += by;
    box->high += by;
  }
  if (box->left < Length{} || box->right > wall->length || box->low < Length{}) return std::nullopt;
  const auto a = ceilingOn(layout, box->wall, box->left), b = ceilingOn(layout, box->wall, box->right);
  const bool was_under = !a || !b || wallBoxOf(layout, id)->high <= std::min(*a, *b);
  if (a && b && box->high > std::min(*a, *b) && (was_under || !along)) return std::nullopt;
  return box;
}

}  // namespace elbowroom
