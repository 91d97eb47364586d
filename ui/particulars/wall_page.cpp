#include <QCheckBox>
#include <QLabel>

#include "core/rules/text.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {

using namespace literals;

WallPage::WallPage(Session& session, QWidget* parent) : Page(session, parent) {
  length_ = addFact(tr("Length"));
  thickness_ = addLength(tr("Thickness"));
  thickness_->setRange(0.5_in, 36_in);
  exterior_ = addMark(tr("Exterior wall"));
  plumbing_ = addMark(tr("Pipes run in this wall"));
  studs_ = addMark(tr("Studs are known"));
  studs_->setToolTip(tr("Where the studs stand: niches, cabinets and backing go by them"));
  first_stud_ = addLength(tr("First stud"));
  first_stud_->setToolTip(tr("Left end of the wall, seen from inside, to the centre of the first stud"));
  spacing_ = addLength(tr("On centre"));
  spacing_->setToolTip(tr("Centre of one stud to the centre of the next"));
  spacing_->setUsual({16_in, 24_in, 400_mm, 600_mm});
  spacing_->setRange(4_in, 60_in);
  connect(thickness_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Wall& w) { w.thickness = l; }, thickness_); });
  connect(exterior_, &QCheckBox::clicked, this, [this](bool on) { put([on](Wall& w) { w.exterior = on; }); });
  connect(plumbing_, &QCheckBox::clicked, this, [this](bool on) { put([on](Wall& w) { w.plumbing = on; }); });
  connect(studs_, &QCheckBox::clicked, this, [this](bool on) {
    // 16 in on centre is the usual frame of a partition; 600 mm where one measures in millimetres.
    const Length spacing = session_.plan().unit == Unit::inches ? 16_in : 600_mm;
    put([=](Wall& w) {
      if (on) w.studs = Studs{spacing, spacing};
      else w.studs.reset();
    });
  });
  connect(first_stud_, &LengthEdit::committed, this, [this](Length l) {
    put([l](Wall& w) { if (w.studs) w.studs->first = l; }, first_stud_);
  });
  connect(spacing_, &LengthEdit::committed, this, [this](Length l) {
    put([l](Wall& w) { if (w.studs) w.studs->spacing = l; }, spacing_);
  });
}

const Wall* WallPage::wall() const { return findWall(session_.option(), selectedOne(session_)); }

QString WallPage::title() const {
  return QString::fromStdString(subjectName(session_.option(), selectedOne(session_)));
}

void WallPage::put(const std::function<void(Wall&)>& change, LengthEdit* from) {
  const Wall* present = wall();
  if (!present) return;
  Wall next = *present;
  change(next);
  performAt(session_, PutWall{next}, tr("Change wall"), next.id, from);
}

void WallPage::refresh() {
  const Wall* w = wall();
  if (!w) return;
  const Unit unit = session_.plan().unit;
  for (const WallFrame& frame : session_.layout().walls)
    if (frame.id == w->id) length_->setText(lengthWords(frame.length, unit));
  thickness_->setLength(w->thickness, unit);
  exterior_->setChecked(w->exterior);
  plumbing_->setChecked(w->plumbing);
  studs_->setChecked(w->studs.has_value());
  setShown(first_stud_, w->studs.has_value());
  setShown(spacing_, w->studs.has_value());
  if (!w->studs) return;
  first_stud_->setLength(w->studs->first, unit);
  spacing_->setLength(w->studs->spacing, unit);
}

}  // namespace elbowroom::ui
