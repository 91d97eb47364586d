#include "core/plan/edit_parts.h"

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
  plan.people = c.people;
  if (c.renamed.empty()) return {};
  for (Option& option : plan.options)
    for (WallItem& item : option.on_walls)
      if (const auto it = c.renamed.find(item.person); it != c.renamed.end()) item.person = it->second;
  return {};
}

Refusal change(Plan& plan, std::size_t, const SetNorth& c) {
  plan.north = c.north;
  return {};
}

}  // namespace elbowroom::edit
