#include "core/plan/bays.h"

#include <algorithm>

#include "core/plan/layout_parts.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kStud = Length::nanometres(38'100'000);    // 1 1/2 in
constexpr Length kBoard = Length::nanometres(12'700'000);   // 1/2 in
constexpr Length kThicker = Length::nanometres(9'525'000);  // 3/8 in

WallSpan roughOpening(const Layout& layout, const PlacedOpening& placed) {
  const Opening& o = placed.opening;
  const Length half = openingWidth(o) / 2;
  WallSpan span{o.along - half, o.along + half};
  if (o.kind != OpeningKind::door || o.action == DoorAction::cased) return span;
  if (o.action == DoorAction::pocket) {
    const Length park = layout_parts::parkingLength(o);
    if (layout_parts::parkingSide(layout.option, o) == Hand::left)
      span.from -= park;
    else
      span.to += park;
    return span;
  }
  return {span.from - 1_in, span.to + 1_in};
}

}  // namespace

Length studWidth() { return kStud; }

std::optional<std::vector<Stud>> studsOf(const Layout& layout, int wall) {
  if (wall < 0) return std::nullopt;
  const Wall& stated = layout.option.room.walls[static_cast<std::size_t>(wall)];
  if (!stated.studs || stated.studs->spacing <= kStud) return std::nullopt;
  const Length end = layout.walls[static_cast<std::size_t>(wall)].length;
  std::vector<Stud> beside;
  std::vector<WallSpan> holes;
  for (const PlacedOpening& o : layout.openings) {
    if (o.wall != wall) continue;
    const WallSpan hole = roughOpening(layout, o);
    holes.push_back(hole);
    for (const int k : {1, 3})
      for (const Length at : {hole.from - k * kStud / 2, hole.to + k * kStud / 2})
        if (at > Length{} && at < end) beside.push_back({at, true});
  }
  const auto free = [&](Length at) {
    return std::none_of(holes.begin(), holes.end(),
                        [&](const WallSpan& h) { return at > h.from - 2 * kStud && at < h.to + 2 * kStud; });
  };
  std::vector<Stud> studs = beside;
  Length at = stated.studs->first;
  while (at - stated.studs->spacing >= Length{}) at -= stated.studs->spacing;
  while (at < Length{}) at += stated.studs->spacing;
  for (; at <= end; at += stated.studs->spacing)
    if (free(at)) studs.push_back({at, false});
  std::sort(studs.begin(), studs.end(), [](const Stud& a, const Stud& b) { return a.at < b.at; });
  return studs;
}

std::optional<std::vector<WallSpan>> baysOf(const Layout& layout, int wall) {
  const auto studs = studsOf(layout, wall);
  if (!studs) return std::nullopt;
  std::vector<WallSpan> solid;
  for (const Stud& s : *studs) solid.push_back({s.at - kStud / 2, s.at + kStud / 2});
  for (const PlacedOpening& o : layout.openings)
    if (o.wall == wall) solid.push_back(roughOpening(layout, o));
  std::sort(solid.begin(), solid.end(), [](const WallSpan& a, const WallSpan& b) { return a.from < b.from; });
  std::vector<WallSpan> bays;
  Length reached;
  for (const WallSpan& s : solid) {
    if (s.from > reached) bays.push_back({reached, s.from});
    reached = std::max(reached, s.to);
  }
  const Length end = layout.walls[static_cast<std::size_t>(wall)].length;
  if (end > reached) bays.push_back({reached, end});
  return bays;
}

std::optional<BayFit> bayFit(const Layout& layout, const PlacedWallItem& item) {
  const auto bays = baysOf(layout, item.wall);
  if (!bays) return std::nullopt;
  BayFit fit;
  const Length width = item.to - item.from;
  for (const WallSpan& bay : *bays) {
    if (item.item.along >= bay.from && item.item.along <= bay.to) fit.bay = bay.width();
    if (bay.width() < width) continue;
    Length move;
    if (item.from < bay.from) move = bay.from - item.from;
    if (item.to > bay.to) move = bay.to - item.to;
    if (!fit.move || abs(move) < abs(*fit.move)) fit.move = move;
  }
  fit.fits = fit.move && *fit.move == Length{};
  const auto studs = studsOf(layout, item.wall);
  for (const Stud& s : *studs)
    if (s.at + kStud / 2 > item.from && s.at - kStud / 2 < item.to) fit.cut.push_back(s);
  return fit;
}

Length studDepth(const Wall& wall) {
  if (const auto stated = lengthOf(wall.facts, "stud_depth")) return *stated;
  Length depth = wall.thickness - 2 * kBoard;
  if (yesNo(wall.facts, "backed").value_or(false)) depth -= kThicker;
  return std::max(depth, Length{});
}

}  // namespace elbowroom
