// What every panel shares: colours beyond the palette, spacing, small type. Light and dark follow the
// desktop.
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>

class QApplication;
class QWidget;

namespace elbowroom::ui {

// Pixels at 100 %; Qt scales them.
inline constexpr int kMargin = 12;   // panel edge to content
inline constexpr int kGap = 8;       // between things that belong together
inline constexpr int kTightGap = 4;  // between a label and what it labels

struct Look {
  QColor panel;     // behind the columns
  QColor sheet;     // paper: lists, fields
  QColor ink;       // text and drawn lines
  QColor soft;      // second text; at least 4.5:1 on panel and sheet
  QColor hairline;  // dividers and field outlines
  QColor lit;       // row under the mouse
  QColor chosen;    // chosen row's ground; ink stays readable on it
  QColor accent;    // focus, selection outline
  QColor warning;   // outline of a field that cannot be read
};
const Look& look(bool dark);
bool isDark(const QPalette&);
const Look& lookOf(const QWidget&);

enum class Scheme { desktop, light, dark };
// Style, palette and fonts for the whole program. `desktop` takes dark when the desktop's own palette is
// dark.
void applyLook(QApplication&, Scheme scheme = Scheme::desktop);

// The widget's font for notes (at least 8 pt) and for headings.
QFont smallFont(const QWidget&);
QFont boldFont(const QWidget&);

}  // namespace elbowroom::ui
