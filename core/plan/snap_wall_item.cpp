#include "core/plan/snap_wall_item.h"

#include <algorithm>
#include <cmath>

#include "core/plan/bays.h"
#include "core/plan/snap_along.h"

namespace elbowroom {

using namespace literals;

std::string_view wordsOf(WallSnapReason reason) {
  switch (reason) {
    case WallSnapReason::none: return "";
    case WallSnapReason::corner: return "into the corner";
    case WallSnapReason::wallCentre: return "at the middle of the wall";
    case WallSnapReason::fixtureCentre: return "on the centreline of what stands below";
    case WallSnapReason::openingCentre: return "on the centreline of an opening";
    case WallSnapReason::itemCentre: return "on the centreline of another thing";
    case WallSnapReason::itemEdge: return "edge to edge";
    case WallSnapReason::bayCentre: return "in the middle of a stud bay";
    case WallSnapReason::floor: return "on the floor";
    case WallSnapReason::ceiling: return "up to the ceiling";
    case WallSnapReason::rim: return "on the rim";
    case WallSnapReason::eye: return "middle at eye level";
    case WallSnapReason::usual: return "at its usual height";
    case WallSnapReason::itemMiddle: return "middles level";
    case WallSnapReason::itemTop: return "tops level";
    case WallSnapReason::itemBottom: return "level with an edge";
    case WallSnapReason::step: return "at the nearest step";
  }
  return "";
}

namespace {

struct Target {
  Length at;      // where the coordinate of the thing (its centre, or its lower edge) would be
  WallSnap why;
  int rank = 0;   // at the same distance the lower one wins
};

struct Frame {
  std::size_t index = 0;
  const WallFrame* wall = nullptr;
};

Frame frameOf(const Layout& layout, const ElementId& id) {
  for (std::size_t i = 0; i < layout.walls.size(); ++i)
    if (layout.walls[i].id == id) return {i, &layout.walls[i]};
  return {};
}

// Goes over to the neighbours while the centre lies past a corner.
Frame wallUnder(const Layout& layout, Frame at, Length width, Length& along) {
  const std::size_t count = layout.walls.size();
  for (std::size_t turns = 0; turns < count; ++turns) {
    if (along >= Length{} && along <= at.wall->length) return at;
    const std::size_t next = along < Length{} ? (at.index + count - 1) % count : (at.index + 1) % count;
    const WallFrame& other = layout.walls[next];
    if (other.length < width) return at;
    along = along < Length{} ? other.length + along : along - at.wall->length;
    at = {next, &other};
  }
  return at;
}

const Target* nearest(const std::vector<Target>& targets, Length wanted, Length reach, Length least, Length most) {
  const Target* best = nullptr;
  for (const Target& target : targets) {
    const Length off = abs(target.at - wanted);
    if (off > reach || target.at < least || target.at > most) continue;
    if (!best || off < abs(best->at - wanted) || (off == abs(best->at - wanted) && target.rank < best->rank))
      best = &target;
  }
  return best;
}

struct Problem {
  const Layout& layout;
  int index;  // of the wall
  const WallFrame& wall;
  const WallBox& moving;
  std::vector<WallBox> others;
  Length half, height;
};

bool isItem(const Problem& p, const WallBox& box) { return findWallItem(p.layout.option, box.id) != nullptr; }
bool isOpening(const Problem& p, const WallBox& box) { return findOpening(p.layout.option, box.id) != nullptr; }

Segment upright(const Problem& p, Length along, Length to) {
  return {{along, Length{}}, {along, std::max(to, p.height)}};
}

std::vector<Target> alongTargets(const Problem& p) {
  std::vector<Target> targets;
  const Length middle = p.wall.length / 2;
  targets.push_back({middle, {WallSnapReason::wallCentre, {}, {}, {}}, 3});
  targets.push_back({p.half, {WallSnapReason::corner, {}, {}, {}}, 0});
  targets.push_back({p.wall.length - p.half, {WallSnapReason::corner, {}, {}, {}}, 0});
  for (const WallBox& box : p.others) {
    const bool item = isItem(p, box), opening = isOpening(p, box);
    const WallSnapReason reason = item      ? WallSnapReason::itemCentre
                                  : opening ? WallSnapReason::openingCentre
                                            : WallSnapReason::fixtureCentre;
    targets.push_back({box.middle(), {reason, box.id, {}, upright(p, box.middle(), box.high)}, item ? 2 : 1});
    // A double basin has a centreline for each bowl.
    const Fixture* fixture = findFixture(p.layout.option, box.id);
    for (int i = 0, n = fixture ? fixture->basins.value_or(1) : 1; n > 1 && i < n; ++i) {
      const Length at = box.left + (box.right - box.left).scaled((2 * i + 1) / (2.0 * n));
      targets.push_back({at, {WallSnapReason::fixtureCentre, box.id, {}, upright(p, at, box.high)}, 0});
    }
    for (const Length edge : {box.left, box.right})
      for (const Length at : {edge - p.half, edge + p.half})
        targets.push_back({at, {WallSnapReason::itemEdge, box.id, {}, upright(p, edge, box.high)}, 4});
  }
  if (const auto bays = baysOf(p.layout, p.index))
    for (const WallSpan& bay : *bays) {
      const Length at = (bay.from + bay.to) / 2;
      targets.push_back({at, {WallSnapReason::bayCentre, {}, {}, upright(p, at, p.height)}, 5});
    }
  return targets;
}

std::vector<Target> heightTargets(const Problem& p, Length middle, Length top, std::span<const HeightLine> eyes) {
  std::vector<Target> targets;
  const auto level = [&](const WallBox& box, Length h) {
    return Segment{{std::min(box.left, middle - p.half), h}, {std::max(box.right, middle + p.half), h}};
  };
  targets.push_back({Length{}, {WallSnapReason::floor, {}, {}, {}}, 0});
  targets.push_back({top - p.height, {WallSnapReason::ceiling, {}, {}, {}}, 0});
  for (const HeightLine& eye : eyes)
    targets.push_back({eye.height - p.height / 2,
                       {eye.name.empty() ? WallSnapReason::usual : WallSnapReason::eye, {}, eye.name,
                        Segment{{Length{}, eye.height}, {p.wall.length, eye.height}}},
                       2});
  for (const WallBox& box : p.others) {
    if (findFixture(p.layout.option, box.id)) {
      // The rim of what stands below, not of what stands elsewhere on the wall.
      if (box.left < middle + p.half && middle - p.half < box.right)
        targets.push_back({box.high, {WallSnapReason::rim, box.id, {}, level(box, box.high)}, 1});
      continue;
    }
    targets.push_back({box.centreHeight() - p.height / 2,
                       {WallSnapReason::itemMiddle, box.id, {}, level(box, box.centreHeight())}, 1});
    targets.push_back({box.high - p.height, {WallSnapReason::itemTop, box.id, {}, level(box, box.high)}, 3});
    targets.push_back({box.low, {WallSnapReason::itemBottom, box.id, {}, level(box, box.low)}, 3});
    targets.push_back({box.high, {WallSnapReason::itemBottom, box.id, {}, level(box, box.high)}, 4});
    targets.push_back({box.low - p.height, {WallSnapReason::itemBottom, box.id, {}, level(box, box.low)}, 4});
  }
  return targets;
}

}  // namespace

WallSnapped snapOnWall(const Layout& layout, const WallBox& moving, Point wanted, const SnapRules& rules,
                       std::span<const HeightLine> eyes) {
  WallSnapped snapped{moving.wall, wanted.x, wanted.y - (moving.high - moving.low) / 2, {}, {}};
  Frame at = frameOf(layout, moving.wall);
  if (!at.wall) return snapped;
  const Length width = moving.right - moving.left;
  at = wallUnder(layout, at, width, wanted.x);
  Problem p{layout, static_cast<int>(at.index), *at.wall, moving, wallBoxesOn(layout, at.wall->id), width / 2, moving.high - moving.low};
  std::erase_if(p.others, [&](const WallBox& box) { return box.id == moving.id; });
  snapped.wall = at.wall->id;

  const Length length = at.wall->length;
  const Length least = std::min(p.half, length / 2), most = std::max(length - p.half, length / 2);
  snapped.middle = std::clamp(wanted.x, least, most);
  if (rules.enabled) {
    const std::vector<Target> targets = alongTargets(p);
    if (snapped.middle != wanted.x) {
      snapped.along.reason = WallSnapReason::corner;
    } else if (const Target* target = nearest(targets, wanted.x, rules.reach, least, most)) {
      snapped.middle = target->at;
      snapped.along = target->why;
    } else {
      const bool from_left = 2 * wanted.x <= length;
      const Length rounded = from_left ? snap_parts::roundTo(wanted.x, rules.step)
                                       : length - snap_parts::roundTo(length - wanted.x, rules.step);
      snapped.middle = std::clamp(rounded, least, most);
      snapped.along.reason = WallSnapReason::step;
    }
  }

  // A ceiling that falls is concave along a wall: a rectangle is under it when its two upper corners are.
  const auto left = ceilingOn(layout, snapped.wall, snapped.middle - p.half);
  const auto right = ceilingOn(layout, snapped.wall, snapped.middle + p.half);
  const Length top = left && right ? std::min(*left, *right) : 1000000_in;
  const Length highest = std::max(Length{}, top - p.height), low = wanted.y - p.height / 2;
  snapped.bottom = std::clamp(low, Length{}, highest);
  if (!rules.enabled) return snapped;
  if (snapped.bottom != low) {
    snapped.height.reason = low < Length{} ? WallSnapReason::floor : WallSnapReason::ceiling;
    return snapped;
  }
  const std::vector<Target> targets = heightTargets(p, snapped.middle, top, eyes);
  if (const Target* target = nearest(targets, low, rules.reach, Length{}, highest)) {
    snapped.bottom = target->at;
    snapped.height = target->why;
  } else {
    snapped.bottom = std::clamp(snap_parts::roundTo(low, rules.step), Length{}, highest);
    snapped.height.reason = WallSnapReason::step;
  }
  return snapped;
}

}  // namespace elbowroom
