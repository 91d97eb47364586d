#include "ui/window/actions.h"

#include <QActionGroup>
#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QMenuBar>
#include <QMessageBox>
#include <QToolBar>

#include "core/file/plan_file.h"
#include "core/people/body.h"
#include "core/rules/text.h"
#include "ui/books/book_shelf.h"
#include "ui/canvas/plan_canvas.h"
#include "ui/session/selected.h"
#include "ui/walls/wall_strip.h"
#include "ui/widgets/figures.h"
#include "ui/window/file_flow.h"
#include "ui/window/icons.h"
#include "ui/window/keys_help.h"
#include "ui/window/main_window.h"

namespace elbowroom::ui {

Actions::Actions(MainWindow& window, Session& session, PlanCanvas& canvas, FileFlow& files)
    : QObject(&window), window_(window), session_(session), canvas_(canvas), files_(files) {
  fileMenu();
  editMenu();
  roomMenu();
  viewMenu();
  helpMenu();
  toolBar();
  connect(&session_, &Session::changed, this, &Actions::refresh);
  connect(&session_, &Session::selectionChanged, this, &Actions::refresh);
  connect(&session_, &Session::savedChanged, this, &Actions::refresh);
  connect(&session_, &Session::copiedChanged, this, &Actions::refresh);
  connect(&canvas_, &PlanCanvas::standInMoved, this, &Actions::refresh);
  connect(&canvas_, &PlanCanvas::toolChanged, this, &Actions::refresh);
  connect(&files_, &FileFlow::pathChanged, this, &Actions::refreshRecent);
  refresh();
  refreshRecent();
}

QAction* Actions::add(QMenu* menu, const QString& text, const QKeySequence& keys, const QString& tip,
                      std::function<void()> run) {
  auto* action = menu->addAction(text);
  action->setShortcut(keys);
  QString plain = text;
  plain.remove('&').remove(QChar(0x2026));
  action->setToolTip(keys.isEmpty() ? tip : tr("%1 (%2)").arg(tip, keys.toString(QKeySequence::NativeText)));
  action->setStatusTip(tip);
  connect(action, &QAction::triggered, this, [run = std::move(run)] { run(); });
  return action;
}

void Actions::fileMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&File"));
  add(menu, tr("&New plan"), QKeySequence::New, tr("Start an empty plan"), [this] { files_.newPlan(); });
  open_ = add(menu, tr("&Open…"), QKeySequence::Open, tr("Open a plan file"), [this] { files_.openDialog(); });
  QMenu* examples = menu->addMenu(tr("Open an &example"));
  for (const QFileInfo& file : QDir(":/samples").entryInfoList({"*.elbowroom"}, QDir::Files, QDir::Name)) {
    QFile content(file.absoluteFilePath());
    if (!content.open(QIODevice::ReadOnly)) continue;
    const auto plan = readPlan(content.readAll().toStdString());
    if (!plan) continue;
    const QString name = QString::fromStdString(plan->title).remove(" (invented example)");
    const QString path = file.absoluteFilePath();
    add(examples, name, {}, tr("An invented example"), [this, path] { files_.openExample(path); });
  }
  recent_ = menu->addMenu(tr("Open &recent"));
  menu->addSeparator();
  save_ = add(menu, tr("&Save"), QKeySequence::Save, tr("Save the plan"), [this] { files_.save(); });
  add(menu, tr("Save &as…"), QKeySequence::SaveAs, tr("Save the plan under another name"), [this] { files_.saveAs(); });
  menu->addSeparator();
  sheets_ = add(menu, tr("S&heets…"), QKeySequence::Print, tr("Dimensioned sheets for the contractor: PDF, SVG, print"),
                [this] { window_.openSheets(); });
  menu->addSeparator();
  add(menu, tr("&Quit"), QKeySequence::Quit, tr("Leave the program"), [this] { window_.close(); });
}

