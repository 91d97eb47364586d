// The line at the foot: what one can do now, or the answer to what one did. What is too long for the window ends in an
// ellipsis and stands whole in the tooltip; text() and the screen reader have it whole.
#pragma once

#include <QLabel>

namespace elbowroom::ui {

class HintLine : public QLabel {
  Q_OBJECT
 public:
  explicit HintLine(QWidget* parent = nullptr);

  void say(const QString& text);
  QString shown() const;  // as it fits

 protected:
  void paintEvent(QPaintEvent*) override;
  void resizeEvent(QResizeEvent*) override;

 private:
  void refit();
};

}  // namespace elbowroom::ui
