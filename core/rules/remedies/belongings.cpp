#include "core/rules/remedies/belongings.h"

#include "core/plan/wall_catalogue.h"

namespace elbowroom::remedies {
namespace {

using namespace literals;

constexpr Length kCentred = 1_in;  // nobody hangs a mirror so near to the middle by chance

bool isBasin(const Fixture& f) { return f.kind == FixtureKind::basin || f.kind == FixtureKind::vanity; }

bool belongs(const WallItem& item, const Fixture& f, const OnWall& on) {
  if (item.status == Status::remove) return false;
  if (!item.shower.empty()) return item.shower == f.id;
  const bool over = is(item, WallUse::mirror) || is(item, WallUse::lamp);
  return over && isBasin(f) && item.wall == on.wall && abs(item.along - on.along) <= kCentred;
}

// Where the thing hangs once its fixture has moved; nullopt: it stays.
std::optional<WallItem> goneAlong(const Layout& layout, WallItem item, const OnWall& from, const OnWall& to) {
  const WallFrame* before = findWallFrame(layout, from.wall);
  const WallFrame* own = findWallFrame(layout, item.wall);
  if (before == nullptr || own == nullptr) return std::nullopt;
  Length by;
  if (from.wall == to.wall) {
    by = dot((to.along - from.along) * before->along, own->along);
  } else if (item.wall == from.wall) {
    item.wall = to.wall;
    by = to.along - from.along;
    own = findWallFrame(layout, to.wall);
  } else {
    return std::nullopt;
  }
  if (own == nullptr || (by == Length{} && from.wall == to.wall)) return std::nullopt;
  item.along += by;
  const Length half = item.width / 2;
  if (item.along - half < -kContact || item.along + half > own->length + kContact) return std::nullopt;
  if (item.status == Status::keep) item.status = Status::move;
  return item;
}

}  // namespace

Change withBelongings(const Layout& layout, Change change) {
  const auto* put = std::get_if<PutFixtures>(&change);
  if (put == nullptr) return change;
  std::vector<WallItem> along;
  for (const Fixture& then : put->fixtures) {
    const Fixture* now = findFixture(layout.option, then.id);
    const auto* from = now == nullptr ? nullptr : std::get_if<OnWall>(&now->placement);
    const auto* to = std::get_if<OnWall>(&then.placement);
    if (from == nullptr || to == nullptr) continue;
    for (const WallItem& item : layout.option.on_walls) {
      if (!belongs(item, *now, *from)) continue;
      if (auto gone = goneAlong(layout, item, *from, *to)) along.push_back(std::move(*gone));
    }
  }
  if (along.empty()) return change;
  PutThings all;
  all.fixtures = put->fixtures;
  all.on_walls = std::move(along);
  return all;
}

}  // namespace elbowroom::remedies
