// Where on the walls receptacles, switches and hanging lights may be or may not be: what the Wall strip and
// the elevation sheets draw. Every limit, source and grade is that of the rule in force (core/rules), so the
// drawing follows the chosen edition and what the person has changed; a rule that is not in force draws
// nothing.
#pragma once

#include <string_view>
#include <vector>

#include "core/rules/check.h"

namespace elbowroom {

enum class ElectricalZoneKind {
  noReceptacle,     // too near a bath or shower
  lastReceptacle,   // near one: only where no place farther off is practicable
  noHangingLight,   // no light on a cord, chain or track before this part of the wall
  noSwitch,         // in a bath or shower, unless listed with it
  listedLight,      // lights here are listed for damp places
  basinReceptacle,  // the receptacle of a basin goes here
  seatReceptacle    // within a short cord of a toilet with an electric seat, or one that may get it
};

// A rectangle on one wall: along it from its left end, and above the finished floor. Never above a stated
// ceiling's highest point over it (no stated ceiling: 96 in where the text sets no height); sloped ceilings
// may cut it.
struct ElectricalZone {
  ElementId wall;
  Length from, to, bottom, top;
  std::vector<ElementId>
      of;  // the bath, shower, basin or toilet that it belongs to; of a double, one zone each
  ElectricalZoneKind kind = ElectricalZoneKind::noReceptacle;
  std::string_view book, rule;  // the rule it is drawn from: "us-electrical", "receptacle-off-water"
  Source source;                // of the edition in force
  Grade grade = Grade::memory;
};

// By fixture, then by wall, left to right. Where a height that a zone starts from is not stated, the usual
// one of its kind is taken (a shower without a stated curb: the floor). Walls and fixed glass end the zone of
// an edition that says so; where they do, an end is good to 1/64 in, elsewhere ends are exact. No zone is
// narrower or lower than 1/2 in: nothing fits into such a rest. Empty without walls.
std::vector<ElectricalZone> electricalZones(const Layout&, const BookChoice&);

// "No receptacle here", "Receptacle of the basin": what a legend or a tooltip says.
std::string_view wordsOf(ElectricalZoneKind);

}  // namespace elbowroom
