// Private to core/rules: tries changes on a copy of the plan and says what each would do to the finding and to all
// the others.
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>

#include "core/rules/in_force.h"
#include "core/rules/remedies.h"

namespace elbowroom::remedies {

struct Verdict {
  bool possible = false;  // the plan takes the change
  bool mended = false;
  std::optional<Finding> then;
  std::vector<Finding> breaks, brings, worsens;
  std::vector<ElementId> meets;
  bool good() const { return possible && mended && breaks.empty() && meets.empty(); }
};

class Trials {
 public:
  Trials(const Plan&, std::size_t option, const Finding&, const BookChoice&, int most_checks);

  const Plan& plan() const { return plan_; }
  const Option& option() const { return layout_.option; }
  const Layout& layout() const { return layout_; }
  const Finding& finding() const { return finding_; }
  const Rule* rule() const { return rule_; }
  int used() const { return used_; }
  // No new way is tried then; what is left is for finding the least of the one at hand.
  bool exhausted() const { return used_ + kToCloseIn >= most_; }

  // How much the finding has to spare after the change, negative when missed, in the smallest unit of its kind;
  // a yes/no is +1 or -1, a rule that no longer applies is kPlenty. nullopt: the plan refuses, or no checks are left.
  std::optional<double> spare(const Change&);
  // spare() at or above this counts as exactly met.
  double metFrom() const;
  double asItStands() const { return spareOf(&finding_); }
  double spareOf(const Finding*) const;
  Verdict full(const Change&);

  static constexpr double kPlenty = 1e300;
  static constexpr int kToCloseIn = 24;

 private:
  using Key = std::pair<std::string, std::vector<ElementId>>;
  using Shorts = std::map<Key, std::vector<Finding>>;  // the worst first
  struct State {
    Shorts shorts;
    std::set<std::pair<ElementId, ElementId>> meetings;
  };
  std::optional<Layout> layoutAfter(const Change&) const;
  State stateOf(const Layout&, const Report&) const;
  std::vector<Finding> ofOwnRule(const Layout&) const;
  const Finding* answering(const std::vector<Finding>&) const;
  bool ofTarget(const Finding&) const;

  const Plan& plan_;
  std::size_t option_;
  const Finding& finding_;
  const Rule* rule_;
  BookChoice all_;            // every chosen book and the physical rules
  RulesInForce own_;          // the finding's book alone
  bool craft_chosen_;
  int most_, used_ = 0;
  Layout layout_;
  State before_;
};

// What stands in, hangs over or blocks something else: fixtures before doors and windows, things on walls over
// openings, each other or the wall's end.
std::set<std::pair<ElementId, ElementId>> meetings(const Layout&);

}  // namespace elbowroom::remedies
