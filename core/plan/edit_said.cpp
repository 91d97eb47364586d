// Edits of what a person says about things and rules: facts, answers, settings.
#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/plan/edit_parts.h"

namespace elbowroom::edit {
namespace {

struct Stating {
  Facts* facts = nullptr;
  FactOn on = FactOn::room;
  std::string kind;
};

template <typename Element>
Element* with(std::vector<Element>& all, const ElementId& id) {
  const auto it = std::find_if(all.begin(), all.end(), [&](const Element& e) { return e.id == id; });
  return it == all.end() ? nullptr : &*it;
}

Stating statingOf(Option& option, const ElementId& id) {
  if (id.empty()) return {&option.room.facts, FactOn::room, ""};
  if (Wall* w = with(option.room.walls, id)) return {&w->facts, FactOn::wall, ""};
  if (Opening* o = with(option.openings, id))
    return {&o->facts, FactOn::opening, o->kind == OpeningKind::door ? "door" : "window"};
  if (Fixture* f = with(option.fixtures, id))
    return {&f->facts, FactOn::fixture, std::string(infoOf(f->kind).key)};
  if (WallItem* i = with(option.on_walls, id)) return {&i->facts, FactOn::wallItem, i->kind};
  if (CeilingItem* i = with(option.on_ceiling, id)) return {&i->facts, FactOn::ceilingItem, i->kind};
  return {};
}

}  // namespace

Refusal change(Option& option, const StateFact& c) {
  const Stating stating = statingOf(option, c.id);
  if (stating.facts == nullptr)
    return refused("no-such-element", "There is nothing with the id \"" + c.id.text + "\".");
  const FactInfo* info = findFact(stating.on, c.key);
  if (info == nullptr || !concerns(*info, stating.kind))
    return refused("no-such-fact", "\"" + c.key + "\" is nothing that can be stated of it.");
  if (!c.value) {
    stating.facts->erase(c.key);
    return {};
  }
  if (!fits(*info, *c.value)) return refused("fact", std::string(info->label) + ": this value does not fit.");
  (*stating.facts)[c.key] = *c.value;
  return {};
}

Refusal change(Option& option, const Acknowledge& c) {
  const auto same = [&](const Acknowledged& a) {
    return a.book == c.finding.book && a.rule == c.finding.rule && a.subjects == c.finding.subjects;
  };
  const auto it = std::find_if(option.acknowledged.begin(), option.acknowledged.end(), same);
  const bool there = it != option.acknowledged.end();
  if (c.finding.reason.empty()) {
    if (there) option.acknowledged.erase(it);
  } else if (there) {
    it->reason = c.finding.reason;
  } else {
    option.acknowledged.push_back(c.finding);
  }
  return {};
}

Refusal change(Option& option, const AnswerWish& c) {
  if (!c.answer) {
    option.wishes.erase(c.key);
    return {};
  }
  if (!c.answer->in && c.answer->reason.empty())
    return refused("wish-reason", "Leaving a point out needs a reason.");
  option.wishes[c.key] = *c.answer;
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetBookSetting& c) {
  if (!c.value.empty()) {
    plan.book_settings[c.book][c.key] = c.value;
    return {};
  }
  const auto book = plan.book_settings.find(c.book);
  if (book == plan.book_settings.end()) return {};
  book->second.erase(c.key);
  if (book->second.empty()) plan.book_settings.erase(book);
  return {};
}

Refusal change(Plan& plan, std::size_t, const ChangeRule& c) {
  const auto same = [&](const RuleChange& r) { return r.book == c.change.book && r.rule == c.change.rule; };
  const auto it = std::find_if(plan.rule_changes.begin(), plan.rule_changes.end(), same);
  const bool there = it != plan.rule_changes.end();
  if (!c.change.off && !c.change.limit) {
    if (there) plan.rule_changes.erase(it);
    return {};
  }
  if (c.change.reason.empty()) return refused("rule-reason", "Changing a rule needs a reason.");
  if (there)
    *it = c.change;
  else
    plan.rule_changes.push_back(c.change);
  return {};
}

}  // namespace elbowroom::edit
