#include "ui/session/selected.h"

#include <algorithm>

#include "core/rules/text.h"

namespace elbowroom::ui {
namespace {

Copies selectedCopies(Session& session) {
  const std::vector<ElementId> ids(session.selection().begin(), session.selection().end());
  Copies copies = copiesOf(session.layout(), ids);
  if (copies.empty()) emit session.refused(QObject::tr("Select a fixture, an opening or something on a wall or the ceiling first."));
  return copies;
}

void putDownAndSelect(Session& session, const Copies& copies, const ElementId& wall, const QString& label) {
  PutThings put = putDown(copies, session.layout(), wall);
  if (put.size() < copies.fixtures.size() + copies.openings.size() + copies.on_walls.size() + copies.on_ceiling.size())
    emit session.refused(QObject::tr("There is no room on the wall for all of it."));
  if (put.empty()) return;
  std::set<ElementId> chosen;
  const auto choose = [&](const auto& things) {
    for (const auto& thing : things) chosen.insert(thing.id);
  };
  choose(put.fixtures), choose(put.openings), choose(put.on_walls), choose(put.on_ceiling);
  if (session.perform(std::move(put), label)) session.select(chosen);
}

}  // namespace

void copySelected(Session& session) {
  Copies copies = selectedCopies(session);
  if (!copies.empty()) session.setCopied(std::move(copies));
}

void cutSelected(Session& session) {
  Copies copies = selectedCopies(session);
  if (copies.empty()) return;
  // Walls are not copied, so they stay.
  std::vector<ElementId> ids(session.selection().begin(), session.selection().end());
  std::erase_if(ids, [&](const ElementId& id) { return findWall(session.option(), id) != nullptr; });
  const QString what = ids.size() == 1 ? QString::fromStdString(subjectName(session.option(), ids.front())).toLower()
                                       : QObject::tr("%n elements", "", int(ids.size()));
  if (session.perform(RemoveElements{ids}, QObject::tr("Cut %1").arg(what))) session.setCopied(std::move(copies));
}

void pasteCopied(Session& session, const ElementId& wall) {
  ElementId onto = wall;
  if (onto.empty() && session.selection().size() == 1 && findWall(session.option(), *session.selection().begin()))
    onto = *session.selection().begin();
  putDownAndSelect(session, session.copied(), onto, QObject::tr("Paste"));
}

void duplicateSelected(Session& session) {
  putDownAndSelect(session, selectedCopies(session), {}, QObject::tr("Duplicate"));
}

void selectAll(Session& session) {
  std::set<ElementId> all;
  const auto add = [&](const auto& things) {
    for (const auto& thing : things) all.insert(thing.id);
  };
  const Option& option = session.option();
  add(option.fixtures), add(option.openings), add(option.on_walls), add(option.on_ceiling);
  session.select(all);
}

void removeSelected(Session& session) {
  if (session.selection().empty()) return;
  std::vector<ElementId> ids(session.selection().begin(), session.selection().end());
  if (ids.size() == 1 && findWall(session.option(), ids.front())) {
    session.perform(RemoveCorner{ids.front()}, QObject::tr("Remove corner"));
    return;
  }
  std::erase_if(ids, [&](const ElementId& id) { return findWall(session.option(), id) != nullptr; });
  const QString what = ids.size() == 1 ? QString::fromStdString(subjectName(session.option(), ids.front())).toLower()
                                       : QObject::tr("%n elements", "", int(ids.size()));
  if (!ids.empty()) session.perform(RemoveElements{ids}, QObject::tr("Delete %1").arg(what));
}

void selectNext(Session& session, const std::vector<ElementId>& order, bool forward) {
  if (order.empty()) return;
  const auto count = static_cast<int>(order.size());
  int at = forward ? -1 : count;
  if (session.selection().size() == 1) {
    const auto found = std::find(order.begin(), order.end(), *session.selection().begin());
    if (found != order.end()) at = static_cast<int>(found - order.begin());
  }
  session.select({order[static_cast<std::size_t>((at + (forward ? 1 : -1) + count) % count)]});
}

}  // namespace elbowroom::ui
