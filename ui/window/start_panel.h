// What an empty plan offers: a rectangular room by two figures, drawing wall by wall, or an example.
#pragma once

#include <QFrame>

#include "ui/session/session.h"

class QLabel;
class QLineEdit;

namespace elbowroom::ui {

class StartPanel : public QFrame {
  Q_OBJECT
 public:
  explicit StartPanel(Session&, QWidget* parent);

 signals:
  void drawWanted();
  void exampleWanted();

 private:
  void makeRoom();
  void refresh();
  // nullopt: said why, and the field is ready for another figure.
  std::optional<Length> sideIn(QLineEdit*);
  void say(const QString& why);
  Session& session_;
  QLineEdit* across_;
  QLineEdit* deep_;
  QLabel* why_;
};

}  // namespace elbowroom::ui
