#include "core/rules/remedies.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/rules/remedies/least.h"

namespace elbowroom {

namespace remedies {
namespace {

constexpr double kKept = 1000;      // what is to stay is touched last
constexpr double kBystander = 5;    // moving a thing that the finding does not name
constexpr double kBrings = 12;      // each new shortfall of a lower level
constexpr double kWorsens = 500;    // one that is there already made worse: after all that do without
constexpr std::size_t kBystanders = 4;

struct Offer {
  Remedy remedy;
  double effort;
};

struct Tried {
  Conflict conflict;
  double effort;
};

struct Item {
  const Family* family = nullptr;
  const Candidate* candidate = nullptr;
  double least = 0;  // the effort it cannot go below
};

bool wanted(const Rule* rule, Mend way) {
  return rule == nullptr || rule->mends.empty() ||
         std::find(rule->mends.begin(), rule->mends.end(), way) != rule->mends.end();
}

class Search {
 public:
  explicit Search(Trials& trials) : trials_(trials) {}

  void tryAll(const std::vector<ElementId>& things, bool bystanders);
  Remedies take();
  bool enough(double least) const;

 private:
  void tryFamily(const Family&, double extra);
  void tryCandidate(const Candidate&, double extra);
  bool offer(Move, Change, Verdict, double effort, bool kept);
  void refuse(Move, Verdict, double effort);
  Move finished(const Family&, Length by) const;

