// Who uses the room: names, heights, children by age, wheelchairs. One step of the history when accepted.
#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "core/plan/plan.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QStackedWidget;

namespace elbowroom::ui {

class Form;
class LengthEdit;
class Session;

class PeopleDialog : public QDialog {
  Q_OBJECT
 public:
  PeopleDialog(Session&, QWidget* parent);

 public slots:
  // Refused, with the field and the reason, while somebody has no name, a name twice or no height.
  void accept() override;

 private:
  struct Draft {
    Person person;
    std::optional<std::string> was;  // the name it came with; nullopt: added here
    bool height_known = true;
  };
  QWidget* buildList();
  QWidget* buildForm();
  void add();
  void removeChosen();
  void showPerson(int row);
  void takeHeight(Length);
  void takeAge(int at);
  void takeChair(bool);
  void relist();
  void showFigures();
  void refuse(std::size_t row, QWidget* field, const QString& why);
  Draft* chosen();

  Session& session_;
  std::vector<Draft> drafts_;
  QListWidget* list_;
  QPushButton* remove_;
  QStackedWidget* pages_;
  Form* form_;
  QLineEdit* name_;
  QCheckBox *child_, *chair_;
  QComboBox* age_;
  LengthEdit *height_, *chair_width_, *chair_length_;
  QLabel *eyes_, *elbows_, *reach_, *counter_, *problem_;
  bool filling_ = false;
};

}  // namespace elbowroom::ui
