// The slopes of the ceiling on the room's page: toward which wall, how low there, over what run.
#pragma once

#include "ui/particulars/form.h"

class QPushButton;
class QVBoxLayout;

namespace elbowroom::ui {

class SlopesForm : public QWidget {
  Q_OBJECT
 public:
  explicit SlopesForm(Session&, QWidget* parent = nullptr);
  void refresh();

 private:
  struct Row {
    Form* form = nullptr;
    QComboBox* wall = nullptr;
    LengthEdit *low = nullptr, *run = nullptr;
  };
  void addRow();
  void add();

  Session& session_;
  QVBoxLayout* column_;
  std::vector<Row> rows_;
  QPushButton* add_;
};

}  // namespace elbowroom::ui
