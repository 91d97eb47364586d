// The live dimensions of what is selected on the strip. Each can be typed.
#pragma once

#include <QRectF>
#include <vector>

#include "ui/walls/strip_context.h"

namespace elbowroom::ui {

struct StripDimension {
  ElementId element;
  WallGap gap;
  Segment line;  // in strip figures
  QString text;
  QPointF label_px;
  QRectF label_box;
  QString purpose() const;  // "Height above the floor"
};

// One selected thing only. In the order in which D walks them; the first is what a typed figure sets.
std::vector<StripDimension> stripDimensions(StripContext&);
// Labels that would cover an earlier one are left out, except the active one's.
void paintStripDimensions(QPainter&, StripContext&, const std::vector<StripDimension>&, int active);
std::vector<int> visibleDimensions(const std::vector<StripDimension>&, int active);
// Makes the dimension exactly `wanted` as one edit; an empty string or why not.
QString applyStripDimension(Session&, const StripDimension&, Length wanted);
// Adds the thing of a wall as it is when it stands where this box is; false: it is gone, or stands free.
bool putBox(PutThings&, const Layout&, const WallBox&);

}  // namespace elbowroom::ui
