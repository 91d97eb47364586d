// The books of rules: which are checked, their settings, every rule with its source and what it says of each option.
// Beside the main window, not before it.
#pragma once

#include <QDialog>

#include "ui/books/rule_outcomes.h"

class QFormLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QListWidgetItem;
class QPushButton;
class QTimer;
class QTreeWidget;

namespace elbowroom::ui {

class BookShelf;
class LengthEdit;
class RuleDetails;
class Session;

class BooksWindow : public QDialog {
  Q_OBJECT
 public:
  BooksWindow(Session&, BookShelf&, QWidget* parent);
  // As if the person had chosen the file. False: refused, and the window says why.
  bool addBook(const QString& path);

 protected:
  void showEvent(QShowEvent*) override;

 private:
  void fillBooks();
  void fillSettings();
  void fillRules();
  // Outcomes of the options follow when the person has stopped, never while dragging.
  void refresh();
  void choose(QListWidgetItem*);
  void askForBook();
  void removeChosen();
  std::string chosenBook() const;

  Session& session_;
  BookShelf& shelf_;
  RuleOutcomes outcomes_;
  QListWidget* books_;
  QLabel *about_, *message_, *found_;
  QWidget* settings_;
  QFormLayout* form_;
  LengthEdit* tolerance_;
  QPushButton* remove_;
  QLineEdit* search_;
  QTreeWidget* rules_;
  RuleDetails* details_;
  QTimer* timer_;
  bool filling_ = false;
};

}  // namespace elbowroom::ui
