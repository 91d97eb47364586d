// A field for a plain figure in a unit that stands beside it ("cfm", "%"). Empty: not stated.
#pragma once

#include <QWidget>
#include <optional>

#include "core/base/amount.h"

class QLineEdit;

namespace elbowroom::ui {

// Enter or leaving the field commits, Escape restores. What is no figure, or negative, stays with an outline and a
// sentence as its tool tip. Up to three decimals; comma and point both read as decimal.
class AmountEdit : public QWidget {
  Q_OBJECT
 public:
  AmountEdit(const QString& name, const QString& unit, QWidget* parent = nullptr);
  void setAmount(std::optional<Amount>);
  std::optional<Amount> amount() const { return amount_; }
  QString problem() const { return problem_; }
  QLineEdit* line() const { return line_; }

 signals:
  void committed(std::optional<Amount> amount);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void commit();
  void restore();
  void setProblem(const QString&);

  QLineEdit* line_;
  std::optional<Amount> amount_;
  QString problem_;
};

QString amountWords(Amount);  // "110", "0.25"

}  // namespace elbowroom::ui
