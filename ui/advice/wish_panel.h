// The Wish list beside Advice: every point with where it stands in this option, answered in place.
#pragma once

#include <QWidget>
#include <vector>

#include "core/rules/wishes.h"

class QLabel;
class QScrollArea;

namespace elbowroom::ui {

class Session;
class WishRow;

// Refreshed in place at every change of the plan. Each answer is one step of the history.
class WishPanel : public QWidget {
  Q_OBJECT
 public:
  explicit WishPanel(Session& session, QWidget* parent = nullptr);

  QString summary() const;
  int undecided() const { return counts_.undecided; }
  WishRow* row(std::string_view key) const;  // nullptr: no such point

 signals:
  void undecidedChanged(int count);
  void showWanted(const std::vector<elbowroom::ElementId>& elements, const elbowroom::Place& place);

 protected:
  void showEvent(QShowEvent*) override;

 private:
  void refresh();
  void refreshRows();
  void answer(std::size_t row, std::optional<Wish> answer, const QString& label);
  void connectRow(std::size_t index);

  Session& session_;
  QLabel *summary_, *empty_;
  QScrollArea* scroll_;
  std::vector<WishRow*> rows_;
  std::vector<WishState> states_;
  WishCounts counts_{0, 0, 0, -1, 0};
};

}  // namespace elbowroom::ui
