#include "ui/advice/advice_list.h"

#include <QKeyEvent>
#include <QScrollBar>
#include <algorithm>

namespace elbowroom::ui {

AdviceList::AdviceList(QWidget* parent) : QListView(parent) {
  setMouseTracking(true);
  setFrameShape(QFrame::NoFrame);
  setSelectionMode(QAbstractItemView::NoSelection);
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  // A bar that comes and goes would rewrap every row in the middle of a drag.
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  setResizeMode(QListView::Adjust);
  setUniformItemSizes(false);
  verticalScrollBar()->setSingleStep(24);
}

void AdviceList::keepInView(const QModelIndex& index) {
  const QPersistentModelIndex row(index);
  QMetaObject::invokeMethod(
      this,
      [this, row] {
        if (!row.isValid() || row != currentIndex()) return;
        const QRect place = visualRect(row);
        const int over = place.bottom() - viewport()->height();
        if (over > 0) verticalScrollBar()->setValue(verticalScrollBar()->value() + std::min(over, place.top()));
      },
      Qt::QueuedConnection);
}

void AdviceList::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
  QListView::currentChanged(current, previous);
  emit chosen(current.isValid() ? current.row() : -1);
}

void AdviceList::mousePressEvent(QMouseEvent* event) {
  const QModelIndex at = indexAt(event->position().toPoint());
  if (event->button() == Qt::LeftButton && at.isValid()) {
    setCurrentIndex(at);
    emit wanted(at.row());
  } else if (event->button() == Qt::LeftButton) {
    setCurrentIndex({});
  }
  event->accept();
}

void AdviceList::mouseMoveEvent(QMouseEvent* event) {
  const QModelIndex at = indexAt(event->position().toPoint());
  emit hovered(at.isValid() ? at.row() : -1);
}

void AdviceList::leaveEvent(QEvent* event) {
  emit hovered(-1);
  QListView::leaveEvent(event);
}

void AdviceList::focusInEvent(QFocusEvent* event) {
  // Tabbing in must not choose a row by itself: QAbstractItemView would.
  const QModelIndex before = currentIndex();
  QListView::focusInEvent(event);
  if (!before.isValid() && currentIndex().isValid()) setCurrentIndex({});
}

void AdviceList::keyPressEvent(QKeyEvent* event) {
  const QModelIndex current = currentIndex();
  const int rows = model() ? model()->rowCount() : 0;
  const auto to = [&](int row) {
    if (row >= 0 && row < rows) {
      setCurrentIndex(model()->index(row, 0));
      scrollTo(currentIndex());
    }
  };
  switch (event->key()) {
    case Qt::Key_Down:
      return to(current.isValid() ? current.row() + 1 : 0);
    case Qt::Key_Up:
      return to(current.isValid() ? current.row() - 1 : rows - 1);
    case Qt::Key_Home:
      return to(0);
    case Qt::Key_End:
      return to(rows - 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
      if (current.isValid()) emit wanted(current.row());
      return;
    case Qt::Key_Left:
    case Qt::Key_Right:
      if (current.isValid()) emit foldWanted(current.row(), event->key() == Qt::Key_Right);
      return;
    case Qt::Key_Escape:
      if (!current.isValid()) return event->ignore();
      setCurrentIndex({});
      return;
    default:
      QListView::keyPressEvent(event);
  }
}

}  // namespace elbowroom::ui
