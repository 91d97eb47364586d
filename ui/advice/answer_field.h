// States what the plan does not say, in the finding that asks for it.
#pragma once

#include <QWidget>

#include "core/base/length_text.h"
#include "ui/advice/asking.h"

class QBoxLayout;

namespace elbowroom::ui {

class AnswerField : public QWidget {
  Q_OBJECT
 public:
  AnswerField(Asking asking, Unit unit, QWidget* parent);
  const Asking& asking() const { return asking_; }

 signals:
  void answered(const elbowroom::FactValue& value);

 private:
  void addYesNo(QBoxLayout*);
  void addLength(QBoxLayout*, Unit);
  void addAmount(QBoxLayout*);
  void addWords(QBoxLayout*);

  Asking asking_;
};

}  // namespace elbowroom::ui
