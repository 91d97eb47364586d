#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>

#include "core/plan/catalogue.h"
#include "core/rules/text.h"
#include "ui/particulars/glass_form.h"
#include "ui/particulars/pages.h"
#include "ui/session/session.h"
#include "ui/widgets/figures.h"
#include "ui/widgets/length_edit.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

bool mayHaveKneeSpace(FixtureKind kind) {
  return kind == FixtureKind::basin || kind == FixtureKind::vanity || kind == FixtureKind::bench;
}

}  // namespace

FixturePage::FixturePage(Session& session, QWidget* parent) : Page(session, parent) {
  name_ = new QLineEdit(this);
  name_->setMaxLength(80);
  addField(tr("Name"), name_);
  QStringList statuses;
  for (Status status : allStatuses()) statuses << words(labelOf(status));
  status_ = addChoice(tr("Status"), statuses);
  width_ = addLength(tr("Width"));
  depth_ = addLength(tr("Depth"));
  height_ = addLength(tr("Height"));
  height_->setMayBeEmpty(tr("not stated"));
  for (LengthEdit* edit : {width_, depth_, height_}) edit->setRange(1_in, 240_in);
  buildPlace();
  buildKind();
  glass_ = new GlassForm(
      [this](const std::function<void(Fixture&)>& change, LengthEdit* from) { put(change, from); }, this);
  addWide(glass_);
  auto* remove = new QPushButton(tr("Remove from the plan"), this);
  addWide(remove);

  commitText(name_, [this](const std::string& name) { put([&](Fixture& f) { f.name = name; }); });
  connect(status_, &QComboBox::activated, this, [this](int i) {
    put([i](Fixture& f) { f.status = allStatuses()[static_cast<std::size_t>(i)]; });
  });
  connect(width_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Fixture& f) { f.width = l; }, width_); });
  connect(depth_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Fixture& f) { f.depth = l; }, depth_); });
  connect(height_, &LengthEdit::committed, this,
          [this](Length l) { put([l](Fixture& f) { f.height = l; }, height_); });
  connect(height_, &LengthEdit::cleared, this,
          [this] { put([](Fixture& f) { f.height.reset(); }, height_); });
  connect(remove, &QPushButton::clicked, this, [this] {
    session_.perform(RemoveElements{{selectedOne(session_)}}, tr("Remove %1").arg(title()));
  });
}

void FixturePage::buildPlace() {
  addHeading(tr("Place"));
  left_ = addLength(tr("Centre from left"));
  right_ = addLength(tr("Centre from right"));
  gap_ = addLength(tr("Gap behind"));
  left_->setToolTip(tr("Left end of the wall to the centreline, seen from inside"));
  right_->setToolTip(tr("Right end of the wall to the centreline, seen from inside"));
  x_ = addLength(tr("Centre, x"));
  y_ = addLength(tr("Centre, y"));
  for (LengthEdit* edit : {x_, y_})
    edit->setRange(Length::fromMillimetres(-100'000), Length::fromMillimetres(100'000));
  turn_ = new QDoubleSpinBox(this);
  turn_->setRange(0, 359.999);
  turn_->setWrapping(true);
  turn_->setDecimals(1);
  turn_->setSingleStep(15);
  turn_->setSuffix(QStringLiteral("°"));
  turn_->setKeyboardTracking(false);
  addField(tr("Turn"), turn_);
  const auto onWall = [this](LengthEdit* edit, std::function<void(OnWall&, Length)> set) {
    connect(edit, &LengthEdit::committed, this, [this, edit, set](Length l) {
      put(
          [&](Fixture& f) {
            if (auto* place = std::get_if<OnWall>(&f.placement)) set(*place, l);
          },
          edit);
    });
  };
  const auto standing = [this](LengthEdit* edit, std::function<void(Standing&, Length)> set) {
    connect(edit, &LengthEdit::committed, this, [this, edit, set](Length l) {
      put(
          [&](Fixture& f) {
            if (auto* place = std::get_if<Standing>(&f.placement)) set(*place, l);
          },
          edit);
    });
  };
  onWall(left_, [](OnWall& p, Length l) { p.along = l; });
  onWall(right_, [this](OnWall& p, Length l) { p.along = wallLength(session_, p.wall) - l; });
  onWall(gap_, [](OnWall& p, Length l) { p.gap = l; });
  standing(x_, [](Standing& p, Length l) { p.at.x = l; });
  standing(y_, [](Standing& p, Length l) { p.at.y = l; });
  connect(turn_, &QDoubleSpinBox::valueChanged, this, [this](double degrees) {
    put([degrees](Fixture& f) {
      if (auto* place = std::get_if<Standing>(&f.placement)) place->turn = Angle::fromDegrees(degrees);
    });
  });
}