void Actions::editMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&Edit"));
  undo_ = add(menu, tr("&Undo"), QKeySequence::Undo, tr("Take the last change back"), [this] {
    if (!undo_first_ || !undo_first_()) canvas_.undo();
  });
  redo_ = add(menu, tr("&Redo"), {}, tr("Do it again"), [this] { session_.redo(); });
  // Which of the two is "the" redo differs between desktops; both work on all.
  redo_->setShortcuts({QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")});
  menu->addSeparator();
  remove_ = add(menu, tr("&Delete"), QKeySequence::Delete, tr("Take what is selected out of this option"),
                [this] { removeSelected(session_); });
  cut_ = add(menu, tr("Cu&t"), QKeySequence::Cut, tr("Copy what is selected and take it out of this option"),
             [this] { cutSelected(session_); });
  copy_ = add(menu, tr("&Copy"), QKeySequence::Copy, tr("Copy what is selected, also for another option"),
              [this] { copySelected(session_); });
  paste_ = add(menu, tr("&Paste"), QKeySequence::Paste,
               tr("Put what was copied into this option; on the selected wall, when one is"),
               [this] { pasteCopied(session_); });
  duplicate_ = add(menu, tr("D&uplicate"), QKeySequence("Ctrl+D"), tr("Another of what is selected"),
                   [this] { duplicateSelected(session_); });
  turn_left_ = add(menu, tr("Turn &left"), QKeySequence("Ctrl+["), tr("Quarter turn counter-clockwise"),
                   [this] { canvas_.selectTool().turnSelected(Angle::fromDegrees(90)); });
  turn_right_ = add(menu, tr("Turn &right"), QKeySequence("Ctrl+]"), tr("Quarter turn clockwise"),
                    [this] { canvas_.selectTool().turnSelected(Angle::fromDegrees(-90)); });
  flip_ = add(menu, tr("Other &hand"), QKeySequence("H"), tr("Hinge or slide the selected door on its other side"),
              [this] { canvas_.selectTool().flipSelected(); });
  menu->addSeparator();
  add(menu, tr("Select &all"), QKeySequence::SelectAll,
      tr("Select every fixture, door and window and everything on the walls and the ceiling"),
      [this] { selectAll(session_); });
}

void Actions::roomMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&Room"));
  draw_room_ = add(menu, tr("&Draw the walls"), QKeySequence("W"), tr("Draw the room wall by wall"),
                   [this] { canvas_.startRoom(); });
  menu->addSeparator();
  circle_ = add(menu, tr("&Turning circle"), QKeySequence("C"), tr("Put a 60 in turning circle on the plan and move it"),
                [this] {
                  const bool on = canvas_.standIn().kind == StandIn::Kind::circle;
                  canvas_.showStandIn(on ? StandIn::Kind::none : StandIn::Kind::circle);
                });
  floor_space_ = add(menu, tr("Clear &floor space"), QKeySequence("F"),
                     tr("Put a 30 x 48 in clear floor space on the plan, move and turn it"), [this] {
                       const bool on = canvas_.standIn().kind == StandIn::Kind::rectangle;
                       canvas_.showStandIn(on ? StandIn::Kind::none : StandIn::Kind::rectangle);
                     });
  jump_ = add(menu, tr("&Nearest place that fits"), QKeySequence("N"), tr("Move the stand-in to where it fits"),
              [this] { canvas_.jumpStandIn(); });
  for (QAction* action : {circle_, floor_space_}) action->setCheckable(true);
  menu->addSeparator();
  books_menu_ = menu->addMenu(tr("&Books checked against"));
  books_menu_->setToolTipsVisible(true);
  fillBooks();
  connect(&window_.shelf(), &BookShelf::changed, this, [this] {
    fillBooks();
    refresh();
  });
  add(menu, tr("Options si&de by side…"), QKeySequence("Ctrl+Shift+O"),
      tr("Figures of all options beside each other, and what is short in any of them"), [this] { window_.openComparison(); });
  add(menu, tr("&People…"), QKeySequence("Ctrl+Shift+P"),
      tr("Who uses the room: names, heights, children by age, wheelchairs"), [this] { window_.openPeople(); });
  chair_ = add(menu, tr("Somebody uses a &wheelchair"), {}, tr("Adds a wheelchair user, 26 x 48 in, to the people of this plan; off, nobody of them uses one"),
               [this] {
                 session_.perform(SetPeople{withChair(session_.plan().people, tr("Wheelchair user").toStdString())},
                                  tr("Choose people"));
               });
  chair_->setCheckable(true);
}

