#include "ui/advice/advice_delegate.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

#include "core/drawing/marks.h"
#include "ui/advice/advice_model.h"
#include "ui/look/look.h"
#include "ui/render/paint.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

constexpr int kMarkSize = 13;
constexpr int kTextLeft = 46;  // room for the mark and two digits
constexpr int kRowPad = 7;

QString levelWords(Level level) {
  switch (level) {
    case Level::required:
      return AdviceDelegate::tr("required");
    case Level::advised:
      return AdviceDelegate::tr("advised");
    case Level::craft:
      return AdviceDelegate::tr("common practice");
  }
  return {};
}

// The sheet's own mark; clear findings have none there and get a tick here.
void paintMark(QPainter& painter, Outcome outcome, bool quiet, QPointF middle, bool dark, const QColor& soft) {
  if (outcome == Outcome::clear) {
    painter.setPen(QPen(soft, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const QPointF tick[] = {middle + QPointF(-4, 0.5), middle + QPointF(-1.2, 3.5),
                            middle + QPointF(4.2, -3.5)};
    painter.drawPolyline(tick, 3);
    return;
  }
  ViewMap map;
  map.px_per_inch = kMarkSize;
  map.origin = middle;
  DrawStyle style;
  style.mm = Length::fromInches(1.0 / kMarkMm);  // the mark is one inch, hence kMarkSize pixels
  PaintOptions options;
  options.dark = dark;
  paint(painter, drawMark(outcome, {}, style, {}, quiet), map, options);
}

}  // namespace

AdviceDelegate::AdviceDelegate(const AdviceModel& model, QWidget* view)
    : QStyledItemDelegate(view), model_(model), view_(view) {}

int AdviceDelegate::heightOf(const QString& text, bool small, bool bold, int width) const {
  if (text.isEmpty()) return 0;
  QFont font = small ? smallFont(*view_) : view_->font();
  font.setBold(bold);
  const QString key = QString::number(width) + (bold ? u'b' : u'r') + font.key() + text;
  const auto known = heights_.constFind(key);
  if (known != heights_.constEnd()) return *known;
  if (heights_.size() > 600) heights_.clear();
  const int height = QFontMetrics(font).boundingRect(0, 0, width, 10'000, Qt::TextWordWrap, text).height();
  heights_.insert(key, height);
  return height;
}

AdviceDelegate::Laid AdviceDelegate::lay(int row, int width) const {
  Laid laid;
  const FindingText& text = model_.textAt(row);
  const int left = kTextLeft, room = std::max(60, width - kTextLeft - kMargin);
  int top = kRowPad;
  const auto add = [&](QString said, bool small, bool bold, bool soft, int indent, int gap) {
    if (said.isEmpty()) return;
    Block block{unbroken(std::move(said)), small, bold, soft, left + indent, top + gap, room - indent, 0};
    block.height = heightOf(block.text, small, bold, block.width);
    top = block.top + block.height;
    laid.blocks.push_back(std::move(block));
  };
  const bool open = row == open_row_;
  const Finding* finding = model_.findingOf(row);
  const bool is_short = finding != nullptr && finding->outcome == Outcome::shortfall;
  const QString accepted = finding != nullptr ? words(finding->acknowledged) : QString();
  add(words(text.headline), false, open, false, 0, 0);
  const QString by = words(text.by), level = levelWords(model_.levelAt(row));
  if (!open) {
    QStringList second;
    if (!by.isEmpty()) second << by;
    if (!is_short && !text.needed.empty()) second << words(text.needed);
    second << level;
    if (model_.askingAt(row) > 1) second << tr("%1 rules ask this").arg(model_.askingAt(row));
    if (finding != nullptr && finding->changed) second << tr("limit changed by you");
    add(second.join(u" · "), true, false, true, 0, 2);
    if (!accepted.isEmpty()) add(tr("Accepted: %1").arg(accepted), true, false, false, 0, 2);
  } else {
    const int labels =
        QFontMetrics(smallFont(*view_)).horizontalAdvance(tr("Measured") + QStringLiteral("   "));
    const auto pair = [&](const QString& label, const QString& value, int gap, bool bold = false) {
      if (value.isEmpty()) return;
      const int at = top;
      add(label, true, false, true, 0, gap);
      top = at;
      add(value, true, bold, false, labels, gap);
    };
    pair(tr("Measured"), words(text.measured), 5);
    pair(tr("Needed"), words(text.needed), 1);
    pair(tr("Result"), by.isEmpty() ? words(text.outcome) : by, 1, true);
    pair(tr("Accepted"), accepted, 1);
    add(words(text.detail), true, false, false, 0, 5);
    add(words(text.why), true, false, false, 0, 5);
    pair(tr("Source"), words(text.source), 5);
    pair(tr("Checked"), words(text.grade), 1);
    pair(tr("Level"), level, 1);
    if (const Book* book = findBook(model_.bookAt(row))) pair(tr("Book"), words(book->title), 1);
  }
  laid.height = top + kRowPad;
  return laid;
}

QSize AdviceDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const int width = option.rect.width() > 0 ? option.rect.width() : view_->width();
  if (model_.isGroup(index.row())) return {width, QFontMetrics(view_->font()).height() + 14};
  return {width, lay(index.row(), width).height + heightBelow(index.row(), width)};
}

int AdviceDelegate::heightBelow(int row, int width) const {
  if (row != open_row_ || !below_) return 0;
  return below_(std::max(60, width - kTextLeft - kMargin));
}

void AdviceDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                          const QModelIndex& index) const {
  const QRect row = option.rect;
  const int below = heightBelow(index.row(), row.width());
  editor->setGeometry(row.left() + kTextLeft, row.bottom() + 1 - below, row.width() - kTextLeft - kMargin, below);
}

void AdviceDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
  const Look& l = lookOf(*view_);
  const bool dark = isDark(view_->palette());
  const int row = index.row();
  const QRect box = option.rect;
  const bool focused = (option.state & QStyle::State_HasFocus) != 0;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  const AdviceGroup group = model_.groupOf(row);
  if (model_.isGroup(row)) {
    painter->fillRect(box, row == lit_row_ ? l.lit : l.panel);
    painter->setPen(QPen(l.hairline, 1));
    painter->drawLine(QPointF(box.left(), box.bottom() + 0.5), QPointF(box.right() + 1, box.bottom() + 0.5));
    const QPointF m(box.left() + kMargin + 5, box.center().y() + 1);
    painter->setPen(Qt::NoPen);
    painter->setBrush(l.soft);
    const QPolygonF arrow = model_.isOpen(group)
                                ? QPolygonF({m + QPointF(-4, -2), m + QPointF(4, -2), m + QPointF(0, 3)})
                                : QPolygonF({m + QPointF(-2, -4), m + QPointF(3, 0), m + QPointF(-2, 4)});
    painter->drawPolygon(arrow);
    painter->setPen(l.ink);
    painter->setFont(boldFont(*view_));
    painter->drawText(box.adjusted(kTextLeft - 12, 0, -kMargin, 0), Qt::AlignVCenter | Qt::AlignLeft,
                      AdviceModel::titleOf(group));
    painter->setFont(view_->font());
    painter->setPen(l.soft);
    painter->drawText(box.adjusted(0, 0, -kMargin, 0), Qt::AlignVCenter | Qt::AlignRight,
                      QString::number(model_.countOf(group)));
  } else {
    const bool open = row == open_row_;
    painter->fillRect(box, open ? l.chosen : row == lit_row_ ? l.lit : l.sheet);
    if (open || row == lit_row_) painter->fillRect(QRect(box.left(), box.top(), 3, box.height()), l.accent);
    const Laid laid = lay(row, box.width());
    const int first_line = QFontMetrics(view_->font()).height();
    const double middle = box.top() + kRowPad + first_line / 2.0;
    const Finding* finding = model_.findingOf(row);
    paintMark(*painter, finding != nullptr ? finding->outcome : Outcome::clear, group == AdviceGroup::accepted,
              QPointF(box.left() + kMargin + 5, middle), dark, l.soft);
    if (model_.numberAt(row) > 0) {
      painter->setFont(smallFont(*view_));
      painter->setPen(l.ink);
      painter->drawText(QRectF(box.left() + kMargin + 15, middle - 10, kTextLeft - kMargin - 15, 20),
                        Qt::AlignVCenter | Qt::AlignLeft, QString::number(model_.numberAt(row)));
    }
    for (const Block& block : laid.blocks) {
      QFont font = block.small ? smallFont(*view_) : view_->font();
      font.setBold(block.bold);
      painter->setFont(font);
      painter->setPen(block.soft ? l.soft : l.ink);
      painter->drawText(QRect(box.left() + block.left, box.top() + block.top, block.width, block.height),
                        Qt::TextWordWrap, block.text);
    }
    painter->setPen(QPen(l.hairline, 1));
    painter->drawLine(QPointF(box.left() + kTextLeft, box.bottom() + 0.5),
                      QPointF(box.right() + 1, box.bottom() + 0.5));
  }
  if (focused) {
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(l.accent, 1.5));
    painter->drawRect(QRectF(box).adjusted(1, 1, -1, -1.5));
  }
  painter->restore();
}

}  // namespace elbowroom::ui
