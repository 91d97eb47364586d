#include "ui/particulars/door_trials.h"

#include <QCoreApplication>

#include "core/plan/edit.h"
#include "core/rules/tally.h"
#include "core/rules/text.h"

namespace elbowroom::ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("DoorTryout", text); }

bool sameWay(const Opening& a, const Opening& b) {
  if (a.action != b.action) return false;
  switch (a.action) {
    case DoorAction::hinged:
      return a.hinge == b.hinge && a.swing == b.swing;
    case DoorAction::pocket:
    case DoorAction::surfaceSliding:
      return a.toward.value_or(Hand::right) == b.toward.value_or(Hand::right);
    case DoorAction::doubleLeaf:
    case DoorAction::bifold:
    case DoorAction::cased:
      return true;
  }
  return false;
}

}  // namespace

std::vector<DoorTrial> doorWays(const Opening& door) {
  std::vector<DoorTrial> ways;
  const auto add = [&](const QString& label, auto change) {
    DoorTrial trial{door, label, false, true, {}, 0, {}};
    change(trial.door);
    trial.present = sameWay(trial.door, door);
    ways.push_back(std::move(trial));
  };
  const auto hinged = [&](const QString& label, Hand hinge, Swing swing) {
    add(label, [=](Opening& o) { o.action = DoorAction::hinged, o.hinge = hinge, o.swing = swing; });
  };
  const auto slides = [&](const QString& label, DoorAction action, Hand toward) {
    add(label, [=](Opening& o) { o.action = action, o.toward = toward; });
  };
  hinged(tr("Hinged left, in"), Hand::left, Swing::in);
  hinged(tr("Hinged right, in"), Hand::right, Swing::in);
  hinged(tr("Hinged left, out"), Hand::left, Swing::out);
  hinged(tr("Hinged right, out"), Hand::right, Swing::out);
  add(tr("Double"), [](Opening& o) { o.action = DoorAction::doubleLeaf; });
  slides(tr("Pocket, left"), DoorAction::pocket, Hand::left);
  slides(tr("Pocket, right"), DoorAction::pocket, Hand::right);
  slides(tr("Surface sliding, left"), DoorAction::surfaceSliding, Hand::left);
  slides(tr("Surface sliding, right"), DoorAction::surfaceSliding, Hand::right);
  add(tr("Bifold"), [](Opening& o) { o.action = DoorAction::bifold; });
  add(tr("Cased opening"), [](Opening& o) { o.action = DoorAction::cased; });
  return ways;
}

std::vector<DoorTrial> tryDoor(const Plan& plan, std::size_t option, const ElementId& id) {
  const Opening* door = option < plan.options.size() ? findOpening(plan.options[option], id) : nullptr;
  if (!door || door->kind != OpeningKind::door) return {};
  std::vector<DoorTrial> trials = doorWays(*door);
  for (DoorTrial& trial : trials) {
    const Result<Plan> next = apply(plan, {option, PutOpenings{{trial.door}}, "", ""});
    if (!next) {
      trial.possible = false;
      trial.troubles << QString::fromStdString(next.error().message);
      continue;
    }
    const Layout layout = deriveLayout(*next, option);
    const Report report = check(layout, choiceOf(*next));
    trial.shorts = tallyOf(report).allShort();
    for (const DoorFigures& figures : report.figures.doors)
      if (figures.id == id) trial.figures = figures;
    for (const Trouble& trouble : trial.figures.troubles)
      trial.troubles << QString::fromStdString(troubleText(trouble, layout.option, plan.unit));
    if (trial.figures.hits)
      trial.troubles << tr("Opens %1° only, then meets %2.")
                            .arg(static_cast<int>(trial.figures.opens.degrees()))
                            .arg(QString::fromStdString(subjectName(layout.option, *trial.figures.hits)));
  }
  return trials;
}

}  // namespace elbowroom::ui
