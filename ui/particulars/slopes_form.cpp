#include "ui/particulars/slopes_form.h"

#include <QComboBox>
#include <QLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "core/rules/text.h"
#include "ui/look/look.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {

using namespace literals;

SlopesForm::SlopesForm(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), column_(new QVBoxLayout(this)), add_(new QPushButton(tr("Add a slope"), this)) {
  column_->setContentsMargins(0, 0, 0, 0);
  column_->setSpacing(kTightGap);
  column_->addWidget(add_);
  connect(add_, &QPushButton::clicked, this, &SlopesForm::add);
}

void SlopesForm::add() {
  const Layout& layout = session_.layout();
  Ceiling next = session_.option().room.ceiling;
  if (!next.height || layout.walls.empty()) return;
  // Toward the first wall that has none yet, half a room's height down: something to see and to correct.
  ElementId wall = layout.walls.front().id;
  for (const WallFrame& frame : layout.walls)
    if (std::none_of(next.slopes.begin(), next.slopes.end(), [&](const CeilingSlope& s) { return s.wall == frame.id; })) {
      wall = frame.id;
      break;
    }
  const Length step = session_.plan().unit == Unit::inches ? 1_in : 50_mm;
  const Length low = Length::nanometres(next.height->nm() / 3 * 2 / step.nm() * step.nm());
  next.slopes.push_back({wall, low, step * 36});
  performAt(session_, SetCeiling{next}, tr("Add slope of the ceiling"), {}, nullptr);
}

void SlopesForm::addRow() {
  const std::size_t index = rows_.size();
  Row row;
  row.form = new Form(this);
  row.form->layout()->setContentsMargins(0, 0, 0, 0);
  row.wall = row.form->addChoice(tr("Falls toward"), {});
  row.low = row.form->addLength(tr("Height there"));
  row.run = row.form->addLength(tr("Over a run of"));
  row.low->setToolTip(tr("Floor to ceiling at that wall's inside face"));
  row.run->setToolTip(tr("How far from that wall the ceiling has its full height"));
  row.run->setRange(1_in, 1200_in);
  auto* remove = new QPushButton(tr("Remove this slope"), row.form);
  row.form->addWide(remove);
  column_->insertWidget(static_cast<int>(index), row.form);
  row.form->show();
  const auto put = [this, index](auto change, const QString& label, LengthEdit* from) {
    Ceiling next = session_.option().room.ceiling;
    if (index >= next.slopes.size()) return;
    change(next.slopes[index]);
    performAt(session_, SetCeiling{next}, label, {}, from);
  };
  const QString changed = tr("Change slope of the ceiling");
  connect(row.wall, &QComboBox::activated, this, [this, put, changed](int i) {
    const auto& walls = session_.option().room.walls;
    if (i >= 0 && i < static_cast<int>(walls.size()))
      put([&](CeilingSlope& s) { s.wall = walls[static_cast<std::size_t>(i)].id; }, changed, nullptr);
  });
  connect(row.low, &LengthEdit::committed, this,
          [put, changed, edit = row.low](Length l) { put([l](CeilingSlope& s) { s.low = l; }, changed, edit); });
  connect(row.run, &LengthEdit::committed, this,
          [put, changed, edit = row.run](Length l) { put([l](CeilingSlope& s) { s.run = l; }, changed, edit); });
  connect(remove, &QPushButton::clicked, this, [this, index] {
    Ceiling next = session_.option().room.ceiling;
    if (index >= next.slopes.size()) return;
    next.slopes.erase(next.slopes.begin() + static_cast<std::ptrdiff_t>(index));
    session_.perform(SetCeiling{next}, tr("Remove slope of the ceiling"));
  });
  rows_.push_back(row);
}

void SlopesForm::refresh() {
  const Ceiling& ceiling = session_.option().room.ceiling;
  const Unit unit = session_.plan().unit;
  while (rows_.size() < ceiling.slopes.size()) addRow();
  QStringList names;
  for (const Wall& wall : session_.option().room.walls)
    names << QString::fromStdString(subjectName(session_.option(), wall.id));
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    const Row& row = rows_[i];
    row.form->setVisible(i < ceiling.slopes.size());
    if (i >= ceiling.slopes.size()) continue;
    const CeilingSlope& slope = ceiling.slopes[i];
    QStringList present;
    for (int k = 0; k < row.wall->count(); ++k) present << row.wall->itemText(k);
    if (present != names) {
      row.wall->clear();
      row.wall->addItems(names);
    }
    const auto& walls = session_.option().room.walls;
    for (std::size_t k = 0; k < walls.size(); ++k)
      if (walls[k].id == slope.wall) row.wall->setCurrentIndex(static_cast<int>(k));
    row.low->setLength(slope.low, unit);
    row.run->setLength(slope.run, unit);
  }
  const bool can = ceiling.height && !session_.layout().walls.empty();
  add_->setEnabled(can);
  add_->setToolTip(can ? tr("The ceiling falls toward one of the walls") : tr("State the ceiling's height first"));
}

}  // namespace elbowroom::ui
