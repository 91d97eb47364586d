// The table of actions: menus, tool bar, shortcuts, and when each can be used.
#pragma once

#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace elbowroom::ui {

class FileFlow;
class MainWindow;
class PlanCanvas;
class Session;

class Actions : public QObject {
  Q_OBJECT
 public:
  Actions(MainWindow&, Session&, PlanCanvas&, FileFlow&);
  void refresh();
  QAction* wallStrip() { return wall_strip_; }
  // Asked before Undo goes to the plan: true when another view has taken back a step of its own.
  void setUndoFirst(std::function<bool()> take) { undo_first_ = std::move(take); }

 private:
  // Reads the settings and the disk: only when a file was opened or saved, never while dragging.
  void refreshRecent();
  QAction* add(QMenu*, const QString& text, const QKeySequence&, const QString& tip, std::function<void()> run);
  void fileMenu();
  void editMenu();
  void roomMenu();
  void fillBooks();
  void viewMenu();
  void helpMenu();
  void toolBar();
  MainWindow& window_;
  Session& session_;
  PlanCanvas& canvas_;
  FileFlow& files_;
  std::function<bool()> undo_first_;
  QMenu *recent_ = nullptr, *books_menu_ = nullptr;
  std::vector<std::pair<std::string, QAction*>> books_;
  QAction* chair_ = nullptr;
  QAction *undo_, *redo_, *remove_, *duplicate_, *cut_, *copy_, *paste_, *turn_left_, *turn_right_, *flip_;
  QAction *draw_room_, *circle_, *floor_space_, *jump_, *inches_, *millimetres_;
  QAction *zones_, *turning_, *wall_strip_, *sheets_, *save_, *fit_, *open_;
};

}  // namespace elbowroom::ui
