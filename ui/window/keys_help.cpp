#include "ui/window/keys_help.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QTabWidget>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <utility>
#include <vector>

#include "ui/look/look.h"

namespace elbowroom::ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("KeysHelp", text); }

using Lines = std::vector<std::pair<QString, QString>>;

Lines everywhere() {
  return {{tr("Tab"), tr("goes from thing to thing, Shift+Tab back")},
          {tr("Arrows"), tr("nudge by 1/2 in or 10 mm, with Shift by 1/16 in or 1 mm, with Ctrl by 6 in or 100 mm")},
          {tr("A number"), tr("sets the marked distance, also while dragging; D marks the next one. Any unit is "
                              "understood: 24, 2' 3 1/2\", 600 mm, 60 cm")},
          {tr("Ctrl+X, Ctrl+C, Ctrl+V"), tr("cut, copy, paste, also into another option; Ctrl+D duplicates")},
          {tr("Delete"), tr("takes out what is selected")},
          {tr("Ctrl+Z, Ctrl+Shift+Z"), tr("undo, redo (also Ctrl+Y)")},
          {tr("Esc"), tr("stops, or selects nothing")}};
}

Lines ofThePlan() {
  return {{tr("Drag"), tr("moves a fixture, opening, wall or corner; Shift switches snapping off")},
          {tr("Ctrl+click"), tr("selects more than one; a drag over bare floor selects what it covers")},
          {tr("[ and ]"), tr("turn what stands free, or the clear floor space, by 15 degrees")},
          {tr("Double click"), tr("on a wall adds a corner")},
          {tr("Wheel"), tr("zooms about the pointer; Ctrl+0 shows the whole room")},
          {tr("Middle button, Space"), tr("drag the sheet")},
          {tr("W, H, Z"), tr("draw the walls, other hand of a door, clear zones on and off")},
          {tr("C, F, N"), tr("turning circle, clear floor space, nearest place that fits")}};
}

Lines ofTheStrip() {
  return {{tr("Drag"), tr("moves a thing along its wall and in height, over a corner to the next wall; doors and what "
                          "stands on the floor only along. Shift switches snapping off")},
          {tr("Square handles"), tr("of what is selected change its width and height")},
          {tr("Ctrl+click, Shift+click"), tr("select more than one; a drag over bare wall selects what it covers")},
          {tr("A click on a figure"), tr("sets that distance: above the floor, from a corner, to a neighbour, to the ceiling")},
          {tr("Right click, Menu key"), tr("align, space evenly, wall to wall, counter to ceiling, mirror about a "
                                           "centreline, set to somebody's eyes, into the nearest stud bay, back the wall")},
          {tr("Wheel"), tr("moves along the walls; with Ctrl it zooms")},
          {tr("Middle button"), tr("drags the strip")},
          {tr("Studs … Dimensions"), tr("above the strip show studs, people's heights, backing, zones of wiring, dimensions")},
          {tr("Ctrl+J"), tr("hides and shows the strip")}};
}

QString tableOf(const Lines& lines) {
  QString rows;
  for (const auto& [key, what] : lines)
    rows += QStringLiteral("<tr><td width=\"32%\"><b>%1</b></td><td>%2</td></tr>").arg(key.toHtmlEscaped(), what.toHtmlEscaped());
  return QStringLiteral("<table cellpadding=\"3\" width=\"100%\">%1</table>").arg(rows);
}

QTextBrowser* page(const Lines& own, const QString& name, QWidget* parent) {
  Lines lines = own;
  for (const auto& line : everywhere()) lines.push_back(line);
  auto* text = new QTextBrowser(parent);
  text->setHtml(tableOf(lines));
  text->setAccessibleName(name);
  text->setFrameShape(QFrame::NoFrame);
  return text;
}

}  // namespace

void showKeys(QWidget* window, KeysOf part) {
  auto* dialog = window->findChild<QDialog*>(QStringLiteral("keys-help"));
  if (!dialog) {
    dialog = new QDialog(window);
    dialog->setObjectName(QStringLiteral("keys-help"));
    dialog->setWindowTitle(tr("Keys and mouse"));
    auto* tabs = new QTabWidget(dialog);
    tabs->setDocumentMode(true);
    tabs->setAccessibleName(tr("Keys and mouse"));
    tabs->addTab(page(ofThePlan(), tr("Keys and mouse on the plan"), tabs), tr("Plan"));
    tabs->addTab(page(ofTheStrip(), tr("Keys and mouse on the wall strip"), tabs), tr("Wall strip"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, dialog);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
    auto* column = new QVBoxLayout(dialog);
    column->setContentsMargins(kMargin, kMargin, kMargin, kMargin);
    column->addWidget(tabs);
    column->addWidget(buttons);
    dialog->resize(560, 520);
  }
  dialog->findChild<QTabWidget*>()->setCurrentIndex(part == KeysOf::strip ? 1 : 0);
  dialog->show();
  dialog->raise();
  dialog->activateWindow();
}

}  // namespace elbowroom::ui
