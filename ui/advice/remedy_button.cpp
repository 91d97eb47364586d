#include "ui/advice/remedy_button.h"

#include <QFontMetrics>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "ui/look/look.h"
#include "ui/widgets/figures.h"

namespace elbowroom::ui {
namespace {

constexpr int kPad = 7;

int heightOf(const QFont& font, const QString& text, int width) {
  return text.isEmpty() ? 0 : QFontMetrics(font).boundingRect(0, 0, width, 10'000, Qt::TextWordWrap, text).height();
}

}  // namespace

RemedyButton::RemedyButton(const RemedyText& text, QWidget* parent)
    : QAbstractButton(parent), label_(unbroken(words(text.label))), brings_(unbroken(words(text.brings))) {
  if (!text.worsens.empty()) {
    if (!brings_.isEmpty()) brings_ += QStringLiteral("; ");
    brings_ += unbroken(words(text.worsens));
  }
  QStringList small;
  for (const std::string* part : {&text.then, &text.means})
    if (!part->empty()) small << unbroken(words(*part));
  small_ = small.join(QStringLiteral("; "));
  setText(label_);
  setAccessibleName(label_);
  setAccessibleDescription((small + QStringList{brings_}).join(QStringLiteral(". ")));
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_Hover);
  setCursor(Qt::PointingHandCursor);
  QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

int RemedyButton::heightForWidth(int width) const {
  const int room = std::max(60, width - 2 * kPad - 2);
  const QFont small = smallFont(*this);
  return 2 * kPad + heightOf(font(), label_, room) + heightOf(small, small_, room) + heightOf(small, brings_, room);
}

QSize RemedyButton::sizeHint() const { return {200, heightForWidth(width() > 80 ? width() : 200)}; }

void RemedyButton::paintEvent(QPaintEvent*) {
  const Look& l = lookOf(*this);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const bool at = underMouse() || hasFocus();
  painter.setBrush(isDown() ? l.chosen : at ? l.lit : l.sheet);
  painter.setPen(QPen(at ? l.accent : l.soft, hasFocus() ? 2 : 1));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
  const int room = std::max(60, width() - 2 * kPad - 2);
  int top = kPad;
  const auto say = [&](const QString& text, const QFont& font, const QColor& ink) {
    if (text.isEmpty()) return;
    painter.setFont(font);
    painter.setPen(ink);
    const int height = heightOf(font, text, room);
    painter.drawText(QRect(kPad + 1, top, room, height), Qt::TextWordWrap, text);
    top += height;
  };
  say(label_, font(), l.ink);
  say(small_, smallFont(*this), l.soft);
  say(brings_, smallFont(*this), l.ink);
}

void RemedyButton::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Return || key == Qt::Key_Enter) return click();
  if (key == Qt::Key_Down) return static_cast<void>(focusNextChild());
  if (key == Qt::Key_Up) return static_cast<void>(focusPreviousChild());
  QAbstractButton::keyPressEvent(event);
}

void RemedyButton::enterEvent(QEnterEvent* event) {
  QAbstractButton::enterEvent(event);
  emit looked(true);
}
void RemedyButton::leaveEvent(QEvent* event) {
  QAbstractButton::leaveEvent(event);
  emit looked(false);
}
void RemedyButton::focusInEvent(QFocusEvent* event) {
  QAbstractButton::focusInEvent(event);
  emit looked(true);
}
void RemedyButton::focusOutEvent(QFocusEvent* event) {
  QAbstractButton::focusOutEvent(event);
  emit looked(false);
}

}  // namespace elbowroom::ui
