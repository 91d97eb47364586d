#include "core/drawing/serving_bands.h"

#include <algorithm>

#include "core/base/length_text.h"
#include "core/drawing/elevation_parts.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

using People = std::vector<const Person*>;

constexpr double kTextMm = 2.3, kHatchMm = 1.1, kBesideMm = 0.8, kWideMm = 2.2, kThinMm = 0.8;

void add(std::vector<ServingBand>& bands, const ElementId& item, Length from, Length to,
         const std::string& what, const People& people, std::optional<HeightBand> all,
         const HeightBand& wanted) {
  if (people.size() < 2) return;
  bands.push_back({item, from, to, all, wanted, what, people});
}

// From the lowest to the highest of what each person wants.
template <typename BandOf>
HeightBand spread(const People& people, BandOf bandOf) {
  HeightBand wanted = bandOf(*people.front());
  for (const Person* p : people) {
    wanted.low = std::min(wanted.low, bandOf(*p).low);
    wanted.high = std::max(wanted.high, bandOf(*p).high);
  }
  return wanted;
}

void addEyes(std::vector<ServingBand>& bands, const PlacedWallItem& placed, const People& people) {
  if (people.size() < 2) return;
  add(bands, placed.item.id, placed.from, placed.to, "middle", people, eyesWithin(people, placed.item.height),
      spread(people, eyesOf));
}

void addMirror(std::vector<ServingBand>& bands, const PlacedWallItem& placed, const People& people) {
  const auto edges = mirrorEdgesFor(people);
  if (!edges) return;
  add(bands, placed.item.id, placed.from, placed.to, "lower edge", people,
      mirrorBottomsFor(people, placed.item.height), {edges->bottom_at_most, edges->top_at_least});
}

// A bar beside the thing: of a mirror at its left, of others at its right, so that those of one place part.
Box boxOf(const ServingBand& band, const WallFrame& wall, double x, const DrawStyle& style) {
  const Length beside = style.mm.scaled(kBesideMm), wide = style.mm.scaled(kWideMm),
               left = Length::fromInches(x);
  const bool room_left = band.from >= beside + wide, room_right = band.to + beside + wide <= wall.length;
  const bool at_left = band.what == "lower edge" ? room_left || !room_right : room_left && !room_right;
  const Length from = left + (at_left ? band.from - beside - wide : band.to + beside);
  HeightBand shown = band.all.value_or(band.wanted);
  // A single height is a line; it still has to be seen.
  if (const Length thin = style.mm.scaled(kThinMm); shown.high - shown.low < thin) {
    const Length more = (thin - (shown.high - shown.low)) / 2;
    shown = {shown.low - more, shown.high + more};
  }
  return {{from, shown.low}, {from + wide, shown.high}};
}

std::string wordsOf(const ServingBand& band, Unit unit) {
  const auto stretch = [&](const HeightBand& h) {
    const std::string low = lengthText(h.low, unit), high = lengthText(h.high, unit);
    return low == high ? low : low + " to " + high;
  };
  if (!band.all) return "no height serves all";
  return band.what + " for all: " + stretch(*band.all);
}

}  // namespace

std::vector<ServingBand> servingBands(const Layout& layout, std::size_t wall) {
  std::vector<ServingBand> bands;
  People all, grown;
  for (const Person& p : layout.settings.people) {
    all.push_back(&p);
    if (!p.child && !p.chair) grown.push_back(&p);
  }
  for (const PlacedWallItem& placed : layout.on_walls) {
    const WallItem& item = placed.item;
    if (placed.wall != static_cast<int>(wall) || item.status == Status::remove) continue;
    const bool one =
        std::any_of(all.begin(), all.end(), [&](const Person* p) { return p->name == item.person; });
    const WallKindInfo* info = findWallKind(item.kind);
    if (one || !info) continue;
    const bool beside = info->use == WallUse::lamp && item.height > item.width;
    if (info->for_person || beside)
      addEyes(bands, placed, all);
    else if (info->use == WallUse::mirror)
      addMirror(bands, placed, all);
  }
  const WallFrame& frame = layout.walls[wall];
  for (const PlacedFixture& placed : layout.fixtures) {
    const Fixture& f = placed.fixture;
    const bool basin = f.kind == FixtureKind::basin || f.kind == FixtureKind::vanity;
    if (!basin || placed.wall != static_cast<int>(wall) || f.status == Status::remove || grown.size() < 2)
      continue;
    HeightBand common = workingHeight(*grown.front());
    for (const Person* p : grown) {
      common.low = std::max(common.low, workingHeight(*p).low);
      common.high = std::min(common.high, workingHeight(*p).high);
    }
    const Length c = dot(placed.center - frame.from, frame.along), half = f.width / 2;
    add(bands, f.id, c - half, c + half, "rim", grown,
        common.low <= common.high ? std::optional(common) : std::nullopt, spread(grown, workingHeight));
  }
  return bands;
}

