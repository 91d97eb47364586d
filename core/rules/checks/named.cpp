#include "core/rules/checks/named.h"

#include <algorithm>

#include "core/rules/checks/doors.h"
#include "core/rules/checks/floor.h"
#include "core/rules/checks/fronts.h"
#include "core/rules/checks/people.h"
#include "core/rules/checks/room.h"
#include "core/rules/checks/showers.h"
#include "core/rules/checks/sides.h"
#include "core/rules/checks/spacing.h"
#include "core/rules/checks/toilet_clearance.h"

namespace elbowroom::checks {
namespace {

// {name, function, what it gives (a length if nothing stands there), unit of an amount, names of its sizes}
constexpr NamedMeasure kNamed[] = {
    // doors.h
    {"door-clear-openings", doorClearOpenings},
    {"door-swings", doorSwings, Gives::angle},
    {"door-pairs", doorPairs, Gives::yesNo},
    {"doors-and-people", doorsAndPeople, Gives::yesNo},
    {"doors-before-fixtures", doorsBeforeFixtures},
    {"pocket-walls", pocketWalls},
    {"slide-walls", slideWalls},
    {"pocket-pipes", pocketPipes, Gives::yesNo},
    // floor.h
    {"own-floor", ownFloor, Gives::yesNo},
    // fronts.h
    {"toilet-fronts", toiletFronts},
    {"basin-fronts", basinFronts},
    {"bath-fronts", bathFronts},
    {"shower-fronts", showerFronts},
    {"toilet-wide-fronts", toiletWideFronts},
    // room.h
    {"turning-space", turningSpace},
    {"turning-space-for-chair", turningSpaceForChair},
    {"bare-circle", bareCircle},
    {"ceiling-height", ceilingHeight},
    // showers.h
    {"shower-discs", showerDiscs},
    {"shower-discs-or-large", showerDiscsOrLarge},
    {"shower-areas", showerAreas, Gives::area},
    // sides.h
    {"toilet-sides", toiletSides},
    {"toilet-side-walls", toiletSideWalls},
    {"basin-sides", basinSides},
    {"basin-edges", basinEdges},
    // spacing.h
    {"fixture-centres", fixtureCentres},
    {"toilet-centres", toiletCentres},
    {"basin-spacing-15", basinSpacing15},
    {"basin-spacing-20", basinSpacing20},
    // toilet_clearance.h
    {"toilet-clearances", toiletClearances},
    // people.h
    {"knees-at-toilets", kneesAtToilets},
    {"elbows-at-toilets", elbowsAtToilets},
    {"bending-at-basins", bendingAtBasins},
    {"kneeling-at-baths", kneelingAtBaths},
    {"rims-of-baths", rimsOfBaths},
    {"passing-at-basins", passingAtBasins},
    {"helping-at-basins", helpingAtBasins},
    {"helper-beside-toilets", helperBesideToilets},
    {"basin-heights-for-adults", basinHeightsForAdults},
    {"basin-heights-for-children", basinHeightsForChildren},
    {"basin-heights-for-chairs", basinHeightsForChairs},
    {"top-shelves", topShelves},
};

}  // namespace

Gives kindOf(const Quantity& quantity) {
  static_assert(std::is_same_v<Quantity, std::variant<Length, Area, Angle, Count, bool, Amount>>);
  return static_cast<Gives>(quantity.index());
}

std::string_view wordsOf(Gives gives) {
  switch (gives) {
    case Gives::length:
      return "a length";
    case Gives::area:
      return "an area";
    case Gives::angle:
      return "an angle";
    case Gives::count:
      return "a count";
    case Gives::yesNo:
      return "a yes or no";
    case Gives::amount:
      return "an amount";
  }
  return {};
}

std::span<const NamedMeasure> namedMeasures() { return kNamed; }

const NamedMeasure* findMeasure(std::string_view name) {
  const auto at =
      std::find_if(std::begin(kNamed), std::end(kNamed), [&](const NamedMeasure& m) { return m.name == name; });
  return at == std::end(kNamed) ? nullptr : at;
}

const NamedMeasure* nameOf(Measure measure) {
  const auto at = std::find_if(std::begin(kNamed), std::end(kNamed),
                               [&](const NamedMeasure& m) { return m.measure == measure; });
  return at == std::end(kNamed) ? nullptr : at;
}

SizeCount sizesOf(const NamedMeasure& named) {
  if (named.sizes.empty()) return {};
  const auto count = [&](char c) {
    return static_cast<std::size_t>(std::count(named.sizes.begin(), named.sizes.end(), c));
  };
  const std::size_t most = count(',') + 1;
  return {most - count('?'), most};
}

}  // namespace elbowroom::checks
