// What can be done about the finding that is open in Advice: remedies, the missing fact, accepting it.
#pragma once

#include <QPointer>
#include <QWidget>
#include <vector>

#include "core/rules/remedies_text.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTimer;
class QVBoxLayout;

namespace elbowroom::ui {

class AnswerField;
class RemedyButton;
class Session;

// Remedies are searched shortly after the plan has come to rest; until then nothing older is shown.
class FindingActions : public QWidget {
  Q_OBJECT
 public:
  explicit FindingActions(Session& session, QWidget* parent = nullptr);

  // Index into the session's report; again after every change of the plan.
  void setFinding(int finding);
  int heightFor(int width) const;
  // The first thing in it that takes the focus; false when there is none.
  bool focusFirst();

  const std::vector<RemedyButton*>& remedies() const { return buttons_; }
  QString noneText() const;
  AnswerField* answer() const { return answer_; }
  QPushButton* acceptButton() const { return accept_; }
  QPushButton* takeBackButton() const { return take_back_; }
  QLineEdit* reasonLine() const { return reason_; }
  bool searched() const { return searched_; }
  void searchNow();
  // After the list has moved below the pointer: a preview goes unless its remedy is still pointed at or has
  // the focus.
  void keepPreviewOfLooked();

 signals:
  void heightChanged();
  void backWanted();  // Escape: back to the list

 protected:
  void keyPressEvent(QKeyEvent*) override;
  bool eventFilter(QObject*, QEvent*) override;

 private:
  void clearRemedies();
  void showRemedies();
  void showAnswer(const Finding&);
  void showAcceptance(const Finding&);
  void use(std::size_t index);
  void state(const FactValue& value);
  void acceptFinding();
  void takeBack();
  void openReason(bool open);
  const Finding* finding() const;
  void leaveToList();

  Session& session_;
  int finding_ = -1;
  QPointer<RemedyButton> shown_;  // whose change is previewed
  QString fact_;  // which answer the field asks for
  Remedies found_;
  bool searched_ = false;
  QTimer* rest_;
  QVBoxLayout *column_, *remedy_column_;
  QLabel *heading_, *none_;
  std::vector<RemedyButton*> buttons_;
  AnswerField* answer_ = nullptr;
  QPushButton *accept_, *take_back_, *confirm_;
  QWidget* reason_row_;
  QLineEdit* reason_;
};

}  // namespace elbowroom::ui
