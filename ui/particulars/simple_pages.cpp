#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "core/rules/text.h"
#include "ui/particulars/north_field.h"
#include "ui/particulars/pages.h"
#include "ui/particulars/slopes_form.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {

using namespace literals;

ElementId selectedOne(const Session& session) {
  return session.selection().size() == 1 ? *session.selection().begin() : ElementId{};
}

Length wallLength(const Session& session, const ElementId& wall) {
  const WallFrame* frame = findWallFrame(session.layout(), wall);
  return frame == nullptr ? Length{} : frame->length;
}

void commitText(QLineEdit* line, std::function<void(const std::string&)> put) {
  QObject::connect(line, &QLineEdit::editingFinished, line, [line, put = std::move(put)] {
    if (!line->isModified()) return;
    line->setModified(false);
    put(line->text().trimmed().toStdString());
  });
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

RoomPage::RoomPage(Session& session, QWidget* parent) : Page(session, parent) {
  name_ = new QLineEdit(this);
  name_->setPlaceholderText(tr("Title of the plan"));
  addField(tr("Title"), name_);
  ceiling_ = addLength(tr("Ceiling height"));
  ceiling_->setMayBeEmpty(tr("not stated"));
  ceiling_->setRange(12_in, 400_in);
  slopes_ = new SlopesForm(session_, this);
  addWide(slopes_);
  north_ = new NorthField(this);
  addField(tr("North"), north_);
  area_ = addFact(tr("Floor area"));
  free_ = addFact(tr("Free floor"));
  commitText(name_, [this](const std::string& title) { session_.perform(SetTitle{title}, tr("Change title")); });
  const auto put = [this](std::optional<Length> height) {
    Ceiling next = session_.option().room.ceiling;
    next.height = height;
    performAt(session_, SetCeiling{next}, tr("Change ceiling height"), {}, ceiling_);
  };
  connect(ceiling_, &LengthEdit::committed, this, put);
  connect(ceiling_, &LengthEdit::cleared, this, [put] { put(std::nullopt); });
  connect(north_, &NorthField::stated, this, [this](const std::optional<Angle>& north, bool merges) {
    if (!merges) session_.endMerge();
    session_.perform(SetNorth{north}, north ? tr("State north") : tr("Leave north open"), "north");
  });
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
  slopes_->refresh();
  north_->setNorth(session_.plan().north);
  const bool drawn = !session_.layout().room.empty();
  area_->setText(drawn ? areaWords(session_.report().figures.room_area, unit) : tr("not drawn yet"));
  free_->setText(drawn ? areaWords(session_.report().figures.free_floor, unit) : QString());
  setShown(free_, drawn);
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
