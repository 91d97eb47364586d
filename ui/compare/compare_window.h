// All options of the plan beside each other: figures, and every shortfall of any of them with what the others say to it.
// Beside the main window, not before it.
#pragma once

#include <QDialog>

#include "core/file/compare.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QTimer;
class QTreeWidget;
class QTreeWidgetItem;

namespace elbowroom::ui {

class Session;

class CompareWindow : public QDialog {
  Q_OBJECT
 public:
  CompareWindow(Session&, QWidget* parent);

 protected:
  void showEvent(QShowEvent*) override;
  void keyPressEvent(QKeyEvent*) override;

 private:
  void refresh();
  void fill();
  void addLines(const QString& title, const std::vector<CompareLine>&);
  // To the option of this column, with the things of the line selected.
  void goTo(QTreeWidgetItem*, int column);
  void copyAsText();

  Session& session_;
  Comparison comparison_;
  QLabel* about_;
  QCheckBox* only_different_;
  QTreeWidget* lines_;
  QPushButton* copy_;
  QTimer* timer_;
};

}  // namespace elbowroom::ui
