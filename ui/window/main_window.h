// Assembles the window: Tray and Particulars at the left, options over the plan, the wall strip under it, Advice
// at the right. No logic of its own.
#pragma once

#include <QMainWindow>

#include "ui/session/session.h"

class QLabel;
class QSplitter;
class QTabWidget;
class QTimer;

namespace elbowroom::ui {

class Actions;
class BookShelf;
class BooksWindow;
class CompareWindow;
class FileFlow;
class HintLine;
class PlanCanvas;
class SheetsDialog;
class StandInBar;
class StartPanel;
class WishPanel;

class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  explicit MainWindow(Plan plan);
  ~MainWindow() override;
  FileFlow& files() { return *files_; }
  Session& session() { return session_; }
  PlanCanvas& canvas() { return *canvas_; }
  void openSheets();
  void openBooks();
  void openPeople();
  void openComparison();
  BookShelf& shelf() { return *shelf_; }
  // Offers the recovered copy inline, when there is one.
  void offerRecovery();

 protected:
  void closeEvent(QCloseEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void resizeEvent(QResizeEvent*) override;
  void showEvent(QShowEvent*) override;
  bool eventFilter(QObject*, QEvent*) override;
  void dragEnterEvent(QDragEnterEvent*) override;
  void dropEvent(QDropEvent*) override;

 private:
  void build();
  void connectAll();
  void placeOverlays();
  void countWishes(int undecided);
  // Goes by Escape, a click on the plan, the next change of the plan or after a while.
  void notice(const QString& text, bool lasting = false);
  // With links to answer by; goes by Escape or the link.
  void ask(const QString& html);
  void tell(const QString& text, bool lasting, bool asks);
  void dismissNotice();
  bool noticeAsks() const;
  void loadBooks();
  void warnOfMissingBooks();
  void retitle();
  void restore();

  Session session_;
  FileFlow* files_ = nullptr;
  PlanCanvas* canvas_ = nullptr;
  Actions* actions_ = nullptr;
  StandInBar* stand_in_bar_ = nullptr;
  StartPanel* start_ = nullptr;
  HintLine* hint_ = nullptr;
  QLabel* notice_ = nullptr;
  QTimer* notice_timer_ = nullptr;
  QSplitter *across_ = nullptr, *left_ = nullptr, *middle_ = nullptr;
  QWidget *tray_ = nullptr, *particulars_ = nullptr, *strip_ = nullptr, *options_ = nullptr;
  QTabWidget* right_ = nullptr;  // Advice, Wish list
  WishPanel* wishes_ = nullptr;
  SheetsDialog* sheets_ = nullptr;
  BookShelf* shelf_ = nullptr;
  BooksWindow* books_ = nullptr;
  CompareWindow* comparison_ = nullptr;
};

}  // namespace elbowroom::ui
