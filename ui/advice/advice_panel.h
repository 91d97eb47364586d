// The Advice column: how many findings of each kind, the largest turning circle, the findings themselves and
// the caution.
#pragma once

#include <QPersistentModelIndex>
#include <QPointer>
#include <QWidget>

class QLabel;

namespace elbowroom::ui {

class AdviceDelegate;
class AdviceList;
class AdviceModel;
class FindingActions;
class Session;

// Refreshed in place at every change of the plan: rows that stay keep their place, the chosen row stays open.
// Hovering or choosing a finding lights it (Session::lightFinding); click or Enter emits
// Session::showFinding.
class AdvicePanel : public QWidget {
  Q_OBJECT
 public:
  explicit AdvicePanel(Session& session, QWidget* parent = nullptr);

  QString summary() const;
  QString turning() const;
  AdviceList* list() const { return list_; }
  AdviceModel* model() const { return model_; }
  FindingActions* actions() const;  // of the open finding; nullptr for none

 private:
  void refresh();
  void showLit();
  void chooseRow(int row);
  void light(int row);
  void go(int row);
  void placeActions();
  void placeActionsSoon();

  Session& session_;
  QLabel *summary_, *turning_, *empty_, *caution_;
  AdviceModel* model_;
  AdviceList* list_;
  AdviceDelegate* delegate_;
  QPersistentModelIndex lit_;
  bool lighting_ = false;  // we light it ourselves
  QPointer<FindingActions> actions_;
  QPersistentModelIndex acted_;  // the row they belong to
  bool placing_ = false;
};

}  // namespace elbowroom::ui
