#include "ui/particulars/trial_row.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/look/look.h"
#include "ui/tray/pictures.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

constexpr QSize kPicture(40, 40);
constexpr int kPad = 6, kTextLeft = 12 + 40 + 8;

}  // namespace

TrialRow::TrialRow(QWidget* parent) : QAbstractButton(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_Hover);
  QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void TrialRow::setTrial(const DoorTrial& trial, Unit unit, bool measured) {
  trial_ = trial;
  measured_ = measured;
  if (!measured) {
    figures_ = tr("measuring");
    shorts_.clear();
    troubles_.clear();
  } else if (!trial.possible) {
    figures_ = tr("not possible here");
    shorts_.clear();
    troubles_ = trial.troubles.join(u' ');
  } else {
    const DoorFigures& f = trial.figures;
    figures_ = tr("Clear opening %1").arg(roundedDown(f.clear_opening, unit)) + u'\n';
    if (f.floor_taken > Area{})
      figures_ += tr("Takes %1 (square %2)").arg(areaWords(f.floor_taken, unit), areaWords(f.square, unit));
    else if (f.wall_needed > Length{})
      figures_ += tr("Takes no floor, %1 of wall").arg(lengthWords(f.wall_needed, unit));
    else
      figures_ += tr("Takes no floor here");
    shorts_ = tr("%1 short").arg(trial.shorts);
    troubles_ = unbroken(trial.troubles.join(u' '));
    figures_ = unbroken(figures_);
  }
  setText(trial.label);
  setAccessibleName(trial.present ? tr("%1, as it is now").arg(trial.label) : trial.label);
  setAccessibleDescription(
      QStringList{shorts_, QString(figures_).replace(u'\n', QStringLiteral(", ")), troubles_}.join(
          QStringLiteral(". ")));
  if (picture_.isNull() || pictured_ != trial.door) {
    pictured_ = trial.door;
    picture_ = {};
  }
  updateGeometry();
  update();
}

int TrialRow::textWidth(int width) const { return std::max(80, width - kTextLeft - kMargin); }

int TrialRow::heightForWidth(int width) const {
  const QFontMetrics small(smallFont(*this));
  const int room = textWidth(width);
  int height = 2 * kPad + fontMetrics().height() + 1;
  height += small.boundingRect(0, 0, room, 10'000, Qt::TextWordWrap, figures_).height();
  if (!troubles_.isEmpty())
    height += 2 + small.boundingRect(0, 0, room, 10'000, Qt::TextWordWrap, troubles_).height();
  height = std::max(height, kPicture.height() + 2 * kPad);
  if (!measured_ && height_ > 0) return height_;
  return height_ = height;
}

QSize TrialRow::sizeHint() const { return {260, heightForWidth(width() > 60 ? width() : 260)}; }

void TrialRow::resizeEvent(QResizeEvent* event) {
  QAbstractButton::resizeEvent(event);
  if (event->oldSize().width() != event->size().width()) updateGeometry();
}

void TrialRow::paintEvent(QPaintEvent*) {
  const Look& l = lookOf(*this);
  if (picture_.isNull() || picture_.devicePixelRatioF() != devicePixelRatioF())
    picture_ = openingPicture(pictured_, kPicture, *this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), trial_.present ? l.chosen : underMouse() || isDown() ? l.lit : l.sheet);
  if (trial_.present) painter.fillRect(0, 0, 3, height(), l.accent);
  painter.drawPixmap(kMargin, kPad, picture_);
  const int room = textWidth(width());
  QFont name = font();
  name.setBold(trial_.present);
  painter.setFont(name);
  painter.setPen(l.ink);
  int top = kPad;
  painter.drawText(QRect(kTextLeft, top, room, fontMetrics().height()), Qt::AlignLeft, text());
  painter.setFont(trial_.present ? boldFont(*this) : font());
  painter.drawText(QRect(kTextLeft, top, room, fontMetrics().height()), Qt::AlignRight, shorts_);
  top += fontMetrics().height() + 1;
  painter.setFont(smallFont(*this));
  painter.setPen(l.soft);
  QRect used;
  painter.drawText(QRect(kTextLeft, top, room, height()), Qt::TextWordWrap, figures_, &used);
  if (!troubles_.isEmpty()) {
    painter.setPen(l.ink);
    painter.drawText(QRect(kTextLeft, top + used.height() + 2, room, height()), Qt::TextWordWrap, troubles_);
  }
  painter.setPen(QPen(l.hairline, 1));
  painter.drawLine(QPointF(kTextLeft, height() - 0.5), QPointF(width(), height() - 0.5));
  if (hasFocus()) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(l.accent, 2));
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
  }
}

void TrialRow::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Return || key == Qt::Key_Enter) return click();
  if (key == Qt::Key_Down) return static_cast<void>(focusNextChild());
  if (key == Qt::Key_Up) return static_cast<void>(focusPreviousChild());
  QAbstractButton::keyPressEvent(event);
}

}  // namespace elbowroom::ui
