// The line above the plan while a stand-in is out: its size, its verdict, and the way to where it fits.
#pragma once

#include <QFrame>

#include "ui/canvas/plan_canvas.h"

class QLabel;
class QLineEdit;

namespace elbowroom::ui {

class StandInBar : public QFrame {
  Q_OBJECT
 public:
  StandInBar(PlanCanvas&, QWidget* parent);
  void refresh();

 private:
  void takeSize();
  PlanCanvas& canvas_;
  QLineEdit* first_;
  QLabel* by_;
  QLineEdit* second_;
  QLineEdit* turn_;
  QLabel* turn_label_;
  QLabel* verdict_;
};

}  // namespace elbowroom::ui
