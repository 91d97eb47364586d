// One remedy as a button: what to do, the figure then, what it asks for besides.
#pragma once

#include <QAbstractButton>

#include "core/rules/remedies_text.h"

namespace elbowroom::ui {

class RemedyButton : public QAbstractButton {
  Q_OBJECT
 public:
  RemedyButton(const RemedyText& text, QWidget* parent);

  QSize sizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

 signals:
  void looked(bool at);  // the mouse or the focus is on it, or has left it

 protected:
  void paintEvent(QPaintEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void enterEvent(QEnterEvent*) override;
  void leaveEvent(QEvent*) override;
  void focusInEvent(QFocusEvent*) override;
  void focusOutEvent(QFocusEvent*) override;

 private:
  QString label_, small_, brings_;
};

}  // namespace elbowroom::ui
