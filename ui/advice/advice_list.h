// The list view of the Advice column: keys and mouse of its own.
#pragma once

#include <QListView>

namespace elbowroom::ui {

class AdviceList : public QListView {
  Q_OBJECT
 public:
  explicit AdviceList(QWidget* parent = nullptr);

  // Scrolls as far as the row needs once it is laid out, its beginning before its end.
  void keepInView(const QModelIndex& index);

 signals:
  void hovered(int row);  // -1 when the mouse has left
  void chosen(int row);   // the current row moved, or -1 when nothing is chosen any more
  void wanted(int row);   // click or Enter
  void foldWanted(int row, bool open);

 protected:
  void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
};

}  // namespace elbowroom::ui
