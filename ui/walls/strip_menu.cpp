#include "ui/walls/strip_menu.h"

#include <algorithm>

#include "core/plan/arrange_wall_items.h"
#include "core/plan/full_mirror.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/text.h"
#include "ui/session/selected.h"

namespace elbowroom::ui {
namespace {

using Items = std::vector<WallItem>;

// `then`: what is selected when it is done; empty: what was.
void offer(QMenu& menu, Session& session, const QString& text, const QString& tip, Items items,
           const ElementId& then = {}) {
  QAction* action = menu.addAction(text);
  action->setToolTip(tip);
  action->setStatusTip(tip);
  action->setEnabled(!items.empty());
  QObject::connect(action, &QAction::triggered, &session, [&session, text, then, items = std::move(items)] {
    QString label = text;
    if (session.perform(PutWallItems{items}, label.remove(u'&')) && !then.empty()) session.select({then});
  });
}

// The selected mirror as large as its wall allows; with nothing of the walls selected a new one where the
// pointer is.
void offerFullMirror(QMenu& menu, Session& session, const ElementId& one, const StripScene::Spot& spot) {
  const Layout& layout = session.layout();
  const WallItem* selected = findWallItem(layout.option, one);
  WallItem mirror = typicalWallItem("mirror", layout.option);
  if (session.optionIndex() == 0) mirror.status = Status::keep;
  mirror.wall = spot.wall;
  mirror.along = spot.along;
  const bool is_mirror = selected && is(*selected, WallUse::mirror);
  if (is_mirror) mirror = *selected;
  const auto full = selected && !is_mirror ? std::nullopt : fullMirror(layout, mirror);
  offer(menu, session, QObject::tr("Mirror wall to wall and counter to ceiling"),
        QObject::tr("The largest one between what stands beside it, from the counter or its backsplash up to "
                    "the ceiling; "
                    "without a mirror selected, a new one here"),
        full && !(selected && *full == *selected) ? Items{*full} : Items{}, mirror.id);
}

void offerEdits(QMenu& menu, Session& session, const ElementId& wall) {
  const auto add = [&](const QString& text, const QKeySequence& keys, bool can, std::function<void()> run) {
    QAction* action = menu.addAction(text);
    // The window's own actions take the keys; here they are only named.
    action->setText(text + u'\t' + keys.toString(QKeySequence::NativeText));
    action->setEnabled(can);
    QObject::connect(action, &QAction::triggered, &session, std::move(run));
  };
  const auto& chosen = session.selection();
  const bool copies = std::any_of(chosen.begin(), chosen.end(), [&](const ElementId& id) {
    return findFixture(session.option(), id) || findOpening(session.option(), id) ||
           findWallItem(session.option(), id) || findCeilingItem(session.option(), id);
  });
  const bool things = std::any_of(chosen.begin(), chosen.end(),
                                  [&](const ElementId& id) { return !findWall(session.option(), id); });
  add(QObject::tr("Copy"), QKeySequence::Copy, copies, [&session] { copySelected(session); });
  // Fixtures and ceiling items go where they were, not on the wall that is pointed at.
  const PutThings pasted = putDown(session.copied(), session.layout(), wall);
  add(QObject::tr("Paste on this wall"), QKeySequence::Paste, !pasted.on_walls.empty() || !pasted.openings.empty(),
      [&session, wall] { pasteCopied(session, wall); });
  const std::vector<ElementId> ids(chosen.begin(), chosen.end());
  const bool room = copies && !putDown(copiesOf(session.layout(), ids), session.layout()).empty();
  add(QObject::tr("Duplicate"), QKeySequence("Ctrl+D"), room, [&session] { duplicateSelected(session); });
  add(QObject::tr("Delete"), QKeySequence::Delete, things, [&session] { removeSelected(session); });
}

}  // namespace

void fillStripMenu(QMenu& menu, StripContext& context, const StripScene::Spot& spot) {
  const ElementId& wall = spot.wall;
  Session& session = context.session();
  const Layout& layout = session.layout();
  menu.setToolTipsVisible(true);
  std::vector<ElementId> ids;
  for (const ElementId& id : session.selection())
    if (findWallItem(layout.option, id)) ids.push_back(id);
  const std::pair<Arrange, QString> ways[] = {
      {Arrange::lefts, QObject::tr("Align left edges")},   {Arrange::centres, QObject::tr("Align centres")},
      {Arrange::rights, QObject::tr("Align right edges")}, {Arrange::tops, QObject::tr("Align tops")},
      {Arrange::middles, QObject::tr("Align middles")},    {Arrange::bottoms, QObject::tr("Align bottoms")}};
  const QString several = QObject::tr("Of two or more selected things of one wall");
  for (const auto& [how, text] : ways) offer(menu, session, text, several, arranged(layout, ids, how));
  offer(menu, session, QObject::tr("Space evenly"),
        QObject::tr("Equal gaps between three or more; the outer two stay"), spacedEvenly(layout, ids));
  menu.addSeparator();
  const ElementId one = ids.size() == 1 ? ids.front() : ElementId{};
  // A receptacle or a valve has the size it has.
  const WallItem* single = findWallItem(layout.option, one);
  const WallKindInfo* info = single ? findWallKind(single->kind) : nullptr;
  const bool as_wide_as_wanted =
      single && (!info || info->use == WallUse::mirror || info->use == WallUse::shelf ||
                 info->use == WallUse::rail || info->use == WallUse::grabBar || info->use == WallUse::lamp);
  const bool as_high_as_wanted = single && (!info || info->use == WallUse::mirror);
  offer(menu, session, QObject::tr("Wall to wall"), QObject::tr("From corner to corner, or between openings"),
        as_wide_as_wanted ? wallToWall(layout, one) : Items{});
  offer(menu, session, QObject::tr("Counter to ceiling"),
        QObject::tr("From the rim below it up to the ceiling"),
        as_high_as_wanted ? counterToCeiling(layout, one) : Items{});
  offerFullMirror(menu, session, one, spot);
  offer(menu, session, QObject::tr("Move into the nearest stud bay"),
        QObject::tr("By the least way; needs the studs of the wall"), intoBay(layout, one));
  QMenu* mirror = menu.addMenu(QObject::tr("Mirror about"));
  QMenu* eyes = menu.addMenu(QObject::tr("Set to the eyes of"));
  for (QMenu* each : {mirror, eyes}) each->setToolTipsVisible(true);
  const WallItem* first = ids.empty() ? nullptr : findWallItem(layout.option, ids.front());
  if (first) {
    for (const WallFrame& frame : layout.walls)
      if (frame.id == first->wall)
        offer(*mirror, session, QObject::tr("The middle of the wall"), several,
              mirroredAbout(layout, ids, frame.length / 2));
    for (const WallBox& box : wallBoxesOn(layout, first->wall))
      if (!session.selection().contains(box.id))
        offer(*mirror, session, QString::fromStdString(subjectName(layout.option, box.id)),
              QObject::tr("About its centreline"), mirroredAbout(layout, ids, box.middle()));
    for (const HeightLine& line : context.eyes())
      offer(*eyes, session, QString::fromStdString(line.name), QObject::tr("Its middle at that height"),
            atHeight(layout, ids, line));
  }
  for (QMenu* each : {mirror, eyes}) {
    const auto lines = each->actions();
    each->setEnabled(std::any_of(lines.begin(), lines.end(), [](QAction* line) { return line->isEnabled(); }));
  }
  menu.addSeparator();
  offerEdits(menu, session, wall);
  menu.addSeparator();
  const Wall* on = findWall(layout.option, wall);
  QAction* back = menu.addAction(QObject::tr("Back the whole wall"));
  back->setToolTip(QObject::tr("States that plywood lies behind the whole finish of this wall"));
  back->setEnabled(on && !yesNo(on->facts, "backed").value_or(false));
  QObject::connect(back, &QAction::triggered, &session, [&session, wall] {
    session.perform(StateFact{wall, "backed", FactValue(true)}, QObject::tr("Back the whole wall"));
  });
}

}  // namespace elbowroom::ui
