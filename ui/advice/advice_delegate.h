// Paints the rows of the Advice list: shape mark and number as on the plan, words, and the whole story of the
// row that is chosen.
#pragma once

#include <QHash>
#include <QStyledItemDelegate>
#include <functional>
#include <vector>

namespace elbowroom::ui {

class AdviceModel;

class AdviceDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  AdviceDelegate(const AdviceModel& model, QWidget* view);

  void paint(QPainter*, const QStyleOptionViewItem&, const QModelIndex&) const override;
  QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const override;

  // The row that is told whole, -1 for none; the one lit from the plan, -1 for none.
  void setOpenRow(int row) { open_row_ = row; }
  void setLitRow(int row) { lit_row_ = row; }
  int openRow() const { return open_row_; }
  int litRow() const { return lit_row_; }
  void relayout(const QModelIndex& index) { emit sizeHintChanged(index); }
  // What can be done stands below the open row's words; its height at this width.
  void setBelow(std::function<int(int width)> height) { below_ = std::move(height); }
  void updateEditorGeometry(QWidget*, const QStyleOptionViewItem&, const QModelIndex&) const override;

 private:
  struct Block {
    QString text;
    bool small = false, bold = false, soft = false;
    int left = 0, top = 0, width = 0, height = 0;
  };
  struct Laid {
    std::vector<Block> blocks;
    int height = 0;
  };
  Laid lay(int row, int width) const;
  int heightBelow(int row, int width) const;
  int heightOf(const QString& text, bool small, bool bold, int width) const;

  const AdviceModel& model_;
  QWidget* view_;
  int open_row_ = -1, lit_row_ = -1;
  std::function<int(int width)> below_;
  mutable QHash<QString, int> heights_;  // of wrapped texts, by font, width and text
};

}  // namespace elbowroom::ui
