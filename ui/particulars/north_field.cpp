#include "ui/particulars/north_field.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QVBoxLayout>
#include <cmath>

#include "ui/look/look.h"

namespace elbowroom::ui {
namespace {
constexpr int kNotStated = 0, kUp = 1, kDirections = 8, kAtAnAngle = kUp + kDirections;
constexpr double kEighth = 45;
}  // namespace

NorthField::NorthField(QWidget* parent) : QWidget(parent) {
  direction_ = new QComboBox(this);
  // Clockwise, as one reads a compass; the plan counts the other way.
  direction_->addItems({tr("not stated"), tr("up"), tr("up and right"), tr("right"), tr("down and right"), tr("down"),
                        tr("down and left"), tr("left"), tr("up and left"), tr("at an angle")});
  direction_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  direction_->setMinimumContentsLength(6);
  direction_->setAccessibleName(tr("North"));
  direction_->setToolTip(tr("Where north is as the plan lies on the screen; an arrow shows it on plan and sheets"));
  angle_ = new QDoubleSpinBox(this);
  angle_->setRange(0, 359.9);
  angle_->setWrapping(true);
  angle_->setDecimals(1);
  angle_->setSingleStep(5);
  angle_->setSuffix(tr("° left of up"));
  angle_->setKeyboardTracking(false);
  angle_->setAccessibleName(tr("North, degrees left of up"));
  angle_->setToolTip(tr("Counter-clockwise from the top of the plan"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kTightGap);
  column->addWidget(direction_);
  column->addWidget(angle_);
  setFocusProxy(direction_);
  angle_->hide();
  connect(direction_, &QComboBox::activated, this, [this](int index) {
    by_angle_ = index == kAtAnAngle;
    if (index == kNotStated) return emit stated(std::nullopt, false);
    if (!by_angle_) return emit stated(Angle::fromDegrees(-kEighth * (index - kUp)).normalised(), false);
    emit stated(Angle::fromDegrees(angle_->value()), false);
    angle_->setFocus(Qt::OtherFocusReason);
    angle_->selectAll();
  });
  connect(angle_, &QDoubleSpinBox::valueChanged, this,
          [this](double degrees) { emit stated(Angle::fromDegrees(degrees), true); });
}

void NorthField::setNorth(const std::optional<Angle>& north) {
  const QSignalBlocker quiet(angle_);
  if (!north) {
    direction_->setCurrentIndex(kNotStated);
    by_angle_ = false;
    return angle_->hide();
  }
  const Angle turn = north->normalised();
  angle_->setValue(turn.degrees());
  const auto eighth = static_cast<std::int64_t>(kEighth) * 1'000'000;
  const bool round = turn.microdegrees() % eighth == 0;
  // Who gives an angle keeps the field, also where it comes past an eighth.
  const bool as_angle = by_angle_ || !round;
  if (!as_angle)
    direction_->setCurrentIndex(kUp + static_cast<int>((kDirections - turn.microdegrees() / eighth) % kDirections));
  else
    direction_->setCurrentIndex(kAtAnAngle);
  angle_->setVisible(as_angle);
}

}  // namespace elbowroom::ui
