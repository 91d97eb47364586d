#include "ui/walls/strip_menu.h"

#include "core/plan/arrange_wall_items.h"
#include "core/rules/text.h"

namespace elbowroom::ui {
namespace {

using Items = std::vector<WallItem>;

void offer(QMenu& menu, Session& session, const QString& text, const QString& tip, Items items) {
  QAction* action = menu.addAction(text);
  action->setToolTip(tip);
  action->setStatusTip(tip);
  action->setEnabled(!items.empty());
  QObject::connect(action, &QAction::triggered, &session, [&session, text, items = std::move(items)] {
    QString label = text;
    session.perform(PutWallItems{items}, label.remove(u'&'));
  });
}

}  // namespace

void fillStripMenu(QMenu& menu, StripContext& context, const ElementId& wall) {
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
  offer(menu, session, QObject::tr("Space evenly"), QObject::tr("Equal gaps between three or more; the outer two stay"),
        spacedEvenly(layout, ids));
  menu.addSeparator();
  const ElementId one = ids.size() == 1 ? ids.front() : ElementId{};
  offer(menu, session, QObject::tr("Wall to wall"), QObject::tr("From corner to corner, or between openings"),
        wallToWall(layout, one));
  offer(menu, session, QObject::tr("Counter to ceiling"), QObject::tr("From the rim below it up to the ceiling"),
        counterToCeiling(layout, one));
  offer(menu, session, QObject::tr("Into the nearest stud bay"), QObject::tr("Needs the studs of the wall"),
        intoBay(layout, one));
  QMenu* mirror = menu.addMenu(QObject::tr("Mirror about"));
  QMenu* eyes = menu.addMenu(QObject::tr("Set to the eyes of"));
  for (QMenu* each : {mirror, eyes}) each->setToolTipsVisible(true);
  const WallItem* first = ids.empty() ? nullptr : findWallItem(layout.option, ids.front());
  if (first) {
    for (const WallFrame& frame : layout.walls)
      if (frame.id == first->wall)
        offer(*mirror, session, QObject::tr("The middle of the wall"), several, mirroredAbout(layout, ids, frame.length / 2));
    for (const WallBox& box : wallBoxesOn(layout, first->wall))
      if (!session.selection().contains(box.id))
        offer(*mirror, session, QString::fromStdString(subjectName(layout.option, box.id)),
              QObject::tr("About its centreline"), mirroredAbout(layout, ids, box.middle()));
    for (const HeightLine& line : context.eyes())
      offer(*eyes, session, QString::fromStdString(line.name), QObject::tr("Its middle at that height"),
            atHeight(layout, ids, line));
  }
  mirror->setEnabled(!mirror->isEmpty());
  eyes->setEnabled(!eyes->isEmpty());
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
