#include "core/plan/edit_parts.h"

#include <algorithm>
#include <map>
#include <string>

namespace elbowroom::edit {

Refusal change(Plan& plan, std::size_t, const AddOption& c) {
  Option added;
  if (c.copy_of >= 0) {
    if (static_cast<std::size_t>(c.copy_of) >= plan.options.size())
      return refused("no-such-option", "The option to copy does not exist.");
    added = plan.options[static_cast<std::size_t>(c.copy_of)];
  }
  added.name = c.name;
  plan.options.push_back(std::move(added));
  return {};
}

Refusal change(Plan& plan, std::size_t option, const RemoveOption&) {
  if (option >= plan.options.size()) return refused("no-such-option", "The option to remove does not exist.");
  if (plan.options.size() == 1) return refused("last-option", "The last option of a plan cannot be removed.");
  plan.options.erase(plan.options.begin() + static_cast<std::ptrdiff_t>(option));
  return {};
}

Refusal change(Plan& plan, std::size_t option, const RenameOption& c) {
  if (option >= plan.options.size()) return refused("no-such-option", "The option to rename does not exist.");
  plan.options[option].name = c.name;
  return {};
}

Refusal change(Plan& plan, std::size_t option, const MoveOption& c) {
  if (option >= plan.options.size() || c.to >= plan.options.size())
    return refused("no-such-option", "The option to move does not exist.");
  if (option != c.to && (option == 0 || c.to == 0))
    return refused("first-option", "The first option is the room as found; it stays first.");
  const auto at = [&](std::size_t place) { return plan.options.begin() + static_cast<std::ptrdiff_t>(place); };
  if (option < c.to) std::rotate(at(option), at(option) + 1, at(c.to) + 1);
  if (c.to < option) std::rotate(at(c.to), at(option), at(option) + 1);
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetTitle& c) {
  plan.title = c.title;
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetUnit& c) {
  plan.unit = c.unit;
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetBooks& c) {
  plan.books = c.books;
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetTolerance& c) {
  plan.site_tolerance = c.site_tolerance;
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetPeople& c) {
  std::map<std::string, std::string> renamed = c.renamed;
  for (const Person& was : plan.people) {
    const auto stays = std::any_of(c.people.begin(), c.people.end(), [&](const Person& p) { return p.name == was.name; });
    const auto taken = std::any_of(c.renamed.begin(), c.renamed.end(), [&](const auto& r) {
      return r.second == was.name && r.first != was.name;
    });
    if (!stays || taken) renamed.try_emplace(was.name);
  }
  plan.people = c.people;
  for (Option& option : plan.options)
    for (WallItem& item : option.on_walls)
      if (const auto it = renamed.find(item.person); it != renamed.end()) item.person = it->second;
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetNorth& c) {
  plan.north = c.north;
  return {};
}

}  // namespace elbowroom::edit
