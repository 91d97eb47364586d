#include "core/rules/reads.h"

#include <unordered_map>

#include "core/rules/checks/named.h"

namespace elbowroom {
namespace {

constexpr Reads kNothing = 0, kT = kReadsToilets, kB = kReadsBasins, kW = kReadsWet, kI = kReadsItems;

// A line may name too much, never too little: tests/core/file/recheck_test.cpp moves every kind of thing
// through the plans of all rules. What is doubtful has no line. A measure whose finding only marks its
// subject reads its place.
constexpr ReadsLine kTable[] = {
    {kNothing,
     "ceiling-height circuits-of-bathrooms compartment-air compartment-doors door-handles door-heights "
     "door-steps "
     "door-thresholds door-thresholds-for-chair door-undercuts doors-shut-tight doors-swing-out doors-unlock "
     "fan-flows fan-loudness fan-outlet-boundaries fan-outlet-intakes fan-outlet-openings fan-run-ons "
     "fans-outdoors "
     "floor-heat-gfci lights-switched needed-fixtures pocket-loads pocket-wall-thicknesses "
     "room-air-by-fixtures "
     "room-air-by-floor room-air-by-volume slip-resistant-floor stock-leaves stud-holes stud-notches "
     "window-opens "
     "high-half high-quarter "
     "openings-under-ceiling stud-hole-edges smoke-alarms-from-doors floor-falls "
     "deep-door-openings door-leaves window-glass switches-at-entry "
     "room-spans room-lengths wish-natural-light wish-sliding-door"},
    {kI,
     "items-apart items-off-openings items-under-ceiling items-within-walls hook-heights "
     "switch-heights receptacle-circuits "
     "receptacles-not-facing-up receptacles-tamper-resistant recess-bays recess-depths recess-loads "
     "recesses-inside "
     "recesses-off-pipes mirror-holes-apart mirror-holes-to-edge pocket-boxes pocket-screws "
     "wish-timer-switch"},
    {kW,
     "centre-falls curbless-drops curbless-lengths curbs-above-drains curbs-there enclosure-glass "
     "falls-for-chair fixed-glass-widths open-wet-floors "
     "glass-facing-water glass-heights hot-water-waits liners-up linear-drains seat-leaves-area "
     "seat-leaves-side "
     "shower-areas shower-curbs shower-discs shower-discs-or-large shower-door-widths shower-doors-outward "
     "shower-falls shower-openings shower-seat-depths shower-seat-heights shower-short-sides "
     "shower-seats-from-entry shower-seats-from-wall shower-discs-up shower-areas-up shower-outside-sides shower-outside-areas "
     "shower-water-limits "
     "sides-above-curbs trap-drops wall-finishes-above-drain wish-curbless wish-glass-below-ceiling "
     "pump-circuits "
     "pump-panels pump-receptacles pumps-gfci bath-valves rims-of-baths wish-bath-to-lean-over baths-for-two "
     "access-panels shower-valves wall-finishes"},
    {kW | kI,
     "bath-control-heights controls-out-of-spray heads-over-tallest hoses niche-heights "
     "shower-control-heights "
     "shower-head-heights wish-control-away wish-hand-spray wish-niche receptacles-off-water "
     "towels-at-showers "
     "ceilings-over-showers wall-finishes-above-head lights-wet lights-damp receptacles-gfci-near-water "
     "receptacles-off-water-above-rim switches-not-in-water switches-out-of-reach heads-away-from-entry "
     "heads-from-open-side hoses-reach-corners receptacles-not-over-water receptacles-off-water-below-rim "
     "bath-steps receptacles-far-from-water switches-far-from-water"},
    {kT, "toilet-seat-heights flush-on-open-side rough-ins"},
    {kT | kI, "wish-toilet-receptacle receptacles-at-toilets paper-holders-ahead paper-holder-heights"},
    {kB,
     "basin-heights basin-heights-for-adults basin-heights-for-anybody basin-heights-for-chairs "
     "basin-heights-for-children basin-projections knee-heights double-vanity-widths toe-space-depths "
     "toe-space-heights wish-toe-space knee-depths pipes-covered toe-depths"},
    {kB | kI,
     "basin-receptacle-drops basin-receptacle-rises basin-receptacle-walls basin-receptacles "
     "towels-at-basins "
     "wish-double-receptacles wish-full-mirror wish-side-lights basin-receptacles-across "
     "receptacles-per-person receptacle-at-any-basin bowls-before-receptacles "
     "light-over-mirror-heights light-over-mirror-widths makeup-mirror-eyes mirror-bottoms "
     "mirror-bottoms-for-chair "
     "mirror-tops mirrors-for-children side-light-eyes side-light-heights side-light-spacings "
     "wish-makeup-mirror"},
    {kT | kB | kW,
     "ceilings-before-fixtures fixture-centres ceilings-over-fixtures ceilings-before-and-in "
     "cut-joists-solid joist-notch-places "
     "hot-on-the-left"},
    {kT | kB | kW | kI,
     "grab-bar-heights grab-bar-plywood grab-bars-backed holders-backed panels-elsewhere panels-there "
     "receptacles-gfci receptacles-gfci-at-water store-heights towel-bar-heights water-frost pipes-in-exterior-walls "
     "mirror-items-whole "
     "wish-backing toilet-seat-receptacles wall-hung-backed"},
    {kT | kB | kW | kI,
     "alternate-depths alternate-lengths bath-back-bar-lengths bath-back-bars bath-back-bars-from-control "
     "bath-back-bars-from-head bath-control-bars bath-control-places bath-head-bars bath-lower-bars bath-seat-depths "
     "bath-seat-heights bath-walls-backed controls-from-seats "
     "glass-hinges-backed glass-near-water grab-bar-centres grab-bar-diameters grab-bar-gaps "
     "grab-bar-tops hanging-lights-off-water joist-end-notches joist-holes joist-notch-lengths joist-notches "
     "lights-at-fixtures lights-per-basin "
     "mirrors-over-backsplash roll-in-bars-from-walls roll-in-control-heights roll-in-sizes "
     "roll-in-walls-with-bars toilet-centres toilet-rear-bars toilet-rear-bars-far toilet-rear-bars-near "
     "toilet-side-bar-ends toilet-side-bar-starts toilet-side-bars toilet-upright-bars toilet-walls-backed "
     "transfer-back-bars transfer-control-bars transfer-control-heights transfer-control-reaches trap-arms-least "
     "trap-offsets upright-bar-bottoms upright-bar-lengths upright-bars-from-rear basin-gaps"},
    {kReadsFixtures | kI, "bath-clearances"},  // at which end the control is
    {kReadsFixtures,
     "bare-circle turning-space turning-space-for-chair turning-rectangles circle-under-basins "
     "dressing-space "
     "own-floor doors-over-clear-floor basin-clear-floors toilet-clear-floors bath-clear-floors "
     "basin-alongside "
     "basin-fronts basin-side-gaps basin-sides bath-either-way bath-any-stretches "
     "bath-fronts "
     "bending-at-basins counter-corners door-casings door-clear-openings door-swings elbows-at-toilets "
     "glass-door-swings kneeling-at-baths knees-at-toilets pull-travels shower-entries shower-fronts "
     "toilet-fronts "
     "toilet-wide-fronts toilet-sides toilet-side-walls toilet-clearances toilet-circulation "
     "toilet-near-edges "
     "toilet-near-sides toilet-spaces-either-side toilets-seen wall-per-basin door-manoeuvring "
     "doors-before-fixtures "
     "doors-and-pulls doors-and-sitters doors-and-people drain-sizes trap-arms basin-edges bath-wall-gaps "
     "transfer-sides "
     "sole-shower-sides route-widths wish-wide-door wish-wheelchair-ready"},
};

std::unordered_map<Measure, Reads> resolved() {
  std::unordered_map<Measure, Reads> by_measure;
  for (const ReadsLine& line : kTable) {
    std::string_view rest = line.measures;
    while (!rest.empty()) {
      const std::size_t end = std::min(rest.find(' '), rest.size());
      if (const checks::NamedMeasure* named = checks::findMeasure(rest.substr(0, end)))
        by_measure[named->measure] |= line.reads;
      rest.remove_prefix(std::min(end + 1, rest.size()));
    }
  }
  return by_measure;
}

Reads groupOf(FixtureKind kind) {
  switch (kind) {
    case FixtureKind::toilet:
    case FixtureKind::bidet:
      return kReadsToilets;
    case FixtureKind::basin:
    case FixtureKind::vanity:
      return kReadsBasins;
    case FixtureKind::bath:
    case FixtureKind::freestandingBath:
    case FixtureKind::shower:
      return kReadsWet;
    default:
      return kReadsOthers;
  }
}

bool sameSettings(const Plan& a, const Plan& b) {
  return a.unit == b.unit && a.books == b.books && a.book_settings == b.book_settings &&
         a.rule_changes == b.rule_changes && a.people == b.people && a.north == b.north &&
         a.site_tolerance == b.site_tolerance && a.extra == b.extra;
}

bool sameButPlace(Fixture a, const Fixture& b) {
  a.placement = b.placement;
  return a == b;
}

bool sameButPlace(WallItem a, const WallItem& b) {
  a.wall = b.wall;
  a.along = b.along;
  a.bottom = b.bottom;
  return a == b;
}

}  // namespace

std::span<const ReadsLine> readsTable() { return kTable; }

Reads readsOf(Measure measure) {
  static const std::unordered_map<Measure, Reads> known = resolved();
  const auto found = known.find(measure);
  return found == known.end() ? kReadsAll : found->second;
}

std::optional<Reads> movedBetween(const Layout& was, const Layout& now) {
  const Option &a = was.option, &b = now.option;
  if (a.fixtures.size() != b.fixtures.size() || a.on_walls.size() != b.on_walls.size()) return std::nullopt;
  if (a.room != b.room || a.openings != b.openings || a.on_ceiling != b.on_ceiling ||
      a.acknowledged != b.acknowledged || a.wishes != b.wishes || a.extra != b.extra ||
      !sameSettings(was.settings, now.settings)) {
    return std::nullopt;
  }
  Reads moved = 0;
  for (std::size_t i = 0; i < a.fixtures.size(); ++i) {
    if (a.fixtures[i] == b.fixtures[i]) continue;
    if (!sameButPlace(a.fixtures[i], b.fixtures[i])) return std::nullopt;
    moved |= groupOf(b.fixtures[i].kind);
  }
  for (std::size_t i = 0; i < a.on_walls.size(); ++i) {
    if (a.on_walls[i] == b.on_walls[i]) continue;
    if (!sameButPlace(a.on_walls[i], b.on_walls[i])) return std::nullopt;
    moved |= kReadsItems;
  }
  return moved;
}

}  // namespace elbowroom
