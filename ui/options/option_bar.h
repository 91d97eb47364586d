// The plan's options as tabs: switch, duplicate, rename in place, remove.
#pragma once

#include <QWidget>

class QLineEdit;
class QTabBar;
class QToolButton;

namespace elbowroom::ui {

class Session;

// "+" duplicates the current option and lets its name be typed in the tab. Double click or F2 renames, Delete
// or the tab's cross removes (undo brings it back); the last option cannot be removed. Alt+Left and Alt+Right move
// the current tab; the first, the room as found, stays first. A right click or the Menu key opens all of it as a
// menu. The tab's tooltip compares.
class OptionBar : public QWidget {
  Q_OBJECT
 public:
  explicit OptionBar(Session& session, QWidget* parent = nullptr);

  QTabBar* tabs() const { return tabs_; }
  QToolButton* addButton() const { return add_; }
  QLineEdit* editor() const { return editor_; }  // hidden unless a name is being typed
  // Shortfalls and largest circle of an option, computed when asked.
  QString figures(int index) const;

 public slots:
  void duplicate();  // the one shown
  void rename(int index);
  void remove(int index);
  void move(int index, int to);
  void openMenu(int index, const QPoint& at);  // `at` on the screen

 signals:
  void said(const QString& text);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void refresh();
  void commitName();
  void endNaming();
  void placeEditor();
  QWidget* newCross();

  Session& session_;
  QTabBar* tabs_;
  QToolButton* add_;
  QLineEdit* editor_;
  int naming_ = -1;
  bool refreshing_ = false;
};

}  // namespace elbowroom::ui
