// One way of hanging a door, as a button: picture, name, figures, troubles.
#pragma once

#include <QAbstractButton>
#include <QPixmap>

#include "ui/particulars/door_trials.h"

namespace elbowroom::ui {

class TrialRow : public QAbstractButton {
  Q_OBJECT
 public:
  explicit TrialRow(QWidget* parent = nullptr);

  void setTrial(const DoorTrial& trial, Unit unit, bool measured);
  const DoorTrial& trial() const { return trial_; }
  QString figuresText() const { return figures_; }
  QString shortsText() const { return shorts_; }
  QSize sizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent*) override;
  void keyPressEvent(QKeyEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  int textWidth(int width) const;

  DoorTrial trial_;
  QString figures_, shorts_, troubles_;
  QPixmap picture_;
  Opening pictured_;
  bool measured_ = true;
  mutable int height_ = 0;  // while measuring, the row keeps the height it had
};

}  // namespace elbowroom::ui
