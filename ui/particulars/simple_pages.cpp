#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/rules/text.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {

using namespace literals;

ElementId selectedOne(const Session& session) {
  return session.selection().size() == 1 ? *session.selection().begin() : ElementId{};
}

void performAt(Session& session, Change change, const QString& label, const ElementId& on, LengthEdit* from) {
  const bool steps = from && from->stepped();
  const QString key = steps ? label + u'/' + QString::fromStdString(on.text) : QString();
  if (!steps) session.endMerge();
  const std::optional<Length> wanted = from ? from->length() : std::nullopt;
  if (session.perform(std::move(change), label, key) || !from) return;
  // The plan keeps its figure; the field keeps what was typed and says why not.
  from->keepRefused(wanted, session.lastError());
}

WallPage::WallPage(Session& session, QWidget* parent) : Page(session, parent) {
  length_ = addFact(tr("Length"));
  thickness_ = addLength(tr("Thickness"));
  thickness_->setRange(0.5_in, 36_in);
  exterior_ = addMark(tr("Exterior wall"));
  plumbing_ = addMark(tr("Pipes run in this wall"));
  connect(thickness_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Wall& w) { w.thickness = l; }, thickness_); });
  connect(exterior_, &QCheckBox::clicked, this, [this](bool on) { put([on](Wall& w) { w.exterior = on; }); });
  connect(plumbing_, &QCheckBox::clicked, this, [this](bool on) { put([on](Wall& w) { w.plumbing = on; }); });
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
}

RoomPage::RoomPage(Session& session, QWidget* parent) : Page(session, parent) {
  name_ = new QLineEdit(this);
  name_->setPlaceholderText(tr("Title of the plan"));
  addField(tr("Title"), name_);
  ceiling_ = addLength(tr("Ceiling height"));
  ceiling_->setMayBeEmpty(tr("not stated"));
  ceiling_->setRange(12_in, 400_in);
  area_ = addFact(tr("Floor area"));
  free_ = addFact(tr("Free floor"));
  connect(name_, &QLineEdit::editingFinished, this, [this] {
    if (!name_->isModified()) return;
    name_->setModified(false);
    session_.perform(SetTitle{name_->text().trimmed().toStdString()}, tr("Change title"));
  });
  const auto put = [this](std::optional<Length> height) {
    Ceiling next = session_.option().room.ceiling;
    next.height = height;
    performAt(session_, SetCeiling{next}, tr("Change ceiling height"), {}, ceiling_);
  };
  connect(ceiling_, &LengthEdit::committed, this, put);
  connect(ceiling_, &LengthEdit::cleared, this, [put] { put(std::nullopt); });
}

QString RoomPage::title() const { return tr("Room"); }

void RoomPage::refresh() {
  const Unit unit = session_.plan().unit;
  const QString title = QString::fromStdString(session_.plan().title);
  if (!name_->isModified() && name_->text() != title) {
    name_->setText(title);
    name_->setCursorPosition(0);
  }
  ceiling_->setLength(session_.option().room.ceiling.height, unit);
  const bool drawn = !session_.layout().room.empty();
  area_->setText(drawn ? areaWords(session_.report().figures.room_area, unit) : tr("not drawn yet"));
  free_->setText(drawn ? areaWords(session_.report().figures.free_floor, unit) : QString());
  setShown(free_, drawn);
}

WallItemPage::WallItemPage(Session& session, QWidget* parent) : Page(session, parent) {
  along_ = addLength(tr("Centre from left"));
  bottom_ = addLength(tr("Bottom above floor"));
  width_ = addLength(tr("Width"));
  height_ = addLength(tr("Height"));
  width_->setRange(0.25_in, 400_in);
  height_->setRange(0.25_in, 400_in);
  connect(along_, &LengthEdit::committed, this,
          [this](Length l) { put([l](WallItem& i) { i.along = l; }, along_); });
  connect(bottom_, &LengthEdit::committed, this,
          [this](Length l) { put([l](WallItem& i) { i.bottom = l; }, bottom_); });
  connect(width_, &LengthEdit::committed, this,
          [this](Length l) { put([l](WallItem& i) { i.width = l; }, width_); });
  connect(height_, &LengthEdit::committed, this,
          [this](Length l) { put([l](WallItem& i) { i.height = l; }, height_); });
}

const WallItem* WallItemPage::item() const { return findWallItem(session_.option(), selectedOne(session_)); }

QString WallItemPage::title() const {
  return QString::fromStdString(subjectName(session_.option(), selectedOne(session_)));
}

void WallItemPage::put(const std::function<void(WallItem&)>& change, LengthEdit* from) {
  const WallItem* present = item();
  if (!present) return;
  WallItem next = *present;
  change(next);
  performAt(session_, PutWallItems{{next}}, tr("Change %1").arg(title()), next.id, from);
}

void WallItemPage::refresh() {
  const WallItem* i = item();
  if (!i) return;
  const Unit unit = session_.plan().unit;
  along_->setLength(i->along, unit);
  bottom_->setLength(i->bottom, unit);
  width_->setLength(i->width, unit);
  height_->setLength(i->height, unit);
}

SeveralPage::SeveralPage(Session& session, QWidget* parent) : Page(session, parent) {
  names_ = new QLabel(this);
  names_->setWordWrap(true);
  addWide(names_);
  remove_ = new QPushButton(tr("Remove from the plan"), this);
  addWide(remove_);
  connect(remove_, &QPushButton::clicked, this, [this] {
    RemoveElements gone;
    for (const ElementId& id : session_.selection())
      if (!findWall(session_.option(), id)) gone.ids.push_back(id);
    const int count = static_cast<int>(gone.ids.size());
    if (count > 0) session_.perform(std::move(gone), tr("Remove %1 things").arg(count));
  });
}

QString SeveralPage::title() const { return tr("%1 selected").arg(session_.selection().size()); }

void SeveralPage::refresh() {
  QStringList names;
  bool removable = false;
  for (const ElementId& id : session_.selection()) {
    names << QString::fromStdString(subjectName(session_.option(), id));
    removable |= findWall(session_.option(), id) == nullptr;
  }
  names_->setText(names.join(u", "));
  remove_->setEnabled(removable);
}

}  // namespace elbowroom::ui
