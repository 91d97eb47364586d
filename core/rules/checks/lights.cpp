#include "core/rules/checks/lights.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

bool isLamp(const PlacedWallItem& i) {
  return counts(i) && (is(i.item, WallUse::lamp) || i.item.kind == "lit-mirror");
}
bool isSideLight(const PlacedWallItem& i) {
  return isLamp(i) && is(i.item, WallUse::lamp) && i.item.height > i.item.width;
}

bool overMirror(const Layout& layout, const PlacedWallItem& lamp) {
  return std::any_of(layout.on_walls.begin(), layout.on_walls.end(), [&](const PlacedWallItem& i) {
    return is(i.item, WallUse::mirror) && i.wall == lamp.wall && i.from < lamp.to && lamp.from < i.to &&
           i.bottom < lamp.bottom;
  });
}

// From end to end; a lamp on the ceiling is a point.
std::vector<Segment> lampLines(const Layout& layout) {
  std::vector<Segment> lamps;
  for (const CeilingItem& item : layout.option.on_ceiling)
    if (item.kind == "light") lamps.push_back({item.at, item.at});
  for (const PlacedWallItem& i : layout.on_walls)
    if (isLamp(i)) lamps.push_back({i.left, i.right});
  return lamps;
}

std::vector<Point> lampsOf(const Layout& layout) {
  std::vector<Point> lamps;
  for (const Segment& line : lampLines(layout)) lamps.push_back(midpoint(line.a, line.b));
  return lamps;
}

bool isBefore(const PlacedFixture& f, Point lamp, Length floor_before) {
  const Length out = dot(lamp - f.back_center, f.facing);
  return out >= -kContact && out <= f.fixture.depth + floor_before + kContact;
}

bool isLitPlace(const PlacedFixture& f) {
  return f.fixture.kind == FixtureKind::toilet || isBasin(f) || isBath(f) || isShower(f);
}

// Has each of the basins a lamp? From left to right each takes the first that serves it and is not taken.
bool lightsEach(const PlacedFixture& f, int basins, const std::vector<Segment>& lamps, const CheckInput& in) {
  struct Span {
    Length from, to;
  };
  std::vector<Span> spans;
  for (const Segment& lamp : lamps) {
    if (!isBefore(f, midpoint(lamp.a, lamp.b), sizeOf(in, 0))) continue;
    const Length a = dot(lamp.a - f.back_center, rightOf(f)), b = dot(lamp.b - f.back_center, rightOf(f));
    spans.push_back({std::min(a, b), std::max(a, b)});
  }
  std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.from + a.to < b.from + b.to; });
  const Length share = f.fixture.width / basins, reach = std::max(share / 2, sizeOf(in, 1));
  std::size_t next = 0;
  for (int k = 0; k < basins; ++k) {
    const Length middle = share * k + share / 2 - f.fixture.width / 2;
    const bool over = std::any_of(spans.begin(), spans.end(),
                                  [&](const Span& s) { return s.from <= middle && middle <= s.to; });
    while (next < spans.size() && (spans[next].from + spans[next].to) / 2 < middle - reach - kContact) ++next;
    const bool own =
        next < spans.size() && (spans[next].from + spans[next].to) / 2 <= middle + reach + kContact;
    if (!over && !own) return false;
    if (own) ++next;
  }
  return true;
}

}  // namespace

std::vector<Measurement> lightsAtFixtures(const CheckInput& in) {
  const std::vector<Point> lamps = lampsOf(in.layout);
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isLitPlace(f)) continue;
    Measurement m{
        .subjects = {f.fixture.id}, .measured = std::nullopt, .places = {lineFrom(f.front.a, f.front.b)}};
    if (lamps.empty()) {
      m.detail = "no-lamp";
    } else {
      const Length half = std::max(f.fixture.width / 2, sizeOf(in, 1));
      m.measured = std::any_of(lamps.begin(), lamps.end(), [&](Point lamp) {
        return abs(dot(lamp - f.back_center, leftOf(f))) <= half + kContact && isBefore(f, lamp, sizeOf(in, 0));
      });
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> lightsPerBasin(const CheckInput& in) {
  const std::vector<Segment> lamps = lampLines(in.layout);
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const std::optional<int> basins = basinsOf(f);
    if (!counts(f) || !isBasin(f) || !basins || *basins < 2) continue;
    Measurement m{
        .subjects = {f.fixture.id}, .measured = std::nullopt, .places = {lineFrom(f.front.a, f.front.b)}};
    if (lamps.empty())
      m.detail = "no-lamp";
    else
      m.measured = lightsEach(f, *basins, lamps, in);
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> switchesAtEntry(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {pointAt(centroidOf(in.layout.room))}};
  if (const auto stated = yesNo(in.layout.option.room.facts, "switch_at_entry"))
    m.measured = *stated;
  else
    m.fact = "switch_at_entry";
  return {m};
}

std::vector<Measurement> daylight(const CheckInput& in) {
  const auto& ceiling = in.layout.option.on_ceiling;
  if (std::any_of(ceiling.begin(), ceiling.end(),
                  [](const CeilingItem& i) { return i.kind == "light-tube"; }))
    return {};
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {}};
  Area glass;
  for (const PlacedOpening& o : in.layout.openings) {
    if (o.opening.kind != OpeningKind::window) continue;
    const auto width = lengthOf(o.opening.facts, "glass_width"),
               height = lengthOf(o.opening.facts, "glass_height");
    glass = glass + width.value_or(o.opening.width) * height.value_or(o.opening.height);
    if (!width || !height) m.detail = "no-more-glass-than-opening";
    m.subjects.push_back(o.opening.id);
    m.places.push_back(lineFrom(o.left, o.right));
  }
  if (m.subjects.empty()) return {};
  m.measured = glass;
  return {m};
}

std::vector<Measurement> sideLightSpacings(const CheckInput& in) {
  std::vector<const PlacedWallItem*> lights;
  for (const PlacedWallItem& i : in.layout.on_walls)
    if (isSideLight(i)) lights.push_back(&i);
  std::sort(lights.begin(), lights.end(), [](const PlacedWallItem* a, const PlacedWallItem* b) {
    return a->wall != b->wall ? a->wall < b->wall : a->from < b->from;
  });
  std::vector<Measurement> found;
  for (std::size_t k = 1; k < lights.size(); ++k) {
    const PlacedWallItem &a = *lights[k - 1], &b = *lights[k];
    if (a.wall != b.wall) continue;
    const Point from = midpoint(a.left, a.right), to = midpoint(b.left, b.right);
    found.push_back(
        {.subjects = {a.item.id, b.item.id}, .measured = distance(from, to), .places = {lineFrom(from, to)}});
  }
  return found;
}

std::vector<Measurement> lightOverMirrorWidths(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!isLamp(i) || !is(i.item, WallUse::lamp) || i.item.height >= i.item.width ||
        !overMirror(in.layout, i))
      continue;
    found.push_back(
        {.subjects = {i.item.id}, .measured = i.item.width, .places = {lineFrom(i.left, i.right)}});
  }
  return found;
}

}  // namespace elbowroom::checks
