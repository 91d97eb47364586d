// The Wish list: what is worth considering in a bathroom, and for each point what the plan shows and what the
// person has answered (Option::wishes). Common practice; nothing here is required by anybody.
//
// Each point is also a rule of the book "craft" ("wish-" and its key): met when the plan shows the point or
// it is left out with a reason, short when it is wanted and not there, unknown while nobody has decided.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/rules/check.h"
#include "core/rules/memo.h"

namespace elbowroom {

// In the order of the list.
enum class Wished {
  controlAway,
  handSpray,
  niche,
  glassBelowCeiling,
  curbless,
  bathToLeanOver,
  doubleReceptacles,
  toeSpace,
  fullMirror,
  sideLights,
  makeupMirror,
  toiletReceptacle,
  naturalLight,
  backing,
  slidingDoor,
  timerSwitch,
  wideDoor,
  wheelchairReady
};
inline constexpr std::size_t kWishCount = 18;

struct WishPoint {
  Wished wished;
  std::string_view key;      // in plan files: "hand-spray"
  std::string_view topic;    // "Shower and bath"
  std::string_view title;    // "Hand spray"
  std::string_view why;      // one plain sentence
  std::string_view seen_as;  // what in the plan counts as it, one sentence
  std::string_view without;  // why it may not apply: "No shower or bath in the plan"
  Source source;
  Grade grade;
};
std::span<const WishPoint> wishPoints();
const WishPoint* findWish(std::string_view key);  // nullptr: no such point

enum class WishStand {
  inPlan,   // the plan shows it
  wanted,   // answered in, and the plan does not show it
  leftOut,  // answered out, with the reason
  undecided,
  notApplicable  // not answered, and there is nothing in the plan that it would belong to
};
std::string_view keyOf(WishStand);  // "in-plan", "wanted", "left-out", "undecided", "not-applicable"

struct WishState {
  const WishPoint* point = nullptr;
  WishStand stand = WishStand::undecided;
  bool shown = false;               // the plan shows it, whatever was answered
  bool not_stated = false;          // wanted, and whether it is there depends on what the plan does not state
  std::string fact;                 // of the first element (none: of the room): as Finding::fact
  std::string reason;               // of one left out
  std::vector<ElementId> elements;  // what shows it; else what it would belong to
  std::vector<Place> places;        // at least one in a room that is drawn
};
// One per point, in the order of the list. Pure. `figures`: those of the layout.
std::vector<WishState> wishStates(const Layout& layout, const Figures& figures);
// `memo`: of a check of this layout, so that its searches are not made again.
std::vector<WishState> wishStates(const Layout& layout, const Figures& figures, Memo& memo);

struct WishCounts {
  int in_plan = 0, wanted = 0, left_out = 0, undecided = 0, not_applicable = 0;
  bool operator==(const WishCounts&) const = default;
};
WishCounts countsOf(const std::vector<WishState>& states);
WishCounts wishCounts(const Report& report);  // the same from a report of the book "craft"

// The point that a finding of its rule is about; nullptr for all other findings.
const WishPoint* wishOf(const Finding& finding);
// Whether the finding is one of the Wish list's only and no business of Advice, marks and findings lists: an
// undecided point is no flaw, and nobody needs to be told what is there. A point that is wanted and not there
// is.
bool onlyWished(const Finding& finding);

// "In the plan: Hand spray", "Wanted, not in the plan yet", "Left out: no room", ... without the point's
// title.
std::string wishText(const WishState& state, const Option& option);

}  // namespace elbowroom
