// The dimensions that belong to the selected element: to its neighbours on both sides (or four sides when it
// stands free), or a wall's own length. Each can be typed.
#pragma once

#include <QRectF>
#include <vector>

#include "ui/canvas/tool.h"

namespace elbowroom::ui {

struct LiveDimension {
  ElementId element;
  std::optional<SideGap> gap;   // unset: the wall's own length
  Segment line;
  Length value;
  QString text;
  QPointF label_px;             // middle of the label
  QRectF label_box;             // where a click opens the entry field
};

std::vector<LiveDimension> liveDimensions(CanvasContext&);
void paintLiveDimensions(QPainter&, CanvasContext&, const std::vector<LiveDimension>&, int active);
// Makes the dimension exactly `wanted` as one edit; an empty string or why not.
QString applyDimension(Session&, const LiveDimension&, Length wanted);

}  // namespace elbowroom::ui
