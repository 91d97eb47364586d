#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/plan/full_mirror.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/text.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

// Key and label of each choice; the same list is not filled in again, so that an open one stays open.
using Choices = std::vector<std::pair<QString, QString>>;
void fill(QComboBox* box, const Choices& choices, const QString& chosen) {
  bool same = box->count() == static_cast<int>(choices.size());
  for (int i = 0; same && i < box->count(); ++i) {
    const auto& [key, label] = choices[static_cast<std::size_t>(i)];
    same = box->itemData(i).toString() == key && box->itemText(i) == label;
  }
  if (!same) {
    box->clear();
    for (const auto& [key, label] : choices) box->addItem(label, key);
  }
  box->setCurrentIndex(box->findData(chosen));
}

template <typename Kinds>
Choices kindsOf(const Kinds& kinds, const std::string& present) {
  Choices choices;
  bool known = false;
  for (const auto& info : kinds) {
    choices.emplace_back(words(info.key), words(info.label));
    known |= info.key == present;
  }
  const QString own = QString::fromStdString(present);
  if (!known) choices.emplace_back(own, own.isEmpty() ? QObject::tr("not stated") : own);
  return choices;
}

}  // namespace

WallItemPage::WallItemPage(Session& session, QWidget* parent) : Page(session, parent) {
  kind_ = addChoice(tr("Kind"), {});
  name_ = new QLineEdit(this);
  name_->setMaxLength(80);
  addField(tr("Name"), name_);
  status_ = addChoice(tr("Status"), {});
  for (Status status : allStatuses()) status_->addItem(words(labelOf(status)));
  wall_ = addChoice(tr("Wall"), {});
  left_ = addLength(tr("Centre from left"));
  right_ = addLength(tr("Centre from right"));
  left_->setToolTip(tr("Left end of the wall to the centreline, seen from inside"));
  right_->setToolTip(tr("Right end of the wall to the centreline, seen from inside"));
  bottom_ = addLength(tr("Bottom above floor"));
  centre_ = addLength(tr("Centre above floor"));
  width_ = addLength(tr("Width"));
  height_ = addLength(tr("Height"));
  depth_ = addLength(tr("Depth"));
  depth_->setToolTip(tr("Out of the face of the wall; of a niche or recessed cabinet into it"));
  for (LengthEdit* edit : {width_, height_}) edit->setRange(0.25_in, 400_in);
  depth_->setMayBeEmpty(tr("not stated"));
  shower_ = addChoice(tr("Belongs to"), {});
  shower_->setToolTip(tr("The shower or bath it serves"));
  person_ = addChoice(tr("Height set for"), {});
  full_ = new QPushButton(tr("Wall to wall, counter to ceiling"), this);
  full_->setToolTip(tr("The largest mirror between what stands beside it, from the counter or its backsplash up to the ceiling"));
  addWide(full_);
  auto* remove = new QPushButton(tr("Remove from the plan"), this);
  addWide(remove);
  connectPlace();
  connectChoices();
  connect(full_, &QPushButton::clicked, this, [this] {
    const auto full = item() ? fullMirror(session_.layout(), *item()) : std::nullopt;
    if (full) put([&](WallItem& i) { i = *full; });
    else emit session_.refused(tr("There is no room for it: a ceiling height must be stated, and nothing may stand in its middle."));
  });
  connect(remove, &QPushButton::clicked, this, [this] {
    session_.perform(RemoveElements{{selectedOne(session_)}}, tr("Remove %1").arg(title()));
  });
}

