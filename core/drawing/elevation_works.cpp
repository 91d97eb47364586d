#include "core/drawing/elevation_works.h"

#include <array>

#include "core/drawing/elevation_parts.h"
#include "core/plan/bays.h"

namespace elbowroom {
namespace {

constexpr double kHatchMm = 3.2, kTextMm = 2.3;

Box boxOn(const BackingZone& z, double x) {
  const Length left = Length::fromInches(x);
  return {{left + z.from, z.bottom}, {left + z.to, z.top}};
}
Box boxOn(const ElectricalZone& z, double x) {
  const Length left = Length::fromInches(x);
  return {{left + z.from, z.bottom}, {left + z.to, z.top}};
}

WallSpan spanOf(const WallFrame& wall, double x) {
  const Length left = Length::fromInches(x);
  return {left, left + wall.length};
}

Outline ringOf(const Box& b) {
  return {b.low, {b.high.x, b.low.y}, b.high, {b.low.x, b.high.y}};
}

constexpr double kInside = 20;  // a low zone's word stands better beside it

// A word inside a rectangle, in a corner where no other stands; beside it when it is too low for a word and
// the wall has room; none when it finds no room.
void label(DisplayList& list, const Box& box, const WallSpan& wall, const std::string& words, Role role,
           const ElementId& source, Clutter& taken, const DrawStyle& style) {
  const Length mm = style.mm, pad = mm.scaled(0.8);
  std::vector<TextPlace> places;
  const bool low = box.high.y - box.low.y < mm.scaled(2 * kTextMm);
  for (const bool right : {true, false}) {
    if (!low) break;
    TextPrim text;
    text.text = words;
    text.height = mm.scaled(kTextMm);
    text.h = right ? AnchorH::left : AnchorH::right;
    text.v = AnchorV::middle, text.halo = true;
    text.at = {right ? box.high.x + pad : box.low.x - pad, (box.low.y + box.high.y) / 2};
    const Box at = textBounds(text);
    if (at.low.x < wall.from || at.high.x > wall.to) continue;
    places.push_back({text});
  }
  for (const AnchorV v : {AnchorV::top, AnchorV::base, AnchorV::middle}) {
    for (const AnchorH h : {AnchorH::left, AnchorH::right, AnchorH::centre}) {
      TextPrim text;
      text.text = words;
      text.height = mm.scaled(kTextMm);
      text.h = h, text.v = v, text.halo = true;
      text.at.x = h == AnchorH::left    ? box.low.x + pad
                  : h == AnchorH::right ? box.high.x - pad
                                        : (box.low.x + box.high.x) / 2;
      text.at.y = v == AnchorV::top    ? box.high.y - pad
                  : v == AnchorV::base ? box.low.y + pad
                                       : (box.low.y + box.high.y) / 2;
      const Box at = textBounds(text);
      if (at.low.x < box.low.x || at.high.x > box.high.x) continue;
      // A low zone's word may stand a little above or below it.
      if (at.low.y < box.low.y - mm.scaled(1.2) || at.high.y > box.high.y + mm.scaled(1.2)) continue;
      places.push_back({text, kInside});
    }
  }
  const auto best = quietestText(taken, places);
  if (!best) return;
  taken.addText(textBounds(*best));
  list.push_back({*best, role, source});
}

}  // namespace

std::string_view wordsOf(BackingFor use) {
  switch (use) {
    case BackingFor::bar:
      return "grab bar";
    case BackingFor::foldingBar:
      return "fold-down bar";
    case BackingFor::holder:
      return "holder";
    case BackingFor::heater:
      return "heater";
    case BackingFor::basin:
      return "wall-hung basin";
    case BackingFor::bench:
      return "wall-hung bench";
    case BackingFor::mirror:
      return "mirror";
    case BackingFor::glassHinge:
      return "glass door";
  }
  return "";
}

DisplayList drawBackingOn(const WallFrame& wall, const std::vector<BackingZone>& zones, double x,
                          const DrawStyle& style) {
  DisplayList list;
  for (const BackingZone& zone : zones) {
    if (zone.wall != wall.id) continue;
    const Outline ring = ringOf(boxOn(zone, x));
    if (!zone.later) list.push_back({HatchPrim{ring, style.mm.scaled(kHatchMm)}, Role::backing, wall.id});
    list.push_back({PolyPrim{ring, true, false}, zone.later ? Role::stud : Role::backing, wall.id});
  }
  return list;
}

DisplayList labelBackingOn(const WallFrame& wall, const std::vector<BackingZone>& zones, double x,
                           bool numbered, Clutter& taken, const LabelRound& round, const DrawStyle& style) {
  DisplayList list;
  for (std::size_t i = 0; i < zones.size(); ++i) {
    if (zones[i].wall != wall.id || !round.takes(zones[i].items)) continue;
    const std::string words =
        numbered ? "B" + std::to_string(i + 1)
                 : "backing: " + std::string(wordsOf(zones[i].use)) + (zones[i].later ? ", later" : "");
    label(list, boxOn(zones[i], x), spanOf(wall, x), words, Role::note, wall.id, taken, style);
  }
  return list;
}

DisplayList drawElectricalOn(const WallFrame& wall, const std::vector<ElectricalZone>& zones, double x,
                             const DrawStyle& style) {
  DisplayList list;
  for (const ElectricalZone& zone : zones) {
    if (zone.wall != wall.id) continue;
    const Box box = boxOn(zone, x);
    const Outline ring = ringOf(box);
    const bool refused = zone.kind == ElectricalZoneKind::noReceptacle ||
                         zone.kind == ElectricalZoneKind::noHangingLight ||
                         zone.kind == ElectricalZoneKind::noSwitch;
    list.push_back({PolyPrim{ring, true, false}, Role::power, wall.id});
    if (!refused) continue;
    // A stroke through a corner: keep out.
    const Length arm = std::min({style.mm.scaled(3), box.high.x - box.low.x, box.high.y - box.low.y});
    list.push_back(
        {LinePrim{{box.low.x, box.high.y - arm}, {box.low.x + arm, box.high.y}}, Role::power, wall.id});
    list.push_back(
        {LinePrim{{box.high.x - arm, box.low.y}, {box.high.x, box.low.y + arm}}, Role::power, wall.id});
  }
  return list;
}

DisplayList labelElectricalOn(const WallFrame& wall, const std::vector<ElectricalZone>& zones, double x,
                              Clutter& taken, const LabelRound& round, const DrawStyle& style) {
  DisplayList list;
  for (const ElectricalZone& zone : zones) {
    if (zone.wall == wall.id && round.takes(zone.of))
      label(list, boxOn(zone, x), spanOf(wall, x), std::string(wordsOf(zone.kind)), Role::power, wall.id,
            taken, style);
  }
  return list;
}

}  // namespace elbowroom