DisplayList drawServingBands(const Layout& layout, std::size_t wall, double x, const DrawStyle& style) {
  DisplayList list;
  for (const ServingBand& band : servingBands(layout, wall)) {
    const Box box = boxOf(band, layout.walls[wall], x, style);
    const Outline ring{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
    const ElementId& id = layout.walls[wall].id;
    list.push_back({PolyPrim{ring, true, false}, Role::person, id});
    if (band.all) {
      list.push_back({HatchPrim{ring, style.mm.scaled(kHatchMm)}, Role::person, id});
    } else {
      list.push_back({LinePrim{box.low, box.high}, Role::person, id});
      list.push_back({LinePrim{{box.low.x, box.high.y}, {box.high.x, box.low.y}}, Role::person, id});
    }
  }
  return list;
}

DisplayList labelServingBands(const Layout& layout, std::size_t wall, double x, Clutter& taken,
                              const LabelRound& round, const DrawStyle& style) {
  DisplayList list;
  // Words that are asked for may reach over the next wall.
  Length left = Length::fromInches(x), right = left + layout.walls[wall].length;
  if (round.first) {
    left = right = {};
    for (const WallFrame& each : layout.walls) right += each.length;
  }
  const Length top = ceilingLineOf(layout, wall).highest(), pad = style.mm.scaled(0.7);
  for (const ServingBand& band : servingBands(layout, wall)) {
    if (!round.takes(band.item)) continue;
    const Box box = boxOf(band, layout.walls[wall], x, style);
    TextPrim text;
    text.text = wordsOf(band, style.unit);
    text.height = style.mm.scaled(kTextMm);
    text.v = AnchorV::middle, text.halo = true;
    const Length middle = (box.low.y + box.high.y) / 2, over = box.high.y + style.mm.scaled(1.6),
                 under = box.low.y - style.mm.scaled(1.6);
    struct Spot {
      Point at;
      AnchorH h;
    };
    const Length centre = (box.low.x + box.high.x) / 2;
    std::vector<Spot> spots{{{box.high.x + pad, middle}, AnchorH::left},
                            {{box.low.x - pad, middle}, AnchorH::right}};
    for (const Length y : {under, over}) {
      spots.push_back({{centre, y}, AnchorH::centre});
      spots.push_back({{box.low.x, y}, AnchorH::left});
      spots.push_back({{box.high.x, y}, AnchorH::right});
    }
    for (double away = 3.2; round.first && away < 26; away += 1.6) {
      for (const double way : {-away, away}) {
        spots.push_back({{box.high.x + pad, middle + style.mm.scaled(way)}, AnchorH::left});
        spots.push_back({{box.low.x - pad, middle + style.mm.scaled(way)}, AnchorH::right});
      }
    }
    std::vector<TextPlace> places;
    for (const Spot& spot : spots) {
      text.at = spot.at, text.h = spot.h;
      const Box at = textBounds(text);
      if (at.low.x < left || at.high.x > right || at.low.y < Length{} || at.high.y > top) continue;
      places.push_back({text});
    }
    const auto best = quietestText(taken, places);
    if (!best) continue;
    taken.addText(grown(textBounds(*best), style.mm.scaled(0.5)));
    list.push_back({*best, Role::person, layout.walls[wall].id});
  }
  return list;
}

}  // namespace elbowroom
