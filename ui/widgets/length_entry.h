// The small entry field that opens on the canvas to type a figure.
#pragma once

#include <QLineEdit>
#include <functional>

#include "core/base/length_text.h"

namespace elbowroom::ui {

class LengthEntry : public QLineEdit {
  Q_OBJECT
 public:
  explicit LengthEntry(QWidget* parent);
  void open(QPointF middle, const QString& initial, Unit unit, std::function<QString(Length)> take,
            const QString& purpose);

 signals:
  void closed();

 protected:
  void hideEvent(QHideEvent*) override;
  void keyPressEvent(QKeyEvent*) override;
  void focusOutEvent(QFocusEvent*) override;

 private:
  void commit();
  void leave();
  void showWhy(const QString& why);
  std::function<QString(Length)> take_;
  Unit unit_ = Unit::inches;
};

}  // namespace elbowroom::ui