void WallItemPage::connectPlace() {
  const auto length = [this](LengthEdit* edit, std::function<void(WallItem&, Length)> set) {
    connect(edit, &LengthEdit::committed, this,
            [this, edit, set](Length l) { put([&](WallItem& i) { set(i, l); }, edit); });
  };
  length(left_, [](WallItem& i, Length l) { i.along = l; });
  length(right_, [this](WallItem& i, Length l) { i.along = wallLength(session_, i.wall) - l; });
  length(bottom_, [](WallItem& i, Length l) { i.bottom = l; });
  length(centre_, [](WallItem& i, Length l) { i.bottom = l - i.height / 2; });
  length(width_, [](WallItem& i, Length l) { i.width = l; });
  length(height_, [](WallItem& i, Length l) { i.height = l; });
  length(depth_, [](WallItem& i, Length l) { i.depth = l; });
  connect(depth_, &LengthEdit::cleared, this, [this] { put([](WallItem& i) { i.depth.reset(); }, depth_); });
}

void WallItemPage::connectChoices() {
  commitText(name_, [this](const std::string& name) { put([&](WallItem& i) { i.name = name; }); });
  const auto chosen = [](QComboBox* box, int i) { return box->itemData(i).toString().toStdString(); };
  connect(kind_, &QComboBox::activated, this,
          [=, this](int k) { put([&](WallItem& i) { i.kind = chosen(kind_, k); }); });
  connect(wall_, &QComboBox::activated, this, [=, this](int k) {
    put([&](WallItem& i) {
      i.wall = {chosen(wall_, k)};
      const Length length = wallLength(session_, i.wall), half = std::min(i.width, length) / 2;
      i.along = std::clamp(i.along, half, length - half);
    });
  });
  connect(shower_, &QComboBox::activated, this,
          [=, this](int k) { put([&](WallItem& i) { i.shower = {chosen(shower_, k)}; }); });
  connect(person_, &QComboBox::activated, this,
          [=, this](int k) { put([&](WallItem& i) { i.person = chosen(person_, k); }); });
  connect(status_, &QComboBox::activated, this,
          [this](int k) { put([k](WallItem& i) { i.status = allStatuses()[static_cast<std::size_t>(k)]; }); });
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
  performAt(session_, PutWallItems{{next}}, tr("Change %1").arg(title().toLower()), next.id, from);
  refresh();
}

void WallItemPage::refresh() {
  const WallItem* i = item();
  if (!i) return;
  const Unit unit = session_.plan().unit;
  const QString name = QString::fromStdString(i->name);
  if (!name_->isModified() && name_->text() != name) name_->setText(name);
  const WallKindInfo* info = findWallKind(i->kind);
  name_->setPlaceholderText(info ? words(info->label) : QString());
  left_->setLength(i->along, unit);
  right_->setLength(wallLength(session_, i->wall) - i->along, unit);
  bottom_->setLength(i->bottom, unit);
  centre_->setLength(i->bottom + i->height / 2, unit);
  width_->setLength(i->width, unit);
  height_->setLength(i->height, unit);
  depth_->setLength(i->depth, unit);
  setShown(shower_, (info && info->of_shower) || !i->shower.empty());
  setShown(person_, !session_.plan().people.empty() || !i->person.empty());
  full_->setVisible(is(*i, WallUse::mirror));
  refreshChoices(*i);
}

void WallItemPage::refreshChoices(const WallItem& i) {
  const Option& option = session_.option();
  const auto named = [&](const ElementId& id) {
    return std::pair(QString::fromStdString(id.text), QString::fromStdString(subjectName(option, id)));
  };
  const auto ensure = [](Choices& choices, const std::string& key) {
    const QString own = QString::fromStdString(key);
    if (std::none_of(choices.begin(), choices.end(), [&](const auto& c) { return c.first == own; }))
      choices.emplace_back(own, own);
  };
  fill(kind_, kindsOf(wallKinds(), i.kind), QString::fromStdString(i.kind));
  Choices walls, showers{{QString(), tr("nothing stated")}}, people{{QString(), tr("nobody in particular")}};
  for (const Wall& wall : option.room.walls) walls.push_back(named(wall.id));
  for (const Fixture& fixture : option.fixtures)
    if (holdsWater(fixture.kind)) showers.push_back(named(fixture.id));
  for (const Person& person : session_.plan().people) {
    const QString name = QString::fromStdString(person.name);
    people.emplace_back(name, name);
  }
  ensure(showers, i.shower.text);
  ensure(people, i.person);
  fill(wall_, walls, QString::fromStdString(i.wall.text));
  fill(shower_, showers, QString::fromStdString(i.shower.text));
  fill(person_, people, QString::fromStdString(i.person));
  for (std::size_t k = 0; k < allStatuses().size(); ++k)
    if (allStatuses()[k] == i.status) status_->setCurrentIndex(static_cast<int>(k));
}

