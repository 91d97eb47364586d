// Display list -> QPainter. The only place where y is flipped and plan lengths become pixels.
#pragma once

#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <set>

#include "core/drawing/sheet.h"

namespace elbowroom::ui {

// Maps plan (or paper) coordinates to device-independent pixels.
struct ViewMap {
  double px_per_inch = 8;     // scale
  QPointF origin;             // pixel position of the plan's (0,0)
  QPointF toPx(Point p) const;
  Point toPlan(QPointF px) const;
  double px(Length l) const;
  Length fromPx(double px) const;
};

struct PaintOptions {
  bool dark = false;
  double px_per_mm = 3.78;    // pen widths
  std::set<ElementId> lit;    // drawn stronger
  bool white_paper = false;   // printed sheets: fills and halos are white instead of the screen's paper
};
void paint(QPainter&, const DisplayList&, const ViewMap&, const PaintOptions&);

// Writes sheets as a PDF with embedded fonts; needs a QGuiApplication (offscreen will do). Error: a sentence.
Result<bool> writePdf(const std::vector<Sheet>&, const std::string& path, const std::string& title);

}  // namespace elbowroom::ui
