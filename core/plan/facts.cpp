#include "core/plan/facts.h"

#include <algorithm>
#include <array>

namespace elbowroom {
namespace {

using enum FactOn;
using enum FactType;

// One line per fact, in the order in which forms show them.
constexpr std::array kFacts{
    // room
    FactInfo{"switch_at_entry", room, "", yesNo, "Light switched at the entry",
             "Does a wall switch at the entry control a light?"},
    FactInfo{"slip_resistant_floor", room, "", yesNo, "Slip-resistant floor", "Is the floor slip-resistant when wet?"},
    FactInfo{"floor_heat", room, "", yesNo, "Heated floor", "Is there a heating cable in the floor?"},
    FactInfo{"compartment", room, "", yesNo, "Toilet compartment",
             "Is this room only a compartment for the toilet, off a larger bathroom?"},
    FactInfo{"only_bathroom", room, "", yesNo, "Only bathroom of the dwelling",
             "Is this the only bathroom of the dwelling?"},
    FactInfo{"floor_heat_gfci", room, "", yesNo, "Heated floor on GFCI",
             "Is the heating cable in the floor protected against earth faults (GFCI)?"},
    FactInfo{"circuit_serves", room, "", word, "Circuit of the receptacles serves",
             "What does the circuit of this room's receptacles serve?", "", "bathroom-receptacles this-bathroom more"},
    FactInfo{"floor_fall", room, "", amount, "Fall of the floor",
             "How steep is the steepest part of the floor outside the shower?", "%"},
    FactInfo{"floor_build_up", room, "", length, "Floor built up by",
             "How far is the floor outside the shower built up?"},
    // wall
    FactInfo{"load_bearing", wall, "", yesNo, "Load-bearing", "Does this wall carry load?"},
    FactInfo{"stud_depth", wall, "", length, "Stud depth", "How deep are the studs of this wall?"},
    FactInfo{"frost_protected", wall, "", yesNo, "Pipes protected from frost",
             "Are the pipes in this wall protected from freezing?"},
    FactInfo{"stud_notch", wall, "", length, "Notch in its studs",
             "How deep is the deepest notch in its studs?"},
    FactInfo{"stud_hole", wall, "", length, "Hole in its studs",
             "How wide is the widest hole bored through its studs?"},
    FactInfo{"stud_hole_edge", wall, "", length, "Wood beside that hole",
             "How much wood is left between the widest hole and the edge of its stud?"},
    FactInfo{"backed", wall, "", yesNo, "Backed all over", "Is the whole wall backed with plywood behind the finish?"},
    FactInfo{"backing_plywood", wall, "", length, "Plywood behind the finish",
             "How thick is the plywood behind the finish?"},
    // opening
    FactInfo{"safety_glass", opening, "window", yesNo, "Safety glass", "Is this glass marked as safety glass?"},
    FactInfo{"glass_width", opening, "window", length, "Glass width", "How wide is the glass itself?"},
    FactInfo{"glass_height", opening, "window", length, "Glass height", "How high is the glass itself?"},
    FactInfo{"openable_share", opening, "window", amount, "Openable part",
             "How much of the window opens, in per cent?", "%"},
    FactInfo{"threshold", opening, "door", length, "Threshold", "How high is the threshold?"},
    FactInfo{"unlocks_from_outside", opening, "door", yesNo, "Unlocks from outside",
             "Can this door be unlocked from outside in an emergency?"},
    FactInfo{"clear_hinges", opening, "door", yesNo, "Swing-clear hinges", "Does it hang on swing-clear hinges?"},
    FactInfo{"handle_height", opening, "door", length, "Height of the handle", "How high is its handle?"},
    FactInfo{"undercut", opening, "door", length, "Gap under the leaf", "How much air is there under the leaf?"},
    FactInfo{"smoke_alarm_from", opening, "door", length, "Smoke alarm, how far off",
             "How far is the nearest smoke alarm from this door, measured level?"},
    // fixture
    FactInfo{"seat_height", fixture, "toilet bidet bench shower bath", length, "Seat height", "How high is the seat?"},
    FactInfo{"wall_hung", fixture, "toilet bidet basin vanity bench", yesNo, "Hangs on the wall",
             "Does it hang on the wall?"},
    FactInfo{"valve_limit", fixture, "bath freestanding-bath shower", amount, "Hot water limited to",
             "To what temperature is the hot water limited?", "\u00b0F"},
    FactInfo{"curb_above_drain", fixture, "shower", length, "Curb above the drain",
             "How far is the top of the curb above the drain?"},
    FactInfo{"floor_slope", fixture, "shower", amount, "Fall of the floor", "How steep does the floor fall to the drain?",
             "%"},
    FactInfo{"sides_above_curb", fixture, "shower", length, "Sides above the curb",
             "How far do the sides and the back of its receptor rise above the curb?"},
    FactInfo{"liner_up", fixture, "shower", length, "Liner turned up",
             "How far is its liner turned up above the finished threshold?"},
    FactInfo{"safety_glass", fixture, "shower", yesNo, "Safety glass",
             "Is the glass of its enclosure marked as safety glass?"},
    FactInfo{"hinge_backing", fixture, "bath freestanding-bath shower", yesNo, "Solid wood at its glass hinges",
             "Is there solid wood, such as two studs laid flat, in the wall where its glass door hangs?"},
    FactInfo{"wet_wall_height", fixture, "bath freestanding-bath shower", length, "Waterproof finish up to",
             "How high above the floor does the waterproof wall finish go?"},
    FactInfo{"fold_down_seat", fixture, "shower", yesNo, "Fold-down seat", "Does its seat fold up?"},
    FactInfo{"seat_depth", fixture, "shower bath", length, "Built-in seat, depth", "How deep is its built-in seat?"},
    FactInfo{"seat_side", fixture, "shower", word, "Side of its seat",
             "On which side is its seat, as seen facing the wall behind it?", "", "left right back"},
    FactInfo{"head_seat", fixture, "bath", yesNo, "Built-in seat at the head end",
             "Is a seat built in at the head end of this bath?"},
    FactInfo{"rim_track", fixture, "bath", yesNo, "Track on its rim",
             "Is a track for glass doors mounted on its rim?"},
    FactInfo{"flush_side", fixture, "toilet", word, "Side of the flush",
             "On which side is the flush, as seen facing the wall behind it?", "", "left right top"},
    FactInfo{"drain_size", fixture, "toilet bidet basin vanity bath freestanding-bath shower washer", length,
             "Drain size", "How wide is its drain pipe?"},
    FactInfo{"trap_arm", fixture, "bidet basin vanity bath freestanding-bath shower", length, "Trap to vent",
             "How long is the pipe from its trap to the vent?"},
    FactInfo{"trap_drop", fixture, "bidet basin vanity bath freestanding-bath shower", length, "Outlet down to trap",
             "How far is its trap below its outlet?"},
    FactInfo{"trap_offset", fixture, "bidet basin vanity bath freestanding-bath shower", length, "Outlet across to trap",
             "How far is its trap from its outlet, measured across?"},
    FactInfo{"pipes_covered", fixture, "basin vanity", yesNo, "Pipes under it covered",
             "Are the pipes under it insulated or covered?"},
    FactInfo{"access_panel", fixture, "bath freestanding-bath shower", length, "Access panel, smaller side",
             "How large is the smaller side of its access panel?"},
    FactInfo{"pumped", fixture, "bath freestanding-bath", yesNo, "Has a pump", "Does it have a pump?"},
    FactInfo{"own_circuit", fixture, "bath freestanding-bath", yesNo, "Circuit of its own",
             "Does its pump have a circuit of its own?"},
    FactInfo{"pump_gfci", fixture, "bath freestanding-bath", yesNo, "Pump on GFCI",
             "Is its pump protected against earth faults (GFCI) that one can reset without tools?"},
    FactInfo{"pump_receptacle", fixture, "bath freestanding-bath", length, "Receptacle of the pump",
             "How far is the receptacle of its pump from the service opening?"},
    FactInfo{"rough_in", fixture, "toilet", length, "Rough-in",
             "How far is the centre of the floor flange from the finished wall?"},
    FactInfo{"joist_depth", fixture, "toilet bath freestanding-bath shower", length, "Depth of the joists",
             "How deep are the solid joists under it?"},
    FactInfo{"joist_notch", fixture, "toilet bath freestanding-bath shower", length, "Notch in a joist, depth",
             "How deep is the notch cut into a joist for it?"},
    FactInfo{"joist_notch_length", fixture, "toilet bath freestanding-bath shower", length, "Notch in a joist, length",
             "How long is the notch cut into a joist for it?"},
    FactInfo{"joist_hole", fixture, "toilet bath freestanding-bath shower", length, "Hole in a joist",
             "How wide is the hole bored through a joist for it?"},
    FactInfo{"electric_seat", fixture, "toilet", yesNo, "Heated or washing seat", "Is a seat planned that needs power?"},
    FactInfo{"steps_outside", fixture, "bath freestanding-bath", yesNo, "Steps outside it", "Are there steps up to it?"},
    FactInfo{"standpipe_height", fixture, "washer", length, "Standpipe above its trap",
             "How high does the standpipe rise above its trap?"},
    FactInfo{"washer_trap_height", fixture, "washer", length, "Standpipe's trap above the floor",
             "How high is the standpipe's trap above the floor?"},
    FactInfo{"burns_fuel", fixture, "heater", yesNo, "Burns fuel",
             "Does it burn gas, oil or wood?"},
    FactInfo{"sealed_combustion", fixture, "heater", yesNo, "Air from outdoors",
             "Does it draw its air from outdoors through a sealed duct (direct vent)?"},
    FactInfo{"pull_out", fixture, "vanity cabinet linen-closet", length, "Drawers and doors come out",
             "How far do its drawers or doors come out?"},
    FactInfo{"toe_depth", fixture, "vanity", length, "Toe space, depth", "How deep is its toe space?"},
    FactInfo{"toe_height", fixture, "vanity", length, "Toe space, height", "How high is its toe space?"},
    FactInfo{"backsplash", fixture, "basin vanity", length, "Backsplash above its rim",
             "How far does the backsplash rise above the rim?"},
    FactInfo{"rounded_corners", fixture, "vanity", yesNo, "Corners rounded",
             "Are the corners of its counter rounded or clipped?"},
    FactInfo{"for_two", fixture, "bath freestanding-bath", yesNo, "For two", "Is it meant for two people at a time?"},
    FactInfo{"floor_recess", fixture, "shower", length, "Floor lowered by",
             "How far is the floor under it lowered?"},
    FactInfo{"drain_type", fixture, "shower", word, "Kind of drain", "Is its drain a point or a line?", "",
             "point linear"},
    FactInfo{"drain_side", fixture, "shower", word, "Side of its drain",
             "Along which side is its linear drain, as seen facing the wall behind it?", "",
             "back front left right"},
    FactInfo{"hot_pipe", fixture, "shower", word, "Hot pipe to it",
             "What pipe brings the hot water?", "",
             "copper-l-1/2 copper-m-1/2 copper-k-1/2 pex-1/2 cpvc-1/2 copper-l-3/4 copper-m-3/4 pex-3/4"},
    FactInfo{"hot_pipe_length", fixture, "shower", length, "Hot pipe, length",
             "How long is the pipe from the heater?"},
    FactInfo{"head_flow", fixture, "shower", amount, "Flow of the head",
             "How much water does its head take?", "gpm"},
    FactInfo{"joist_end_notch", fixture, "toilet bath freestanding-bath shower", length, "Notch at a joist's end",
             "How deep is the notch cut into a joist's end for it?"},
    FactInfo{"joist_notch_middle", fixture, "toilet bath freestanding-bath shower", yesNo, "Notch in the middle third",
             "Is a joist notched in the middle third of its span for it?"},
    FactInfo{"joist_kind", fixture, "toilet bath freestanding-bath shower", word, "Kind of joists",
             "Are the joists under it solid wood, or made (I-joists, trusses, glued or laminated)?", "",
             "solid made"},
    FactInfo{"hot_left", fixture, "bidet basin vanity bath freestanding-bath shower", yesNo, "Hot on the left",
             "Is the hot water on the left, as seen facing it?"},
    FactInfo{"receptor_short", fixture, "shower", length, "Receptor, shorter side",
             "How long is the shorter side of its receptor, overall?"},
    FactInfo{"receptor_long", fixture, "shower", length, "Receptor, longer side",
             "How long is the longer side of its receptor, overall?"},
    FactInfo{"instead_of_bath", fixture, "shower", yesNo, "Takes the place of a bath",
             "Does this shower take the place of a bath?"},
    FactInfo{"bowl_from_wall", fixture, "basin vanity", length, "Bowl's inside edge to the wall",
             "How far is the inside edge of its bowl from the wall behind it?"},
    FactInfo{"curtain", fixture, "shower", yesNo, "Closed by a curtain", "Is it closed by a curtain?"},
    FactInfo{"seat_from_entry", fixture, "shower", length, "Seat to the entry",
             "How far is its seat from the side one enters by?"},
    FactInfo{"seat_from_wall", fixture, "shower", length, "Seat to the wall behind it",
             "How far is the rear edge of its seat from the wall behind the seat?"},
    FactInfo{"cabinet_removable", fixture, "vanity", yesNo, "Cabinet can be taken out",
             "Can the cabinet be taken out without moving the basin, with floor and walls finished behind it?"},
    FactInfo{"blocking", fixture, "basin vanity bench", yesNo, "Blocking behind it",
             "Is there blocking between the studs where it hangs?"},
    // on walls
    FactInfo{"gfci", wallItem, "receptacle", yesNo, "Protected against earth faults",
             "Is this receptacle protected against earth faults (GFCI)?"},
    FactInfo{"no_farther_place", wallItem, "receptacle", yesNo, "No place farther from the water",
             "Is there no practicable place for it at 1 m or more from the bath and shower?"},
    FactInfo{"switch_gfci", wallItem, "switch combined-switch", yesNo, "Protected against earth faults",
             "Is this switch protected against earth faults (GFCI)?"},
    FactInfo{"circuit", wallItem, "receptacle", amount, "Circuit", "What is its circuit rated for?", "A"},
    FactInfo{"tamper_resistant", wallItem, "receptacle", yesNo, "Tamper-resistant", "Is it tamper-resistant?"},
    FactInfo{"face_up", wallItem, "receptacle", yesNo, "Faces up", "Does it face up from a counter?"},
    FactInfo{"counter_assembly", wallItem, "receptacle", yesNo, "Listed for a counter",
             "Is it an assembly that is listed for a counter?"},
    FactInfo{"for_toilet_seat", wallItem, "receptacle", yesNo, "Serves a toilet seat",
             "Is it a single receptacle that serves an electric toilet seat?"},
    FactInfo{"shower_assembly", wallItem, "switch timer-switch humidity-switch combined-switch", yesNo, "Part of a listed shower",
             "Is this switch part of a shower that is listed with it?"},
    FactInfo{"hose", wallItem, "hand-spray", length, "Hose length", "How long is the hose?"},
    FactInfo{"screw_length", wallItem, "towel-bar hook paper-holder shelf mirror", length, "Screws into the wall",
             "How far do its screws go into the wall?"},
    FactInfo{"wet_listed", wallItem, "", yesNo, "Listed for wet places", "Is it listed for wet places?"},
    FactInfo{"damp_listed", wallItem, "", yesNo, "Listed for damp places", "Is it listed for damp places?"},
    FactInfo{"wall_gap", wallItem, "grab-bar grab-bar-l grab-bar-fold", length, "Gap to the wall",
             "How far is the bar from the wall?"},
    FactInfo{"blocking", wallItem,
             "grab-bar grab-bar-l grab-bar-fold towel-bar hook paper-holder shelf towel-heater radiator "
             "mirror lit-mirror makeup-mirror",
             yesNo, "Blocking behind it", "Is there blocking between the studs behind it?"},
    FactInfo{"bar_diameter", wallItem, "grab-bar grab-bar-l grab-bar-fold", length, "Diameter",
             "What is the diameter of the bar?"},
    FactInfo{"header", wallItem, "niche medicine-cabinet", yesNo, "Stud cut, header planned",
             "Is a header planned where a stud is cut?"},
    FactInfo{"surface_mounted", wallItem, "medicine-cabinet access-panel", yesNo, "On the face of the wall",
             "Does it stand on the face of the wall instead of in it?"},
    FactInfo{"box_up", wallItem, "", length, "Box above its lower edge",
             "How far is the centre of its box above its lower edge?"},
    FactInfo{"flow_cfm", wallItem, "exhaust", amount, "Air flow",
             "How much air does this fan move?", "cfm"},
    FactInfo{"continuous", wallItem, "exhaust", yesNo, "Runs all the time",
             "Does this fan run all the time?"},
    FactInfo{"ducted_outdoors", wallItem, "exhaust", yesNo, "Ducted outdoors",
             "Does its duct end outdoors?"},
    FactInfo{"sones", wallItem, "exhaust", amount, "Loudness",
             "How loud is this fan?", "sones"},
    FactInfo{"run_on", wallItem, "exhaust", amount, "Runs on",
             "How long does this fan run on after use?", "min"},
    // on the ceiling
    FactInfo{"flow_cfm", ceilingItem, "fan", amount, "Air flow", "How much air does this fan move?", "cfm"},
    FactInfo{"continuous", ceilingItem, "fan", yesNo, "Runs all the time", "Does this fan run all the time?"},
    FactInfo{"ducted_outdoors", ceilingItem, "fan", yesNo, "Ducted outdoors", "Does its duct end outdoors?"},
    FactInfo{"outlet_from_opening", ceilingItem, "fan", length, "Outlet to the nearest opening",
             "How far is its outlet from the nearest window or door that opens, or air intake "
             "without a fan?"},
    FactInfo{"outlet_from_boundary", ceilingItem, "fan", length, "Outlet to the property line",
             "How far is its outlet from the property line?"},
    FactInfo{"outlet_from_intake", ceilingItem, "fan", length, "Outlet to a fan-driven intake",
             "How far is its outlet from the nearest fan-driven air intake?"},
    FactInfo{"outlet_above_intake", ceilingItem, "fan", length, "Outlet above that intake",
             "How far is its outlet above that air intake?"},
    FactInfo{"sones", ceilingItem, "fan", amount, "Loudness", "How loud is this fan?", "sones"},
    FactInfo{"run_on", ceilingItem, "fan", amount, "Runs on", "How long does this fan run on after use?", "min"},
    FactInfo{"hanging", ceilingItem, "light", yesNo, "Hangs", "Does it hang on a cord, chain or track?"},
    FactInfo{"lower_edge", ceilingItem, "light", length, "Lower edge",
             "How high above the floor does this light end?"},
    FactInfo{"wet_listed", ceilingItem, "", yesNo, "Listed for wet places", "Is it listed for wet places?"},
    FactInfo{"damp_listed", ceilingItem, "", yesNo, "Listed for damp places", "Is it listed for damp places?"},
};

bool hasWord(std::string_view words, std::string_view word) {
  while (!words.empty()) {
    const std::size_t end = words.find(' ');
    if (words.substr(0, end) == word) return true;
    if (end == std::string_view::npos) return false;
    words.remove_prefix(end + 1);
  }
  return false;
}

template <typename T>
std::optional<T> statedAs(const Facts& facts, std::string_view key) {
  const auto it = facts.find(std::string(key));
  if (it == facts.end()) return std::nullopt;
  const T* value = std::get_if<T>(&it->second);
  return value == nullptr ? std::nullopt : std::optional<T>(*value);
}

}  // namespace

std::span<const FactInfo> allFacts() { return kFacts; }

const FactInfo* findFact(FactOn on, std::string_view key) {
  const auto it =
      std::find_if(kFacts.begin(), kFacts.end(), [&](const FactInfo& f) { return f.on == on && f.key == key; });
  return it == kFacts.end() ? nullptr : &*it;
}

bool concerns(const FactInfo& fact, std::string_view kind) {
  return fact.kinds.empty() || hasWord(fact.kinds, kind);
}

std::optional<bool> yesNo(const Facts& facts, std::string_view key) { return statedAs<bool>(facts, key); }
std::optional<Length> lengthOf(const Facts& facts, std::string_view key) { return statedAs<Length>(facts, key); }
std::optional<Amount> amountOf(const Facts& facts, std::string_view key) { return statedAs<Amount>(facts, key); }
std::optional<std::string> wordOf(const Facts& facts, std::string_view key) {
  return statedAs<std::string>(facts, key);
}

bool fits(const FactInfo& fact, const FactValue& value) {
  switch (fact.type) {
    case FactType::yesNo:
      return std::holds_alternative<bool>(value);
    case FactType::length:
      return std::holds_alternative<Length>(value) && std::get<Length>(value) >= Length{};
    case FactType::amount:
      return std::holds_alternative<Amount>(value) && std::get<Amount>(value).thousandths >= 0;
    case FactType::word:
      return std::holds_alternative<std::string>(value) && hasWord(fact.words, std::get<std::string>(value));
  }
  return false;
}

}  // namespace elbowroom
