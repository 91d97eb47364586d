#include <QComboBox>
#include <QPushButton>

#include "core/plan/catalogue.h"
#include "core/rules/text.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

constexpr std::array kActions{DoorAction::hinged,         DoorAction::doubleLeaf, DoorAction::pocket,
                              DoorAction::surfaceSliding, DoorAction::bifold,     DoorAction::cased};

}  // namespace

OpeningPage::OpeningPage(Session& session, QWidget* parent) : Page(session, parent) {
  QStringList actions;
  for (DoorAction action : kActions) actions << words(labelOf(action));
  action_ = addChoice(tr("Action"), actions);
  hinge_ = addChoice(tr("Hinge side"), {tr("Left"), tr("Right")});
  swing_ = addChoice(tr("Swing"), {tr("Into this room"), tr("Away from it")});
  toward_ = addChoice(tr("Slides toward"), {tr("Left"), tr("Right")});
  width_ = addLength(tr("Leaf width"));
  width_->setUsual({stockLeafWidths().begin(), stockLeafWidths().end()});
  window_width_ = addLength(tr("Width"));
  height_ = addLength(tr("Height"));
  sill_ = addLength(tr("Sill above floor"));
  sill_->setMayBeEmpty(tr("not stated"));
  thickness_ = addLength(tr("Leaf thickness"));
  left_ = addLength(tr("From left corner"));
  right_ = addLength(tr("From right corner"));
  left_->setToolTip(tr("Left corner of the wall to the nearer jamb, seen from inside"));
  right_->setToolTip(tr("Right corner of the wall to the nearer jamb, seen from inside"));
  for (LengthEdit* edit : {width_, window_width_, height_}) edit->setRange(6_in, 240_in);
  thickness_->setRange(0.5_in, 4_in);
  const QStringList known{tr("not stated"), tr("Yes"), tr("No")};
  closer_ = addChoice(tr("Closer"), known);
  latch_ = addChoice(tr("Latch"), known);
  closer_->setToolTip(tr("Whether it closes by itself"));
  latch_->setToolTip(tr("Whether it latches when shut"));
  remove_ = new QPushButton(tr("Remove from the plan"), this);
  addWide(remove_);

  connect(action_, &QComboBox::activated, this, [this](int i) {
    put([i](Opening& o) {
      o.action = kActions[static_cast<std::size_t>(i)];
      const bool slides = o.action == DoorAction::pocket || o.action == DoorAction::surfaceSliding;
      if (slides && !o.toward) o.toward = Hand::right;
    });
  });
  const auto hand = [](int i) { return i == 0 ? Hand::left : Hand::right; };
  connect(hinge_, &QComboBox::activated, this,
          [=, this](int i) { put([=](Opening& o) { o.hinge = hand(i); }); });
  connect(toward_, &QComboBox::activated, this,
          [=, this](int i) { put([=](Opening& o) { o.toward = hand(i); }); });
  connect(swing_, &QComboBox::activated, this,
          [this](int i) { put([i](Opening& o) { o.swing = i == 0 ? Swing::in : Swing::out; }); });
  const auto stated = [this](QComboBox* box, std::optional<bool> Opening::*member) {
    connect(box, &QComboBox::activated, this, [this, member](int i) {
      put([=](Opening& o) { o.*member = i == 0 ? std::nullopt : std::optional(i == 1); });
    });
  };
  stated(closer_, &Opening::closer);
  stated(latch_, &Opening::latch);
  for (LengthEdit* edit : {width_, window_width_})
    connect(edit, &LengthEdit::committed, this,
            [this, edit](Length l) { put([l](Opening& o) { o.width = l; }, edit); });
  connect(height_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Opening& o) { o.height = l; }, height_); });
  connect(sill_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Opening& o) { o.sill = l; }, sill_); });
  connect(sill_, &LengthEdit::cleared, this, [this] { put([](Opening& o) { o.sill.reset(); }, sill_); });
  connect(thickness_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Opening& o) { o.leaf_thickness = l; }, thickness_); });
  connect(left_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Opening& o) { o.along = l + openingWidth(o) / 2; }, left_); });
  connect(right_, &LengthEdit::committed, this, [this](Length l) {
    const Opening* o = opening();
    if (!o) return;
    const Length wall = wallLength(session_, o->wall);
    put([=](Opening& next) { next.along = wall - l - openingWidth(next) / 2; }, right_);
  });
  connect(remove_, &QPushButton::clicked, this, [this] {
    session_.perform(RemoveElements{{selectedOne(session_)}}, tr("Remove %1").arg(title()));
  });
}

const Opening* OpeningPage::opening() const { return findOpening(session_.option(), selectedOne(session_)); }

QString OpeningPage::title() const {
  return QString::fromStdString(subjectName(session_.option(), selectedOne(session_)));
}

void OpeningPage::put(const std::function<void(Opening&)>& change, LengthEdit* from) {
  const Opening* present = opening();
  if (!present) return;
  Opening next = *present;
  change(next);
  performAt(session_, PutOpenings{{next}}, tr("Change %1").arg(title()), next.id, from);
  refresh();
}

void OpeningPage::refresh() {
  const Opening* o = opening();
  if (!o) return;
  const Unit unit = session_.plan().unit;
  const bool door = o->kind == OpeningKind::door;
  const bool hinged = door && o->action == DoorAction::hinged;
  const bool folds = door && o->action == DoorAction::bifold;
  const bool swings = hinged || folds || (door && o->action == DoorAction::doubleLeaf);
  const bool slides = door && (o->action == DoorAction::pocket || o->action == DoorAction::surfaceSliding);
  setShown(action_, door);
  setShown(hinge_, hinged || folds);
  setShown(swing_, swings);
  setShown(toward_, slides);
  setShown(width_, door && o->action != DoorAction::cased);
  setShown(window_width_, !door || o->action == DoorAction::cased);
  setShown(sill_, !door);
  setShown(closer_, door && o->action != DoorAction::cased);
  setShown(latch_, door && o->action != DoorAction::cased);
  const auto index = [](const std::optional<bool>& stated) { return !stated ? 0 : *stated ? 1 : 2; };
  closer_->setCurrentIndex(index(o->closer));
  latch_->setCurrentIndex(index(o->latch));
  setShown(thickness_, door && o->action != DoorAction::cased);
  for (std::size_t i = 0; i < kActions.size(); ++i)
    if (kActions[i] == o->action) action_->setCurrentIndex(static_cast<int>(i));
  hinge_->setCurrentIndex(o->hinge == Hand::left ? 0 : 1);
  swing_->setCurrentIndex(o->swing == Swing::in ? 0 : 1);
  toward_->setCurrentIndex(o->toward.value_or(Hand::right) == Hand::left ? 0 : 1);
  width_->setLength(o->width, unit);
  window_width_->setLength(o->width, unit);
  height_->setLength(o->height, unit);
  sill_->setLength(o->sill, unit);
  thickness_->setLength(o->leaf_thickness.value_or(1.375_in), unit);
  left_->setLength(o->along - openingWidth(*o) / 2, unit);
  right_->setLength(wallLength(session_, o->wall) - o->along - openingWidth(*o) / 2, unit);
}

}  // namespace elbowroom::ui
