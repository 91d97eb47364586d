// Whether the plan shows a point of the Wish list. Private to the Wish list and to the table of measures.
#pragma once

#include "core/rules/checks/common.h"
#include "core/rules/wishes.h"

namespace elbowroom::wishes {

struct Sight {
  enum class Seen { yes, no, notStated, notApplicable };
  Seen seen = Seen::no;
  std::vector<ElementId> elements = {};  // as WishState::elements
  std::vector<Place> places = {};
  std::string fact = {};  // notStated
};

Sight controlAway(const CheckInput&);
Sight handSpray(const CheckInput&);
Sight niche(const CheckInput&);
Sight glassBelowCeiling(const CheckInput&);
Sight curbless(const CheckInput&);
Sight bathToLeanOver(const CheckInput&);
Sight doubleReceptacles(const CheckInput&);
Sight toeSpace(const CheckInput&);
Sight fullMirror(const CheckInput&);
Sight sideLights(const CheckInput&);
Sight makeupMirror(const CheckInput&);
Sight toiletReceptacle(const CheckInput&);
Sight naturalLight(const CheckInput&);
Sight backing(const CheckInput&);
Sight slidingDoor(const CheckInput&);
Sight timerSwitch(const CheckInput&);
Sight wideDoor(const CheckInput&);
Sight wheelchairReady(const CheckInput&);

Sight look(const CheckInput&, Wished);
WishState stateOf(const CheckInput&, Wished);
std::vector<Measurement> measured(const CheckInput&, Wished);
// The measure of a point's rule.
template <Wished W>
std::vector<Measurement> wished(const CheckInput& in) {
  return measured(in, W);
}
std::vector<Rule> rules();  // one per point, in the order of the list

// ---- what several looks need
using checks::middleOf, checks::placeOf;
inline bool isDoor(const PlacedOpening& o) { return o.opening.kind == OpeningKind::door; }
void add(Sight&, const PlacedWallItem&);
void add(Sight&, const PlacedFixture&);
void add(Sight&, const PlacedOpening&);

// All things that `wanted` accepts show the point; without any it is absent.
template <typename All, typename Wanted>
Sight anyOf(const All& all, Wanted wanted) {
  Sight sight;
  for (const auto& one : all)
    if (wanted(one)) add(sight, one);
  if (!sight.elements.empty()) sight.seen = Sight::Seen::yes;
  return sight;
}
// For a point that belongs to fixtures of a kind: `of` gives each one's own sight. One that shows it is
// enough; else one that is not stated; without any the point does not apply.
template <typename Keep, typename Of>
Sight atFixtures(const CheckInput& in, Keep keep, Of of) {
  Sight best{.seen = Sight::Seen::notApplicable};
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!checks::counts(f) || !keep(f)) continue;
    Sight one = of(f);
    if (one.elements.empty()) add(one, f);
    if (best.seen == Sight::Seen::notApplicable || one.seen == Sight::Seen::yes ||
        (one.seen == Sight::Seen::notStated && best.seen == Sight::Seen::no)) {
      if (best.seen != Sight::Seen::yes) best = std::move(one);
    }
  }
  return best;
}
inline bool holdsSpray(const PlacedFixture& f) { return checks::isShower(f) || checks::isBath(f); }

}  // namespace elbowroom::wishes
