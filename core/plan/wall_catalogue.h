// Words and usual sizes of each kind of thing on walls and on the ceiling: what the Tray offers and what a
// new one starts as. A plan may hold other kinds; they are kept and drawn as plain boxes.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/plan/plan.h"

namespace elbowroom {

// What a thing on a wall is for. Rules and symbols go by it, so that a kind added later is not forgotten.
enum class WallUse {
  mirror,  // shows somebody's face
  lamp,    // gives light; hangs on a box in the wall
  receptacle,
  control,  // switch of light or fan
  grabBar,  // bears a person
  rail,     // bears towels
  hook,
  holder,  // paper
  shelf,
  recess,  // stores things within the wall: niche, medicine cabinet
  water,   // head, valve, hand spray, spout
  heat,    // towel heater, radiator
  panel,   // access panel
  air,     // exhaust
  box      // an electrical box without its fitting
};

struct WallKindInfo {
  std::string_view key;          // in files: "grab-bar"
  std::string_view label;        // on screen: "Grab bar"
  std::string_view short_label;  // on sheets: "Bar"
  std::string_view id_stem;
  WallUse use;
  Length width, height, bottom, depth;  // of a new one; bottom above the finished floor
  std::string_view size_from = {};  // where height or size was read, with its grade; empty: usual size, no source
  bool recessed = false;       // its depth goes into the wall
  bool in_bay = false;         // recessed and so wide that a stud may be in its way
  bool electrical = false;
  bool backing = false;     // wants blocking or plywood behind the finish
  bool of_shower = false;   // belongs to a shower or bath
  bool for_person = false;  // its height is set to somebody
};
std::span<const WallKindInfo> wallKinds();
const WallKindInfo* findWallKind(std::string_view key);  // nullptr: a kind of the person's own

struct CeilingKindInfo {
  std::string_view key, label, short_label, id_stem;
  Length width, depth;  // along x and y
  std::string_view size_from = {};
  bool electrical = false, of_shower = false, round = false;
};
std::span<const CeilingKindInfo> ceilingKinds();
const CeilingKindInfo* findCeilingKind(std::string_view key);

// Of the kind's usual size and height, on no wall yet (along 0). An unknown kind: 6 x 6 in, 42 in up.
WallItem typicalWallItem(std::string_view kind, const Option& forIds);
CeilingItem typicalCeilingItem(std::string_view kind, const Option& forIds);

bool is(const WallItem&, WallUse);
// Whether its depth goes into the wall: by kind, unless the plan states a surface-mounted one.
bool isRecessed(const WallItem&);
// How far it stands out of the wall's face or reaches into it: as stated, else its kind's usual depth.
Length depthOf(const WallItem&);
// Centre of the electrical box behind it above the item's lower edge: as stated (fact box_up), else its
// middle.
Length boxUp(const WallItem&);
// "Grab bar", or the key of a kind of the person's own.
std::string labelOf(const WallItem&);
std::string labelOf(const CeilingItem&);

}  // namespace elbowroom
