#include "ui/window/stand_in_bar.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>
#include <QToolTip>

#include "core/base/length_text.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {

using namespace literals;

StandInBar::StandInBar(PlanCanvas& canvas, QWidget* parent) : QFrame(parent), canvas_(canvas) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(8, 3, 8, 3);
  first_ = new QLineEdit(this);
  second_ = new QLineEdit(this);
  turn_ = new QLineEdit(this);
  by_ = new QLabel(QString(QChar(0x00D7)), this);
  turn_label_ = new QLabel(tr("turned"), this);
  for (QLineEdit* edit : {first_, second_, turn_}) {
    edit->setFixedWidth(edit->fontMetrics().horizontalAdvance("00'-00 00/00\""));
    connect(edit, &QLineEdit::editingFinished, this, &StandInBar::takeSize);
  }
  turn_->setFixedWidth(turn_->fontMetrics().horizontalAdvance("000.00") + 12);
  turn_->setAccessibleName(tr("Turn of the clear floor space in degrees"));
  turn_->setToolTip(tr("Degrees counter-clockwise; [ and ] on the plan turn it by 15"));
  verdict_ = new QLabel(this);
  verdict_->setAccessibleName(tr("Verdict of the stand-in"));
  verdict_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  QFont bold = verdict_->font();
  bold.setBold(true);
  verdict_->setFont(bold);
  auto* jump = new QToolButton(this);
  jump->setText(tr("Nearest place that fits"));
  jump->setToolTip(tr("Moves it to the nearest place where it fits (N)"));
  auto* away = new QToolButton(this);
  away->setText(tr("Put away"));
  away->setToolTip(tr("Takes the stand-in off the plan"));
  row->addWidget(first_);
  row->addWidget(by_);
  row->addWidget(second_);
  row->addWidget(turn_label_);
  row->addWidget(turn_);
  row->addSpacing(6);
  row->addWidget(verdict_, 1);
  row->addWidget(jump);
  row->addWidget(away);
  connect(jump, &QToolButton::clicked, &canvas_, &PlanCanvas::jumpStandIn);
  connect(away, &QToolButton::clicked, &canvas_, [this] { canvas_.showStandIn(StandIn::Kind::none); });
  connect(&canvas_, &PlanCanvas::standInMoved, this, &StandInBar::refresh);
  connect(&canvas_.session(), &Session::changed, this, &StandInBar::refresh);
  refresh();
}

void StandInBar::refresh() {
  const StandIn& stand_in = canvas_.standIn();
  setVisible(stand_in.shown());
  if (!stand_in.shown()) return;
  const bool circle = stand_in.kind == StandIn::Kind::circle;
  const auto put = [&](QLineEdit* edit, Length length) {
    if (!edit->hasFocus()) edit->setText(lengthWords(length, canvas_.unit()));
  };
  put(first_, circle ? stand_in.diameter : stand_in.across);
  put(second_, stand_in.along);
  first_->setAccessibleName(circle ? tr("Diameter") : tr("Width"));
  second_->setAccessibleName(tr("Length"));
  if (!turn_->hasFocus()) turn_->setText(QString::number(stand_in.turn.degrees(), 'f', 1));
  for (QWidget* part : {static_cast<QWidget*>(by_), static_cast<QWidget*>(second_),
                        static_cast<QWidget*>(turn_label_), static_cast<QWidget*>(turn_)})
    part->setVisible(!circle);
  const QString verdict = stand_in.verdict(canvas_.session(), canvas_.unit());
  verdict_->setText(verdict.section(QStringLiteral(": "), 1));
  verdict_->setToolTip(verdict);
}

void StandInBar::takeSize() {
  StandIn& stand_in = canvas_.standIn();
  const bool circle = stand_in.kind == StandIn::Kind::circle;
  const auto take = [&](QLineEdit* edit, Length& into) {
    const auto length = parseLength(edit->text().toStdString(), canvas_.unit());
    if (length && *length >= 1_in && *length <= 400_in) into = *length;
    else if (edit->isVisible())
      QToolTip::showText(edit->mapToGlobal(QPoint(0, edit->height())),
                         length ? tr("Between 1 in and 400 in, please.") : QString::fromStdString(length.error().message),
                         edit);
  };
  take(first_, circle ? stand_in.diameter : stand_in.across);
  if (!circle) {
    take(second_, stand_in.along);
    bool ok = false;
    const double degrees = turn_->text().toDouble(&ok);
    if (ok && std::abs(degrees) < 3600) stand_in.turn = Angle::fromDegrees(degrees).normalised();
  }
  canvas_.standInChanged();
}

}  // namespace elbowroom::ui
