// One point of the Wish list: what it is, where it stands, why, and how it is answered.
#pragma once

#include <QWidget>
#include <array>
#include <optional>

#include "core/rules/wishes.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace elbowroom::ui {

class WishRow : public QWidget {
  Q_OBJECT
 public:
  WishRow(const WishPoint& point, QWidget* parent);

  const WishPoint& point() const { return point_; }
  // `answer`: the person's own, nullptr for none. What is being typed stays.
  void setState(const WishState& state, const Wish* answer, const Option& option);
  QString stateText() const;

  enum Button { in, out, undecided, show };
  QPushButton* button(Button which) const { return buttons_[which]; }
  QLineEdit* reasonLine() const { return reason_; }
  QPushButton* leaveOutButton() const { return leave_out_; }
  bool askingReason() const;

 signals:
  void answered(bool in, const QString& reason);
  void takenBack();
  void showWanted();
  void moveWanted(int rows, int button);  // arrow keys: to the same button of another row
  void grown();                           // the field for a reason has come up

 protected:
  bool eventFilter(QObject*, QEvent*) override;
  void changeEvent(QEvent*) override;

 private:
  void askReason(bool open);
  void leaveOut();
  void colour(QPushButton*);
  void press();  // the buttons show the answer, whatever was clicked last

  const WishPoint& point_;
  QLabel *title_, *state_, *why_;
  std::array<QPushButton*, 4> buttons_{};
  QWidget* reason_row_;
  QLineEdit* reason_;
  QPushButton* leave_out_;
  std::optional<bool> answer_;  // in, out; nullopt: none
  QString old_reason_;
  WishStand stand_ = WishStand::undecided;
};

}  // namespace elbowroom::ui
