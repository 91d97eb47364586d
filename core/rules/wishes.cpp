#include "core/rules/wishes.h"

#include <fmt/format.h>

#include "core/rules/text.h"
#include "core/rules/wishes/looks.h"

namespace elbowroom {
namespace {

WishStand standOf(const Wish* answer, wishes::Sight::Seen seen) {
  if (answer != nullptr && !answer->in) return WishStand::leftOut;
  if (seen == wishes::Sight::Seen::yes) return WishStand::inPlan;
  if (answer != nullptr) return WishStand::wanted;
  return seen == wishes::Sight::Seen::notApplicable ? WishStand::notApplicable : WishStand::undecided;
}

void count(WishCounts& counts, WishStand stand) {
  switch (stand) {
    case WishStand::inPlan:
      ++counts.in_plan;
      break;
    case WishStand::wanted:
      ++counts.wanted;
      break;
    case WishStand::leftOut:
      ++counts.left_out;
      break;
    case WishStand::undecided:
      ++counts.undecided;
      break;
    case WishStand::notApplicable:
      ++counts.not_applicable;
      break;
  }
}

// Keys of the details that the findings of the list carry (sentences: core/rules/text_words.cpp).
constexpr std::string_view kMissing = "wish-missing", kNotStated = "wish-not-stated",
                           kUndecided = "wish-undecided", kOut = "wish-out",
                           kOutYetThere = "wish-out-yet-there";

bool says(const Finding& f, std::string_view key) {
  return std::string_view(f.detail).substr(0, f.detail.find(':')) == key;
}

std::string namesOf(const std::vector<ElementId>& ids, const Option& option) {
  constexpr std::size_t kMost = 3;
  std::string names;
  for (std::size_t i = 0; i < std::min(ids.size(), kMost); ++i)
    names += (names.empty() ? "" : ", ") + subjectName(option, ids[i]);
  return ids.size() > kMost ? names + fmt::format(" and {} more", ids.size() - kMost) : names;
}

}  // namespace

namespace wishes {

void add(Sight& sight, const PlacedWallItem& i) {
  sight.elements.push_back(i.item.id);
  sight.places.push_back(placeOf(i));
}
void add(Sight& sight, const PlacedFixture& f) {
  sight.elements.push_back(f.fixture.id);
  sight.places.push_back(checks::pointAt(f.center));
}
void add(Sight& sight, const PlacedOpening& o) {
  sight.elements.push_back(o.opening.id);
  sight.places.push_back(checks::lineFrom(o.left, o.right));
}

WishState stateOf(const CheckInput& in, Wished wished) {
  const WishPoint& point = wishPoints()[static_cast<std::size_t>(wished)];
  const auto at = in.layout.option.wishes.find(std::string(point.key));
  const Wish* answer = at == in.layout.option.wishes.end() ? nullptr : &at->second;
  Sight sight;
  if (in.layout.room.empty())
    sight.seen = Sight::Seen::notApplicable;
  else
    sight = look(in, wished);
  WishState state;
  state.point = &point;
  state.stand = standOf(answer, sight.seen);
  state.shown = sight.seen == Sight::Seen::yes;
  if (state.stand == WishStand::wanted && sight.seen == Sight::Seen::notStated) {
    state.not_stated = true;
    state.fact = std::move(sight.fact);
  }
  if (state.stand == WishStand::leftOut) state.reason = answer->reason;
  if (state.fact != "ceiling.height") state.elements = std::move(sight.elements);
  state.places = std::move(sight.places);
  if (state.places.empty() && !in.layout.room.empty())
    state.places.push_back(checks::pointAt(centroidOf(in.layout.room)));
  return state;
}

std::vector<Measurement> measured(const CheckInput& in, Wished wished) {
  if (in.layout.room.empty()) return {};
  WishState state = stateOf(in, wished);
  Measurement m{.subjects = std::move(state.elements), .places = std::move(state.places)};
  switch (state.stand) {
    case WishStand::notApplicable:
      return {};
    case WishStand::inPlan:
      m.measured = true;
      break;
    case WishStand::leftOut:
      m.measured = true;
      m.detail = fmt::format("{}:{}", state.shown ? kOutYetThere : kOut, state.reason);
      break;
    case WishStand::wanted:
      if (!state.not_stated) m.measured = false;
      m.fact = std::move(state.fact);
      m.detail = state.not_stated ? kNotStated : kMissing;
      break;
    case WishStand::undecided:
      m.detail = kUndecided;
      break;
  }
  return {m};
}

}  // namespace wishes

std::string_view keyOf(WishStand stand) {
  switch (stand) {
    case WishStand::inPlan:
      return "in-plan";
    case WishStand::wanted:
      return "wanted";
    case WishStand::leftOut:
      return "left-out";
    case WishStand::undecided:
      return "undecided";
    case WishStand::notApplicable:
      return "not-applicable";
  }
  return {};
}

std::vector<WishState> wishStates(const Layout& layout, const Figures& figures) {
  Memo memo;
  return wishStates(layout, figures, memo);
}

std::vector<WishState> wishStates(const Layout& layout, const Figures& figures, Memo& memo) {
  static const std::vector<checks::Around> kNone;  // no look asks what stands around a fixture
  const CheckInput in{layout, figures, kNone, nullptr, memo};
  std::vector<WishState> states;
  for (const WishPoint& point : wishPoints()) states.push_back(wishes::stateOf(in, point.wished));
  return states;
}

WishCounts countsOf(const std::vector<WishState>& states) {
  WishCounts counts;
  for (const WishState& state : states) count(counts, state.stand);
  return counts;
}

WishCounts wishCounts(const Report& report) {
  WishCounts counts;
  int told = 0;
  for (const Finding& f : report.findings) {
    if (wishOf(f) == nullptr) continue;
    ++told;
    count(counts, says(f, kMissing) || says(f, kNotStated) ? WishStand::wanted
                  : says(f, kOut) || says(f, kOutYetThere) ? WishStand::leftOut
                  : says(f, kUndecided)                    ? WishStand::undecided
                                                           : WishStand::inPlan);
  }
  if (told > 0) counts.not_applicable = static_cast<int>(kWishCount) - told;
  return counts;
}

const WishPoint* wishOf(const Finding& f) {
  constexpr std::string_view kRule = "wish-";
  if (f.book != "craft" || !f.rule.starts_with(kRule)) return nullptr;
  return findWish(std::string_view(f.rule).substr(kRule.size()));
}

bool onlyWished(const Finding& f) {
  return wishOf(f) != nullptr && !says(f, kMissing) && !says(f, kNotStated);
}

std::string wishText(const WishState& state, const Option& option) {
  switch (state.stand) {
    case WishStand::inPlan:
      return fmt::format("In the plan: {}", namesOf(state.elements, option));
    case WishStand::wanted:
      return state.not_stated ? "Wanted; the plan does not say whether it is there"
                              : "Wanted, not in the plan yet";
    case WishStand::leftOut:
      return fmt::format("Left out: {}{}", state.reason, state.shown ? " (yet the plan shows it)" : "");
    case WishStand::undecided:
      return "Undecided";
    case WishStand::notApplicable:
      return std::string(state.point->without);
  }
  return {};
}

}  // namespace elbowroom
