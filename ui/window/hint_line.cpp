#include "ui/window/hint_line.h"

#include <QPainter>

namespace elbowroom::ui {

HintLine::HintLine(QWidget* parent) : QLabel(parent) {
  setTextFormat(Qt::PlainText);
  setContentsMargins(8, 2, 8, 3);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  setAccessibleName(tr("Hint"));
}

void HintLine::say(const QString& text) {
  setText(text);
  refit();
}

QString HintLine::shown() const {
  return fontMetrics().elidedText(text(), Qt::ElideRight, contentsRect().width());
}

void HintLine::refit() { setToolTip(shown() == text() ? QString() : text()); }

void HintLine::resizeEvent(QResizeEvent* event) {
  QLabel::resizeEvent(event);
  refit();
}

void HintLine::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(palette().color(foregroundRole()));
  painter.drawText(contentsRect(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine, shown());
}

}  // namespace elbowroom::ui
