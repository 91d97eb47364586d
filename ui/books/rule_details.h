// One rule of a book in full: limit, source, grade, why, what it says of each option; and what the person may change.
#pragma once

#include <QScrollArea>
#include <string>

#include "ui/books/rule_outcomes.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace elbowroom::ui {

class Session;

class RuleDetails : public QScrollArea {
  Q_OBJECT
 public:
  RuleDetails(Session&, const RuleOutcomes&, QWidget* parent = nullptr);
  // Empty ids: no rule is chosen.
  void show(const std::string& book, const std::string& rule);
  void refresh();

 private:
  const Rule* rule() const { return findRule(book_, rule_); }
  // What is typed belongs to the rule it was typed for.
  void fill();
  void perform(bool off);
  void putBack();
  void enable();

  Session& session_;
  const RuleOutcomes& outcomes_;
  std::string book_, rule_;
  QLabel *title_, *facts_, *options_, *changed_, *unit_, *problem_, *limit_label_;
  QWidget* changes_;
  QLineEdit *limit_, *reason_;
  QPushButton *change_, *off_, *back_;
};

}  // namespace elbowroom::ui
