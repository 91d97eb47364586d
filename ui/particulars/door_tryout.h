// The ways a selected door could be hung or slid, side by side with their figures; choosing one applies it.
#pragma once

#include <QWidget>
#include <vector>

#include "ui/particulars/door_trials.h"

class QLabel;
class QTimer;
class QVBoxLayout;

namespace elbowroom::ui {

class Session;
class TrialRow;

// Figures are computed only while the table can be seen, shortly after the plan has come to rest; until then
// the rows say "measuring" rather than show what belonged to an older plan.
class DoorTryout : public QWidget {
  Q_OBJECT
 public:
  explicit DoorTryout(Session& session, QWidget* parent = nullptr);

  void setDoor(const ElementId& door);  // empty: none, and hidden
  const std::vector<TrialRow*>& rows() const { return rows_; }
  bool measured() const { return measured_; }
  void measureNow();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void planChanged();
  void showRows();
  void choose(std::size_t index);

  Session& session_;
  ElementId door_;
  std::vector<DoorTrial> trials_;
  std::vector<TrialRow*> rows_;
  QVBoxLayout* column_;
  QTimer* rest_;
  bool measured_ = false;
};

}  // namespace elbowroom::ui