void FixturePage::buildKind() {
  basins_ = new QSpinBox(this);
  basins_->setRange(1, 4);
  addField(tr("Basins"), basins_);
  bowl_ = addLength(tr("Bowl width"));
  tank_width_ = addLength(tr("Tank width"));
  tank_depth_ = addLength(tr("Tank depth"));
  curb_ = addLength(tr("Curb height"));
  curb_->setToolTip(tr("0 for a shower without a curb"));
  for (LengthEdit* edit : {bowl_, tank_width_, tank_depth_, curb_}) edit->setMayBeEmpty(tr("not stated"));
  knee_ = addMark(tr("Knee space below"));
  knee_height_ = addLength(tr("Knee height"));
  knee_depth_ = addLength(tr("Knee depth"));
  connect(basins_, &QSpinBox::valueChanged, this, [this](int n) { put([n](Fixture& f) { f.basins = n; }); });
  const auto optional = [this](LengthEdit* edit, std::optional<Length> Fixture::*member) {
    connect(edit, &LengthEdit::committed, this,
            [=, this](Length l) { put([=](Fixture& f) { f.*member = l; }, edit); });
    connect(edit, &LengthEdit::cleared, this,
            [=, this] { put([=](Fixture& f) { (f.*member).reset(); }, edit); });
  };
  optional(bowl_, &Fixture::bowl_width);
  optional(tank_width_, &Fixture::tank_width);
  optional(tank_depth_, &Fixture::tank_depth);
  optional(curb_, &Fixture::curb);
  // What 2010 ADA Standards 306.3 asks for, as a start: 27 in high, 11 in deep there.
  connect(knee_, &QCheckBox::clicked, this, [this](bool on) {
    put([on](Fixture& f) {
      if (on)
        f.knee_space = KneeSpace{27_in, std::min(11_in, f.depth), std::nullopt};
      else
        f.knee_space.reset();
    });
  });
  connect(knee_height_, &LengthEdit::committed, this, [this](Length l) {
    put(
        [l](Fixture& f) {
          if (f.knee_space) f.knee_space->height = l;
        },
        knee_height_);
  });
  connect(knee_depth_, &LengthEdit::committed, this, [this](Length l) {
    put(
        [l](Fixture& f) {
          if (f.knee_space) f.knee_space->depth = l;
        },
        knee_depth_);
  });
}

const Fixture* FixturePage::fixture() const { return findFixture(session_.option(), selectedOne(session_)); }

QString FixturePage::title() const {
  return QString::fromStdString(subjectName(session_.option(), selectedOne(session_)));
}

void FixturePage::put(const std::function<void(Fixture&)>& change, LengthEdit* from) {
  const Fixture* present = fixture();
  if (!present) return;
  Fixture next = *present;
  change(next);
  performAt(session_, PutFixtures{{next}}, tr("Change %1").arg(title()), next.id, from);
  refresh();
}

void FixturePage::refresh() {
  const Fixture* f = fixture();
  if (!f) return;
  const Unit unit = session_.plan().unit;
  name_->setPlaceholderText(words(infoOf(f->kind).label));
  const QString name = QString::fromStdString(f->name);
  if (!name_->isModified() && name_->text() != name) name_->setText(name);
  for (std::size_t i = 0; i < allStatuses().size(); ++i)
    if (allStatuses()[i] == f->status) status_->setCurrentIndex(static_cast<int>(i));
  width_->setLength(f->width, unit);
  depth_->setLength(f->depth, unit);
  height_->setLength(f->height, unit);
  refreshPlace(*f);
  refreshKind(*f);
}

void FixturePage::refreshPlace(const Fixture& f) {
  const Unit unit = session_.plan().unit;
  const auto* on = std::get_if<OnWall>(&f.placement);
  const auto* free = std::get_if<Standing>(&f.placement);
  for (QWidget* each : {left_, right_, gap_}) setShown(each, on != nullptr);
  for (QWidget* each : {static_cast<QWidget*>(x_), static_cast<QWidget*>(y_), static_cast<QWidget*>(turn_)})
    setShown(each, free != nullptr);
  if (on) {
    left_->setLength(on->along, unit);
    right_->setLength(wallLength(session_, on->wall) - on->along, unit);
    gap_->setLength(on->gap, unit);
  }
  if (free) {
    x_->setLength(free->at.x, unit);
    y_->setLength(free->at.y, unit);
    const QSignalBlocker quiet(turn_);
    turn_->setValue(free->turn.normalised().degrees());
  }
}

void FixturePage::refreshKind(const Fixture& f) {
  const Unit unit = session_.plan().unit;
  const bool toilet = f.kind == FixtureKind::toilet, shower = f.kind == FixtureKind::shower;
  const bool basin = f.kind == FixtureKind::basin || f.kind == FixtureKind::vanity;
  for (QWidget* each : {bowl_, tank_width_, tank_depth_}) setShown(each, toilet);
  setShown(curb_, shower);
  glass_->setVisible(shower);
  if (shower) glass_->refresh(f, unit);
  setShown(basins_, basin);
  const bool knees = mayHaveKneeSpace(f.kind) || f.knee_space;
  knee_->setVisible(knees);
  knee_->setChecked(f.knee_space.has_value());
  setShown(knee_height_, f.knee_space.has_value());
  setShown(knee_depth_, f.knee_space.has_value());
  bowl_->setLength(f.bowl_width, unit);
  tank_width_->setLength(f.tank_width, unit);
  tank_depth_->setLength(f.tank_depth, unit);
  curb_->setLength(f.curb, unit);
  {
    const QSignalBlocker quiet(basins_);
    basins_->setValue(f.basins.value_or(1));
  }
  if (f.knee_space) {
    knee_height_->setLength(f.knee_space->height, unit);
    knee_depth_->setLength(f.knee_space->depth, unit);
  }
}

}  // namespace elbowroom::ui