  Trials& trials_;
  std::vector<Offer> offers_;
  std::vector<Tried> tried_;
};

// Three of different kinds, none of which what is left could undercut.
bool Search::enough(double least) const {
  std::set<Mend> ways;
  for (const Offer& o : offers_)
    if (o.effort <= least) ways.insert(o.remedy.move.way);
  return ways.size() >= kMostRemedies;
}

bool Search::offer(Move move, Change change, Verdict v, double effort, bool kept) {
  if (!v.good()) {
    refuse(std::move(move), std::move(v), effort);
    return false;
  }
  effort += kBrings * static_cast<double>(v.brings.size() + v.worsens.size());
  if (!v.worsens.empty()) effort += kWorsens;
  offers_.push_back(
      {{std::move(move), std::move(change), kept, std::move(v.then), std::move(v.brings), std::move(v.worsens)},
       effort});
  return true;
}

void Search::refuse(Move move, Verdict v, double effort) {
  // What brings the finding no nearer to its limit is no way to mend it.
  const bool nearer = v.mended || (v.then && trials_.spareOf(&*v.then) > trials_.asItStands());
  if (!v.possible || !nearer) return;
  Conflict c{std::move(move), std::move(v.breaks), std::move(v.meets), {}};
  if (!v.mended) c.reached = std::move(v.then);
  tried_.push_back({std::move(c), effort});
}

Move Search::finished(const Family& family, Length by) const {
  Move move = family.move;
  move.by = by;
  const auto& subjects = trials_.finding().subjects;
  const bool from_subject = std::find(subjects.begin(), subjects.end(), family.behind) != subjects.end();
  if (move.way == Mend::slide && !family.behind.empty() && (from_subject || move.other.empty())) {
    move.other = family.behind;
    move.away = true;
  }
  if (move.way == Mend::raise || move.way == Mend::lower) {
    const Change change = family.at(by);
    if (const auto* items = std::get_if<PutWallItems>(&change)) move.up = items->items.front().bottom;
    if (const auto* fixtures = std::get_if<PutFixtures>(&change)) move.up = fixtures->fixtures.front().height;
  }
  return move;
}

void Search::tryFamily(const Family& family, double extra) {
  const auto effort = [&](Length by) { return extra + family.effort.base + family.effort.per_inch * by.inches(); };
  const Least least = leastShift(trials_, family);
  if (!least.by) {
    std::optional<Length> shown = least.best;
    // Between two sides that are both too near, what one gains the other loses: the shift that would do for the one.
    const auto* short_by =
        trials_.finding().short_by ? std::get_if<Length>(&*trials_.finding().short_by) : nullptr;
    if (!shown && short_by != nullptr && *short_by <= family.most) shown = *short_by;
    if (shown && !trials_.exhausted())
      refuse(finished(family, *shown), trials_.full(family.at(*shown)), effort(*shown));
    return;
  }
  const Length by = *least.by;
  Change change = family.at(by);
  Verdict verdict = trials_.full(change);
  const bool breaks = verdict.possible && !verdict.good();
  if (offer(finished(family, by), std::move(change), std::move(verdict), effort(by), family.kept) || !breaks) return;
  // What it breaks may end further on: a leaf that clears the basin only beyond it.
  Length bad = by;
  for (const int part : {1, 2, 3}) {
    Length good = by + (family.most - by).scaled(part / 3.0);
    if (good <= bad || trials_.exhausted()) return;
    if (!trials_.full(family.at(good)).good()) {
      bad = good;
      continue;
    }
    for (int i = 0; i < 12 && good - bad > Length::nanometres(793'750); ++i) {
      const Length middle = (bad + good) / 2;
      (trials_.full(family.at(middle)).good() ? good : bad) = middle;
    }
    for (Length there : {roundedUp(bad + Length::nanometres(1), trials_.plan().unit, family.most),
                         roundedUp(good, trials_.plan().unit, family.most)}) {
      Verdict v = trials_.full(family.at(there));
      if (!v.good()) continue;
      offer(finished(family, there), family.at(there), std::move(v), effort(there), family.kept);
      return;
    }
    return;
  }
}

void Search::tryCandidate(const Candidate& c, double extra) {
  offer(c.move, c.change, trials_.full(c.change), extra + c.effort, c.kept);
}

void Search::tryAll(const std::vector<ElementId>& things, bool bystanders) {
  std::vector<Ways> all;
  all.reserve(things.size());
  for (const ElementId& id : things) all.push_back(waysFor(trials_.layout(), id));
  std::vector<Item> items;
  double by_order = bystanders ? kBystander : 0;
  for (const Ways& ways : all) {
    for (const Family& f : ways.families)
      if (wanted(trials_.rule(), f.move.way))
        items.push_back({&f, nullptr, by_order + f.effort.base + (f.kept ? kKept : 0)});
    for (const Candidate& c : ways.candidates)
      if (wanted(trials_.rule(), c.move.way) && (!bystanders || c.move.way != Mend::swap))
        items.push_back({nullptr, &c, by_order + c.effort + (c.kept ? kKept : 0)});
    by_order += 1;
  }
  std::stable_sort(items.begin(), items.end(), [](const Item& a, const Item& b) { return a.least < b.least; });
  std::set<std::pair<Mend, ElementId>> done;
  for (const Item& item : items) {
    if (trials_.exhausted() || enough(item.least)) return;
    const Move& move = item.family != nullptr ? item.family->move : item.candidate->move;
    const std::size_t before = offers_.size();
    if (item.family != nullptr) {
      tryFamily(*item.family, item.least - item.family->effort.base);
      continue;
    }
    // The next one of a kind only asks for more.
    if (done.count({move.way, move.moved}) > 0) continue;
    // Swinging the other way alone does already.
    const Opening* door = move.door ? findOpening(trials_.option(), move.moved) : nullptr;
    if (door != nullptr && door->swing != move.door->swing && done.count({Mend::otherSwing, move.moved}) > 0) continue;
    tryCandidate(*item.candidate, item.least - item.candidate->effort);
    if (offers_.size() > before) done.insert({move.way, move.moved});
  }
}

Remedies Search::take() {
  Remedies found;
  found.checks = trials_.used();
  std::stable_sort(offers_.begin(), offers_.end(), [](const Offer& a, const Offer& b) { return a.effort < b.effort; });
  std::vector<bool> taken(offers_.size(), false);
  int count = 0;
  std::set<Mend> ways;
  // Kept things come last in either pass: another kind is no reason to move a drain.
  for (const bool kept : {false, true})
    for (const bool like : {false, true})
      for (std::size_t i = 0; i < offers_.size() && count < kMostRemedies; ++i) {
        const Remedy& r = offers_[i].remedy;
        if (taken[i] || r.kept != kept || (!like && !ways.insert(r.move.way).second)) continue;
        taken[i] = true;
        ++count;
      }
  for (std::size_t i = 0; i < offers_.size(); ++i)
    if (taken[i]) found.offered.push_back(std::move(offers_[i].remedy));
  if (!found.offered.empty()) return found;
  const auto far = [](const Tried& t) {
    return t.effort + 20.0 * static_cast<double>(t.conflict.breaks.size() + t.conflict.meets.size()) +
           (t.conflict.reached ? 60 : 0);
  };
  std::stable_sort(tried_.begin(), tried_.end(), [&](const Tried& a, const Tried& b) { return far(a) < far(b); });
  std::set<std::pair<Mend, ElementId>> said;
  for (Tried& t : tried_) {
    if (found.conflicts.size() >= kMostRemedies) break;
    if (said.insert({t.conflict.move.way, t.conflict.move.moved}).second)
      found.conflicts.push_back(std::move(t.conflict));
  }
  return found;
}

// Fixtures that the finding does not name, the nearest to its places first.
std::vector<ElementId> bystanders(const Layout& layout, const Finding& finding) {
  std::vector<std::pair<Length, ElementId>> near;
  for (const PlacedFixture& f : layout.fixtures) {
    const ElementId& id = f.fixture.id;
    if (!f.solid || std::find(finding.subjects.begin(), finding.subjects.end(), id) != finding.subjects.end()) continue;
    std::optional<Length> least;
    for (const Place& place : finding.places)
      for (const Point p : place.points) {
        const Length d = gapFromPoint(p, f.footprint).distance;
        if (!least || d < *least) least = d;
      }
    near.push_back({least.value_or(Length{}), id});
  }
  std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<ElementId> ids;
  for (const auto& [d, id] : near)
    if (ids.size() < kBystanders) ids.push_back(id);
  return ids;
}

}  // namespace
}  // namespace remedies

Remedies remediesFor(const Plan& plan, std::size_t option, const Finding& finding, const BookChoice& choice,
                     int most_checks) {
  if (finding.outcome != Outcome::shortfall || !finding.measured || option >= plan.options.size()) return {};
  const Rule* rule = findRule(finding.book, finding.rule);
  if (rule != nullptr && rule->mends == std::vector<Mend>{Mend::state}) return {};
  remedies::Trials trials(plan, option, finding, choice, most_checks);
  remedies::Search search(trials);
  search.tryAll(finding.subjects, false);
  if (!search.enough(remedies::kBystander)) search.tryAll(remedies::bystanders(trials.layout(), finding), true);
  return search.take();
}

}  // namespace elbowroom
