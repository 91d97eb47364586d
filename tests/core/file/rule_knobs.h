// What sets the one figure that a rule measures in its quiet plan
// (tests/rules/<book>/<rule>/quiet.elbowroom). A rule of the same id in another book has the same knob.
#pragma once

#include <cmath>
#include <functional>
#include <map>
#include <string>
#include <vector>

#include "core/plan/plan.h"

namespace elbowroom::testing_knobs {

using namespace literals;

inline Fixture& first(Plan& plan) { return plan.options[0].fixtures.at(0); }

// Sets the measured figure of a quiet plan to the given length.
using Knob = std::function<void(Plan&, Length)>;

inline void roomDepth(Plan& plan, Length depth) {
  plan.options[0].room.walls.at(0).from.y = depth;
  plan.options[0].room.walls.at(1).from.y = depth;
}
inline void roomWidth(Plan& plan, Length width) {
  plan.options[0].room.walls.at(1).from.x = width;
  plan.options[0].room.walls.at(2).from.x = width;
}
inline void alongFromTheLeft(Plan& plan, Length along) {
  std::get<OnWall>(first(plan).placement).along = along;
}
inline void depthBeforeFirst(Plan& plan, Length ahead) { roomDepth(plan, first(plan).depth + ahead); }

inline void centreOnWall(Plan& plan, Length centre) {
  WallItem& item = plan.options[0].on_walls.at(0);
  item.bottom = centre - item.height / 2;
}

inline void receptacleBeforeBath(Plan& plan, Length off) {
  plan.options[0].on_walls.at(0).along = 60_in - 1.375_in - off;
}

inline void topOnWall(Plan& plan, Length top) {
  WallItem& item = plan.options[0].on_walls.at(0);
  item.bottom = top - item.height;
}
inline void betweenWalls(Plan& plan, Length width) {
  roomWidth(plan, width);
  alongFromTheLeft(plan, width / 2);
}
inline void heightOfFirst(Plan& plan, Length height) { first(plan).height = height; }
inline void widthOfFirst(Plan& plan, Length width) { first(plan).width = width; }
inline void paneDoor(Plan& plan, Length door) { first(plan).glass.at(0).door = door; }
// The slope then rises by 1 in each inch and passes through this height so far from its wall.
inline void slopeThrough(Plan& plan, Length height, Length from_wall) {
  Ceiling& ceiling = plan.options[0].room.ceiling;
  CeilingSlope& slope = ceiling.slopes.at(0);
  slope.low = height - from_wall;
  ceiling.height = slope.low + slope.run;
}

// Changes the one figure that the plan states under this key, wherever it stands.
inline void state(Plan& plan, const std::string& key, Length figure) {
  Option& option = plan.options[0];
  std::vector<Facts*> all{&option.room.facts};
  for (Wall& w : option.room.walls) all.push_back(&w.facts);
  for (Opening& o : option.openings) all.push_back(&o.facts);
  for (Fixture& f : option.fixtures) all.push_back(&f.facts);
  for (WallItem& i : option.on_walls) all.push_back(&i.facts);
  for (CeilingItem& i : option.on_ceiling) all.push_back(&i.facts);
  for (Facts* facts : all)
    if (const auto at = facts->find(key); at != facts->end()) at->second = figure;
}

// Empty: nothing sets this rule's figure.
inline Knob knobOf(const std::string& rule_id) {
  static const std::map<std::string, Knob> all{
      {"toilet-centreline-side", alongFromTheLeft},
      {"toilet-clear-front", depthBeforeFirst},
      {"basin-centreline-side", alongFromTheLeft},
      {"basin-edge-side", [](Plan& p, Length edge) { alongFromTheLeft(p, first(p).width / 2 + edge); }},
      {"basin-clear-front", depthBeforeFirst},
      {"basin-spacing",
       [](Plan& p, Length apart) {  // a counter from wall to wall: the ends keep 15 in (20 in)
         const Length ends = p.books[0] == "comfort" ? 40_in : 30_in;
         first(p).width = apart + ends;
         roomWidth(p, first(p).width);
         alongFromTheLeft(p, first(p).width / 2);
       }},
      {"bath-clear-front", depthBeforeFirst},
      {"shower-clear-front", depthBeforeFirst},
      {"shower-size",
       [](Plan& p, Length side) {
         first(p).width = side;
         alongFromTheLeft(p, side / 2);
       }},
      {"fixture-centre-to-centre",
       [](Plan& p, Length apart) {
         std::get<OnWall>(p.options[0].fixtures.at(1).placement).along = 20_in + apart;
       }},
      {"door-crowds-front", [](Plan& p, Length ahead) { roomDepth(p, first(p).depth + 30_in + ahead); }},
      {"ceiling-height", [](Plan& p, Length height) { p.options[0].room.ceiling.height = height; }},
      {"toilet-clearance",
       [](Plan& p, Length wide) {
         std::get<OnWall>(p.options[0].fixtures.at(1).placement).along = wide + 9_in;
       }},
      // Leaf 1 3/8 in, stop 7/16 in: clear = W - 1.875 in (worked example T03).
      {"door-clear-opening",
       [](Plan& p, Length clear) { p.options[0].openings.at(0).width = clear + 1.875_in; }},
      {"turning-space", [](Plan& p, Length across) { roomWidth(p, across); }},
      {"dressing-circle", [](Plan& p, Length across) { roomWidth(p, across); }},
      {"door-clear-opening-deep",
       [](Plan& p, Length clear) { p.options[0].openings.at(0).width = clear + 1.875_in; }},
      {"door-undercut", [](Plan& p, Length gap) { p.options[0].openings.at(0).facts["undercut"] = gap; }},
      {"door-threshold", [](Plan& p, Length high) { p.options[0].openings.at(0).facts["threshold"] = high; }},
      {"door-casing-room",
       [](Plan& p, Length beside) {
         Opening& door = p.options[0].openings.at(0);
         door.along = door.width / 2 + beside;
       }},
      {"pocket-screws",
       [](Plan& p, Length deep) { p.options[0].on_walls.at(0).facts["screw_length"] = deep; }},
      {"pocket-wall-thickness",
       [](Plan& p, Length thick) { p.options[0].room.walls.at(2).thickness = thick; }},
      {"basin-pass-behind", depthBeforeFirst},
      {"basin-help-child", depthBeforeFirst},
      {"toilet-helper",
       [](Plan& p, Length beside) {  // the left side is the roomier one
         alongFromTheLeft(p, first(p).width / 2 + beside);
         roomWidth(p, first(p).width + beside);
       }},
      {"basin-height-seated", [](Plan& p, Length height) { first(p).height = height; }},
      {"towel-bar-height", centreOnWall},
      {"hook-height", centreOnWall},
      {"shower-head-height", centreOnWall},
      {"shower-control-height", centreOnWall},
      {"side-light-height", centreOnWall},
      {"light-over-mirror-height", centreOnWall},
      {"niche-height", [](Plan& p, Length edge) { p.options[0].on_walls.at(0).bottom = edge; }},
      {"wall-item-under-ceiling", topOnWall},
      {"opening-under-ceiling",
       [](Plan& p, Length head) {
         Opening& o = p.options[0].openings.at(0);
         o.height = head - *o.sill;
       }},
      {"mirror-hole-to-edge",
       [](Plan& p, Length glass) { p.options[0].on_walls.at(0).along = 20_in + glass; }},
      {"mirror-hole-to-hole",
       [](Plan& p, Length glass) { p.options[0].on_walls.at(2).along = 49_in + glass; }},
      {"control-from-outside",
       [](Plan& p, Length reach) { p.options[0].on_walls.at(0).along = 36_in + reach; }},
      {"basin-bowls-apart",
       [](Plan& p, Length gap) { std::get<OnWall>(p.options[0].fixtures.at(1).placement).along = 60_in + gap; }},
      {"shower-glass-panel", [](Plan& p, Length fixed) { paneDoor(p, first(p).width - fixed); }},
      {"shower-open-floor", [](Plan& p, Length side) { first(p).depth = side; }},
      {"towel-hangs-free", [](Plan& p, Length free) { heightOfFirst(p, 45_in - free); }},
      {"head-over-tallest", [](Plan& p, Length edge) { p.options[0].on_walls.at(0).bottom = edge; }},
      {"hose-reaches-corners",
       [](Plan& p, Length hose) { p.options[0].on_walls.at(0).facts["hose"] = hose; }},
      {"switch-out-of-reach",
       [](Plan& p, Length off) {
         p.options[0].on_walls.at(0).wall = {"n"};
         p.options[0].on_walls.at(0).along = 36_in + off;
       }},
      {"towel-at-shower", [](Plan& p, Length off) { p.options[0].on_walls.at(0).along = 36_in + off; }},
      {"towel-at-basin",
       [](Plan& p, Length off) {  // from the corner of its front, 21 in from the wall
         const double aside = std::sqrt(off.inches() * off.inches() - 21 * 21);
         p.options[0].on_walls.at(0).along = 48_in + Length::fromInches(aside);
       }},
      {"makeup-mirror-eyes", centreOnWall},
      {"side-light-eyes", centreOnWall},
      {"mirror-shows-child", [](Plan& p, Length edge) { p.options[0].on_walls.at(0).bottom = edge; }},
      {"paper-holder-height", centreOnWall},
      {"grab-bar-plywood",
       [](Plan& p, Length thick) { p.options[0].room.walls.at(1).facts["backing_plywood"] = thick; }},
      {"hand-spray-hose", [](Plan& p, Length hose) { p.options[0].on_walls.at(0).facts["hose"] = hose; }},
      {"toilet-clear-front-wide",
       [](Plan& p, Length ahead) { p.options[0].fixtures.at(1).depth = 72_in - 28_in - ahead; }},
      {"door-leaf-width", [](Plan& p, Length w) { p.options[0].openings.at(0).width = w; }},
      {"shower-opening", paneDoor},
      {"shower-door-width", paneDoor},
      {"shower-seat-side",  // a square, so that it does not matter along which side the seat runs
       [](Plan& p, Length left) {
         first(p).width = first(p).depth = 42_in;
         first(p).facts["seat_depth"] = 42_in - left;
         alongFromTheLeft(p, 21_in);
       }},
      {"shower-wall-finish-drain",  // the curb is 1 in higher above the floor than above the drain
       [](Plan& p, Length above) { first(p).facts["wet_wall_height"] = above + 1_in; }},
      {"ceiling-over-shower",  // the square at the head begins 3 in from the wall
       [](Plan& p, Length height) { slopeThrough(p, height, 3_in); }},
      {"ceiling-before-fixture",  // middle of the floor before the bowl: 28 in and half of 21 in from the
                                  // wall
       [](Plan& p, Length height) { slopeThrough(p, height, 38.5_in); }},
      // A shower 48 in deep whose drain is 1 in above the floor: the ceiling passes 71 in above it where the disc ends.
      {"shower-size-up", [](Plan& p, Length disc) { slopeThrough(p, 71_in, first(p).depth - disc); }},
      {"ceiling-before-and-in",  // lowest at the front of the bowl
       [](Plan& p, Length height) { slopeThrough(p, height, first(p).depth); }},
      {"ceiling-over-fixture",  // lowest at the wall
       [](Plan& p, Length height) { slopeThrough(p, height, Length{}); }},
      {"basin-bend", depthBeforeFirst},
      {"toilet-knees", depthBeforeFirst},
      {"bath-kneel", depthBeforeFirst},
      {"drawer-travel", depthBeforeFirst},
      {"door-meets-drawer", [](Plan& p, Length ahead) { roomDepth(p, first(p).depth + 30_in + ahead); }},
      {"toilet-elbows", betweenWalls},
      {"toilet-compartment-width", betweenWalls},
      {"toilet-compartment-depth", roomDepth},
      {"basin-wall-per-user",
       [](Plan& p, Length each) {  // two basins
         roomWidth(p, each * 2);
         alongFromTheLeft(p, each);
       }},
      {"basin-height-adults", heightOfFirst},
      {"basin-height-children", heightOfFirst},
      {"bath-rim-height", heightOfFirst},
      {"storage-top-reach", heightOfFirst},
      {"vanity-double-width", widthOfFirst},
      {"shower-roll-in-length", widthOfFirst},
      {"bath-for-two", [](Plan& p, Length deep) { first(p).depth = deep; }},
      {"bath-clean-gap",
       [](Plan& p, Length gap) {
         std::get<Standing>(first(p).placement).at.y = 120_in - first(p).depth / 2 - gap;
       }},
      {"shower-surround-height",  // the head's middle is at 80 in
       [](Plan& p, Length above) { first(p).facts["wet_wall_height"] = 80_in + above; }},
      {"shower-open-side",
       [](Plan& p, Length away) {
         first(p).width = away;
         alongFromTheLeft(p, away / 2);
       }},
      {"shower-glass-height", [](Plan& p, Length high) { first(p).glass.at(0).height = high; }},
      {"door-step", [](Plan& p, Length step) { p.options[0].room.facts["floor_build_up"] = step; }},
      {"mirror-shows-head", topOnWall},
      {"mirror-bottom-seated", [](Plan& p, Length edge) { p.options[0].on_walls.at(0).bottom = edge; }},
      {"basin-height-range", heightOfFirst},
      {"mirror-shows-waist", [](Plan& p, Length edge) { p.options[0].on_walls.at(0).bottom = edge; }},
      {"storage-reach", topOnWall},
      {"grab-bar-height", topOnWall},
      {"mirror-over-backsplash", [](Plan& p, Length bottom) { p.options[0].on_walls.at(0).bottom = bottom; }},
      {"switch-height", centreOnWall},
      {"bath-control-height", centreOnWall},
      {"side-light-spacing",
       [](Plan& p, Length apart) {
         auto& items = p.options[0].on_walls;
         items.at(1).along = items.at(0).along + apart;
       }},
      {"light-over-mirror-width", [](Plan& p, Length wide) { p.options[0].on_walls.at(1).width = wide; }},
      {"paper-holder-ahead",  // the room is 96 in deep, the wall's left end at its foot
       [](Plan& p, Length ahead) { p.options[0].on_walls.at(0).along = 96_in - first(p).depth - ahead; }},
      {"pocket-needs-wall",  // 96 in of wall; the leaf of 30 in goes to the right
       [](Plan& p, Length there) { p.options[0].openings.at(0).along = 96_in - there + 15_in; }},
      {"slide-needs-wall",  // and here covers the opening by 2 in at each side
       [](Plan& p, Length there) { p.options[0].openings.at(0).along = 96_in - there - 13_in; }},
      // Bowl of 16 in whose right edge is 32 in along the wall; counter 34 in high, receptacle 4.5 in.
      {"basin-receptacle-distance",
       [](Plan& p, Length off) { p.options[0].on_walls.at(0).along = 32_in + off; }},
      {"basin-receptacle-drop", [](Plan& p, Length below) { centreOnWall(p, 34_in - below); }},
      {"basin-receptacle-rise", [](Plan& p, Length above) { centreOnWall(p, 34_in + above); }},
      // Bath from 60 in along the wall; receptacle 2 3/4 in wide, lamp 6 in.
      {"receptacle-off-water", receptacleBeforeBath},
      {"switch-off-water", receptacleBeforeBath},
      {"receptacle-off-water-2020", receptacleBeforeBath},
      {"receptacle-below-rim", receptacleBeforeBath},
      {"light-off-water", [](Plan& p, Length off) { p.options[0].on_ceiling.at(0).at.x = 57_in - off; }},
      {"toilet-seat-reach", [](Plan& p, Length off) { p.options[0].on_walls.at(0).along = 50_in + off; }},
      {"recess-depth", [](Plan& p, Length deep) { p.options[0].on_walls.at(0).depth = deep; }},
  };
  // Rules that hold a stated figure against their limit, by the fact that states it.
  static const std::map<std::string, std::string> stated{
      {"access-panel", "access_panel"},
      {"pump-panel", "access_panel"},
      {"bath-pump-receptacle", "pump_receptacle"},
      {"fan-outlet-boundary", "outlet_from_boundary"},
      {"fan-outlet-intake", "outlet_from_intake"},
      {"fan-outlet-opening", "outlet_from_opening"},
      {"fixture-drain-size", "drain_size"},
      {"shower-drain-size", "drain_size"},
      {"shower-outside-side", "receptor_short"},
      {"smoke-alarm-off-door", "smoke_alarm_from"},
      {"receptacle-behind-basin", "bowl_from_wall"},
      {"joist-hole", "joist_hole"},
      {"joist-notch", "joist_notch"},
      {"joist-end-notch", "joist_end_notch"},
      {"joist-notch-length", "joist_notch_length"},
      {"stud-hole", "stud_hole"},
      {"stud-notch", "stud_notch"},
      {"stud-hole-edge", "stud_hole_edge"},
      {"shower-curb-above-drain", "curb_above_drain"},
      {"shower-liner-up", "liner_up"},
      {"shower-sides-above-curb", "sides_above_curb"},
      {"shower-wall-finish", "wet_wall_height"},
      {"shower-seat-height", "seat_height"},
      {"shower-seat-depth", "seat_depth"},
      {"shower-curbless-drop", "floor_recess"},
      {"toe-space-depth", "toe_depth"},
      {"toe-space-height", "toe_height"},
      {"toilet-rough-in", "rough_in"},
      {"trap-arm", "trap_arm"},
      {"trap-arm-least", "trap_arm"},
      {"trap-drop", "trap_drop"},
      {"trap-offset", "trap_offset"},
      {"washer-standpipe", "standpipe_height"},
      {"washer-trap-height", "washer_trap_height"},
  };
  if (const auto at = all.find(rule_id); at != all.end()) return at->second;
  if (const auto at = stated.find(rule_id); at != stated.end())
    return [key = at->second](Plan& p, Length figure) { state(p, key, figure); };
  return {};
}

}  // namespace elbowroom::testing_knobs