void Actions::fillBooks() {
  books_menu_->clear();
  books_.clear();
  add(books_menu_, tr("&All books and rules…"), QKeySequence("Ctrl+B"), tr("Every rule with its source; settings, limits of your own"),
      [this] { window_.openBooks(); });
  books_menu_->addSeparator();
  for (const Book& book : allBooks()) {
    const std::string id(book.id);
    auto* action = add(books_menu_, words(book.title), {}, words(book.note), [this, id] {
      auto chosen = session_.plan().books;
      if (!std::erase(chosen, id)) chosen.push_back(id);
      session_.perform(SetBooks{chosen}, tr("Choose books"));
    });
    action->setCheckable(true);
    books_.emplace_back(id, action);
  }
}

void Actions::viewMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&View"));
  fit_ = add(menu, tr("Whole &room"), QKeySequence("Ctrl+0"), tr("Show the whole room"), [this] { canvas_.zoomToFit(); });
  add(menu, tr("&Larger"), QKeySequence::ZoomIn, tr("Show it larger"),
      [this] { canvas_.zoomBy(1.25, QPointF(canvas_.rect().center())); });
  add(menu, tr("&Smaller"), QKeySequence::ZoomOut, tr("Show it smaller"),
      [this] { canvas_.zoomBy(0.8, QPointF(canvas_.rect().center())); });
  menu->addSeparator();
  zones_ = add(menu, tr("&Clear zones"), QKeySequence("Z"), tr("Show the clear floor in front of fixtures"),
               [this] { canvas_.setShowsClearZones(zones_->isChecked()); });
  turning_ = add(menu, tr("Largest &turning circle"), QKeySequence("Shift+C"), tr("Show where the largest circle turns"),
                 [this] { canvas_.setShowsTurning(turning_->isChecked()); });
  wall_strip_ = menu->addAction(tr("&Wall strip"));
  wall_strip_->setShortcut(QKeySequence("Ctrl+J"));
  wall_strip_->setToolTip(tr("Show all walls unrolled under the plan"));
  for (QAction* action : {zones_, turning_, wall_strip_}) {
    action->setCheckable(true);
    action->setChecked(true);
  }
  menu->addSeparator();
  auto* group = new QActionGroup(this);
  inches_ = add(menu, tr("Feet and &inches"), QKeySequence(), tr("Show and read lengths in feet and inches"),
                [this] { session_.perform(SetUnit{Unit::inches}, tr("Use feet and inches")); });
  millimetres_ = add(menu, tr("&Millimetres"), QKeySequence(), tr("Show and read lengths in millimetres"),
                     [this] { session_.perform(SetUnit{Unit::millimetres}, tr("Use millimetres")); });
  for (QAction* action : {inches_, millimetres_}) {
    action->setCheckable(true);
    group->addAction(action);
  }
}

void Actions::helpMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&Help"));
  add(menu, tr("&Keys and mouse"), QKeySequence::HelpContents, tr("What the keys and the mouse do"), [this] {
    // Of the view that is being worked in.
    const auto* strip = window_.findChild<WallStrip*>();
    const QWidget* focus = QApplication::focusWidget();
    const bool on_strip = strip && focus && (focus == strip || strip->isAncestorOf(focus));
    showKeys(&window_, on_strip ? KeysOf::strip : KeysOf::plan);
  });
  add(menu, tr("&About and cautions"), {}, tr("What the program does not decide"), [this] {
    QString text = tr("<b>Elbowroom %1</b><br>Checks a bathroom plan while you draw it.").arg(QCoreApplication::applicationVersion());
    for (const std::string& line : cautionLines()) text += "<p>" + QString::fromStdString(line).toHtmlEscaped() + "</p>";
    QMessageBox::about(&window_, tr("About Elbowroom"), text);
  });
}

