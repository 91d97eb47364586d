#include "ui/widgets/length_entry.h"

#include <QKeyEvent>
#include <QToolTip>

namespace elbowroom::ui {

LengthEntry::LengthEntry(QWidget* parent) : QLineEdit(parent) {
  hide();
  setAlignment(Qt::AlignCenter);
}

void LengthEntry::open(QPointF middle, const QString& initial, Unit unit, std::function<QString(Length)> take,
                       const QString& purpose) {
  take_ = std::move(take);
  unit_ = unit;
  setAccessibleName(purpose);
  setToolTip(unit == Unit::inches ? tr("A length such as 62 1/2, 5' 2 1/2\" or 1587 mm")
                                  : tr("A length such as 1587, 158.7 cm or 5' 2 1/2\""));
  setText(initial);
  const int width = std::max(96, fontMetrics().horizontalAdvance(initial) + 40);
  QRect box(0, 0, width, sizeHint().height());
  box.moveCenter(middle.toPoint());
  const QRect within = parentWidget()->rect().adjusted(4, 4, -4, -4);
  if (box.right() > within.right()) box.moveRight(within.right());
  if (box.left() < within.left()) box.moveLeft(within.left());
  if (box.bottom() > within.bottom()) box.moveBottom(within.bottom());
  if (box.top() < within.top()) box.moveTop(within.top());
  setGeometry(box);
  show();
  raise();
  setFocus();
  // A digit that opened the field is the first of the figure; an old figure is there to be replaced.
  if (initial.size() == 1) setCursorPosition(1);
  else selectAll();
}

void LengthEntry::hideEvent(QHideEvent* event) {
  QLineEdit::hideEvent(event);
  emit closed();
}

void LengthEntry::showWhy(const QString& why) {
  setAccessibleDescription(why);
  QToolTip::showText(mapToGlobal(QPoint(0, height())), why, this, {}, 6000);
}

void LengthEntry::commit() {
  const auto length = parseLength(text().toStdString(), unit_);
  if (!length) {
    showWhy(QString::fromStdString(length.error().message));
    return;
  }
  const auto take = take_;
  const QString why = take ? take(*length) : QString();
  if (!why.isEmpty()) {
    showWhy(why);
    return;
  }
  leave();
}

// Hiding a focused field makes Qt look for the next in the tab order, and the plan's tab order is its elements.
void LengthEntry::leave() {
  take_ = nullptr;
  parentWidget()->setFocus();
  hide();
}

void LengthEntry::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return commit();
  if (event->key() == Qt::Key_Escape) {
    return leave();
  }
  QLineEdit::keyPressEvent(event);
}

void LengthEntry::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  if (event->reason() == Qt::PopupFocusReason) return;
  take_ = nullptr;
  hide();
}

}  // namespace elbowroom::ui