CeilingItemPage::CeilingItemPage(Session& session, QWidget* parent) : Page(session, parent) {
  kind_ = addChoice(tr("Kind"), {});
  name_ = new QLineEdit(this);
  name_->setMaxLength(80);
  addField(tr("Name"), name_);
  x_ = addLength(tr("Centre, x"));
  y_ = addLength(tr("Centre, y"));
  width_ = addLength(tr("Width"));
  depth_ = addLength(tr("Depth"));
  for (LengthEdit* edit : {x_, y_})
    edit->setRange(Length::fromMillimetres(-100'000), Length::fromMillimetres(100'000));
  for (LengthEdit* edit : {width_, depth_}) {
    edit->setRange(0.25_in, 400_in);
    edit->setMayBeEmpty(tr("usual size"));
  }
  auto* remove = new QPushButton(tr("Remove from the plan"), this);
  addWide(remove);
  commitText(name_, [this](const std::string& name) { put([&](CeilingItem& i) { i.name = name; }); });
  connect(kind_, &QComboBox::activated, this, [this](int k) {
    put([&](CeilingItem& i) { i.kind = kind_->itemData(k).toString().toStdString(); });
  });
  connect(x_, &LengthEdit::committed, this, [this](Length l) { put([l](CeilingItem& i) { i.at.x = l; }, x_); });
  connect(y_, &LengthEdit::committed, this, [this](Length l) { put([l](CeilingItem& i) { i.at.y = l; }, y_); });
  const auto optional = [this](LengthEdit* edit, std::optional<Length> CeilingItem::*member) {
    connect(edit, &LengthEdit::committed, this,
            [=, this](Length l) { put([=](CeilingItem& i) { i.*member = l; }, edit); });
    connect(edit, &LengthEdit::cleared, this,
            [=, this] { put([=](CeilingItem& i) { (i.*member).reset(); }, edit); });
  };
  optional(width_, &CeilingItem::width);
  optional(depth_, &CeilingItem::depth);
  connect(remove, &QPushButton::clicked, this, [this] {
    session_.perform(RemoveElements{{selectedOne(session_)}}, tr("Remove %1").arg(title()));
  });
}

const CeilingItem* CeilingItemPage::item() const {
  return findCeilingItem(session_.option(), selectedOne(session_));
}

QString CeilingItemPage::title() const {
  return QString::fromStdString(subjectName(session_.option(), selectedOne(session_)));
}

void CeilingItemPage::put(const std::function<void(CeilingItem&)>& change, LengthEdit* from) {
  const CeilingItem* present = item();
  if (!present) return;
  CeilingItem next = *present;
  change(next);
  performAt(session_, PutCeilingItems{{next}}, tr("Change %1").arg(title().toLower()), next.id, from);
  refresh();
}

void CeilingItemPage::refresh() {
  const CeilingItem* i = item();
  if (!i) return;
  const Unit unit = session_.plan().unit;
  fill(kind_, kindsOf(ceilingKinds(), i->kind), QString::fromStdString(i->kind));
  const QString name = QString::fromStdString(i->name);
  if (!name_->isModified() && name_->text() != name) name_->setText(name);
  x_->setLength(i->at.x, unit);
  y_->setLength(i->at.y, unit);
  width_->setLength(i->width, unit);
  depth_->setLength(i->depth, unit);
}

}  // namespace elbowroom::ui
