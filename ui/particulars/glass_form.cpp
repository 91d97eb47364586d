#include "ui/particulars/glass_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLayout>
#include <algorithm>

#include "core/base/length_text.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

template <typename Panes>
auto* paneOn(Panes& panes, Side side) {
  const auto it = std::find_if(panes.begin(), panes.end(), [side](const Pane& p) { return p.side == side; });
  return it == panes.end() ? nullptr : &*it;
}

}  // namespace

GlassForm::GlassForm(Put put, QWidget* parent)
    : Form(parent), put_(std::move(put)), blocks_{Block{Side::front}, Block{Side::left}, Block{Side::right}, Block{Side::back}} {
  layout()->setContentsMargins(0, 0, 0, 0);
  addHeading(tr("Glass"));
  build(blocks_[0], tr("front"));
  build(blocks_[1], tr("left"));
  build(blocks_[2], tr("right"));
  build(blocks_[3], tr("back"));
}

void GlassForm::build(Block& block, const QString& name) {
  const Side side = block.side;
  block.glass = addMark(tr("Glass at the %1").arg(name));
  block.glass->setToolTip(tr("As seen facing the wall behind the shower"));
  block.height = addLength(tr("Glass height"));
  block.door = addLength(tr("Door in it, width"));
  block.height->line()->setAccessibleName(tr("Height of the glass at the %1").arg(name));
  block.door->line()->setAccessibleName(tr("Door in the glass at the %1, width").arg(name));
  block.height->setMayBeEmpty(tr("not stated"));
  block.door->setMayBeEmpty(tr("fixed glass"));
  for (LengthEdit* edit : {block.height, block.door}) edit->setRange(1_in, 240_in);
  block.swing = addChoice(tr("Opens"), {tr("slides, or not stated"), tr("into the shower"), tr("out of the shower")});
  block.hinge = addChoice(tr("Hinge side"), {tr("not stated"), tr("Left"), tr("Right")});
  connect(block.glass, &QCheckBox::clicked, this, [this, side](bool on) {
    put_(
        [&](Fixture& f) {
          std::erase_if(f.glass, [side](const Pane& p) { return p.side == side; });
          if (!on) return;
          Pane pane;
          pane.side = side;
          f.glass.push_back(std::move(pane));
        },
        nullptr);
  });
  const auto length = [this, side](LengthEdit* edit, std::optional<Length> Pane::*member) {
    connect(edit, &LengthEdit::committed, this,
            [=, this](Length l) { putPane(side, [=](Pane& p) { p.*member = l; }, edit); });
    connect(edit, &LengthEdit::cleared, this,
            [=, this] { putPane(side, [=](Pane& p) { (p.*member).reset(); }, edit); });
  };
  length(block.height, &Pane::height);
  length(block.door, &Pane::door);
  connect(block.swing, &QComboBox::activated, this, [this, side](int i) {
    putPane(
        side,
        [i](Pane& p) {
          if (i == 0) p.door_swing.reset();
          else p.door_swing = i == 1 ? Swing::in : Swing::out;
        },
        nullptr);
  });
  connect(block.hinge, &QComboBox::activated, this, [this, side](int i) {
    putPane(
        side,
        [i](Pane& p) {
          if (i == 0) p.hinge.reset();
          else p.hinge = i == 1 ? Hand::left : Hand::right;
        },
        nullptr);
  });
}

void GlassForm::putPane(Side side, const std::function<void(Pane&)>& change, LengthEdit* from) {
  put_(
      [&](Fixture& f) {
        if (Pane* pane = paneOn(f.glass, side)) change(*pane);
      },
      from);
}

void GlassForm::refresh(const Fixture& f, Unit unit) {
  for (const Block& block : blocks_) {
    const Pane* pane = paneOn(f.glass, block.side);
    block.glass->setChecked(pane != nullptr);
    setShown(block.height, pane);
    setShown(block.door, pane);
    const bool door = pane && pane->door;
    setShown(block.swing, door);
    setShown(block.hinge, door && pane->door_swing);
    if (!pane) continue;
    block.height->setLength(pane->height, unit);
    block.door->setLength(pane->door, unit);
    block.swing->setCurrentIndex(!pane->door_swing ? 0 : *pane->door_swing == Swing::in ? 1 : 2);
    block.hinge->setCurrentIndex(!pane->hinge ? 0 : *pane->hinge == Hand::left ? 1 : 2);
  }
}

}  // namespace elbowroom::ui
