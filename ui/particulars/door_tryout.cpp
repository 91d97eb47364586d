#include "ui/particulars/door_tryout.h"

#include <QLabel>
#include <QTimer>
#include <QVBoxLayout>

#include "ui/look/look.h"
#include "ui/particulars/trial_row.h"
#include "ui/session/session.h"

namespace elbowroom::ui {

DoorTryout::DoorTryout(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), column_(new QVBoxLayout(this)), rest_(new QTimer(this)) {
  setAccessibleName(tr("Door try-out"));
  column_->setContentsMargins(0, 0, 0, 0);
  column_->setSpacing(0);
  auto* heading = new QLabel(tr("Door try-out"), this);
  heading->setFont(boldFont(*this));
  heading->setContentsMargins(kMargin, kGap, kMargin, kTightGap);
  column_->addWidget(heading);
  rest_->setSingleShot(true);
  rest_->setInterval(120);
  connect(rest_, &QTimer::timeout, this, &DoorTryout::measureNow);
  connect(&session_, &Session::changed, this, &DoorTryout::planChanged);
  hide();
}

void DoorTryout::setDoor(const ElementId& door) {
  if (door == door_) return;
  door_ = door;
  planChanged();
  setVisible(!door.empty());
}

void DoorTryout::planChanged() {
  rest_->stop();
  measured_ = false;
  const Opening* door = findOpening(session_.option(), door_);
  if (!door) return;
  trials_ = doorWays(*door);
  showRows();
  if (isVisible()) rest_->start();
}

void DoorTryout::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (!measured_ && !door_.empty()) rest_->start();
}

void DoorTryout::measureNow() {
  rest_->stop();
  if (door_.empty()) return;
  trials_ = tryDoor(session_.plan(), session_.optionIndex(), door_);
  measured_ = true;
  showRows();
}

void DoorTryout::showRows() {
  while (rows_.size() < trials_.size()) {
    auto* row = new TrialRow(this);
    const std::size_t index = rows_.size();
    connect(row, &QAbstractButton::clicked, this, [this, index] { choose(index); });
    column_->addWidget(row);
    rows_.push_back(row);
  }
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    rows_[i]->setVisible(i < trials_.size());
    if (i < trials_.size()) rows_[i]->setTrial(trials_[i], session_.plan().unit, measured_);
  }
}

void DoorTryout::choose(std::size_t index) {
  if (index >= trials_.size() || trials_[index].present) return;
  session_.endMerge();
  const DoorTrial wanted = trials_[index];  // performing replaces the list
  session_.perform(PutOpenings{{wanted.door}}, tr("Try door: %1").arg(wanted.label.toLower()));
  session_.endMerge();
}

}  // namespace elbowroom::ui
