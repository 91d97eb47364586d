#include "ui/sheets/sheet_view.h"

#include <QPainter>

#include "ui/render/paint.h"

namespace elbowroom::ui {
namespace {
constexpr int kGap = 14;
}

SheetView::SheetView(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setAccessibleName(tr("Preview of the sheets"));
}

void SheetView::setSheets(const std::vector<Sheet>* sheets) {
  sheets_ = sheets;
  setMinimumHeight(heightForWidth(width()));
  update();
}

int SheetView::heightForWidth(int width) const {
  int total = kGap;
  if (sheets_)
    for (const Sheet& sheet : *sheets_)
      total += kGap + static_cast<int>((width - 2 * kGap) * (sheet.paper.height / sheet.paper.width));
  return total;
}

void SheetView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  setMinimumHeight(heightForWidth(width()));
}

void SheetView::paintEvent(QPaintEvent*) {
  if (!sheets_) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  double top = kGap;
  for (const Sheet& sheet : *sheets_) {
    const double width = this->width() - 2 * kGap;
    const double height = width * (sheet.paper.height / sheet.paper.width);
    const QRectF page(kGap, top, width, height);
    painter.fillRect(page.translated(3, 3), QColor(0, 0, 0, 40));
    painter.fillRect(page, Qt::white);
    painter.setPen(QPen(QColor(0, 0, 0, 90), 1));
    painter.drawRect(page);
    ViewMap map;
    map.px_per_inch = width / sheet.paper.width.inches();
    map.origin = page.bottomLeft();
    PaintOptions options;
    options.px_per_mm = map.px_per_inch / 25.4;
    painter.save();
    painter.setClipRect(page);
    paint(painter, sheet.content, map, options);
    painter.restore();
    top += height + kGap;
  }
}

}  // namespace elbowroom::ui
