#include "ui/look/look.h"

#include <QApplication>
#include <QPainter>
#include <QProxyStyle>
#include <QStyleOption>
#include <QWidget>

#include <algorithm>

namespace elbowroom::ui {
namespace {

const Look kLight{QColor(0xf1, 0xec, 0xe1), QColor(0xfb, 0xf8, 0xf1), QColor(0x21, 0x1f, 0x1c),
                  QColor(0x5c, 0x57, 0x4f), QColor(0xcd, 0xc5, 0xb5), QColor(0xed, 0xe6, 0xd6),
                  QColor(0xdc, 0xe6, 0xee), QColor(0x0b, 0x63, 0xa8), QColor(0xa3, 0x36, 0x00)};
const Look kDark{QColor(0x2a, 0x27, 0x23), QColor(0x20, 0x1e, 0x1b), QColor(0xee, 0xe9, 0xde),
                 QColor(0xbd, 0xb6, 0xa8), QColor(0x54, 0x4e, 0x45), QColor(0x33, 0x2f, 0x2a),
                 QColor(0x2b, 0x3d, 0x4d), QColor(0x7d, 0xbc, 0xf5), QColor(0xff, 0x9c, 0x70)};

QPalette paletteOf(const Look& l, bool dark) {
  QPalette p;
  p.setColor(QPalette::Window, l.panel);
  p.setColor(QPalette::WindowText, l.ink);
  p.setColor(QPalette::Base, l.sheet);
  p.setColor(QPalette::AlternateBase, l.lit);
  p.setColor(QPalette::Text, l.ink);
  p.setColor(QPalette::PlaceholderText, l.soft);
  p.setColor(QPalette::Button, dark ? l.panel.lighter(125) : QColor(0xf6, 0xf2, 0xe9));
  p.setColor(QPalette::ButtonText, l.ink);
  p.setColor(QPalette::BrightText, l.sheet);
  p.setColor(QPalette::ToolTipBase, l.sheet);
  p.setColor(QPalette::ToolTipText, l.ink);
  p.setColor(QPalette::Highlight, l.accent);
  p.setColor(QPalette::HighlightedText, dark ? l.sheet : QColor(Qt::white));
  p.setColor(QPalette::Link, l.accent);
  p.setColor(QPalette::LinkVisited, l.accent);
  p.setColor(QPalette::Light, l.panel.lighter(dark ? 140 : 106));
  p.setColor(QPalette::Midlight, l.panel.lighter(dark ? 120 : 103));
  p.setColor(QPalette::Mid, l.hairline);
  p.setColor(QPalette::Dark, l.hairline.darker(dark ? 90 : 115));
  p.setColor(QPalette::Shadow, l.hairline.darker(150));
  for (QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    QColor faded = l.soft;
    faded.setAlphaF(0.6F);
    p.setColor(QPalette::Disabled, role, faded);
  }
  return p;
}

// Outlines of boxes and fields that stand out from the ground: Fusion darkens the window's colour for them,
// which leaves nothing to see in the dark.
class LookStyle : public QProxyStyle {
 public:
  LookStyle() : QProxyStyle(QStringLiteral("Fusion")) {}
  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const bool box = element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck;
    const bool field = element == PE_FrameLineEdit && !(option->state & State_HasFocus);
    if (!box && !field) return;
    QColor outline = look(isDark(option->palette)).soft;
    outline.setAlphaF(option->state & State_Enabled ? (box ? 0.9F : 0.65F) : 0.35F);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(outline, 1));
    painter->setBrush(Qt::NoBrush);
    painter->drawRoundedRect(QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);
    painter->restore();
  }
};

}  // namespace

const Look& look(bool dark) { return dark ? kDark : kLight; }

bool isDark(const QPalette& palette) {
  return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

const Look& lookOf(const QWidget& widget) { return look(isDark(widget.palette())); }

void applyLook(QApplication& app, Scheme scheme) {
  const bool dark = scheme == Scheme::dark || (scheme == Scheme::desktop && isDark(QApplication::palette()));
  QApplication::setStyle(new LookStyle);
  app.setPalette(paletteOf(look(dark), dark));
}

QFont smallFont(const QWidget& widget) {
  QFont font = widget.font();
  if (font.pointSizeF() > 0) font.setPointSizeF(std::max(8.0, font.pointSizeF() * 0.88));
  return font;
}

QFont boldFont(const QWidget& widget) {
  QFont font = widget.font();
  font.setBold(true);
  return font;
}

}  // namespace elbowroom::ui
