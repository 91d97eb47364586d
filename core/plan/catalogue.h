// Words and trade sizes of each kind of thing: what the Tray offers and what a new element starts as.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/plan/plan.h"

namespace elbowroom {

struct KindInfo {
  FixtureKind kind;
  std::string_view key;    // in files: "toilet", "freestanding-bath", ...
  std::string_view label;  // on screen: "Toilet", "Freestanding bath"
  std::string_view short_label;  // on sheets: "WC", "Bath", ...
  std::string_view id_stem;
  bool wants_wall;         // sticks to a wall when dropped near one
};
std::span<const KindInfo> fixtureKinds();
const KindInfo& infoOf(FixtureKind);
bool holdsWater(FixtureKind);  // a shower or a bath: what heads, controls and spouts belong to
bool hasDrain(FixtureKind);    // is joined to water and waste pipes
std::span<const Status> allStatuses();  // in the order in which forms offer them

// A fixture of generic trade size (sizes and their grade: comfort.md section 12), placed at the origin.
Fixture typicalFixture(FixtureKind, const Option& forIds);
// As stated, else the usual one of its kind: what shows on the walls.
Length heightOf(const Fixture&);
// A 30 in leaf; double 48 in; surface sliding 36 in, for an opening of 32.
Opening typicalDoor(DoorAction, const Option& forIds);
Opening typicalWindow(const Option& forIds);
// Stock leaf widths, ascending (comfort.md section 2).
std::span<const Length> stockLeafWidths();
std::string_view labelOf(DoorAction);   // "Hinged", "Double", "Pocket", "Surface sliding", "Bifold", "Cased opening"
std::string_view keyOf(DoorAction);     // file spelling
std::string_view keyOf(Status);
std::string_view labelOf(Status);

}  // namespace elbowroom