void Actions::toolBar() {
  auto* bar = window_.addToolBar(tr("Main tool bar"));
  bar->setObjectName("main-tools");
  bar->setMovable(false);
  bar->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  bar->setIconSize({18, 18});
  const auto put = [&](QAction* action, const QString& short_text, Glyph glyph) {
    action->setIconText(short_text);
    action->setIcon(glyphIcon(glyph));
    action->setIconVisibleInMenu(false);
    bar->addAction(action);
  };
  put(open_, tr("Open"), Glyph::open);
  put(save_, tr("Save"), Glyph::save);
  bar->addSeparator();
  put(undo_, tr("Undo"), Glyph::undo);
  put(redo_, tr("Redo"), Glyph::redo);
  bar->addSeparator();
  put(draw_room_, tr("Draw walls"), Glyph::walls);
  put(circle_, tr("Turning circle"), Glyph::circle);
  put(floor_space_, tr("Clear floor"), Glyph::floorSpace);
  bar->addSeparator();
  put(fit_, tr("Whole room"), Glyph::fit);
  auto* gap = new QWidget(bar);
  gap->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  bar->addWidget(gap);
  put(sheets_, tr("Sheets"), Glyph::sheets);
}

void Actions::refresh() {
  const History& history = session_.history();
  undo_->setEnabled(history.canUndo());
  redo_->setEnabled(history.canRedo());
  const auto named = [](const QString& verb, const std::string& label) {
    return label.empty() ? verb : QString("%1: %2").arg(verb, QString::fromStdString(label));
  };
  undo_->setText(named(tr("&Undo"), history.undoLabel()));
  redo_->setText(named(tr("&Redo"), history.redoLabel()));
  undo_->setIconText(tr("Undo"));
  redo_->setIconText(tr("Redo"));
  undo_->setToolTip(named(tr("Undo"), history.undoLabel()) + " (Ctrl+Z)");
  redo_->setToolTip(named(tr("Redo"), history.redoLabel()) + " (Ctrl+Shift+Z)");
  bool fixture = false, door = false, copies = false;
  for (const ElementId& id : session_.selection()) {
    fixture |= findFixture(session_.option(), id) != nullptr;
    copies |= findWallItem(session_.option(), id) || findCeilingItem(session_.option(), id);
    const Opening* opening = findOpening(session_.option(), id);
    copies |= opening != nullptr;
    door |= opening && opening->kind == OpeningKind::door;
  }
  remove_->setEnabled(!session_.selection().empty());
  duplicate_->setEnabled(fixture || copies);
  cut_->setEnabled(fixture || copies);
  copy_->setEnabled(fixture || copies);
  paste_->setEnabled(!session_.copied().empty());
  turn_left_->setEnabled(fixture);
  turn_right_->setEnabled(fixture);
  flip_->setEnabled(door);
  circle_->setChecked(canvas_.standIn().kind == StandIn::Kind::circle);
  floor_space_->setChecked(canvas_.standIn().kind == StandIn::Kind::rectangle);
  const auto& chosen = session_.plan().books;
  for (auto& [id, action] : books_) action->setChecked(std::find(chosen.begin(), chosen.end(), id) != chosen.end());
  const auto& people = session_.plan().people;
  chair_->setChecked(std::any_of(people.begin(), people.end(), [](const Person& p) { return p.chair.has_value(); }));
  const bool has_room = !session_.layout().room.empty();
  for (QAction* action : {circle_, floor_space_, jump_, sheets_}) action->setEnabled(has_room);
  (session_.plan().unit == Unit::inches ? inches_ : millimetres_)->setChecked(true);
}

void Actions::refreshRecent() {
  recent_->clear();
  for (const QString& path : files_.recent())
    recent_->addAction(QFileInfo(path).fileName(), this, [this, path] { files_.openAsking(path); })->setToolTip(path);
  recent_->setEnabled(!recent_->isEmpty());
}

}  // namespace elbowroom::ui
